/** `npm run schema`: writes the JSON schema of the report; a test fails while it is out of date. */
import { writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { z } from 'zod'
import { headlessSchema } from '../src/reports/headlessSchema.ts'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const schema = z.toJSONSchema(headlessSchema)
writeFileSync(
  join(root, 'public/schema/report.schema.json'),
  `${JSON.stringify(schema, undefined, 2)}\n`,
)
