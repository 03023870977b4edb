import { describe, expect, it } from 'vitest'
import { EXAMPLES } from '../../../../src/design/examples.ts'
import { STEP } from '../../../../src/hive/steps.ts'
import { stepPicture } from '../../../../src/reports/shop/assembly/stepPicture.ts'
import { assemble, OIL } from './assemble.ts'

const picturesOf = (design: (typeof EXAMPLES)[number]['design']) => {
  const built = assemble(design, { finish: OIL })
  return built.report.steps.map((step, i) => {
    const picture = stepPicture(built.report, i)
    if (picture === undefined) throw new Error('every step has a picture')
    return { step, ...picture }
  })
}

describe('stepPicture', () => {
  it.each(EXAMPLES)('shows something in every step of $design.title.name, each once', (example) => {
    for (const { solid, fresh } of picturesOf(example.design)) {
      const all = [...solid, ...fresh]
      expect(all.length).toBeGreaterThan(0)
      expect(new Set(all).size).toBe(all.length)
    }
  })

  it.each(EXAMPLES)('marks what is new, and shows it all at the end: $design.title.name', (one) => {
    const pictures = picturesOf(one.design)
    for (const { step, fresh } of pictures) {
      if (step.stage === STEP.lastCheck) expect(fresh).toEqual([])
      else expect(fresh.length).toBeGreaterThan(0)
    }
    expect(pictures.at(-1)?.solid.length).toBe(assemble(one.design).hive.parts.length)
  })

  it('shows the lid alone while it is on the bench, and leaves it off when the box is filled', () => {
    const pictures = picturesOf(assembleDefault())
    const at = (stage: number) => pictures.find((p) => p.step.stage === stage)
    const lid = at(STEP.lidSkin)
    expect(lid?.solid.every((id) => id.startsWith('lid/'))).toBe(true)
    expect(at(STEP.covers)?.solid.some((id) => id.startsWith('lid/'))).toBe(false)
    expect(at(STEP.lidHung)?.fresh).toContain('roof/cover-sheet')
  })

  it('draws one frame for all', () => {
    const frames = picturesOf(assembleDefault()).find((p) => p.step.stage === STEP.frames)
    expect(frames?.solid).toEqual([])
    expect(frames?.fresh.every((id) => id.startsWith('frame-1/'))).toBe(true)
  })

  it('knows no step beyond the last', () => {
    expect(stepPicture(assemble().report, 99)).toBeUndefined()
  })
})

const assembleDefault = () => {
  const [first] = EXAMPLES
  if (first === undefined) throw new Error('there are examples')
  return first.design
}
