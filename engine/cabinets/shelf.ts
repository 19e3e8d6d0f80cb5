import { counted } from '../basics/counted'
import { METHOD } from '../basics/source'
import type { Interval } from '../geometry/interval'
import { type Mm, settle } from '../units/length'
import { downward, upward, WAYS } from './apart'
import { type Bay, rearAt, type Upright, wholeBay } from './bay'
import type { Explode } from './board'
import { holeGrid, type PinRows, pinsUnder, pinsUp } from './boring'
import { type Carcass, insideFront } from './carcass'
import { type Piece, room } from './piece'
import type { Report } from './report'
import { evenLevels, fixedLevels } from './shelfLevels'

export interface Shelving {
  readonly pieces: readonly Piece[]
  readonly pins: readonly PinRows[]
  /** The undersides of the fixed ones from the bottom up. */
  readonly levels: readonly Mm[]
}

export const NO_SHELVING: Shelving = { pieces: [], pins: [], levels: [] }

/**
 * How far a housed shelf sinks into the upright beside it: as the corners do, or a third where those are butted (source:
 * common forum advice, 1/4 in in 3/4). A partition may be housed from both faces, so it gives a quarter at most.
 */
export function shelfSink({ role }: Upright, { method, jointDepth, thickness }: Carcass): Mm {
  if (method.fixedShelf === 'pinned') return 0
  const sink = jointDepth > 0 ? jointDepth : settle(thickness / 3)
  return role === 'partition' ? Math.min(sink, settle(thickness / 4)) : sink
}

/** A fixed shelf spans its bay and what it sinks into the uprights; a pinned one spans just the bay. */
export function fixedShelfLength(bay: Bay, carcass: Carcass): Mm {
  return settle(bay.to - bay.from + shelfSink(bay.left, carcass) + shelfSink(bay.right, carcass))
}

/** An adjustable shelf spans its bay less the clearance in all. */
export function adjustableShelfLength(bay: Interval, { method: { shelves } }: Carcass): Mm {
  return settle(bay.to - bay.from - shelves.sideClearance)
}

/** A shelf reaches from what lies behind it to its setback behind the front edge, or behind an inset front. */
export function shelfWidth(rear: Mm, carcass: Carcass): Mm {
  return settle(insideFront(carcass) - carcass.method.shelves.setback - rear)
}

/** The fixed board between drawers and what lies below or above them; it reaches to the front. */
export function drawerLineOf(y: Interval, rear: Mm, direction: 'up' | 'down', carcass: Carcass): Piece {
  const bay = wholeBay(carcass)
  const left = settle(bay.from - shelfSink(bay.left, carcass))
  const explode = direction === 'up' ? upward(WAYS.drawerLine) : downward(WAYS.drawerLine)
  const box = room([left, left + fixedShelfLength(bay, carcass)], [y.from, y.to], [rear, insideFront(carcass)])
  return shelfPiece('fixedShelf', box, explode, carcass)
}

/** A board that an appliance stands on or under; it reaches to the front and leaves with the shelves of its bay. */
export function nicheBoardOf(bay: Bay, y: Interval, rear: Mm, carcass: Carcass): Piece {
  const left = settle(bay.from - shelfSink(bay.left, carcass))
  const box = room([left, left + fixedShelfLength(bay, carcass)], [y.from, y.to], [rear, insideFront(carcass)])
  return shelfPiece('fixedShelf', box, bay.apart, carcass)
}

/** In one bay: what a file can ask for, fixed and adjustable together. */
const MOST_SHELVES = 40

/** How many shelves a bay has, and where its fixed ones are said to stand over the bottom. */
export interface ShelfCounts {
  readonly fixed: number
  readonly adjustable: number
  readonly fixedAt: readonly (Mm | null)[]
}

/** Fixed shelves at their heights or evenly between; adjustable ones go where most room is left, on the nearest holes. */
export function shelvesOf(
  counts: ShelfCounts,
  stretch: Interval,
  bay: Bay,
  obstacles: readonly Piece[],
  carcass: Carcass,
  report: Report,
): Shelving {
  const most = Math.min(MOST_SHELVES, Math.floor((stretch.to - stretch.from) / (2 * carcass.thickness)))
  if (!(counts.fixed + counts.adjustable <= most)) {
    const room = `${report.left(stretch.to - stretch.from)} of height`
    report.stop(`${counts.fixed + counts.adjustable} shelves do not fit in ${room}; they are left out.`, {
      is: counted(counts.fixed + counts.adjustable, 'shelf', 'shelves'),
      limit: counted(Math.max(0, most), 'shelf', 'shelves'),
      way: 'looseShelves',
    })
    return NO_SHELVING
  }
  const levels = fixedLevels(counts, stretch, carcass, report)
  const regions = between(levels, stretch, carcass.thickness)
  const adjustable = adjustableLevels(counts.adjustable, regions, carcass, report)
  const bored = regions.filter((_, at) => adjustable[at]!.length > 0)
  const isPinned = carcass.method.fixedShelf === 'pinned'
  return {
    levels,
    pieces: [
      ...levels.map((low) => fixedShelf(bay, low, bay.apart, obstacles, carcass)),
      ...adjustable.flat().map((low) => adjustableShelf(bay, low, bay.apart, obstacles, carcass)),
    ],
    pins: [
      ...(isPinned ? levels.map((low) => pinsUnder(low, bay, carcass)) : []),
      ...bored.map((region) => pinsUp(region, bay, carcass)),
    ],
  }
}

