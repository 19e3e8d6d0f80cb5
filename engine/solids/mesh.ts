import { remember } from '../basics/remember'
import type { Board } from '../cabinets/board'
import { cellsOf } from './cells'
import { sharpEdges } from './edges'
import { facesOf } from './faces'

/** A board to be drawn, in its own frame, in mm. */
export interface Mesh {
  /** Three numbers a corner; four corners a face. */
  readonly positions: readonly number[]
  readonly normals: readonly number[]
  /** Two triangles a face, turning left seen from outside. */
  readonly indices: readonly number[]
  /** Six numbers a line: both ends of every sharp edge. */
  readonly edges: readonly number[]
}

/** The skin of a board with everything that is worked on it. */
export function meshOf(board: Board): Mesh {
  const cells = cellsOf(board)
  return { ...facesOf(cells), edges: sharpEdges(cells) }
}

/** Equal for boards that look alike wherever they lie, so that they can share one mesh. */
export const shapeKey: (board: Board) => string = remember(({ length, width, thickness, operations }: Board) => {
  return JSON.stringify([length, width, thickness, operations])
})
