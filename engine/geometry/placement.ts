import { assert } from '../basics/assert'
import type { Mm } from '../units/length'
import { type Axis, cross, isSame, plus, unit, type Vec3 } from './vector'

/**
 * How a board lies in its cabinet. The board's own frame has x along its length (the grain), y across it, z through
 * its thickness; the placement says where its corner (0, 0, 0) is and which way each of the three runs. The three are
 * always right-handed, so a mirrored board is a different board and never a mirrored placement.
 */
export interface Placement {
  readonly origin: Vec3
  readonly length: Axis
  readonly width: Axis
  readonly thickness: Axis
  /** Turned about the upright through its origin, for a board that stands slantwise; none where it is left out. */
  readonly turn?: Turn
}

/** An angle by its cosine and sine, about +y: what points along x before points to (cos, -sin) in x and z after. */
export interface Turn {
  readonly cos: number
  readonly sin: number
}

/** A placement from two directions; the thickness runs wherever the right hand points. */
export function placement(origin: Vec3, length: Axis, width: Axis): Placement {
  return { origin, length, width, thickness: thirdAxis(length, width) }
}

/** The point (x, y, z) of the board's own frame, in the frame of the cabinet. */
export function toCabinet(at: Placement, x: Mm, y: Mm, z: Mm): Vec3 {
  const [a, b, c] = [unit(at.length), unit(at.width), unit(at.thickness)]
  // Written out, since every corner of every board and hole comes through here.
  const straight = {
    x: a.x * x + (b.x * y + c.x * z),
    y: a.y * x + (b.y * y + c.y * z),
    z: a.z * x + (b.z * y + c.z * z),
  }
  return plus(at.origin, at.turn ? turned(straight, at.turn) : straight)
}

/** A direction turned about the upright. */
export function turned({ x, y, z }: Vec3, { cos, sin }: Turn): Vec3 {
  return { x: x * cos + z * sin, y, z: z * cos - x * sin }
}

const AXES: readonly Axis[] = ['+x', '-x', '+y', '-y', '+z', '-z']

function thirdAxis(length: Axis, width: Axis): Axis {
  const third = cross(unit(length), unit(width))
  const axis = AXES.find((candidate) => isSame(unit(candidate), normal(third)))
  assert(axis, `length ${length} and width ${width} of a board are not square to each other`)
  return axis
}

/** Turns -0 into 0, which `===` calls equal and `Object.is` does not. */
function normal(v: Vec3): Vec3 {
  return { x: v.x + 0, y: v.y + 0, z: v.z + 0 }
}
