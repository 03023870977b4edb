/** A circular saw's base that runs along a guide, from above. */
export const Guide = () => (
  <>
    <path className="w2 wood" d="M22 6h8v62h-8z" />
    <path className="w2 paper" d="M30 20h62v36H30z" />
    <path className="w3" d="M76 26v24" />
    <path className="w1 axis" d="M76 6v62" />
  </>
)

/** A board whose ends are taken off. */
export const TrimmedBoard = () => (
  <>
    <path className="w3 wood" d="M8 30h104v24H8z" />
    <path className="w1 axis" d="M18 24v36M102 24v36" />
    <path className="w1" d="M28 38h40M44 46h48" />
  </>
)

/** A sheet whose edges are taken off. */
export const TrimmedSheet = () => (
  <>
    <path className="w3" d="M16 10h88v62H16z" />
    <path className="w1 axis" d="M24 18h72v46H24z" />
  </>
)

/** A sheet under the arm. */
export const Carry = () => (
  <>
    <path className="w2 wood" d="M38 30h68v40H38z" />
    <path
      className="w2"
      d="M20 8a6 6 0 1 0 .1 0M20 20v30M20 50l-8 26M20 50l8 26M20 26l10 22h10M20 26l-8 20"
    />
  </>
)

/** What is left of a board behind the last saw cut. */
export const Offcut = () => (
  <>
    <path className="w2 wood" d="M8 30h64v24H8z" />
    <path className="w3" d="M78 30h34v24H78z" />
    <path className="w1" d="M16 38h40M24 46h40" />
  </>
)

/** Three hives side by side. */
export const Hives = () => (
  <>
    <path
      className="w3"
      d="M6 32h30v26H6zM45 32h30v26H45zM84 32h30v26H84zM3 32h36M42 32h36M81 32h36"
    />
    <path className="w2" d="M10 58v16M32 58v16M49 58v16M71 58v16M88 58v16M110 58v16" />
  </>
)

/** A price on a tag. */
export const PriceTag = () => (
  <>
    <path className="w3" d="M16 44 40 20h64v48H40z" />
    <path className="w2" d="M38 40a4 4 0 1 0 .1 0" />
  </>
)

/** A board with its three sizes. */
export const BoardSolid = () => (
  <>
    <path className="w2 wood" d="M10 40h84v16H10z" />
    <path className="w2" d="M10 40 26 26h84L94 40M94 56l16-14V26" />
    <path className="w1" d="M18 46h44M34 51h52" />
  </>
)

/** A sheet with its three sizes. */
export const SheetSolid = () => (
  <>
    <path className="w2 wood" d="M10 56h74v8H10z" />
    <path className="w2" d="M10 56 38 20h74L84 56M84 64l28-36v-8" />
  </>
)

/** Boards in a pile. */
export const Pile = () => (
  <path className="w2 wood" d="M16 22h92v14H16zM16 38h92v14H16zM16 54h92v14H16z" />
)

/** A board with a knot in it. */
export const Knot = () => (
  <>
    <path className="w3 wood" d="M8 28h104v28H8z" />
    <path className="w2" d="M60 34a8 8 0 1 0 .1 0M60 39a3 3 0 1 0 .1 0" />
    <path className="w1 axis" d="M48 22v40M72 22v40" />
  </>
)
