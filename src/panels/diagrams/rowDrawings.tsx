const comb = (x: number) => `M${x} 22h4v40h-4z`

/** The row from above: frames, a follower board, places left empty, play at the end. */
export const RowPlan = () => (
  <>
    <path className="w2 comb" d={[16, 24, 32, 40, 48, 56, 64].map(comb).join('')} />
    <path className="w1 axis" d={[84, 92].map(comb).join('')} />
    <path className="w2" d="M70 20h8v44h-8z" />
    <path className="w3" d="M10 15h100v54H10z" />
  </>
)

/** The row from above, parted for two colonies. */
export const DividedRow = () => (
  <>
    <path className="w2 comb" d={[14, 22, 30, 38, 46, 70, 78, 86, 94, 102].map(comb).join('')} />
    <path className="w2" d="M58 15h4v54h-4z" />
    <path className="w3" d="M10 15h100v54H10z" />
  </>
)

/** The cover boards from above. */
export const CoverPlan = () => (
  <>
    <path className="w2" d="M30 15v54M50 15v54M70 15v54M90 15v54" />
    <path className="w3" d="M10 15h100v54H10z" />
  </>
)

/** Where a lug hangs on the wall, with the cover board above. */
export const RestDetail = () => (
  <>
    <path
      className="w1 hatch"
      d="M4 28 18 14M4 40l16-16M4 52l20-20M4 64l20-20M4 76l20-20M12 80l12-12"
    />
    <path className="w3" d="M4 82V20h20v17h16v45M24 37v45" />
    <path className="w2" d="M14 12h100v8H14z" />
    <path className="w2 wood" d="M30 29h84v13H60v40h-8V42h-4v-5H30z" />
  </>
)

/** The foot of a frame or board above the floor. */
export const FloorDetail = () => (
  <>
    <path className="w2 wood" d="M30 4v38h78V4M38 4v30h62V4" />
    <path className="w3" d="M14 4v54M24 4v54M4 58h112M4 66h112" />
    <path
      className="w1 hatch"
      d="M8 76l8-8M24 76l8-8M40 76l8-8M56 76l8-8M72 76l8-8M88 76l8-8M104 76l8-8"
    />
  </>
)
