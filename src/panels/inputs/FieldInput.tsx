import { memo } from 'react'
import { fieldAt } from '../../design/fieldAt.ts'
import { ChoiceInput } from './ChoiceInput.tsx'
import { FlagInput } from './FlagInput.tsx'
import { MaterialInput } from './MaterialInput.tsx'
import { NumberInput } from './NumberInput.tsx'
import { TextInput } from './TextInput.tsx'

/** The input that suits the field at a path of the document. */
export const FieldInput = memo(({ path }: { readonly path: string }) => {
  const field = fieldAt(path)
  switch (field?.kind) {
    case 'number':
      return <NumberInput path={path} field={field} />
    case 'choice':
      return <ChoiceInput path={path} field={field} />
    case 'flag':
      return <FlagInput path={path} field={field} />
    case 'text':
      return <TextInput path={path} field={field} />
    case 'material':
      return <MaterialInput path={path} field={field} />
    case undefined:
      return null
  }
})
FieldInput.displayName = 'FieldInput'
