import type { Vec3 } from '../geometry/vector'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import { inBoard } from './frame'
import type { Face, HolePurpose, HoleRow } from './operation'

export function withHoles(board: Board, rows: readonly HoleRow[]): Board {
  return rows.length === 0 ? board : { ...board, operations: [...board.operations, ...rows] }
}

/**
 * How deep a hole is: as deep as is wished, but never through the board, and in a partition, which is bored from both
 * faces, less than half of it.
 */
export function boreDepth(wished: Mm, { role, thickness }: Board): Mm {
  return settle(Math.min(wished, role === 'partition' ? thickness / 2 - 1 : thickness - 1))
}

export interface Bore {
  readonly purpose: HolePurpose
  readonly diameter: Mm
  /** Right through where it is said. */
  readonly depth: Mm | 'through'
}

/** A hole at each of two points of the cabinet's frame, or one where they are the same; none where it would leave the board. */
export function holesBetween(board: Board, face: Face, from: Vec3, to: Vec3, bore: Bore): HoleRow[] {
  const { min: a } = inBoard(board, { min: from, max: from })
  const { min: b } = inBoard(board, { min: to, max: to })
  const [x, y] = [Math.min(a.x, b.x), Math.min(a.y, b.y)]
  const step = settle(Math.abs(a.x - b.x) + Math.abs(a.y - b.y))
  const edge = bore.diameter / 2
  const depth = bore.depth === 'through' ? board.thickness : boreDepth(bore.depth, board)
  const isInside =
    x >= edge && y >= edge && Math.max(a.x, b.x) <= board.length - edge && Math.max(a.y, b.y) <= board.width - edge
  if (!isInside || !(bore.diameter > 0) || !(depth > 0)) return []
  const along = a.x === b.x && a.y !== b.y ? ({ along: 'width' } as const) : {}
  const { purpose, diameter } = bore
  return [{ kind: 'holeRow', purpose, face, ...along, x, y, step, count: step > 0 ? 2 : 1, diameter, depth }]
}
