import { length, text } from './field.ts'

const side = (label: string, meaning: string) =>
  length({ label, meaning, min: 0.1, max: 12_000, step: 0.5, default: 100 })

/** A part that is cut already, with the size that it came out with. */
export const MADE_SIZE_FIELDS = {
  partId: text({
    label: 'Part',
    meaning: 'Which part of the hive it is.',
    maxLength: 80,
    default: '',
  }),
  lengthMm: side('Length', 'The length that was measured.'),
  widthMm: side('Width', 'The width that was measured.'),
  thicknessMm: side('Thickness', 'The thickness that was measured.'),
}
