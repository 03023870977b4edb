interface ResistanceScaleProps {
  readonly betweenRails: number
  readonly withRails: number
  readonly lower: number
  readonly upper: number
  /** Undefined while the whole hive has not been worked out. */
  readonly inHive: number | undefined
  readonly target: number
  /** The end of the scale; all panels share one, so that they can be compared. */
  readonly end: number
}

/**
 * The answers for one panel on a rule: a filled cursor for the panel with its rails, a bracket for
 * the bounds, an open mark for between the rails, a wedge from below for this hive, a flag for what is
 * wanted. The same marks stand beside their words.
 */
export const ResistanceScale = (props: ResistanceScaleProps) => {
  const { betweenRails, withRails, lower, upper, inHive, target, end } = props
  const x = (value: number) => 6 + (Math.min(value, end) / end) * 308
  const ticks = Array.from({ length: Math.floor(end * 5 + 1e-9) + 1 }, (_, i) => i / 5)
  return (
    <svg className="scale" viewBox="0 0 320 56" aria-hidden="true">
      <path className="scale-fill" d={`M6 26H${x(withRails)}v10H6z`} />
      <path className="w2" d="M6 36H314" />
      {ticks.map((value) => (
        <path key={value} className="w1" d={`M${x(value)} 36v${value % 1 === 0 ? 12 : 6}`} />
      ))}
      <path className="w2" d={`M${x(lower)} 16v8M${x(upper)} 16v8M${x(lower)} 20H${x(upper)}`} />
      <path className="scale-open" d={`M${x(betweenRails)} 24l5 6-5 6-5-6z`} />
      <path className="scale-now" d={`M${x(withRails)} 22v20`} />
      {inHive !== undefined && <path className="scale-wedge" d={`M${x(inHive)} 37l8 17h-16z`} />}
      <path className="w3" d={`M${x(target)} 54V4`} />
      <path
        className="scale-flag"
        d={`M${x(target)} 3${target > end * 0.8 ? 'h-16l5 5-5 5h16' : 'h16l-5 5 5 5h-16'}z`}
      />
    </svg>
  )
}

/** A mark of the rule by itself, to stand beside its words. */
export const ScaleMark = ({ of }: { readonly of: 'between' | 'rails' | 'hive' | 'target' }) => (
  <svg className="scale scale-mark" viewBox="0 0 20 20" aria-hidden="true">
    {of === 'between' && <path className="scale-open" d="M10 3l6 7-6 7-6-7z" />}
    {of === 'rails' && <path className="scale-now" d="M10 1v18" />}
    {of === 'hive' && <path className="scale-wedge" d="M10 1l8 17h-16z" />}
    {of === 'target' && <path className="scale-flag" d="M4 20V2h15l-5 5 5 5H7v8z" />}
  </svg>
)
