import { boxesOverlap } from '../geometry/box'
import type { Mm } from '../units/length'
import type { Board } from './board'
import { boxOf } from './boardBox'
import { holesBetween } from './holes'
import type { HoleRow } from './operation'
import { boredBy, workedOn } from './removed'

/** Both screws of a pull, or twice the one of a knob; in the cabinet's frame, seen from the room. */
export interface Pull {
  readonly from: Point
  readonly to: Point
}

interface Point {
  readonly x: Mm
  readonly y: Mm
}

/** The holes of bolts in the front of a drawer box, and how many more there should be. */
export interface PullBolts {
  readonly rows: readonly HoleRow[]
  readonly missing: number
}

/**
 * The bolts of a pull go on through the front of the box where it stands behind them, on the axes of the holes in the drawer
 * front and of their diameter; one that misses it, above or beside the box, needs no hole there. `missing` are those that
 * fall on it and would leave its edge, or meet the groove for the bottom or something else that is worked on it.
 */
export function boltsThrough(boxFront: Board, { from, to }: Pull, diameter: Mm): PullBolts {
  const { max } = boxOf(boxFront)
  const both = from.x === to.x && from.y === to.y ? [from] : [from, to]
  const [first, last = first] = both.filter((point) => isOn(point, boxFront))
  if (!first || !last) return { rows: [], missing: 0 }
  const bore = { purpose: 'pullBolt', diameter, depth: 'through' } as const
  const row = (a: Point, b: Point) =>
    holesBetween(boxFront, 'inside', { ...a, z: max.z }, { ...b, z: max.z }, bore).filter((one) =>
      isFree(one, boxFront),
    )
  const together = row(first, last)
  if (together.length > 0 || first === last) return { rows: together, missing: together.length > 0 ? 0 : 1 }
  const alone = [...row(first, first), ...row(last, last)]
  return { rows: alone, missing: 2 - alone.length }
}

function isOn({ x, y }: Point, board: Board): boolean {
  const { min, max } = boxOf(board)
  return x > min.x && x < max.x && y > min.y && y < max.y
}

function isFree(row: HoleRow, board: Board): boolean {
  const rooms = workedOn(board)
  return !boredBy(row, board).some((box) => rooms.some((room) => boxesOverlap(box, room)))
}
