interface SegmentsProps<T extends string> {
  readonly name: string
  readonly options: readonly { readonly value: T; readonly name: string }[]
  readonly value: T
  readonly onChoose: (value: T) => void
}

/** A few choices side by side; the chosen one is filled in. */
export const Segments = <T extends string>(props: SegmentsProps<T>) => {
  const { name, options, value, onChoose } = props
  return (
    <fieldset className="segments">
      <legend>{name}</legend>
      <div>
        {options.map((option) => (
          <button
            key={option.value}
            type="button"
            aria-pressed={option.value === value}
            onClick={() => onChoose(option.value)}
          >
            {option.name}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
