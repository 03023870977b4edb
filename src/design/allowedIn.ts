import type { Field } from './field.ts'
import { unitOf } from './unitOf.ts'

/** What a field may hold, in words that follow "must be": `a number from 10 to 250 mm`. */
export function allowedIn(field: Field): string {
  switch (field.kind) {
    case 'number': {
      const kind = field.whole ? 'a whole number' : 'a number'
      return `${kind} from ${field.min} to ${field.max}${unitOf(field)}`
    }
    case 'choice': {
      const options = Object.entries(field.options).map(([key, label]) => `"${key}" (${label})`)
      return `one of ${options.join(', ')}`
    }
    case 'flag':
      return 'true or false'
    case 'text':
      return `a text of at most ${field.maxLength} characters`
    case 'material':
      return `a material of the catalogue, of this kind: ${field.families.join(' or ')}`
  }
}
