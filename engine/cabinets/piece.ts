import type { MaterialId } from '../basics/id'
import { remember } from '../basics/remember'
import type { Box } from '../geometry/box'
import { placement } from '../geometry/placement'
import type { Axis, Vec3 } from '../geometry/vector'
import { type Mm, settle } from '../units/length'
import {
  type Banding,
  type Board,
  type BoardRole,
  type Explode,
  type GrainRun,
  NO_BANDING,
  type Outline,
} from './board'
import { dimensionOf, inFrame, notchOf } from './frame'
import type { Bevel, Clip, Notch } from './operation'

/** A board before anything is worked on it: the room it takes in the cabinet's frame, tongues included, and how it lies. */
export interface Piece {
  readonly role: BoardRole
  readonly number: number
  readonly material: MaterialId
  readonly box: Box
  /** What is cut for it in the boards around it, where that is more than it takes: a back with its play. */
  readonly seat?: Box
  /** What is cut out of it for the boards that it is joined to, in the cabinet's frame: tenons, mortises, grooves. */
  readonly cuts?: readonly Box[]
  readonly lie: Lie
  /**
   * The edge that is banded: to the room, at the start or the end of its width, within its outline; all four of a front; or
   * the named ones, of what is seen from some sides only.
   */
  readonly banded: {
    readonly edges: 'front' | 'low' | 'high' | 'inside' | 'all' | 'none' | readonly (keyof Banding)[]
    readonly thickness: Mm
  }
  /** A corner of its box that is cut away, right through: the room that goes. */
  readonly away?: { readonly outline: Outline; readonly box: Box }
  /** Its edges and ends that are sawn with the blade tilted, called as its board has them. */
  readonly bevels?: readonly Bevel[]
  readonly run?: GrainRun
  /** Left on its width to be fitted on site. */
  readonly scribe?: Mm
  readonly explode: Explode
}

/** How a board lies: which way its length and its width run. The thickness follows, and the inside face is at its end. */
export type Lie = keyof typeof LIES

/** Which way the length and the width of a board run. */
export const LIES = {
  /** A left side or a partition: inside looks right. */
  uprightLookingRight: { length: '+y', width: '+z' },
  /** A right side: inside looks left. */
  uprightLookingLeft: { length: '+y', width: '-z' },
  /** A back: inside looks into the room. */
  uprightLookingOut: { length: '+y', width: '-x' },
  /** A door: inside looks at the wall. */
  uprightLookingIn: { length: '+y', width: '+x' },
  /** A bottom or a shelf: inside looks up. */
  levelLookingUp: { length: '+x', width: '-z' },
  /** A top or a flat stretcher: inside looks down. */
  levelLookingDown: { length: '+x', width: '+z' },
  /** A nailer: on its edge, inside looks into the room. */
  onEdgeLookingOut: { length: '+x', width: '+y' },
  /** A kick board: on its edge, inside looks at the wall. */
  onEdgeLookingIn: { length: '-x', width: '+y' },
  /** The left side of a drawer box: on its edge from front to rear. */
  onEdgeLookingRight: { length: '-z', width: '+y' },
  /** The right side of a drawer box. */
  onEdgeLookingLeft: { length: '+z', width: '+y' },
} as const satisfies Record<string, { length: Axis; width: Axis }>

export const UNBANDED: Piece['banded'] = { edges: 'none', thickness: 0 }

/** Bands on some edges of a board, where they leave something of its width. */
export function bandedOn(edges: readonly (keyof Banding)[], thickness: Mm, width: Mm): Piece['banded'] {
  return thickness > 0 && 2 * thickness < width ? { edges, thickness } : UNBANDED
}

/** The room between two corners, settled, so that equal boards are equal to `===`. */
export function room(x: readonly [Mm, Mm], y: readonly [Mm, Mm], z: readonly [Mm, Mm]): Box {
  return {
    min: { x: settle(x[0]), y: settle(y[0]), z: settle(z[0]) },
    max: { x: settle(x[1]), y: settle(y[1]), z: settle(z[1]) },
  }
}

/** The third direction of every lie, worked out once. */
const THICKNESS = Object.fromEntries(
  Object.entries(LIES).map(([lie, { length, width }]) => [
    lie,
    placement({ x: 0, y: 0, z: 0 }, length, width).thickness,
  ]),
) as Readonly<Record<Lie, Axis>>

/** The board that a piece is, with nothing worked on it yet. */
export const boardOf: (piece: Piece) => Board = remember((piece: Piece) => {
  const { length, width } = LIES[piece.lie]
  const thickness = THICKNESS[piece.lie]
  const at = { origin: cornerOf(piece.box, [length, width, thickness]), length, width, thickness }
  const { away } = piece
  return {
    role: piece.role,
    number: piece.number,
    material: piece.material,
    length: extent(piece.box, length),
    width: extent(piece.box, width),
    thickness: extent(piece.box, thickness),
    banding: bandingOf(piece, width),
    placement: at,
    operations: [...(away ? [cutAwayIn(at, away)] : []), ...(piece.bevels ?? [])],
    ...(away ? { outline: away.outline } : {}),
    ...insideBandingOf(piece),
    ...(piece.run ? { run: piece.run } : {}),
    ...(piece.scribe ? { scribe: piece.scribe } : {}),
    explode: piece.explode,
  }
})

function extent(box: Box, axis: Axis): Mm {
  const { dimension } = dimensionOf(axis)
  return settle(box.max[dimension] - box.min[dimension])
}

/** The corner of the box where all of the axes start. */
function cornerOf(box: Box, axes: readonly Axis[]): Vec3 {
  const corner = { ...box.min }
  for (const axis of axes) {
    const { dimension, sign } = dimensionOf(axis)
    corner[dimension] = sign > 0 ? box.min[dimension] : box.max[dimension]
  }
  return corner
}

/** The front edge of a board is at the far end of its width where that runs to the room, else at the near end. */
function bandingOf({ banded: { edges, thickness } }: Piece, width: Axis): Banding {
  if (edges === 'all') return { low: thickness, high: thickness, start: thickness, end: thickness }
  if (edges === 'none' || edges === 'inside') return NO_BANDING
  if (typeof edges !== 'string') return { ...NO_BANDING, ...Object.fromEntries(edges.map((edge) => [edge, thickness])) }
  return edges === 'high' || (edges === 'front' && width === '+z')
    ? { ...NO_BANDING, high: thickness }
    : { ...NO_BANDING, low: thickness }
}

/** The corner that is cut away, as it is worked on the board. */
function cutAwayIn(placement: Board['placement'], { outline, box }: NonNullable<Piece['away']>): Notch | Clip {
  const { min, max } = inFrame(placement, box)
  if (outline === 'L') return notchOf({ min, max })
  return {
    kind: 'clip',
    end: min.x > 0 ? 'end' : 'start',
    edge: min.y > 0 ? 'high' : 'low',
    length: settle(max.x - min.x),
    width: settle(max.y - min.y),
  }
}

/** Along the two edges of an inside corner, or the one of a corner cut off. */
function insideBandingOf({ away, banded }: Piece): Pick<Board, 'insideBanding'> {
  if (!away || banded.edges !== 'inside' || !(banded.thickness > 0)) return {}
  const { min, max } = away.box
  const [x, z] = [max.x - min.x, max.z - min.z]
  const length = settle(away.outline === 'L' ? x + z : Math.hypot(x, z))
  return { insideBanding: { thickness: banded.thickness, length } }
}
