import { describe, expect, it } from 'vitest'
import { explainQuantity, parseQuantity, type UnitSet } from '../../src/units/quantity.ts'

const HANDS: UnitSet<'hand' | 'finger'> = {
  noun: 'a height',
  example: '3 hand 2 finger',
  unitBySuffix: new Map([
    ['hand', 'hand'],
    ['finger', 'finger'],
  ]),
  pair: { major: 'hand', minor: 'finger', minorsPerMajor: 4 },
}

describe('parseQuantity', () => {
  it('sums a pair in its smaller unit and keeps the sign for the whole', () => {
    expect(parseQuantity('-3 hand 2 1/2', 'hand', HANDS)).toEqual({
      kind: 'ok',
      // -(3 * 4 + 5/2)
      amount: { numerator: -29, denominator: 2 },
      unit: 'finger',
      understood: '-3 hand 2 1/2 finger',
    })
  })

  it('leaves a single amount in the unit it was typed in', () => {
    expect(parseQuantity('2.5 Hand.', 'finger', HANDS)).toEqual({
      kind: 'ok',
      amount: { numerator: 25, denominator: 10 },
      unit: 'hand',
      understood: '2.5 hand',
    })
  })

  it('lets no two units stand together where no pair is named', () => {
    const { pair: _, ...single } = HANDS
    expect(parseQuantity('3 hand 2 finger', 'hand', single)).toEqual({
      kind: 'error',
      message: 'Give a height in one unit. Type it as 3 hand 2 finger.',
    })
  })
})

describe('explainQuantity', () => {
  it('puts other units in brackets, if there are any', () => {
    expect(explainQuantity('20 lb', ['9.07 kg'])).toBe('20 lb (9.07 kg)')
    expect(explainQuantity('9.07 kg', [])).toBe('9.07 kg')
  })
})
