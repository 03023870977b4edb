interface Size {
  readonly length: number
  readonly width: number
}

/**
 * How the first cuts divide a sheet so that its pieces can be carried: sections across one way, cells
 * within each section the other way. Where the cuts run is left to the parts; each cell stays within the
 * limits.
 */
export interface CarryGrid {
  /** Sections follow each other along the sheet's length. */
  readonly sectionsAlongLength: boolean
  readonly sections: number
  /** In each section. */
  readonly cells: number
  readonly mostLength: number
  readonly mostWidth: number
  /** The carry size's length runs along the sheet's width. */
  readonly isTurned: boolean
}

/**
 * The grids of a sheet, the fewest pieces first; one of a single cell where nothing must be divided.
 * A piece may be carried either way round, so both are listed where both divide the sheet.
 */
export function listCarryGrids(sheet: Size, limit: Size | undefined): readonly CarryGrid[] {
  const whole: CarryGrid = {
    sectionsAlongLength: true,
    sections: 1,
    cells: 1,
    mostLength: sheet.length,
    mostWidth: sheet.width,
    isTurned: false,
  }
  if (!limit || fitsWithin(sheet, limit)) return [whole]
  const ways = [limit, { length: limit.width, width: limit.length }]
  const grids = ways.flatMap((most, way) => {
    const along = Math.ceil(sheet.length / most.length)
    const across = Math.ceil(sheet.width / most.width)
    const size = {
      mostLength: Math.min(most.length, sheet.length),
      mostWidth: Math.min(most.width, sheet.width),
      isTurned: way === 1,
    }
    return [
      { ...size, sectionsAlongLength: true, sections: along, cells: across },
      { ...size, sectionsAlongLength: false, sections: across, cells: along },
    ]
  })
  const unlike = grids.filter(
    // With one section or one cell in each, both orders are the same cuts.
    (grid) => grid.sectionsAlongLength || (grid.sections > 1 && grid.cells > 1),
  )
  return unlike.sort((a, b) => a.sections * a.cells - b.sections * b.cells)
}

function fitsWithin(size: Size, limit: Size): boolean {
  return (
    (size.length <= limit.length && size.width <= limit.width) ||
    (size.length <= limit.width && size.width <= limit.length)
  )
}
