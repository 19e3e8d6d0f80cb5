import type { Box } from '../geometry/box'
import type { Placement } from '../geometry/placement'
import type { Axis } from '../geometry/vector'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import type { Notch } from './operation'

type Dimension = 'x' | 'y' | 'z'

/** Where an axis starts and which way it runs: `-z` starts at the greatest z. */
export function dimensionOf(axis: Axis): { readonly dimension: Dimension; readonly sign: 1 | -1 } {
  return { dimension: axis[1] as Dimension, sign: axis[0] === '+' ? 1 : -1 }
}

/** A box of the cabinet's frame in the frame of a board. */
export function inBoard({ placement }: Board, box: Box): Box {
  return inFrame(placement, box)
}

/** A box of the cabinet's frame as one that lies by a placement sees it. */
export function inFrame({ origin, length, width, thickness }: Placement, box: Box): Box {
  const along = (axis: Axis): readonly [Mm, Mm] => {
    const dimension = axis[1] as Dimension
    const from = box.min[dimension] - origin[dimension]
    const to = box.max[dimension] - origin[dimension]
    return axis[0] === '+' ? [settle(from), settle(to)] : [settle(0 - to), settle(0 - from)]
  }
  const [x, y, z] = [along(length), along(width), along(thickness)]
  return { min: { x: x[0], y: y[0], z: z[0] }, max: { x: x[1], y: y[1], z: z[1] } }
}

export function notchOf({ min, max }: Pick<Box, 'min' | 'max'>): Notch {
  return { kind: 'notch', x: min.x, y: min.y, length: settle(max.x - min.x), width: settle(max.y - min.y) }
}
