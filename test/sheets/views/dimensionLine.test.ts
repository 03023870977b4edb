import { describe, expect, it } from 'vitest'
import type { DrawingItem, TextItem } from '../../../src/sheets/drawing.ts'
import { levelDimension, uprightDimension } from '../../../src/sheets/views/dimensionLine.ts'

const texts = (items: readonly DrawingItem[]): readonly TextItem[] =>
  items.filter((i): i is TextItem => i.kind === 'text')
const lineOf = (items: readonly DrawingItem[], tag: string) =>
  items.find((i) => i.kind === 'line' && i.tag === tag)

describe('levelDimension', () => {
  const level = (x1: number) =>
    levelDimension({
      name: 'length',
      value: '945',
      note: 'over the walls',
      shortNote: 'walls',
      x0: 10,
      x1,
      y: 60,
      outlineY: 50,
    })

  it('runs a thin line over the measured length, with the text above its middle', () => {
    expect(lineOf(level(110), 'dimension/length')).toMatchObject({
      weight: 'thin',
      from: { x: 10, y: 60 },
      to: { x: 110, y: 60 },
    })
    expect(texts(level(110))).toMatchObject([
      { text: '945 over the walls', anchor: 'middle', at: { x: 60 } },
    ])
    expect(texts(level(110))[0]?.at.y).toBeLessThan(60)
  })

  it('carries the extension lines 2 mm past it', () => {
    const upright = level(110).filter((i) => i.kind === 'line' && i.from.x === i.to.x)
    expect(upright).toMatchObject([
      { from: { x: 10, y: 51 }, to: { x: 10, y: 62 } },
      { from: { x: 110, y: 51 }, to: { x: 110, y: 62 } },
    ])
  })

  it('drops words that do not fit, and sets the figure beside a very short line', () => {
    expect(texts(level(35))[0]?.text).toBe('945 walls')
    expect(texts(level(20))[0]?.text).toBe('945')
    expect(texts(level(13))).toMatchObject([{ text: '945', anchor: 'start' }])
  })
})

describe('uprightDimension', () => {
  it('reads upwards, left of its line', () => {
    const items = uprightDimension({
      name: 'height',
      value: '484',
      y0: 100,
      y1: 50,
      x: 20,
      outlineX: 30,
    })
    expect(texts(items)).toMatchObject([
      { text: '484', angleDeg: 90, anchor: 'middle', at: { x: 19, y: 75 } },
    ])
  })
})
