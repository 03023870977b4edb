import { describe, expect, it } from 'vitest'
import { FIELD_TABLES } from '../../../src/design/fieldAt.ts'
import { diagramMark } from '../../../src/panels/diagrams/diagramMarks.ts'

const numbers = [...FIELD_TABLES].flatMap(([group, fields]) =>
  Object.entries(fields)
    .filter(([, field]) => field.kind === 'number')
    .map(([key]) => `${group.replaceAll('*', '0')}.${key}`),
)

describe('diagramMark', () => {
  it('has a drawing for every number of the document', () => {
    expect(numbers.length).toBeGreaterThan(60)
    expect(numbers.filter((path) => diagramMark(path) === undefined)).toEqual([])
  })

  it('picks something out in every drawing', () => {
    const empty = numbers.filter((path) => {
      const mark = diagramMark(path)
      return mark && !mark.dimension && !mark.areas && !mark.path
    })
    expect(empty).toEqual([])
  })

  it('keeps every mark on the sheet of 120 by 84', () => {
    const outside = numbers.filter((path) => {
      const mark = diagramMark(path)
      const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = mark?.dimension ?? []
      const areas = mark?.areas ?? []
      return (
        [x1, x2].some((x) => x < 0 || x > 120) ||
        [y1, y2].some((y) => y < 0 || y > 84) ||
        areas.some(([x, y, w, h]) => x < 0 || y < 0 || x + w > 120 || y + h > 84)
      )
    })
    expect(outside).toEqual([])
  })

  it('knows nothing of choices and texts', () => {
    expect(diagramMark('frame.standard')).toBeUndefined()
  })
})
