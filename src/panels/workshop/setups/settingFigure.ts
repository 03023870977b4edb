import type { Setting, SetUp } from '../../../reports/shop/setups/setUpReport.ts'
import { settingWords } from '../../../sheets/shop/settingWords.ts'
import type { LengthUnit } from '../../../units/length.ts'

/** A setting as its figure and, apart from it, its unit: for the large number of a card. */
export const settingFigure = (
  setting: Setting,
  unit: LengthUnit,
): { readonly figure: string; readonly unit: string } => {
  const words = settingWords(setting, unit)
  const tail = ` ${unit}`
  return words.endsWith(tail)
    ? { figure: words.slice(0, -tail.length), unit }
    : { figure: words, unit: '' }
}

/** What is done at a card, in a word or two. */
export const KIND_WORDS: Readonly<Record<SetUp['kind'], string>> = {
  'break-down': 'Break down',
  rip: 'Rip',
  resaw: 'Saw thinner',
  plane: 'Plane',
  crosscut: 'Crosscut',
  bevel: 'Bevel',
  taper: 'Taper',
  groove: 'Groove',
  notch: 'Notch',
  slot: 'Slot',
  drill: 'Drill',
  knife: 'Cut with a knife',
  snips: 'Cut with snips',
}
