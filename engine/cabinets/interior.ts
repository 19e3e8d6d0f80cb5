import type { Interval } from '../geometry/interval'
import type { Cabinet, ColumnShelves, FrontColumn, Interior as Inside } from '../project/document'
import { baysOf } from '../project/interior'
import { type Mm, settle } from '../units/length'
import { partitionApart } from './apart'
import { baysBetween, rearAt, type Stretch, wholeBay } from './bay'
import { type Carcass, clearBottom, clearTop } from './carcass'
import {
  drawersIn,
  filledBay,
  freeStretch,
  type Interior,
  linePins,
  NOTHING,
  noHeight,
  numbered,
  standing,
  tellNoHeight,
} from './filledBay'
import { type Cell, columnPosts, columnRects } from './openings'
import { bayPosts, partitionOf } from './partition'
import type { Piece } from './piece'
import { type Report, SILENT } from './report'
import { besideLines } from './rowPosts'
import { drawerLineOf } from './shelf'

export type { Interior } from './filledBay'

const NO_SHELVES: ColumnShelves = { fixedShelves: 0, adjustableShelves: 0 }

/**
 * Shelves, partition and drawer lines. Drawers run the whole clear width, so a partition below or above them ends at a
 * fixed board, the drawer line, in the middle of the gap between the fronts.
 */
export function interiorOf(
  cabinet: Cabinet,
  cells: readonly Cell[],
  obstacles: readonly Piece[],
  carcass: Carcass,
  report: Report,
): Interior {
  if (cabinet.front.kind === 'columns') {
    return columnsOf(cabinet, cabinet.front.columns, cells, obstacles, carcass, report)
  }
  const posts = partitionsIn(cabinet, cells, carcass, report)
  if (posts.length === 0) {
    return filledBay(wholeBay(carcass), cells, cabinet.interior, obstacles, carcass, report)
  }
  const drawers = drawersIn(cells, wholeBay(carcass), carcass)
  const free = freeStretch(cells)
  if (!free) {
    report.stop(noHeight(cells), { ...report.room(0), way: 'noShelves' })
    return { ...NOTHING, drawers }
  }
  const stretch = parted(free, carcass)
  if (!(stretch.to > stretch.from)) {
    tellNoHeight(stretch, report)
    return { ...NOTHING, drawers }
  }
  const lines = linesOf(free, stretch, obstacles, carcass)
  const bays = baysBetween(posts, carcass)
  const uprights = posts.map((post, at) =>
    partitionOf(post, partitionApart(at + 1, bays.length), stretch, obstacles, carcass),
  )
  const inBays = shelvesInBays(cabinet.interior, report)
  const filled = bays.map((bay, at) =>
    standing(bay, stretch, cells, inBays[at]!, { obstacles, held: lines }, carcass, report),
  )
  return {
    niches: [],
    rollOuts: filled.flatMap(({ rollOuts }) => rollOuts),
    bays: filled.flatMap((one) => one.bays),
    pieces: numbered([...lines, ...filled.flatMap(({ pieces }) => pieces), ...uprights]),
    pins: [...linePins(lines, wholeBay(carcass), carcass), ...filled.flatMap(({ pins }) => pins)],
    drawers: drawers.map((place) => ({ ...place, opening: besideLines(place.opening, lines) })),
  }
}

/** What stands in each of the bays that partitions leave. Beside the one of a `partition` there are shelves and nothing else. */
function shelvesInBays(interior: Inside, report: Report): readonly ColumnShelves[] {
  if (interior.bays) return interior.bays.map(({ shelves }) => shelves ?? interior)
  const { rollOuts, dividers, ...shelves } = interior
  if (rollOuts || dividers) {
    report.mind('roll-outs and tray dividers stand in bays of their own, not beside a partition; they are left out.')
  }
  return [shelves, shelves]
}

