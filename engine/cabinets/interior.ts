import type { Interval } from '../geometry/interval'
import type { Cabinet, ColumnShelves, FrontColumn } from '../project/document'
import { type Mm, settle } from '../units/length'
import { partitionApart, STAYS } from './apart'
import { type Bay, baysBetween, rearAt, type Stretch, wholeBay } from './bay'
import { type PinRows, pinsUnder } from './boring'
import { type Carcass, clearBottom, clearTop, clearWidth } from './carcass'
import { clearAcross, clearUp } from './clear'
import { dividersOf } from './divider'
import type { DrawerPlace } from './drawerBox'
import { type Niche, nicheBoardsOf, nicheIn } from './niche'
import { type Cell, columnPosts, columnRects } from './openings'
import { leftBayWidth, partitionOf } from './partition'
import type { Piece } from './piece'
import { type Report, SILENT } from './report'
import { rollOutsIn } from './rollOut'
import { besideLines, rowPosts } from './rowPosts'
import { drawerLineOf, type Shelving, shelvesOf } from './shelf'

export interface Interior extends Shelving {
  /** The drawers' openings, narrowed by drawer lines, column by column from the bottom up. */
  readonly drawers: readonly DrawerPlace[]
  /** Boxes behind doors; they are counted on from the drawers. */
  readonly rollOuts: readonly DrawerPlace[]
  readonly niches: readonly Niche[]
}

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
  const { partition } = cabinet.interior
  if (!isParted(cabinet, cells, carcass, report)) {
    return filledBay(wholeBay(carcass), cells, cabinet.interior, obstacles, carcass, report)
  }
  if (cabinet.interior.rollOuts || cabinet.interior.dividers) {
    report.mind('roll-outs and tray dividers stand in bays of their own, not beside a partition; they are left out.')
  }
  const drawers = drawersIn(cells, wholeBay(carcass), carcass)
  const free = freeStretch(cells)
  if (!free) {
    report.stop(noHeight(cells), report.room(0))
    return { ...NOTHING, drawers }
  }
  const stretch = parted(free, carcass)
  if (!(stretch.to > stretch.from)) {
    tellNoHeight(stretch, report)
    return { ...NOTHING, drawers }
  }
  const lines = linesOf(free, stretch, obstacles, carcass)
  const posts = [settle(carcass.thickness + leftBayWidth(partition!.at, carcass))]
  const uprights = posts.map((post) => partitionOf(post, STAYS, stretch, obstacles, carcass))
  const bays = baysBetween(posts, carcass)
  const counts = countsOf(cabinet.interior)
  const shelving = shelvesOf(counts, stretch, bays, obstacles, carcass, report)
  return {
    niches: [],
    rollOuts: [],
    pieces: numbered([...lines, ...shelving.pieces, ...uprights]),
    pins: [...linePins(lines, wholeBay(carcass), carcass), ...shelving.pins],
    drawers: drawers.map((place) => ({ ...place, opening: besideLines(place.opening, lines) })),
  }
}

function isDrawn({ front }: Cell): boolean {
  return front.kind === 'drawer' || front.kind === 'pullOut'
}

function drawersIn(cells: readonly Cell[], bay: Bay, carcass: Carcass): DrawerPlace[] {
  return cells.filter(isDrawn).map(({ front, opening, parted, clear, path }) => {
    const own = parted ? baysBetween(parted.posts, carcass)[parted.at]! : bay
    return {
      before: [path],
      opening: clearUp(opening, clear),
      bay: clearAcross(own, clear),
      ...(front.kind === 'pullOut' ? { height: front.box } : {}),
      ...(front.kind === 'drawer' && front.insert ? { insert: front.insert } : {}),
    }
  })
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
  if (interior.partition) report.mind('its columns are parted already, so the partition is left out.')
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
  }
}

const NO_SHELVES: ColumnShelves = { fixedShelves: 0, adjustableShelves: 0 }
const NOTHING: Interior = { pieces: [], pins: [], drawers: [], rollOuts: [], niches: [] }

/** Why nothing else finds a place: what stands in all of the height. */
function noHeight(cells: readonly Cell[]): string {
  const hasDrawers = cells.some(isDrawn)
  const niches = cells.some(({ front }) => front.kind === 'appliance') ? ['a niche for an appliance'] : []
  const what = [...(hasDrawers ? ['drawers'] : []), ...niches].join(' and ')
  const verb = hasDrawers ? 'are' : 'is'
  return `there ${verb} ${what} from its bottom to its top, so shelves and partition are left out.`
}

function tellNoHeight({ from, to }: Interval, report: Report): void {
  report.stop(
    `there is ${report.left(to - from)} of height for shelves and partition; they are left out.`,
    report.room(to - from),
  )
}

