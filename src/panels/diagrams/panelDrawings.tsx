const HATCH = 'M36 34l8-8M36 46l16-20M38 58l14-18M70 34l8-8M70 46l16-20M72 58l14-18'

/** Lining, rails with insulation between them, cladding; the bees' side is below. */
export const LidLayers = () => (
  <>
    <path className="w1 hatch" d={HATCH} />
    <path className="w1" d="M34 26h16v34H34zM70 26h16v34H70z" />
    <path className="w2 wood" d="M18 26h14v34H18zM54 26h12v34H54zM88 26h14v34H88z" />
    <path className="w3" d="M18 16h84v10H18zM18 60h84v8H18z" />
  </>
)

/** The outside face of a wall with its boards. */
export const WallFace = () => (
  <>
    <path className="w2" d="M10 28h92M10 44h92M10 60h92" />
    <path className="w3" d="M10 12h92v64H10z" />
  </>
)

/** A sloping lid on its walls: firrings, deck, cover sheet, rim. */
export const LidSection = () => (
  <>
    <path className="w1 hatch" d="M34 52l12-12M50 52l12-12M66 52l12-12M82 52l10-10" />
    <path className="w2" d="M26 40h68v12H26zM26 40V34.500L94 24v16" />
    <path className="w2 wood" d="M20 36h6v26h-6zM94 26h6v36h-6z" />
    <path className="w3" d="M31 84V52h10v32M79 84V52h10v32M8 34.500 112 18.500" />
  </>
)

/** The hive from its end with the lid laid back. */
export const LidOpen = () => (
  <>
    <path className="w3" d="M24 46h64v34H24z" />
    <path className="w2 wood" d="M24 44 16 4l9-1.500 7 40z" />
    <path className="w1 axis" d="M24 44h66v-8H24" />
  </>
)

/** The hive from its end with the floor let down. */
export const FloorOpen = () => (
  <>
    <path className="w3" d="M26 8h70v46H26z" />
    <path className="w1 axis" d="M26 54h70v7H26" />
    <path className="w2 wood" d="M26 55 90 74l-2 7-64-19z" />
  </>
)
