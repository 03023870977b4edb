import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import { fieldAt } from '../../../src/design/fieldAt.ts'
import { LANDING_FIELDS } from '../../../src/design/openingFields.ts'
import { GROUP_FIELDS } from '../../../src/design/schema.ts'
import { isFieldInUse, STAGES } from '../../../src/panels/inputs/stages.ts'

const listed = STAGES.flatMap((entry) => entry.sections.flatMap((section) => section.fields))
const wanted = [
  ...Object.entries(GROUP_FIELDS).flatMap(([group, fields]) =>
    Object.keys(fields).map((key) => `${group}.${key}`),
  ),
  ...Object.keys(LANDING_FIELDS).map((key) => `openings.${key}`),
]

describe('STAGES', () => {
  it('holds every field of the document once, and nothing else', () => {
    expect([...listed].sort()).toEqual([...wanted].sort())
  })

  it('names only fields that exist', () => {
    expect(listed.filter((path) => fieldAt(path) === undefined)).toEqual([])
  })
})

describe('isFieldInUse', () => {
  it('hides what a choice has put out of use', () => {
    const single = {
      ...DEFAULT_DESIGN,
      frame: { ...DEFAULT_DESIGN.frame, form: 'single' as const },
    }
    expect(isFieldInUse('frame.joint', DEFAULT_DESIGN)).toBe(true)
    expect(isFieldInUse('frame.joint', single)).toBe(false)
  })

  it('shows a second follower only when there are two', () => {
    const withTwo = {
      ...DEFAULT_DESIGN,
      cavity: { ...DEFAULT_DESIGN.cavity, followers: 'two' as const },
    }
    expect(isFieldInUse('cavity.followerBAfterFrame', DEFAULT_DESIGN)).toBe(false)
    expect(isFieldInUse('cavity.followerBAfterFrame', withTwo)).toBe(true)
  })

  it('shows every field that has no condition', () => {
    expect(isFieldInUse('walls.coreMm', DEFAULT_DESIGN)).toBe(true)
  })
})
