import { remember } from '../basics/remember'
import type { Board } from '../cabinets/board'
import { cellsOf } from './cells'
import { clippedSkin } from './clippedSkin'
import { sharpEdges } from './edges'
import { facesOf } from './faces'

/** A board to be drawn, in its own frame, in mm. */
export interface Mesh {
  /** Three numbers a corner; four corners a face, or as many as are left where a corner of the board is cut off. */
  readonly positions: readonly number[]
  readonly normals: readonly number[]
  /** The triangles of every face, turning left seen from outside. */
  readonly indices: readonly number[]
  /** Six numbers a line: both ends of every sharp edge. */
  readonly edges: readonly number[]
}

/** The skin of a board with everything that is worked on it. */
export function meshOf(board: Board): Mesh {
  const cells = cellsOf(board)
  return clippedSkin({ ...facesOf(cells), edges: sharpEdges(cells) }, board)
}

/** Equal for boards that look alike wherever they lie, so that they can share one mesh. */
export const shapeKey: (board: Board) => string = remember(({ length, width, thickness, operations }: Board) => {
  return JSON.stringify([length, width, thickness, operations])
})
