import type { Interval } from '../geometry/interval'
import type { Cabinet } from '../project/document'
import { type Mm, settle } from '../units/length'
import { type Bay, rearAt, type Stretch } from './bay'
import { type PinRows, pinsUnder } from './boring'
import { type Carcass, clearBottom, clearTop, clearWidth } from './carcass'
import type { Cell } from './openings'
import { leftBayWidth, partitionOf } from './partition'
import type { Piece } from './piece'
import type { Report } from './report'
import { drawerLineOf, type Shelving, shelvesOf } from './shelf'

export interface Interior extends Shelving {
  /** The drawers' openings, narrowed by drawer lines, from the bottom up. */
  readonly drawerOpenings: readonly Interval[]
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
  const drawers = cells.filter(({ front }) => front.kind === 'drawer').map(({ opening }) => opening)
  const { partition, fixedShelves, adjustableShelves } = cabinet.interior
  const free = freeStretch(cells)
  if (!free) {
    if (partition || fixedShelves > 0 || adjustableShelves > 0) {
      report.stop('there are drawers from its bottom to its top, so shelves and partition are left out.')
    }
    return { pieces: [], pins: [], drawerOpenings: drawers }
  }
  const isParted = partition !== null && bayProblem(partition.at, carcass, report) === null
  const stretch: Stretch = isParted ? parted(free, carcass) : { ...free, hasLineBelow: false, hasLineAbove: false }
  if (!(stretch.to > stretch.from)) {
    if (partition || fixedShelves > 0 || adjustableShelves > 0) {
      report.stop(
        `there is ${report.say(stretch.to - stretch.from)} of height for shelves and partition; they are left out.`,
      )
    }
    return { pieces: [], pins: [], drawerOpenings: drawers }
  }
  const lines = isParted ? linesOf(free, stretch, obstacles, carcass) : []
  const uprights = isParted ? [partitionOf(partition.at, stretch, obstacles, carcass)] : []
  const bays = baysOf(isParted ? partition.at : null, carcass)
  const counts = { fixed: wholeCount(fixedShelves), adjustable: wholeCount(adjustableShelves) }
  const shelving = shelvesOf(counts, stretch, bays, obstacles, carcass, report)
  return {
    pieces: numbered([...lines, ...shelving.pieces, ...uprights]),
    pins: [...linePins(lines, carcass), ...shelving.pins],
    drawerOpenings: drawers.map((opening) => besideLines(opening, lines)),
  }
}

function freeStretch(cells: readonly Cell[]): Interval | null {
  let best: Interval | null = null
  let run: Interval | null = null
  for (const { front, opening } of cells) {
    if (front.kind === 'drawer') run = null
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
function linePins(lines: readonly Piece[], carcass: Carcass): PinRows[] {
  if (carcass.method.fixedShelf !== 'pinned') return []
  return lines.map(({ box }) => pinsUnder(box.min.y, { left: 'leftSide', right: 'rightSide' }, carcass))
}

function besideLines(opening: Interval, lines: readonly Piece[]): Interval {
  let { from, to } = opening
  for (const { box } of lines) {
    if (box.min.y < from && from < box.max.y) from = box.max.y
    if (box.min.y < to && to < box.max.y) to = box.min.y
  }
  return { from, to }
}

function bayProblem(at: number, carcass: Carcass, report: Report): string | null {
  const left = leftBayWidth(at, carcass)
  const right = settle(clearWidth(carcass) - carcass.thickness - left)
  if (left > 0 && right > 0) return null
  const text = `the partition would leave ${report.say(left)} to its left and ${report.say(right)} to its right; it is left out.`
  report.stop(text)
  return text
}

function baysOf(at: number | null, carcass: Carcass): Bay[] {
  const { thickness, width } = carcass
  if (at === null) return [{ from: thickness, to: settle(width - thickness), left: 'leftSide', right: 'rightSide' }]
  const post = settle(thickness + leftBayWidth(at, carcass))
  return [
    { from: thickness, to: post, left: 'leftSide', right: 'partition' },
    { from: settle(post + thickness), to: settle(width - thickness), left: 'partition', right: 'rightSide' },
  ]
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