/** Whether a partition is asked for and can stand. */
function isParted({ interior }: Cabinet, cells: readonly Cell[], carcass: Carcass, report: Report): boolean {
  if (!interior.partition) return false
  if (cells.some(({ front }) => front.kind === 'appliance')) {
    report.stop('a partition would stand in the niche for an appliance; it is left out.')
    return false
  }
  if (cells.some(({ parted }) => parted)) {
    report.stop('a partition stands beside no row that is parted itself; it is left out.')
    return false
  }
  return leavesRoom(interior.partition.at, carcass, report)
}

/** What stands between two uprights: boards around niches, shelves where most room is, drawers. */
function filledBay(
  bay: Bay,
  cells: readonly Cell[],
  shelves: ColumnShelves,
  obstacles: readonly Piece[],
  carcass: Carcass,
  report: Report,
): Interior {
  const boards = nicheBoardsOf(cells, bay, obstacles, carcass)
  const drawers = drawersIn(cells, bay, carcass).map((place) => ({
    ...place,
    opening: besideLines(place.opening, boards),
  }))
  const niches = cells.flatMap((cell) => nicheIn(cell, bay, besideLines(cell.opening, boards), carcass, report))
  const under = linePins(boards, bay, carcass)
  const counts = countsOf(shelves)
  const run = freeStretch(cells)
  const free = run && besideLines(run, boards)
  const dividers = shelves.dividers ?? 0
  const isWanted = counts.fixed + counts.adjustable + dividers + (shelves.rollOuts?.count ?? 0) > 0
  if (isWanted && !free) report.stop(noHeight(cells), report.room(0))
  if (isWanted && free && !(free.to > free.from)) tellNoHeight(free, report)
  const common = { pins: under, drawers, niches }
  const fixed = [...boards, ...rowPosts(cells, boards, obstacles, carcass)]
  if (!free || !(free.to > free.from)) return { ...NOTHING, ...common, pieces: numbered(fixed) }
  const { places: rollOuts, rest } = rollOutsIn(shelves, free, bay, cells, carcass, report)
  const uprights = dividersOf(dividers, rest, bay, { obstacles, held: fixed }, carcass, report)
  if (uprights.length > 0 && counts.fixed + counts.adjustable > 0) {
    report.mind('tray dividers take the place of its shelves, so the shelves are left out.')
  }
  const shelving = uprights.length > 0 ? NOTHING : shelvesOf(counts, rest, [bay], obstacles, carcass, report)
  return {
    ...common,
    rollOuts,
    pieces: numbered([...fixed, ...uprights, ...shelving.pieces]),
    pins: [...under, ...shelving.pins],
  }
}

function freeStretch(cells: readonly Cell[]): Interval | null {
  let best: Interval | null = null
  let run: Interval | null = null
  for (const cell of cells) {
    const { opening } = cell
    if (isDrawn(cell) || cell.parted || cell.front.kind === 'appliance') run = null
    else run = run ? { from: run.from, to: opening.to } : opening
    if (run && (!best || run.to - run.from > best.to - best.from)) best = run
  }
  return best
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

/** A drawer line that is pinned rests on pins in both sides, as a pinned shelf does. */
function linePins(lines: readonly Piece[], bay: PinRows['bay'], carcass: Carcass): PinRows[] {
  if (carcass.method.fixedShelf !== 'pinned') return []
  return lines.map(({ box }) => pinsUnder(box.min.y, bay, carcass))
}

function leavesRoom(at: number, carcass: Carcass, report: Report): boolean {
  const left = leftBayWidth(at, carcass)
  const right = settle(clearWidth(carcass) - carcass.thickness - left)
  if (left > 0 && right > 0) return true
  const text = `the partition would leave ${report.left(left)} to its left and ${report.left(right)} to its right; it is left out.`
  report.stop(text, report.room(Math.min(left, right)))
  return false
}

function countsOf({ fixedShelves, adjustableShelves }: ColumnShelves) {
  return { fixed: wholeCount(fixedShelves), adjustable: wholeCount(adjustableShelves) }
}

function wholeCount(count: number): number {
  return Number.isFinite(count) ? Math.max(0, Math.floor(count)) : 0
}

/** Numbers boards of a role from the bottom up and from left to right. */
function numbered(pieces: readonly Piece[]): Piece[] {
  const counts = new Map<Piece['role'], number>()
  return [...pieces]
    .sort((a, b) => a.box.min.y - b.box.min.y || a.box.min.x - b.box.min.x)
    .map((piece) => {
      const number = (counts.get(piece.role) ?? 0) + 1
      counts.set(piece.role, number)
      return { ...piece, number }
    })
}
