import { choice, count, flag, length, material, money, text } from './field.ts'

const PRICE = money({
  label: 'Price',
  meaning: 'What one costs. What is on hand costs nothing in the plan.',
  min: 0,
  max: 100_000,
  default: 0,
})

const NAME = text({
  label: 'Name',
  meaning: 'What you call it; leave it empty to have its size named.',
  maxLength: 40,
  default: '',
})

const COUNT = count({
  label: 'How many',
  meaning: 'How many there are at most, when they are counted.',
  min: 0,
  max: 999,
  default: 1,
})

const SUPPLY = choice({
  label: 'Supply',
  meaning: 'Whether the shop always has it, has so many, or does not have it at all.',
  options: { unlimited: 'As many as wanted', counted: 'So many', none: 'Not to be had' },
  default: 'counted',
})

const ON_HAND = flag({
  label: 'On hand',
  meaning: 'You have it already: so many as counted, and it costs nothing.',
  default: true,
})

/** Boards of one size that the builder has, or can buy otherwise than the catalogue says. */
export const LUMBER_STOCK_FIELDS = {
  name: NAME,
  material: material({
    label: 'Wood',
    meaning: 'The wood of the board.',
    families: ['wood'],
    default: 'spruce',
  }),
  thicknessMm: length({
    label: 'Thickness',
    meaning: 'The real thickness of the board, not its trade name.',
    min: 3,
    max: 150,
    step: 0.5,
    default: 20,
  }),
  widthMm: length({
    label: 'Width',
    meaning: 'The real width of the board, not its trade name.',
    min: 10,
    max: 600,
    step: 0.5,
    default: 94,
  }),
  lengthMm: length({
    label: 'Length',
    meaning: 'The length of the board.',
    min: 100,
    max: 12_000,
    step: 100,
    default: 2400,
  }),
  price: PRICE,
  supply: SUPPLY,
  count: COUNT,
  onHand: ON_HAND,
}

/** A place on a board that no part may contain: a knot, a split, a nail. */
export const DEFECT_FIELDS = {
  fromMm: length({
    label: 'Bad from',
    meaning: 'From the left end of the board to where the bad place begins.',
    min: 0,
    max: 12_000,
    step: 10,
    default: 0,
  }),
  toMm: length({
    label: 'Bad to',
    meaning: 'From the left end of the board to where the bad place ends.',
    min: 0,
    max: 12_000,
    step: 10,
    default: 100,
  }),
}

/** Sheets of one size that the builder has, or can buy otherwise than the catalogue says. */
export const SHEET_STOCK_FIELDS = {
  name: NAME,
  material: material({
    label: 'Material',
    meaning: 'What the sheet or board is made of.',
    families: ['sheet', 'insulation', 'covering', 'metal', 'textile'],
    default: 'plywood-softwood',
  }),
  thicknessMm: length({
    label: 'Thickness',
    meaning: 'The real thickness of the sheet, not its label.',
    min: 0.1,
    max: 300,
    step: 0.5,
    default: 9,
  }),
  lengthMm: length({
    label: 'Length',
    meaning: 'The length of the sheet, along the grain of its faces.',
    min: 100,
    max: 6000,
    step: 10,
    default: 2440,
  }),
  widthMm: length({
    label: 'Width',
    meaning: 'The width of the sheet, across the grain of its faces.',
    min: 50,
    max: 3000,
    step: 10,
    default: 1220,
  }),
  price: PRICE,
  supply: SUPPLY,
  count: COUNT,
  onHand: ON_HAND,
}

/** The builder's own price of anything else on the shopping list. */
export const GOODS_PRICE_FIELDS = {
  id: text({
    label: 'Article',
    meaning: 'The article on the shopping list.',
    maxLength: 80,
    default: '',
  }),
  price: PRICE,
}
