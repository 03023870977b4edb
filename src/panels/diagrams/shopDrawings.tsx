/** A load lifted by two handles. */
export const Load = () => (
  <>
    <path className="w3" d="M24 44h72v32H24z" />
    <path className="w2" d="M24 54H12v10h12M96 54h12v10H96" />
  </>
)

/** Two people with a hive between them. */
export const Crew = () => (
  <>
    <path className="w3" d="M36 44h48v18H36z" />
    <path
      className="w2"
      d="M20 32v24M20 56l-7 22M20 56l7 22M20 38l16 12M100 32v24M100 56l-7 22M100 56l7 22M100 38 84 50"
    />
  </>
)

/** A board from above, with the saw cut in it. */
export const Kerf = () => (
  <>
    <path className="w2 wood" d="M8 24h48v36H8zM63 24h49v36H63z" />
    <path className="w1" d="M14 34h34M18 44h30M14 52h36M70 34h34M72 44h36M70 52h30" />
  </>
)

/** Saw blade and fence from above, with a strip between them. */
export const Fence = () => (
  <>
    <path className="w2 wood" d="M38 22h54v42H38z" />
    <path className="w3" d="M92 8h10v68H92zM38 30v26" />
    <path className="w1" d="M46 30h38M46 42h38M46 54h34" />
  </>
)

/** The longest board. */
export const Plank = () => (
  <>
    <path className="w3 wood" d="M8 34h104v18H8z" />
    <path className="w1" d="M14 40h60M30 46h76" />
  </>
)
