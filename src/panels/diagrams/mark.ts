/** The little drawings, each on a sheet of 120 by 84 units. They explain; they are not to scale. */
export type DrawingId =
  | 'frameFront'
  | 'frameSplit'
  | 'frameEnds'
  | 'rowPlan'
  | 'dividedRow'
  | 'coverPlan'
  | 'restDetail'
  | 'floorDetail'
  | 'wallLayers'
  | 'lidLayers'
  | 'floorLayers'
  | 'wallFace'
  | 'lidSection'
  | 'lidOpen'
  | 'floorOpen'
  | 'entrance'
  | 'vent'
  | 'landing'
  | 'standFront'
  | 'standPerson'
  | 'year'
  | 'humidity'
  | 'cluster'
  | 'stores'
  | 'warmAir'
  | 'load'
  | 'crew'
  | 'kerf'
  | 'fence'
  | 'plank'
  | 'guide'
  | 'trimmedBoard'
  | 'trimmedSheet'
  | 'carry'
  | 'offcut'
  | 'hives'
  | 'priceTag'
  | 'boardSolid'
  | 'sheetSolid'
  | 'pile'
  | 'knot'

export type Line4 = readonly [x1: number, y1: number, x2: number, y2: number]
export type Rect4 = readonly [x: number, y: number, width: number, height: number]

/** What a field measures in its drawing: dimension lines and areas that are picked out in amber. */
export interface DiagramMark {
  readonly drawing: DrawingId
  readonly dimension?: Line4
  readonly areas?: readonly Rect4[]
  /** A free amber line, for arcs and slopes: SVG path data. */
  readonly path?: string
}
