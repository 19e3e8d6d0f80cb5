import { toCabinet } from '../geometry/placement'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import { type Carcass, clearBottom, clearTop } from './carcass'
import { nearestFree } from './clearing'
import { centresOf, type HoleRow, type Operation } from './operation'
import { sideFoot, sideHead } from './side'

/**
 * The grid of holes of a balanced panel, in the cabinet's frame: the first is as far from the lower end of the sides as the
 * last from their upper one, as the height of a panel is so many pitches and twice its first hole (source: a forum thread of
 * 2010 on boring in a 32 mm system; dalrun.com, '32mm Cabinetmaking').
 */
export interface PanelGrid {
  /** Height of the first hole, and of the last. */
  readonly first: Mm
  readonly last: Mm
  readonly pitch: Mm
}

/**
 * Both ends keep at least what the worse of them asks for: its first hole from the bottom or from the top. What the height
 * of the side has over then settles where the grid begins, with a hole in the middle of the side or half a pitch beside it.
 */
export function panelGrid(carcass: Carcass): PanelGrid | null {
  const { pitch, firstHole, balance } = carcass.method.shelves
  if (!balance || !(pitch > 0)) return null
  const [foot, head] = [sideFoot(carcass), sideHead(carcass)]
  const least = Math.max(clearBottom(carcass) - foot, head - clearTop(carcass)) + firstHole
  const half = (head - foot) / 2
  const fromEnds = half - (pitch / 2) * Math.floor((half - least) / (pitch / 2) + DUST)
  return { first: settle(foot + fromEnds), last: settle(head - fromEnds), pitch }
}

/** Heights are sums of settled lengths: less than this is the dust of adding them. */
const DUST = 1e-6

/** The holes of the grid from one height to another, both among them. */
export function gridWithin(
  { first, pitch }: PanelGrid,
  from: Mm,
  to: Mm,
): { readonly first: Mm; readonly count: number } {
  const low = Math.ceil((from - first) / pitch - DUST)
  const high = Math.floor((to - first) / pitch + DUST)
  return { first: settle(first + low * pitch), count: Math.max(0, high - low + 1) }
}

/**
 * The place for the middle of a plate whose lower hole is one of the grid: the nearest to the wish that is in none of
 * the stretches that are taken. Null where the range has none.
 */
export function nearestOnGrid(
  wish: Mm,
  taken: Parameters<typeof nearestFree>[1],
  range: Parameters<typeof nearestFree>[2],
  grid: PanelGrid,
  spread: Mm,
): Mm | null {
  const half = spread / 2
  const { first, count } = gridWithin(grid, range.from - half, range.to - half)
  const [nearest] = Array.from({ length: count }, (_, at) => settle(first + at * grid.pitch + half))
    .filter((at) => nearestFree(at, taken, { from: at, to: at }) !== null)
    .sort((a, b) => Math.abs(a - wish) - Math.abs(b - wish) || a - b)
  return nearest ?? null
}

/** Whether it is a row of pins of an upright all of whose holes are on the grid. */
export function isPinOnGrid(one: Operation, { placement }: Board, { first, pitch }: PanelGrid): boolean {
  if (one.kind !== 'holeRow' || one.purpose !== 'shelfPin') return false
  const up = (toCabinet(placement, one.x, one.y, 0).y - first) / pitch
  return Math.abs(up - Math.round(up)) < DUST && (one.count === 1 || one.step === pitch)
}

/** A board without those pin holes that plates are screwed in: the row goes on above and below them. */
export function givenToPlates(board: Board, plates: readonly HoleRow[]): Board {
  const taken = plates.flatMap((plate) => centresOf(plate).map(({ x, y }) => ({ x, y, face: plate.face })))
  const isTaken = (row: HoleRow, x: Mm, y: Mm) =>
    taken.some((one) => one.face === row.face && Math.hypot(one.x - x, one.y - y) < row.diameter / 2)
  const operations = board.operations.flatMap((one) => {
    if (one.kind !== 'holeRow' || one.purpose !== 'shelfPin') return [one]
    const left = centresOf(one).map(({ x, y }) => !isTaken(one, x, y))
    return left.every(Boolean) ? [one] : partsOf(one, left)
  })
  return { ...board, operations }
}

/** The stretches of a row whose holes are left. */
function partsOf(row: HoleRow, left: readonly boolean[]): HoleRow[] {
  const rows: HoleRow[] = []
  for (const [at, { x, y }] of centresOf(row).entries()) {
    const before = left[at - 1] ? rows.at(-1) : undefined
    if (!left[at]) continue
    if (before) rows[rows.length - 1] = { ...before, count: before.count + 1 }
    else rows.push({ ...row, x, y, count: 1 })
  }
  return rows
}
