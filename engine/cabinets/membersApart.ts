import type { Front } from '../project/document'
import { childrenOf } from '../project/frontTree'
import type { Mm } from '../units/length'
import type { Explode } from './board'
import type { Frame } from './carcass'
import type { Piece } from './piece'

/*
 * How face frames and five-part fronts come apart once they stand free before the carcass:
 *
 *   0.4 .. 0.6    all boards of the fronts move away from the middle, each as its own middle lies
 *   0.4 .. 0.5    the stiles of a face frame go left and right, off every tenon
 *   0.5 .. 0.6    its rails go up and down, and so do mid rails with all that stands between two of them
 *   0.6 .. 0.7    mullions go left and right, with all that stands between two of them
 */

/** Of the way from the middle of all fronts to the middle of a board: what lies apart stays apart. */
const SHARE = 0.15
/** Beyond its tenon, each member of a face frame stands off the next by this, mm. */
const OFF: Mm = 24

/**
 * The boards of fronts, some of them of five parts: stiles outwards, rails up and down, a panel in its place between. In an
 * inside corner, at `from`, all of them go away from it, since the boards of another leaf are there.
 */
export function frontsApart(pieces: readonly Piece[], from: 'middle' | 'left' | 'right' = 'middle'): Piece[] {
  const ends = (axis: 'x' | 'y') =>
    [Math.min(...pieces.map(({ box }) => box.min[axis])), Math.max(...pieces.map(({ box }) => box.max[axis]))] as const
  const [left, right] = ends('x')
  const [low, high] = ends('y')
  const [x, y] = [from === 'middle' ? (left + right) / 2 : from === 'left' ? left : right, (low + high) / 2]
  return pieces.map((piece) => {
    const { min, max } = piece.box
    const by = { x: SHARE * ((min.x + max.x) / 2 - x), y: SHARE * ((min.y + max.y) / 2 - y), z: 0 }
    return { ...piece, explode: { ...piece.explode, after: { by, from: 0.4, to: 0.6 } } }
  })
}

/** Where a member of a face frame goes when its frame comes apart: so many members away from the middle. */
export interface Off {
  readonly along: 'stiles' | 'rails' | 'mullions'
  /** Right or up above 0. */
  readonly steps: number
}

const WHEN = { stiles: [0.4, 0.5], rails: [0.5, 0.6], mullions: [0.6, 0.7] } as const

/** Forward with its frame, and then off the members that it is joined to. */
export function memberApart(whole: Explode, { along, steps }: Off, { tenon }: Frame): Explode {
  const [from, to] = WHEN[along]
  const way = steps * (tenon + OFF)
  const by = along === 'rails' ? { x: 0, y: way, z: 0 } : { x: way, y: 0, z: 0 }
  return { ...whole, after: { by, from, to } }
}

/** How far the outer members go: past all that is parted between them. */
export function outerSteps(front: Front, along: 'stiles' | 'rails'): number {
  const parted = front.kind === (along === 'stiles' ? 'columns' : 'rows')
  return parted ? childrenOf(front).length : 1
}

/** What stands in one part of a divided front, or with `+ 0.5` between that and the next. Rows come from the top. */
export function innerOff(front: Front, place: number): Off {
  const steps = 2 * place - childrenOf(front).length + 1
  return front.kind === 'columns' ? { along: 'mullions', steps } : { along: 'rails', steps: 0 - steps }
}
