import type { MaterialSurface } from '../catalog/material.ts'
import { hasMaterial, materialById } from '../catalog/materials.ts'

/** How a cut face is hatched on the section, after drawing practice: timber by slanting lines. */
export type Hatch = 'timber' | 'sheet' | 'soft' | 'filled'

export interface Look {
  /** sRGB hex. */
  readonly colour: string
  /** Number of the branch in the surface shader. */
  readonly surface: number
  readonly hatch: Hatch
}

export const PAPER = '#f6f2e8'
export const INK = '#2a251f'
export const AMBER = '#c8862a'

/** Colour and pattern of a catalogue material; an id that the catalogue lacks looks like plain board. */
export const lookOf = (material: string): Look => {
  const surface = hasMaterial(material) ? materialById(material).surface : 'fibre'
  return {
    colour: COLOUR_BY_MATERIAL[material] ?? COLOUR_BY_SURFACE[surface],
    surface: material === 'steel-mesh' ? SURFACE_CODES.mesh : SURFACE_CODES[surface],
    hatch: HATCH_BY_SURFACE[surface],
  }
}

/** Shared with the branches of `surfaceShader.ts`. */
const SURFACE_CODES: Readonly<Record<MaterialSurface | 'mesh', number>> = {
  softwood: 0,
  hardwood: 1,
  plywood: 2,
  fibre: 3,
  'foam-white': 4,
  'foam-blue-grey': 4,
  'foam-foil': 5,
  wool: 6,
  loose: 6,
  metal: 7,
  membrane: 8,
  cloth: 9,
  wax: 10,
  mesh: 11,
}

const COLOUR_BY_SURFACE: Readonly<Record<MaterialSurface, string>> = {
  softwood: '#ead0a0',
  hardwood: '#b98f5d',
  plywood: '#e9d0a3',
  fibre: '#bd9b70',
  'foam-white': '#f1f0ea',
  'foam-blue-grey': '#c9d4c6',
  'foam-foil': '#d9dad6',
  wool: '#cdbf95',
  loose: '#dfc68d',
  metal: '#bfc5c9',
  membrane: '#7d7f7b',
  cloth: '#ddd0b2',
  wax: '#eab44e',
}

/** Where a material looks unlike others of its kind. No foam has the house colour of any maker. */
const COLOUR_BY_MATERIAL: Readonly<Record<string, string>> = {
  spruce: '#eed6aa',
  pine: '#e9cb98',
  'white-pine': '#efdcb6',
  'western-red-cedar': '#c79a76',
  'douglas-fir': '#d5a371',
  larch: '#d9aa76',
  'southern-pine': '#dcb071',
  cypress: '#d8bc8e',
  oak: '#b8905f',
  'plywood-birch': '#ecdcbb',
  osb: '#d0a86f',
  hardboard: '#8f6c4c',
  mdf: '#c1a37e',
  'eps-graphite': '#a8acab',
  pur: '#e9dcb4',
  'wood-fibre': '#b8935f',
  cork: '#9c744c',
  'sheep-wool': '#e4dcca',
  straw: '#dcc274',
  cellulose: '#aaa79f',
  'aluminium-sheet': '#d8dde0',
  'bitumen-felt': '#55524d',
  'steel-mesh': '#8d9294',
}

const HATCH_BY_SURFACE: Readonly<Record<MaterialSurface, Hatch>> = {
  softwood: 'timber',
  hardwood: 'timber',
  plywood: 'sheet',
  fibre: 'sheet',
  'foam-white': 'soft',
  'foam-blue-grey': 'soft',
  'foam-foil': 'soft',
  wool: 'soft',
  loose: 'soft',
  metal: 'filled',
  membrane: 'filled',
  cloth: 'filled',
  wax: 'filled',
}
