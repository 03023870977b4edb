import { angle, choice, flag, length, material, resistance } from './field.ts'

interface PanelDefaults {
  readonly panel: 'wall' | 'lid' | 'floor'
  readonly liningMm: number
  readonly coreMm: number
  readonly railWidthMm: number
  readonly railSpacingMm: number
  readonly insulation: string
  readonly claddingMaterial: string
  readonly claddingMm: number
  readonly target: number
}

const face = { wall: 'inside', lid: 'underside', floor: 'upper side' }
const outer = { wall: 'outside', lid: 'top', floor: 'underside' }

/** The layers that walls, lid and floor share: lining, rails with insulation between them, cladding. */
const panelFields = (d: PanelDefaults) => ({
  targetM2KPerW: resistance({
    label: 'Wanted R-value',
    meaning: `The thermal resistance that the whole ${d.panel}, timber included, should reach.`,
    min: 0.2,
    max: 8,
    default: d.target,
  }),
  liningMaterial: material({
    label: 'Lining',
    meaning: `The board on the ${face[d.panel]}, where bees walk. It must be safe and bare.`,
    families: ['wood', 'sheet'],
    default: 'plywood-softwood',
  }),
  liningMm: length({
    label: 'Lining thickness',
    meaning: 'Measured with a calliper, not read from the label.',
    min: 4,
    max: 40,
    step: 0.5,
    default: d.liningMm,
  }),
  insulation: material({
    label: 'Insulation',
    meaning: 'What fills the pockets between the rails.',
    families: ['insulation'],
    default: d.insulation,
  }),
  coreMm: length({
    label: 'Insulation thickness',
    meaning: 'The measured insulation; the rails are cut to the same depth.',
    min: 10,
    max: 250,
    default: d.coreMm,
  }),
  railMaterial: material({
    label: 'Rails',
    meaning: 'The timber of the frame inside.',
    families: ['wood'],
    default: 'spruce',
  }),
  railWidthMm: length({
    label: 'Rail width',
    meaning: 'Seen face-on; narrow rails let less heat through.',
    min: 15,
    max: 90,
    default: d.railWidthMm,
  }),
  railSpacingMm: length({
    label: 'Rail spacing',
    meaning: 'The most from the middle of one upright rail to the next.',
    min: 120,
    max: 1200,
    step: 10,
    default: d.railSpacingMm,
  }),
  foamClearanceMm: length({
    label: 'Insulation clearance',
    meaning: 'How much smaller each piece of insulation is cut than its pocket, in all.',
    min: 0,
    max: 6,
    step: 0.5,
    default: 1,
  }),
  claddingMaterial: material({
    label: d.panel === 'lid' ? 'Top skin' : 'Cladding',
    meaning: `The layer on the ${outer[d.panel]}.`,
    families: ['wood', 'sheet'],
    default: d.claddingMaterial,
  }),
  claddingMm: length({
    label: d.panel === 'lid' ? 'Top skin thickness' : 'Cladding thickness',
    meaning: 'Measured with a calliper, not read from the label.',
    min: 3,
    max: 40,
    step: 0.5,
    default: d.claddingMm,
  }),
})

export const WALL_FIELDS = {
  ...panelFields({
    panel: 'wall',
    liningMm: 12,
    coreMm: 60,
    railWidthMm: 28,
    railSpacingMm: 600,
    insulation: 'xps',
    claddingMaterial: 'spruce',
    claddingMm: 19,
    target: 1.6,
  }),
  claddingForm: choice({
    label: 'Cladding made of',
    meaning: 'Horizontal boards, or one sheet for each wall.',
    options: { boards: 'Boards', sheet: 'One sheet' },
    default: 'boards',
  }),
  boardWidthMm: length({
    label: 'Cladding board width',
    meaning: 'The widest board you can get; all boards of a wall come out equal.',
    min: 40,
    max: 400,
    default: 145,
  }),
  corner: choice({
    label: 'Corners',
    meaning: 'Which walls run through at the corners; the others stand between them.',
    options: { 'long-through': 'Long walls run through', 'end-through': 'End walls run through' },
    default: 'long-through',
  }),
}

