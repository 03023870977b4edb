import { describe, expect, it } from 'vitest'
import {
  readClassInstances,
  readKnapsackInstances,
  readLumberInstances,
  readMultisheetInstances,
  readPlantedInstances,
  readRealisticInstances,
} from './readInstances.ts'

/** Area of the parts with a kerf on two sides of each, which no plan's sheets can be short of. */
const partArea = (job: ReturnType<typeof readPlantedInstances>[number]['job']): number =>
  job.parts.reduce(
    (sum, p) => sum + (p.lengthMm + job.kerfMm) * (p.widthMm + job.kerfMm) * p.count,
    0,
  )

describe('the cutting instances', () => {
  it('are all there', () => {
    const counts = [
      readLumberInstances(),
      readClassInstances('fixed'),
      readClassInstances('turning'),
      readMultisheetInstances('fixed'),
      readMultisheetInstances('turning'),
      readKnapsackInstances(),
      readPlantedInstances(),
      readRealisticInstances(),
    ].map((set) => set.length)
    expect(counts).toEqual([30, 50, 50, 6, 6, 19, 24, 20])
  })

  it('have bounds in order', () => {
    for (const { lpBound, optimum, plainPrice } of readLumberInstances()) {
      expect(lpBound).toBeLessThanOrEqual(optimum)
      expect(plainPrice).toBeGreaterThanOrEqual(optimum)
    }
    const sheets = [...readClassInstances('fixed'), ...readClassInstances('turning')]
    for (const { bound, bestKnown, bestKnownFree } of sheets) {
      expect(bound).toBeLessThanOrEqual(bestKnownFree)
      expect(bestKnownFree).toBeLessThanOrEqual(bestKnown)
    }
    for (const { bound, bestKnown } of readRealisticInstances()) {
      expect(bound).toBeLessThanOrEqual(bestKnown)
    }
    for (const { twoStageBound, bestKnown } of readMultisheetInstances('fixed')) {
      expect(twoStageBound).toBeLessThanOrEqual(bestKnown)
    }
  })

  it('have the sizes and counts of their sources', () => {
    // ms1d-00 and plant-00 as generated; HH as in Hifi 1997.
    const [board] = readLumberInstances()
    expect(board?.job.stocks.map((s) => [s.lengthMm, s.price])).toEqual([
      [1800, 383],
      [2400, 546],
      [3000, 674],
    ])
    expect(board?.job.parts[0]).toMatchObject({ lengthMm: 548, count: 16 })
    const hh = readKnapsackInstances().find(({ name }) => name === 'hifi1997a__HH')
    expect(hh?.sheet).toEqual({ length: 127, width: 98 })
    expect(hh?.firstAlongLength).toBe(10689)
  })

  it('fill the planted sheets as far as they say', () => {
    for (const { job, fill, bestKnown } of readPlantedInstances()) {
      const [stock] = job.stocks
      if (stock === undefined) throw new Error('There is a sheet.')
      const area = (stock.lengthMm + job.kerfMm) * (stock.widthMm + job.kerfMm)
      const sheets = bestKnown / stock.price
      expect(partArea(job) / (area * sheets)).toBeCloseTo(fill, 2)
      expect(Math.ceil(partArea(job) / area)).toBe(sheets)
    }
  })
})
