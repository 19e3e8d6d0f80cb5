import type { Board } from '../cabinets/board'
import { isSlantedCut } from '../cabinets/operation'
import { removedBy } from '../cabinets/removed'
import type { Box } from '../geometry/box'
import type { Mm } from '../units/length'

/**
 * A board cut along every plane that anything worked on it touches, in the board's frame. Each cell between the planes
 * is all wood or all air, so the board is exactly the cells of wood.
 *
 *     y |---+-------+---|
 *       | # |   .   | # |      # wood   . a notch
 *       |---+-------+---|
 *       | # |   #   | # |
 *       +---+-------+---+ x
 */
export interface Cells {
  readonly x: readonly Mm[]
  readonly y: readonly Mm[]
  readonly z: readonly Mm[]
  /** By cell, x fastest, then y, then z. */
  readonly isWood: Uint8Array
}

export function cellsOf(board: Board): Cells {
  const whole: Box = { min: { x: 0, y: 0, z: 0 }, max: { x: board.length, y: board.width, z: board.thickness } }
  const gone = board.operations.flatMap((operation) => {
    if (operation.kind === 'holeRow' || isSlantedCut(operation)) return []
    const box = removedBy(operation, board)
    return box ? [box] : []
  })
  const planes = (axis: 'x' | 'y' | 'z') =>
    sortedOnce([whole, ...gone].flatMap(({ min, max }) => [min[axis], max[axis]]))
  const [x, y, z] = [planes('x'), planes('y'), planes('z')]
  const isWood = new Uint8Array((x.length - 1) * (y.length - 1) * (z.length - 1)).fill(1)
  for (const box of gone) clear(box, x, y, z, isWood)
  return { x, y, z, isWood }
}

function clear({ min, max }: Box, x: readonly Mm[], y: readonly Mm[], z: readonly Mm[], isWood: Uint8Array): void {
  const across = x.length - 1
  const up = y.length - 1
  for (let k = z.indexOf(min.z); z[k]! < max.z; k++) {
    for (let j = y.indexOf(min.y); y[j]! < max.y; j++) {
      for (let i = x.indexOf(min.x); x[i]! < max.x; i++) isWood[i + across * (j + up * k)] = 0
    }
  }
}

function sortedOnce(values: readonly Mm[]): Mm[] {
  return [...new Set(values)].sort((a, b) => a - b)
}
