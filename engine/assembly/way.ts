import type { Board } from '../cabinets/board'
import type { Box } from '../geometry/box'
import type { Axis } from '../geometry/vector'
import { boxesInCabinet } from '../solids/solid'
import type { Mm } from '../units/length'

/** Coordinates are sums of settled lengths: less than this is the dust of adding them. */
const DUST: Mm = 0.01

const DIMENSIONS = ['x', 'y', 'z'] as const

/** Whether a board could leave along an axis for good, with the others where they are; the way in is the way back. */
export function isFreeAlong(board: Board, axis: Axis, others: readonly Board[]): boolean {
  const wood = boxesInCabinet(board)
  return others.every((other) => {
    const still = boxesInCabinet(other)
    return !wood.some((moving) => still.some((one) => isAhead(moving, one, axis)))
  })
}

/** Whether one box lies on the way of another. */
function isAhead(moving: Box, still: Box, axis: Axis): boolean {
  const along = axis[1] as 'x' | 'y' | 'z'
  const isBeside = DIMENSIONS.some(
    (each) =>
      each !== along && (still.max[each] <= moving.min[each] + DUST || still.min[each] >= moving.max[each] - DUST),
  )
  if (isBeside) return false
  return axis[0] === '+' ? still.max[along] > moving.min[along] + DUST : still.min[along] < moving.max[along] - DUST
}
