import { describeIssues } from './describeIssues.ts'
import { fillMissing } from './fillMissing.ts'
import { isJsonObject, type JsonObject } from './json.ts'
import { MIGRATIONS, type Migration, migrate } from './migrations.ts'
import { type ParsedDesign, refuseDesign } from './parsedDesign.ts'
import { DESIGN_VERSION, designSchema } from './schema.ts'

/**
 * Turns JSON that was read from a file or a link into a design: marker, version, migrations, missing
 * fields, then the schema. The version that this program reads is one more than the migrations.
 * Never throws.
 */
export function readDesign(
  json: unknown,
  migrations: readonly Migration[] = MIGRATIONS,
): ParsedDesign {
  if (!isJsonObject(json) || !Object.hasOwn(json, 'combwright')) return refuseDesign(FOREIGN)
  const newest = migrations.length + 1
  const version = versionOf(json, newest)
  if (version.kind === 'bad') return refuseDesign(version.message, 'combwright')
  const current = migrate(withoutMarker(json), version.value, migrations)
  if (current.kind === 'bad') return refuseDesign(current.message)
  const whole = fillMissing({ ...current.json, version: DESIGN_VERSION })
  const checked = designSchema.safeParse(whole.json)
  if (!checked.success) {
    return { kind: 'bad', problems: describeIssues(checked.error.issues, whole.json) }
  }
  const migratedFrom = version.value === newest ? undefined : version.value
  return { kind: 'ok', design: checked.data, migratedFrom, filled: whole.filled }
}

const FOREIGN =
  'This is not a Combwright design: the entry "combwright", with the version, is missing. ' +
  'Choose a file that Combwright saved.'

type ReadVersion =
  | { readonly kind: 'ok'; readonly value: number }
  | { readonly kind: 'bad'; readonly message: string }

/** The version stands in the marker and, since the document has one, in `version`; they must agree. */
function versionOf(json: JsonObject, newest: number): ReadVersion {
  const { combwright: marker, version = marker } = json
  if (typeof marker !== 'number' || !Number.isInteger(marker) || marker < 1) {
    return bad(
      `The entry "combwright" must be the version, a whole number from 1 to ${newest}. ` +
        'Choose a file that Combwright saved.',
    )
  }
  if (marker > newest) {
    return bad(
      `This design was made by a newer Combwright (version ${marker}); this one reads up to ` +
        `${newest}. Open it with the newer Combwright.`,
    )
  }
  if (version !== marker) {
    return bad(
      `The entry "combwright" says version ${marker}, but "version" says otherwise. ` +
        'Make both the same, or choose a file that Combwright saved.',
    )
  }
  return { kind: 'ok', value: marker }
}

function bad(message: string): ReadVersion {
  return { kind: 'bad', message }
}

function withoutMarker(json: JsonObject): JsonObject {
  return Object.fromEntries(Object.entries(json).filter(([key]) => key !== 'combwright'))
}
