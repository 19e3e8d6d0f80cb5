import { type Box, boxAround, boxOver } from '../geometry/box'
import { toCabinet } from '../geometry/placement'
import type { Vec3 } from '../geometry/vector'
import { settle } from '../units/length'
import type { Board } from './board'

/** The whole blank that a board is worked from, in the cabinet's frame; settled, so that equal edges are equal to `===`. */
export function boxOf(board: Board): Box {
  const { min, max } = blankOf(board)
  return { min: settledCorner(min), max: settledCorner(max) }
}

function settledCorner({ x, y, z }: Vec3): Vec3 {
  return { x: settle(x), y: settle(y), z: settle(z) }
}

function blankOf({ placement, length, width, thickness }: Board): Box {
  const whole = boxAround(toCabinet(placement, 0, 0, 0), toCabinet(placement, length, width, thickness))
  if (!placement.turn) return whole
  // Of a board that stands slantwise other corners may lie farthest out.
  const upright = boxAround(toCabinet(placement, length, 0, thickness), toCabinet(placement, 0, width, 0))
  const onEdge = boxAround(toCabinet(placement, length, 0, 0), toCabinet(placement, 0, width, thickness))
  return boxOver(whole, boxOver(upright, onEdge))
}