export const FLOOR_FIELDS = {
  ...panelFields({
    panel: 'floor',
    liningMm: 9,
    coreMm: 40,
    railWidthMm: 38,
    railSpacingMm: 600,
    insulation: 'xps',
    claddingMaterial: 'plywood-softwood',
    claddingMm: 6,
    target: 1.1,
  }),
  hingeSide: choice({
    label: 'Floor hinges',
    meaning: 'The long side on which the floor hangs; the other side swings down.',
    options: { back: 'At the back', front: 'At the front' },
    default: 'back',
  }),
  dropAngleDeg: angle({
    label: 'Floor drop',
    meaning: 'How far the floor swings down for cleaning.',
    min: 5,
    max: 90,
    default: 30,
  }),
  tray: flag({
    label: 'Debris tray',
    meaning: 'A thin loose sheet on the floor that slides out with the debris.',
    default: false,
  }),
}

export const LID_FIELDS = {
  ...panelFields({
    panel: 'lid',
    liningMm: 6,
    coreMm: 100,
    railWidthMm: 28,
    railSpacingMm: 800,
    insulation: 'xps',
    claddingMaterial: 'plywood-softwood',
    claddingMm: 6,
    target: 3,
  }),
  form: choice({
    label: 'Lid form',
    meaning: 'Flat, or sloping one way on tapered firrings so that rain runs off.',
    options: { sloped: 'Single slope', flat: 'Flat' },
    default: 'sloped',
  }),
  fall: choice({
    label: 'Water runs to',
    meaning: 'The low side of a sloping lid.',
    options: { back: 'The back', front: 'The front' },
    default: 'back',
  }),
  slopeDeg: angle({
    label: 'Slope',
    meaning: 'Sheet metal sheds water from about 3 degrees.',
    min: 1,
    max: 15,
    step: 0.5,
    default: 4,
  }),
  insulationShape: choice({
    label: 'Under the slope',
    meaning: 'Leave an air space between the firrings, or fill it with tapered insulation.',
    options: { equal: 'Air space', tapered: 'Tapered insulation' },
    default: 'equal',
  }),
  deckMm: length({
    label: 'Deck thickness',
    meaning: 'The sheet on the firrings that carries the cover sheet.',
    min: 4,
    max: 25,
    step: 0.5,
    default: 9,
  }),
  coverMaterial: material({
    label: 'Cover sheet',
    meaning: 'What keeps the rain out.',
    families: ['covering'],
    default: 'aluminium-sheet',
  }),
  coverMm: length({
    label: 'Cover sheet thickness',
    meaning: 'Measured thickness of the cover sheet.',
    min: 0.4,
    max: 6,
    step: 0.1,
    default: 0.7,
  }),
  overhangMm: length({
    label: 'Overhang',
    meaning: 'How far the roof stands out beyond the rim on every side.',
    min: 0,
    max: 120,
    default: 40,
  }),
  rimThicknessMm: length({
    label: 'Rim thickness',
    meaning: 'The boards round the lid; hinges are screwed to them.',
    min: 12,
    max: 40,
    default: 19,
  }),
  rimDropMm: length({
    label: 'Rim lap',
    meaning: 'How far the rim hangs down outside the wall to shed water.',
    min: 6,
    max: 80,
    default: 30,
  }),
  rimClearanceMm: length({
    label: 'Rim clearance',
    meaning: 'The gap between the rim and the wall. Over 3 mm is not bee-tight.',
    min: 1,
    max: 6,
    step: 0.5,
    default: 2.5,
  }),
  hingeSide: choice({
    label: 'Lid hinges',
    meaning: 'The long side on which the lid is hung.',
    options: { back: 'At the back', front: 'At the front' },
    default: 'back',
  }),
  openingAngleDeg: angle({
    label: 'Lid opens to',
    meaning: 'A little past upright, so that wind cannot drop it.',
    min: 60,
    max: 115,
    default: 100,
  }),
  stay: choice({
    label: 'Lid stay',
    meaning: 'What stops the open lid. A spring alone is not a stay.',
    options: { chain: 'Two chains', prop: 'Latching prop' },
    default: 'chain',
  }),
}
