import type { z } from 'zod'
import { allowedIn } from './allowedIn.ts'
import { describeValue } from './describeValue.ts'
import { fieldAt, fieldTitle, groupTitle } from './fieldAt.ts'
import { isJsonObject, ownValue } from './json.ts'
import type { Problem } from './parsedDesign.ts'
import { MAX_ENTRANCES, MAX_VENTS } from './schema.ts'

type Issue = z.core.$ZodIssue

/** More than this helps nobody; the rest is counted. */
const MOST_SHOWN = 20

/** One message a field for what the schema found wrong in `json`, in the order of the document. */
export function describeIssues(issues: readonly Issue[], json: unknown): readonly Problem[] {
  const problems = issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys'
      ? issue.keys.map((key) => describeUnknown([...issue.path, key].join('.'), key))
      : [describeWrong(issue.path, json)],
  )
  const first = new Map(problems.toReversed().map((problem) => [problem.field, problem]))
  const unique = [...first.values()].toReversed()
  if (unique.length <= MOST_SHOWN) return unique
  const rest = `There are ${unique.length - MOST_SHOWN} more problems of this kind in it.`
  return [...unique.slice(0, MOST_SHOWN), { field: '', message: rest }]
}

function describeUnknown(path: string, key: string): Problem {
  const group = path.includes('.') ? `${groupTitle(path)}: ` : ''
  const message =
    `${group}${describeValue(key)} is not a field that this version of Combwright knows. ` +
    `Check how it is spelt, or take ${describeValue(path)} out of the file.`
  return { field: path, message }
}

function describeWrong(keys: readonly PropertyKey[], json: unknown): Problem {
  const path = keys.join('.')
  const value = keys.reduce(ownValue, json)
  const field = fieldAt(path)
  const allowed = field === undefined ? allowedGroup(path, value) : allowedIn(field)
  const shown = field === undefined ? describeValue(value) : describeValue(value, field)
  const message =
    `${fieldTitle(path)} is ${shown}, but must be ${allowed}. ` +
    `Correct ${describeValue(path)} in the file.`
  return { field: path, message }
}

/** What a whole group or list must be. */
function allowedGroup(path: string, value: unknown): string {
  if (path === 'openings.entrances') return `a list of at most ${MAX_ENTRANCES} entrances`
  if (path === 'openings.vents') return `a list of at most ${MAX_VENTS} vents`
  return isJsonObject(value) ? 'as Combwright saves it' : 'a group of named fields in { }'
}
