import { type Placement, type Turn, turned } from '../geometry/placement'
import { type Axis, plus, type Vec3 } from '../geometry/vector'
import { type Mm, settle } from '../units/length'
import type { Board, Leg } from './board'

/**
 * A plane in a corner cabinet that doors or a face frame stand in. They are made flat, as they are seen from the room: x
 * from their left, y up, z out of the plane. Then they are stood up there, and what is worked on them stays what it is.
 */
export interface FacePlane {
  /** Where their frame begins, in the cabinet's. */
  readonly x: Mm
  readonly z: Mm
  readonly turn: Turn
}

/** The plane of the wall that a cabinet stands at. */
export const OWN_WALL: FacePlane = { x: 0, z: 0, turn: { cos: 1, sin: 0 } }

/** A board that was made flat, in its plane. */
export function stoodIn(board: Board, { x, z, turn }: FacePlane): Board {
  const { explode, placement } = board
  const origin = plus(turned(placement.origin, turn), { x, y: 0, z })
  const way = <Of extends Leg>(leg: Of): Of => ({ ...leg, by: turned(leg.by, turn) })
  return {
    ...board,
    placement: placed(placement, origin, turn),
    explode: { ...way(explode), ...(explode.after ? { after: way(explode.after) } : {}) },
  }
}

/** The plane as it is undone: what stood in it is flat again. */
export function undone({ x, z, turn }: FacePlane): FacePlane {
  const back = { cos: turn.cos, sin: 0 - turn.sin }
  const at = turned({ x: 0 - x, y: 0, z: 0 - z }, back)
  return { x: settle(at.x), z: settle(at.z), turn: back }
}

/** A board that lies square to its cabinet has no turn, only other axes. */
function placed({ length, width, thickness }: Placement, at: Vec3, turn: Turn): Placement {
  const origin = { x: settle(at.x), y: settle(at.y), z: settle(at.z) }
  if (turn.cos !== 0 && turn.sin !== 0) return { origin, length, width, thickness, turn }
  const way = (axis: Axis) => turnedAxis(axis, turn)
  return { origin, length: way(length), width: way(width), thickness: way(thickness) }
}

function turnedAxis(axis: Axis, { cos, sin }: Turn): Axis {
  if (axis.endsWith('y')) return axis
  const isAlongX = axis.endsWith('x')
  const sign = (axis.startsWith('+') ? 1 : -1) * (cos !== 0 ? cos : isAlongX ? -sin : sin)
  const dimension = (cos !== 0) === isAlongX ? 'x' : 'z'
  return `${sign > 0 ? '+' : '-'}${dimension}` as Axis
}
