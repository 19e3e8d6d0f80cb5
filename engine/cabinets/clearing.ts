import type { Interval } from '../geometry/interval'
import { toCabinet } from '../geometry/placement'
import type { Vec3 } from '../geometry/vector'
import { AS_SETTLED, type Mm, settle } from '../units/length'
import type { Board, BoardRole } from './board'
import { boxOf } from './boardBox'
import { LEAST_WOOD } from './hinge'
import {
  aroundSlant,
  centreOf,
  centresOf,
  type Face,
  type HoleRow,
  isEdgeSlot,
  isSlantedCut,
  type Notch,
  type Recess,
} from './operation'

/** A line on the face of a board on which plates are screwed, in the cabinet's frame. */
export interface Line {
  readonly carrier: Board
  readonly face: Face
  /** Which way it runs. */
  readonly axis: 'x' | 'y'
  /** How far it is from the wall. */
  readonly z: Mm
}

/** A piece of hardware with two holes on a line, the same way from its middle. */
export interface Plate {
  readonly spread: Mm
  readonly diameter: Mm
  /** What it covers along the line. */
  readonly length: Mm
  /** How deep its holes go into its carrier. */
  readonly depth: Mm
}

/**
 * The place nearest to a wish that is in none of the stretches that are taken; null where the range has none. Of two that
 * are as near, the lower one, or the higher where that is asked for.
 */
export function nearestFree(
  wish: Mm,
  taken: readonly Interval[],
  { from, to }: Interval,
  rather: 'low' | 'high' = 'low',
): Mm | null {
  const isFree = (at: Mm) => at >= from && at <= to && !taken.some((one) => at > one.from && at < one.to)
  if (isFree(wish)) return wish
  const edges = taken.flatMap((one) => [one.from, one.to])
  return nearestOf(wish, [from, to, ...edges].filter(isFree), rather)
}

/** Of several places the one nearest to a wish; null of none. */
export function nearestOf(wish: Mm, places: readonly Mm[], rather: 'low' | 'high'): Mm | null {
  const isNearer = (a: Mm, b: Mm) => {
    const nearer = Math.abs(a - wish) - Math.abs(b - wish)
    return Math.abs(nearer) < AS_SETTLED ? (rather === 'low' ? a < b : a > b) : nearer < 0
  }
  return places.reduce<Mm | null>((best, one) => (best === null || isNearer(one, best) ? one : best), null)
}

/**
 * Where the middle of a plate cannot be for what is worked on its face: dadoes, notches and holes; and for dadoes in the
 * other face that are so deep that its holes would come out in them.
 */
export function takenByWork(line: Line, plate: Plate): Interval[] {
  return line.carrier.operations.flatMap((operation) => {
    if (isEdgeSlot(operation)) return []
    if (operation.kind === 'notch') return takenByRecess(operation, line, plate)
    if (isSlantedCut(operation)) return takenByRecess(aroundSlant(operation, line.carrier), line, plate)
    if (operation.face !== line.face) return takenFromBehind(operation, line, plate)
    return operation.kind === 'holeRow' ? takenByHoles(operation, line, plate) : takenByRecess(operation, line, plate)
  })
}

function takenByRecess({ x, y, length, width }: Recess | Notch, { carrier, axis, z }: Line, plate: Plate): Interval[] {
  const a = toCabinet(carrier.placement, x, y, 0)
  const b = toCabinet(carrier.placement, x + length, y + width, 0)
  const around = plate.diameter / 2 + LEAST_WOOD
  if (Math.max(a.z, b.z) <= z - around || Math.min(a.z, b.z) >= z + around) return []
  return [widened(Math.min(a[axis], b[axis]), Math.max(a[axis], b[axis]), plate.length / 2)]
}

function takenFromBehind(operation: Recess | HoleRow, { carrier, axis, z }: Line, plate: Plate): Interval[] {
  if (operation.kind === 'holeRow' || operation.depth + plate.depth <= carrier.thickness) return []
  const around = { ...plate, length: plate.diameter + 2 * LEAST_WOOD }
  return takenByRecess(operation, { carrier, axis, z, face: operation.face }, around).flatMap(({ from, to }) =>
    [-1, 1].map((side) => widened(from + (side * plate.spread) / 2, to + (side * plate.spread) / 2, 0)),
  )
}

/** A board that can be built has fewer in a row; what is asked for in nonsense must end too. */
const MOST_HOLES = 1000

/** Each of the two holes of the plate keeps clear of each hole that is there. Holes that run into one another are a slot. */
function takenByHoles(row: HoleRow, { carrier, axis, z }: Line, plate: Plate): Interval[] {
  const clear = (row.diameter + plate.diameter) / 2 + LEAST_WOOD
  const isSlot = row.count > 1 && (row.step <= row.diameter || row.count > MOST_HOLES)
  const [first, last] = [centreOf(row, 0), centreOf(row, row.count - 1)]
  const centres = isSlot ? [[first, last] as const] : centresOf(row).map((one) => [one, one] as const)
  return centres.flatMap((ends) => {
    const [a, b] = ends.map(({ x, y }) => toCabinet(carrier.placement, x, y, 0)) as [Vec3, Vec3]
    if (Math.min(a.z, b.z) >= z + clear || Math.max(a.z, b.z) <= z - clear) return []
    const [from, to] = [Math.min(a[axis], b[axis]), Math.max(a[axis], b[axis])]
    return [-1, 1].map((side) => widened(from + (side * plate.spread) / 2, to + (side * plate.spread) / 2, clear))
  })
}

const MET: readonly BoardRole[] = [
  'bottom',
  'top',
  'frontStretcher',
  'backStretcher',
  'fixedShelf',
  'leftSide',
  'rightSide',
  'partition',
]
const TOUCHES: Mm = 5

/** Where the middle of a plate cannot be for the boards that meet its face there; `roles` are those to be minded. */
export function takenByBoards(
  { carrier, face, axis, z }: Line,
  plate: Plate,
  boards: readonly Board[],
  roles: readonly BoardRole[] = MET,
): Interval[] {
  const across = axis === 'y' ? 'x' : 'y'
  const own = boxOf(carrier)
  // The faces of uprights look along x and those of level boards along y, whichever way their thickness runs.
  const runsUp = carrier.placement.thickness.startsWith('+')
  const isHigh = (face === 'inside') === runsUp
  const level = isHigh ? own.max[across] : own.min[across]
  return boards.flatMap((board) => {
    if (board === carrier || !roles.includes(board.role)) return []
    const { min, max } = boxOf(board)
    if (min.z >= z + plate.diameter || max.z <= z - plate.diameter) return []
    const isThere = isHigh
      ? max[across] > level && min[across] < level + TOUCHES
      : min[across] < level && max[across] > level - TOUCHES
    return isThere ? [widened(min[axis], max[axis], plate.length / 2)] : []
  })
}

function widened(from: Mm, to: Mm, by: Mm): Interval {
  return { from: settle(from - by), to: settle(to + by) }
}
