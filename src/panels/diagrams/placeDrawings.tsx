/** A wall seen from outside with its entrance above the floor line. */
export const Entrance = () => (
  <>
    <path className="w3" d="M8 8h104v68H8z" />
    <path className="w2 paper" d="M36 52h40v8H36z" />
    <path className="w1 axis" d="M56 40v36" />
  </>
)

/** A wall seen from outside with an upper vent behind mesh. */
export const Vent = () => (
  <>
    <path className="w1 axis" d="M8 18h104" />
    <path className="w3" d="M8 8h104v68H8z" />
    <path className="w2 paper" d="M56 32h28v8H56z" />
    <path className="w1" d="M62 32v8M68 32v8M74 32v8M80 32v8M56 36h28" />
  </>
)

/** A landing board under the entrance, seen from the end. */
export const Landing = () => (
  <>
    <path className="w3" d="M12 8h28v30M12 8v70h28V50M40 38v4" />
    <path className="w2 wood" d="M40 52 92 60v5L40 58z" />
  </>
)

/** The hive on its legs, from the front. */
export const StandFront = () => (
  <>
    <path className="w1 axis" d="M6 22h90" />
    <path className="w3" d="M14 16h80v34H14zM4 78h112" />
    <path className="w2 wood" d="M24 50h8v28h-8zM76 50h8v28h-8z" />
  </>
)

/** A keeper beside the hive, with bent elbow. */
export const StandPerson = () => (
  <>
    <path className="w3" d="M8 34h46v24H8zM4 78h112" />
    <path
      className="w2"
      d="M16 58v20M46 58v20M86 16a7 7 0 1 0 .1 0M86 30v24M86 54l-8 24M86 54l8 24M86 32l12 4M98 36 66 32"
    />
  </>
)

/** Temperature through the year, coldest at both ends. */
export const Year = () => (
  <>
    <path className="w1" d="M12 8v70h102" />
    <path className="w1" d="M29 78v-4M46 78v-4M62 78v-4M79 78v-4M96 78v-4" />
    <path className="w3" d="M12 62c18 0 26-44 50-44s32 44 50 44" />
  </>
)

/** A drop, filled as far as the air is. */
export const Humidity = () => (
  <>
    <path className="w3" d="M60 8c16 22 24 32 24 44a24 22 0 0 1-48 0c0-12 8-22 24-44z" />
    <path className="w1 axis" d="M38 44h44" />
  </>
)

const FRAME = 'M10 14h100M22 14v58h76V14M22 20h76'

/** Bees drawn together on a comb. */
export const Cluster = () => (
  <>
    <path className="w2" d={FRAME} />
    <path
      className="w1"
      d="M50 40h2M58 36h2M66 40h2M54 46h2M62 46h2M70 46h2M46 48h2M50 54h2M58 54h2M66 54h2"
    />
  </>
)

/** Honey along the top of a comb. */
export const Stores = () => (
  <>
    <path className="w2" d={FRAME} />
    <path className="w1" d="M22 38h76" />
  </>
)

/** The hive in section with a thermometer in it. */
export const WarmAir = () => (
  <>
    <path className="w3" d="M14 16h92v62H14z" />
    <path className="w1" d="M22 24h76v46H22z" />
    <path className="w2 paper" d="M56 32a4 4 0 0 1 8 0v24a8 8 0 1 1-8 0z" />
  </>
)
