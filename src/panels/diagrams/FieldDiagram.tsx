import type { ReactNode } from 'react'
import { diagramMark } from './diagramMarks.ts'
import { FrameEnds, FrameFront, FrameSplit } from './frameDrawings.tsx'
import type { DrawingId, Line4 } from './mark.ts'
import { FloorOpen, LidLayers, LidOpen, LidSection, WallFace } from './panelDrawings.tsx'
import {
  Cluster,
  Entrance,
  Humidity,
  Landing,
  StandFront,
  StandPerson,
  Stores,
  Vent,
  WarmAir,
  Year,
} from './placeDrawings.tsx'
import { CoverPlan, DividedRow, FloorDetail, RestDetail, RowPlan } from './rowDrawings.tsx'
import { Crew, Fence, Kerf, Load, Plank } from './shopDrawings.tsx'
import {
  BoardSolid,
  Carry,
  Guide,
  Hives,
  Knot,
  Offcut,
  Pile,
  PriceTag,
  SheetSolid,
  TrimmedBoard,
  TrimmedSheet,
} from './stockDrawings.tsx'

/** The small drawing beside a number, with what the number measures picked out in amber. */
export const FieldDiagram = ({ path }: { readonly path: string }) => {
  const mark = diagramMark(path)
  if (mark === undefined) return null
  return (
    <svg className="diagram" viewBox="0 0 120 84" aria-hidden="true">
      <g transform={TURNED[mark.drawing]}>
        {DRAWINGS[mark.drawing]}
        {mark.areas?.map(([x, y, width, height]) => (
          <rect key={`${x},${y}`} className="mark-area" {...{ x, y, width, height }} />
        ))}
        {mark.path && <path className="mark-line" d={mark.path} />}
        {mark.dimension && <Dimension line={mark.dimension} />}
      </g>
    </svg>
  )
}

/** A dimension line with slashed ends; a short one is a gap between two strokes with tails outside. */
const Dimension = ({ line }: { readonly line: Line4 }) => {
  const [x1, y1, x2, y2] = line
  const isUpright = x1 === x2
  const size = isUpright ? y2 - y1 : x2 - x1
  if (size < SHORT) return <path className="mark-line" d={shortDimension(line, isUpright)} />
  const slash = (x: number, y: number) => `M${x - 3.5} ${y + 3.5}l7-7`
  return (
    <path className="mark-line" d={`M${x1} ${y1}L${x2} ${y2}${slash(x1, y1)}${slash(x2, y2)}`} />
  )
}

const SHORT = 18

const shortDimension = ([x1, y1, x2, y2]: Line4, isUpright: boolean): string =>
  isUpright
    ? `M${x1 - 4} ${y1}h8M${x2 - 4} ${y2}h8M${x1} ${y1}v-8M${x2} ${y2}v8`
    : `M${x1} ${y1 - 4}v8M${x2} ${y2 - 4}v8M${x1} ${y1}h-8M${x2} ${y2}h8`

/** The layers of lid, wall and floor are one drawing, turned so that the bees are where they are. */
const TURNED: Partial<Record<DrawingId, string>> = {
  wallLayers: 'translate(60 42) rotate(90) scale(0.84 1.35) translate(-60 -42)',
  floorLayers: 'matrix(1 0 0 -1 0 84)',
}

const DRAWINGS: Readonly<Record<DrawingId, ReactNode>> = {
  frameFront: <FrameFront />,
  frameSplit: <FrameSplit />,
  frameEnds: <FrameEnds />,
  rowPlan: <RowPlan />,
  dividedRow: <DividedRow />,
  coverPlan: <CoverPlan />,
  restDetail: <RestDetail />,
  floorDetail: <FloorDetail />,
  wallLayers: <LidLayers />,
  lidLayers: <LidLayers />,
  floorLayers: <LidLayers />,
  wallFace: <WallFace />,
  lidSection: <LidSection />,
  lidOpen: <LidOpen />,
  floorOpen: <FloorOpen />,
  entrance: <Entrance />,
  vent: <Vent />,
  landing: <Landing />,
  standFront: <StandFront />,
  standPerson: <StandPerson />,
  year: <Year />,
  humidity: <Humidity />,
  cluster: <Cluster />,
  stores: <Stores />,
  warmAir: <WarmAir />,
  load: <Load />,
  crew: <Crew />,
  kerf: <Kerf />,
  fence: <Fence />,
  plank: <Plank />,
  guide: <Guide />,
  trimmedBoard: <TrimmedBoard />,
  trimmedSheet: <TrimmedSheet />,
  carry: <Carry />,
  offcut: <Offcut />,
  hives: <Hives />,
  priceTag: <PriceTag />,
  boardSolid: <BoardSolid />,
  sheetSolid: <SheetSolid />,
  pile: <Pile />,
  knot: <Knot />,
}
