import type { Board } from '../cabinets/board'
import { boxVolume } from '../geometry/box'
import { rowVolume } from './bores'
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

/** Holes never overlap, nor reach into a recess. */
function holesVolume({ operations }: Board): number {
  return operations.reduce((sum, operation) => (operation.kind === 'holeRow' ? sum + rowVolume(operation) : sum), 0)
}
