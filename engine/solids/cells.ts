import type { Board } from '../cabinets/board'
import { type EdgeSlot, isEdgeSlot, type Notch, type Recess } from '../cabinets/operation'
import type { Box } from '../geometry/box'
import { type Mm, settle } from '../units/length'

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
    if (operation.kind === 'holeRow' || operation.kind === 'clip') return []
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

/** The room that a recess, a notch or a slot takes out of a board; null where it misses the board. */
export function removedBy(operation: Recess | Notch | EdgeSlot, board: Board): Box | null {
  return within(isEdgeSlot(operation) ? slotBox(operation, board) : sunkBox(operation, board), board)
}

function slotBox({ edge, x, length, up, width, depth }: EdgeSlot, board: Board): Box {
  const [from, to] = edge === 'low' ? [0, depth] : [settle(board.width - depth), board.width]
  return { min: { x, y: from, z: up }, max: { x: settle(x + length), y: to, z: settle(up + width) } }
}

function sunkBox(operation: Recess | Notch, board: Board): Box {
  const depth = operation.kind === 'notch' ? board.thickness : Math.min(operation.depth, board.thickness)
  const isOutside = operation.kind !== 'notch' && operation.face === 'outside'
  return {
    min: { x: operation.x, y: operation.y, z: isOutside ? 0 : settle(board.thickness - depth) },
    max: {
      x: operation.x + operation.length,
      y: operation.y + operation.width,
      z: isOutside ? depth : board.thickness,
    },
  }
}

function within({ min, max }: Box, board: Board): Box | null {
  const box = {
    min: { x: Math.max(0, settle(min.x)), y: Math.max(0, settle(min.y)), z: Math.max(0, settle(min.z)) },
    max: {
      x: Math.min(board.length, settle(max.x)),
      y: Math.min(board.width, settle(max.y)),
      z: Math.min(board.thickness, settle(max.z)),
    },
  }
  const isEmpty = box.max.x <= box.min.x || box.max.y <= box.min.y || box.max.z <= box.min.z
  return isEmpty ? null : box
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
