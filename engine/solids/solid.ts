import { remember } from '../basics/remember'
import type { Board } from '../cabinets/board'
import { boxOf } from '../cabinets/boardBox'
import { type Box, boxAround, boxVolume } from '../geometry/box'
import { toCabinet } from '../geometry/placement'
import { plus, type Vec3 } from '../geometry/vector'
import { rowVolume } from './bores'
import { type Cells, cellsOf } from './cells'

/**
 * A board as it is worked, but for its holes, in its own frame: boxes that touch and never overlap, and together are
 * exactly the wood.
 */
export const solidOf: (board: Board) => readonly Box[] = remember((board: Board) => mergedCells(cellsOf(board)))

/** The same boxes in the cabinet's frame. */
export const boxesInCabinet: (board: Board) => readonly Box[] = remember((board: Board) => {
  return solidOf(board).map(({ min, max }) =>
    boxAround(toCabinet(board.placement, min.x, min.y, min.z), toCabinet(board.placement, max.x, max.y, max.z)),
  )
})

/** The whole blank that a board is worked from, in the cabinet's frame. */
export const blankInCabinet: (board: Board) => Box = remember(boxOf)

export function movedBox({ min, max }: Box, by: Vec3): Box {
  return { min: plus(min, by), max: plus(max, by) }
}

/** In mm3, with its recesses, notches and holes taken out. */
export function volumeOf(board: Board): number {
  const wood = solidOf(board).reduce((sum, box) => sum + boxVolume(box), 0)
  return wood - holesVolume(board)
}

/** Holes never overlap, nor reach into a recess. */
function holesVolume({ operations }: Board): number {
  return operations.reduce((sum, operation) => {
    if (operation.kind !== 'holeRow') return sum
    return sum + rowVolume(operation)
  }, 0)
}

/** Grows a box from every cell that is left, first along x, then y, then z, as far as it is all wood. */
function mergedCells({ x, y, z, isWood }: Cells): Box[] {
  const across = x.length - 1
  const up = y.length - 1
  const deep = z.length - 1
  const left = isWood.slice()
  const at = (i: number, j: number, k: number) => i + across * (j + up * k)
  const isRow = (i: number, i2: number, j: number, k: number) => {
    for (let column = i; column < i2; column++) if (!left[at(column, j, k)]) return false
    return true
  }
  const isLayer = (i: number, i2: number, j: number, j2: number, k: number) => {
    for (let row = j; row < j2; row++) if (!isRow(i, i2, row, k)) return false
    return true
  }
  const boxes: Box[] = []
  for (let k = 0; k < deep; k++) {
    for (let j = 0; j < up; j++) {
      for (let i = 0; i < across; i++) {
        if (!left[at(i, j, k)]) continue
        let [i2, j2, k2] = [i + 1, j + 1, k + 1]
        while (i2 < across && left[at(i2, j, k)]) i2++
        while (j2 < up && isRow(i, i2, j2, k)) j2++
        while (k2 < deep && isLayer(i, i2, j, j2, k2)) k2++
        for (let layer = k; layer < k2; layer++) {
          for (let row = j; row < j2; row++) left.fill(0, at(i, row, layer), at(i2, row, layer))
        }
        boxes.push({ min: { x: x[i]!, y: y[j]!, z: z[k]! }, max: { x: x[i2]!, y: y[j2]!, z: z[k2]! } })
      }
    }
  }
  return boxes
}
