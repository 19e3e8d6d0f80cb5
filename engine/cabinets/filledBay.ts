import type { Interval } from '../geometry/interval'
import type { ColumnShelves } from '../project/document'
import type { Mm } from '../units/length'
import { type Bay, baysBetween } from './bay'
import { type PinRows, pinsUnder } from './boring'
import type { Carcass } from './carcass'
import { clearAcross, clearUp } from './clear'
import { dividersOf } from './divider'
import type { DrawerPlace } from './drawerBox'
import { type Niche, nicheBoardsOf, nicheIn } from './niche'
import type { Cell } from './openings'
import type { Piece } from './piece'
import type { Report } from './report'
import { rollOutsIn } from './rollOut'
import { besideLines, rowPosts } from './rowPosts'
import { NO_SHELVING, type ShelfCounts, type Shelving, shelvesOf } from './shelf'

/** What is inside a carcass, or in a bay of it. */
export interface Interior extends Pick<Shelving, 'pieces' | 'pins'> {
  /** The drawers' openings, narrowed by drawer lines, column by column from the bottom up. */
  readonly drawers: readonly DrawerPlace[]
  /** Boxes behind doors; they are counted on from the drawers. */
  readonly rollOuts: readonly DrawerPlace[]
  readonly niches: readonly Niche[]
  /** Its bays from the left: one where nothing parts it. */
  readonly bays: readonly BayRoom[]
}

/** A room between two uprights, in mm in the cabinet's frame. */
export interface BayRoom {
  readonly across: Interval
  /** The height that its shelves may use; null where there is none. */
  readonly height: Interval | null
  /** The undersides of its fixed shelves from the bottom up. */
  readonly fixed: readonly Mm[]
}

export const NOTHING: Interior = { pieces: [], pins: [], drawers: [], rollOuts: [], niches: [], bays: [] }

function isDrawn({ front }: Cell): boolean {
  return front.kind === 'drawer' || front.kind === 'pullOut'
}

export function drawersIn(cells: readonly Cell[], bay: Bay, carcass: Carcass): DrawerPlace[] {
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

/** Why nothing else finds a place: what stands in all of the height. */
export function noHeight(cells: readonly Cell[]): string {
  const hasDrawers = cells.some(isDrawn)
  const niches = cells.some(({ front }) => front.kind === 'appliance') ? ['a niche for an appliance'] : []
  const what = [...(hasDrawers ? ['drawers'] : []), ...niches].join(' and ')
  const verb = hasDrawers ? 'are' : 'is'
  return `there ${verb} ${what} from its bottom to its top, so shelves and partition are left out.`
}

export function tellNoHeight({ from, to }: Interval, report: Report): void {
  report.stop(
    `there is ${report.left(to - from)} of height for shelves and partition; they are left out.`,
    report.room(to - from),
  )
}

/** What stands between two uprights: boards around niches, shelves where most room is, drawers. */
export function filledBay(
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
  const run = freeStretch(cells)
  const free = run && besideLines(run, boards)
  if (isAnythingIn(shelves) && !free) report.stop(noHeight(cells), { ...report.room(0), way: 'noShelves' })
  if (isAnythingIn(shelves) && free && !(free.to > free.from)) tellNoHeight(free, report)
  const fixed = [...boards, ...rowPosts(cells, boards, obstacles, carcass)]
  const own =
    free && free.to > free.from
      ? standing(bay, free, cells, shelves, { obstacles, held: fixed }, carcass, report)
      : NOTHING
  return {
    drawers,
    niches,
    rollOuts: own.rollOuts,
    bays: own === NOTHING ? [emptyRoom(bay)] : own.bays,
    pieces: numbered([...fixed, ...own.pieces]),
    pins: [...under, ...own.pins],
  }
}

function emptyRoom({ from, to }: Bay): BayRoom {
  return { across: { from, to }, height: null, fixed: [] }
}

function isAnythingIn(shelves: ColumnShelves): boolean {
  const { fixed, adjustable } = countsOf(shelves)
  return fixed + adjustable + (shelves.dividers ?? 0) + (shelves.rollOuts?.count ?? 0) > 0
}

/**
 * What stands in a height of a bay: roll-outs from its foot up, and over them tray dividers or shelves. `held` are the
 * boards that may be under and over dividers besides the bottom and the top.
 */
export function standing(
  bay: Bay,
  free: Interval,
  cells: readonly Cell[],
  shelves: ColumnShelves,
  around: { readonly obstacles: readonly Piece[]; readonly held: readonly Piece[] },
  carcass: Carcass,
  report: Report,
): Pick<Interior, 'pieces' | 'pins' | 'rollOuts' | 'bays'> {
  const { places: rollOuts, rest } = rollOutsIn(shelves, free, bay, cells, carcass, report)
  const uprights = dividersOf(shelves.dividers ?? 0, rest, bay, around, carcass, report)
  const counts = countsOf(shelves)
  if (uprights.length > 0 && counts.fixed + counts.adjustable > 0) {
    report.mind('tray dividers take the place of its shelves, so the shelves are left out.')
  }
  const shelving = uprights.length > 0 ? NO_SHELVING : shelvesOf(counts, rest, bay, around.obstacles, carcass, report)
  const bays = [{ across: { from: bay.from, to: bay.to }, height: rest, fixed: shelving.levels }]
  return { rollOuts, bays, pieces: [...uprights, ...shelving.pieces], pins: shelving.pins }
}

/** The highest run of openings that nothing stands in; null where there is none. */
export function freeStretch(cells: readonly Cell[]): Interval | null {
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

/** A drawer line that is pinned rests on pins in both sides, as a pinned shelf does. */
export function linePins(lines: readonly Piece[], bay: PinRows['bay'], carcass: Carcass): PinRows[] {
  if (carcass.method.fixedShelf !== 'pinned') return []
  return lines.map(({ box }) => pinsUnder(box.min.y, bay, carcass))
}

export function countsOf({ fixedShelves, adjustableShelves, fixedAt = [] }: ColumnShelves): ShelfCounts {
  return { fixed: wholeCount(fixedShelves), adjustable: wholeCount(adjustableShelves), fixedAt }
}

function wholeCount(count: number): number {
  return Number.isFinite(count) ? Math.max(0, Math.floor(count)) : 0
}

/** Numbers boards of a role from the bottom up and from left to right. */
export function numbered(pieces: readonly Piece[]): Piece[] {
  const counts = new Map<Piece['role'], number>()
  return [...pieces]
    .sort((a, b) => a.box.min.y - b.box.min.y || a.box.min.x - b.box.min.x)
    .map((piece) => {
      const number = (counts.get(piece.role) ?? 0) + 1
      counts.set(piece.role, number)
      return { ...piece, number }
    })
}
