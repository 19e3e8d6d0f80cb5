import { remember } from '../basics/remember'
import type { Board } from '../cabinets/board'
import { centresOf, type Face } from '../cabinets/operation'
import type { Mm } from '../units/length'
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
  /** Holes are drawn as discs on the face they are bored into. */
  readonly holes: readonly Hole[]
}

export interface Hole {
  /** The centre, on the face. */
  readonly x: Mm
  readonly y: Mm
  readonly z: Mm
  readonly face: Face
  readonly diameter: Mm
  readonly depth: Mm
}

/** The skin of a board with everything that is worked on it. */
export function meshOf(board: Board): Mesh {
  const cells = cellsOf(board)
  return { ...clippedSkin({ ...facesOf(cells), edges: sharpEdges(cells) }, board), holes: holesOf(board) }
}

/** Equal for boards that look alike wherever they lie, so that they can share one mesh. */
export const shapeKey: (board: Board) => string = remember(({ length, width, thickness, operations }: Board) => {
  return JSON.stringify([length, width, thickness, operations])
})

function holesOf({ operations, thickness }: Board): Hole[] {
  return operations.flatMap((operation): Hole[] => {
    if (operation.kind !== 'holeRow') return []
    const { face, diameter, depth } = operation
    const z = face === 'inside' ? thickness : 0
    return centresOf(operation).map(({ x, y }) => ({ x, y, z, face, diameter, depth }))
  })
}
