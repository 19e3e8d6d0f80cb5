import type { Board } from '../cabinets/board'
import { boxVolume } from '../geometry/box'
import { convexVolume } from './convex'
import { bodiesOf, isSlanted } from './slant'
import { solidOf } from './solid'

/** In mm3, with its recesses, notches, clipped corners and holes taken out. */
export function volumeOf(board: Board): number {
  const wood = isSlanted(board)
    ? bodiesOf(board).reduce((sum, body) => sum + convexVolume(body), 0)
    : solidOf(board).reduce((sum, box) => sum + boxVolume(box), 0)
  return wood - holesVolume(board)
}

/** Round holes are plain cylinders: they never overlap, nor reach into a recess. */
function holesVolume({ operations }: Board): number {
  return operations.reduce((sum, operation) => {
    if (operation.kind !== 'holeRow') return sum
    return sum + operation.count * operation.depth * Math.PI * (operation.diameter / 2) ** 2
  }, 0)
}
