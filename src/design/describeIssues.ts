import type { z } from 'zod'
import { allowedIn } from './allowedIn.ts'
import { describeValue } from './describeValue.ts'
import { fieldAt, fieldTitle, groupTitle } from './fieldAt.ts'
import { isJsonObject, ownValue } from './json.ts'
import type { Problem } from './parsedDesign.ts'
import { MAX_DEFECTS, MAX_ENTRANCES, MAX_MADE, MAX_STOCK_ROWS, MAX_VENTS } from './schema.ts'

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
  const list = LISTS.find(([pattern]) => pattern.test(path))
  if (list !== undefined) return `a list of at most ${list[1]}`
  return isJsonObject(value) ? 'as Combwright saves it' : 'a group of named fields in { }'
}

const LISTS: readonly (readonly [RegExp, string])[] = [
  [/^openings\.entrances$/, `${MAX_ENTRANCES} entrances`],
  [/^openings\.vents$/, `${MAX_VENTS} vents`],
  [/^stock\.lumber$/, `${MAX_STOCK_ROWS} boards`],
  [/^stock\.lumber\.\d+\.defects$/, `${MAX_DEFECTS} bad places`],
  [/^stock\.sheets$/, `${MAX_STOCK_ROWS} sheets`],
  [/^stock\.goods$/, `${MAX_STOCK_ROWS} articles`],
  [/^made$/, `${MAX_MADE} cut parts`],
]
