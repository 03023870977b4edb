import { useDesignStore } from '../store/designStore.ts'

/** The cold night of the site, °C: the air outside and the air inside the hive. */
export interface Night {
  readonly outsideC: number
  readonly insideC: number
}

export const useNight = (): Night => {
  const outsideC = useDesignStore((s) => s.design.site.coldNightC)
  const insideC = useDesignStore((s) => s.design.colony.cavityAirC)
  return { outsideC, insideC }
}

/** The temperature that is a share of the way from outside to inside, °C. */
export const celsiusAt = (share: number, { outsideC, insideC }: Night): number =>
  outsideC + share * (insideC - outsideC)

/** Heat through a conductance on the cold night, W; never below 0. */
export const nightLossW = (wPerK: number, { outsideC, insideC }: Night): number =>
  wPerK * Math.max(0, insideC - outsideC)