function between(levels: readonly Mm[], { from, to }: Interval, thickness: Mm): Interval[] {
  const floors = [from, ...levels.map((low) => settle(low + thickness))]
  return floors.map((floor, at) => ({ from: floor, to: levels[at] ?? to }))
}

/** The undersides of adjustable shelves, region by region. */
function adjustableLevels(count: number, regions: readonly Interval[], carcass: Carcass, report: Report): Mm[][] {
  const shares = regions.map(() => 0)
  for (let shelf = 0; shelf < count; shelf++) {
    const roomOf = (at: number) => (regions[at]!.to - regions[at]!.from) / (shares[at]! + 1)
    const roomiest = regions.reduce((best, _, at) => (roomOf(at) > roomOf(best) ? at : best), 0)
    shares[roomiest]!++
  }
  return regions.map((region, at) => levelsOnPins(shares[at]!, region, carcass, report))
}

function levelsOnPins(count: number, region: Interval, carcass: Carcass, report: Report): Mm[] {
  if (count === 0) return []
  const { thickness, method } = carcass
  const { pinDiameter, pitch } = method.shelves
  const grid = holeGrid(region, carcass)
  const apart = Math.ceil((thickness + 1) / pitch)
  const highest = Math.min(grid.count - 1, Math.floor((region.to - thickness - pinDiameter / 2 - grid.first) / pitch))
  const levels: Mm[] = []
  let least = 0
  for (const [at, wish] of evenLevels(count, region, thickness).entries()) {
    const nearest = Math.round((wish - pinDiameter / 2 - grid.first) / pitch)
    const hole = Math.max(least, Math.min(nearest, highest - (count - 1 - at) * apart))
    if (!(hole <= highest)) break
    levels.push(settle(grid.first + hole * pitch + pinDiameter / 2))
    least = hole + apart
  }
  if (levels.length < count) {
    const height = report.say(region.to - region.from)
    report.stop(`${levels.length} of ${count} adjustable shelves find pin holes in ${height} of height.`, {
      is: counted(levels.length, 'shelf', 'shelves'),
      limit: counted(count, 'shelf', 'shelves'),
      source: METHOD,
      way: 'looseShelves',
    })
  }
  return levels
}

function fixedShelf(bay: Bay, low: Mm, explode: Explode, obstacles: readonly Piece[], carcass: Carcass): Piece {
  const left = settle(bay.from - shelfSink(bay.left, carcass))
  return shelfIn('fixedShelf', [left, left + fixedShelfLength(bay, carcass)], low, explode, obstacles, carcass)
}

function adjustableShelf(bay: Bay, low: Mm, explode: Explode, obstacles: readonly Piece[], carcass: Carcass): Piece {
  const length = adjustableShelfLength(bay, carcass)
  const left = settle((bay.from + bay.to - length) / 2)
  return shelfIn('adjustableShelf', [left, left + length], low, explode, obstacles, carcass)
}

function shelfIn(
  role: 'fixedShelf' | 'adjustableShelf',
  x: readonly [Mm, Mm],
  low: Mm,
  explode: Explode,
  obstacles: readonly Piece[],
  carcass: Carcass,
): Piece {
  const y = { from: low, to: settle(low + carcass.thickness) }
  const rear = rearAt(y, obstacles, carcass)
  return shelfPiece(role, room(x, [y.from, y.to], [rear, rear + shelfWidth(rear, carcass)]), explode, carcass)
}

function shelfPiece(
  role: 'fixedShelf' | 'adjustableShelf',
  box: Piece['box'],
  explode: Explode,
  { method }: Carcass,
): Piece {
  const banded = { edges: 'front', thickness: method.banding.carcass } as const
  return { role, number: 1, material: method.carcassMaterial, box, lie: 'levelLookingUp', banded, explode }
}