/** The left faces of its partitions; none where none are asked for, or none can stand. */
function partitionsIn({ interior }: Cabinet, cells: readonly Cell[], carcass: Carcass, report: Report): readonly Mm[] {
  const bays = baysOf(interior)
  if (bays.length < 2) return []
  const isOne = bays.length === 2
  const [it, is] = isOne ? ['a partition', 'it is'] : ['partitions', 'they are']
  if (cells.some(({ front }) => front.kind === 'appliance')) {
    report.stop(`${it} would stand in the niche for an appliance; ${is} left out.`)
    return []
  }
  if (cells.some(({ parted }) => parted)) {
    report.stop(`${it} ${isOne ? 'stands' : 'stand'} beside no row that is parted itself; ${is} left out.`)
    return []
  }
  return bayPosts(bays, carcass, report) ?? []
}

/** Columns: a board from the bottom to the top between each and the next, and in each its own shelves and drawers. */
function columnsOf(
  { interior }: Cabinet,
  columns: readonly FrontColumn[],
  cells: readonly Cell[],
  obstacles: readonly Piece[],
  carcass: Carcass,
  report: Report,
): Interior {
  const rects = columnRects(columns, carcass, SILENT)
  const posts = columnPosts(rects, carcass)
  const bays = baysBetween(posts, carcass)
  const narrow = bays.find((bay) => !(bay.to > bay.from))
  if (narrow) {
    const clear = narrow.to - narrow.from
    report.stop(`a column would be ${report.left(clear)} clear; nothing is built inside.`, report.room(clear))
    return NOTHING
  }
  const count = baysOf(interior).length - 1
  if (count === 1) report.mind('its columns are parted already, so the partition is left out.')
  if (count > 1) report.mind('its columns are parted already, so the partitions are left out.')
  const whole = { from: clearBottom(carcass), to: clearTop(carcass), hasLineBelow: false, hasLineAbove: false }
  const uprights = posts.map((post, at) =>
    partitionOf(post, partitionApart(at + 1, bays.length), whole, obstacles, carcass),
  )
  const filled = bays.map((bay, column) => {
    const own = columns[column]!.shelves
    const inColumn = cells.filter((cell) => cell.column === column)
    // Shelves that were asked of the whole cabinet are no fault of a column that is full of drawers.
    const counts = own ?? (freeStretch(inColumn) ? interior : NO_SHELVES)
    return filledBay(bay, inColumn, counts, obstacles, carcass, report)
  })
  return {
    pieces: numbered([...uprights, ...filled.flatMap(({ pieces }) => pieces)]),
    pins: filled.flatMap(({ pins }) => pins),
    drawers: filled.flatMap(({ drawers }) => drawers),
    rollOuts: filled.flatMap(({ rollOuts }) => rollOuts),
    niches: filled.flatMap(({ niches }) => niches),
    bays: filled.flatMap((one) => one.bays),
  }
}

function parted(free: Interval, carcass: Carcass): Stretch {
  const hasLineBelow = free.from > clearBottom(carcass)
  const hasLineAbove = free.to < clearTop(carcass)
  const half = carcass.thickness / 2
  return {
    from: settle(free.from + (hasLineBelow ? half : 0)),
    to: settle(free.to - (hasLineAbove ? half : 0)),
    hasLineBelow,
    hasLineAbove,
  }
}

function linesOf(free: Interval, stretch: Stretch, obstacles: readonly Piece[], carcass: Carcass): Piece[] {
  const half = carcass.thickness / 2
  const line = (middle: Mm, direction: 'up' | 'down') => {
    const y = { from: settle(middle - half), to: settle(middle - half + carcass.thickness) }
    return drawerLineOf(y, rearAt(y, obstacles, carcass), direction, carcass)
  }
  return [
    ...(stretch.hasLineBelow ? [line(free.from, 'down')] : []),
    ...(stretch.hasLineAbove ? [line(free.to, 'up')] : []),
  ]
}
