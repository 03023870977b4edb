import { describe, expect, it } from 'vitest'
import { readBoxFile } from '../../scripts/boxFile.ts'

const CUBE = { x0: 0, x1: 1, y0: 0, y1: 1, z0: 0, z1: 1, k: 0.1 }
const CAVITY = { x0: 0.1, x1: 0.9, y0: 0.1, y1: 0.9, z0: 0.1, z1: 0.9 }
const BC = { Ti: 20, Te: 0, Rsi: 0.13, Rse: 0.04 }
const WHOLE = { boxes: [CUBE], cavity: CAVITY, bc: BC }

const messagesOf = (file: unknown): readonly string[] => {
  const read = readBoxFile(typeof file === 'string' ? file : JSON.stringify(file))
  return read.kind === 'bad' ? read.messages : []
}

describe('readBoxFile', () => {
  it('reads a whole file and leaves alone what it does not know', () => {
    const read = readBoxFile(JSON.stringify({ comment: 'a cube', ...WHOLE, grid: { h: 0.01 } }))
    expect(read).toEqual({ kind: 'ok', file: { ...WHOLE, grid: { h: 0.01 } } })
  })

  it.each([
    ['', 'The file is not JSON, or it is cut short.'],
    ['[1, 2', 'The file is not JSON, or it is cut short.'],
    ['null', 'The file is empty, but must be an object with boxes, cavity and bc.'],
  ])('refuses %j', (text, message) => {
    expect(messagesOf(text)).toEqual([message])
  })

  it.each([
    [{ ...WHOLE, boxes: [] }, 'boxes is a list of 0, but must be a list of 1 to 60000 boxes.'],
    [
      { ...WHOLE, boxes: [CUBE, { ...CUBE, name: 'rail', k: undefined }] },
      'boxes[1] (rail).k is missing, but must be a conductivity above 0, W/(m·K).',
    ],
    [
      { ...WHOLE, boxes: [{ ...CUBE, k: 0 }] },
      'boxes[0].k is 0, but must be a conductivity above 0, W/(m·K).',
    ],
    [{ ...WHOLE, boxes: [{ ...CUBE, x1: '1 m' }] }, 'boxes[0].x1 is "1 m", but must be a number.'],
    [{ ...WHOLE, boxes: [7] }, 'boxes[0] is 7, but must be a box: x0, x1, y0, y1, z0, z1 and k.'],
    [{ ...WHOLE, boxes: [{ ...CUBE, y0: 2 }] }, 'boxes[0]: y0 is 2, beyond y1 at 1.'],
    [{ ...WHOLE, cavity: { ...CAVITY, z0: 0.9 } }, 'cavity has no volume.'],
    [
      { ...WHOLE, cavity: undefined },
      'cavity is missing, but must be an object with x0, x1, y0, y1, z0 and z1 in metres.',
    ],
    [
      { ...WHOLE, bc: { ...BC, Rsi: -1 } },
      'bc.Rsi is -1, but must be a resistance from 0 up, m²K/W.',
    ],
    [
      { ...WHOLE, bc: { ...BC, Te: 20 } },
      'bc.Ti and bc.Te are alike, so no heat flows. Give two temperatures.',
    ],
    [
      { ...WHOLE, grid: { h: 0.01, min_cells: 1.5 } },
      'grid.min_cells is 1.5, but must be a whole number from 1 to 100.',
    ],
    [
      { ...WHOLE, grid: { h: 0.00001 } },
      'grid.h is 0.00001, too fine for boxes 1 m long. Make it 0.0001 or more.',
    ],
  ])('says what is wrong in %j', (file, message) => {
    expect(messagesOf(file)).toEqual([message])
  })

  it('refuses numbers too large to be one', () => {
    const text = JSON.stringify(WHOLE).replace('"x1":1', '"x1":1e999')
    expect(messagesOf(text)).toEqual(['boxes[0].x1 is Infinity, but must be a number.'])
  })

  it('keeps a box without thickness, which the world leaves out', () => {
    expect(messagesOf({ ...WHOLE, boxes: [CUBE, { ...CUBE, z0: 1 }] })).toEqual([])
  })
})
