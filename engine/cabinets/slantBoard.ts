import { type Turn, turned } from '../geometry/placement'
import { plus, type Vec3 } from '../geometry/vector'
import { type Mm, settle } from '../units/length'
import type { Board, Explode } from './board'
import { mirroredBevel } from './mirroredEdge'
import { boardOf, type Piece } from './piece'

/**
 * A board that stands slantwise: its room is given in a frame of its own, with x along the line of its face from `from`
 * and z out of it, and is turned into the cabinet's.
 */
export function slantBoard(
  piece: Omit<Piece, 'number' | 'explode'>,
  from: { readonly x: Mm; readonly z: Mm },
  turn: Turn,
  explode: Explode,
): Board {
  const board = boardOf({ ...piece, number: 1, explode })
  const origin = plus(turned(board.placement.origin, turn), { x: from.x, y: 0, z: from.z })
  return { ...board, placement: { ...board.placement, origin: settledPoint(origin), turn } }
}

/** The mirror image about the middle of a cabinet: the board begins at its other end, so that its face stays its face. */
export function mirroredSlant(board: Board, width: Mm): Board {
  const { placement, length, width: across, explode } = board
  const turn = placement.turn ?? { cos: 1, sin: 0 }
  // Of a board on its edge the length lies along the line, of an upright one the width.
  const along = placement.length.endsWith('x')
    ? { axis: placement.length, by: length }
    : { axis: placement.width, by: across }
  const way = turned({ x: along.axis.startsWith('+') ? along.by : -along.by, y: 0, z: 0 }, turn)
  const far = plus(placement.origin, way)
  return {
    ...board,
    operations: board.operations.map((one) => (one.kind === 'bevel' ? mirroredBevel(one, placement) : one)),
    placement: {
      ...placement,
      origin: settledPoint({ ...far, x: width - far.x }),
      turn: { cos: turn.cos, sin: 0 - turn.sin },
    },
    explode: { ...explode, by: { ...explode.by, x: 0 - explode.by.x } },
  }
}

function settledPoint({ x, y, z }: Vec3): Vec3 {
  return { x: settle(x), y: settle(y), z: settle(z) }
}
