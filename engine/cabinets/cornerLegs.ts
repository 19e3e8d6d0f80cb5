import type { Box } from '../geometry/box'
import type { Vec3 } from '../geometry/vector'
import type { Corner } from '../project/corner'
import { type Mm, settle } from '../units/length'
import type { BoardRole, Explode } from './board'
import type { Carcass } from './carcass'
import { mirroredBevel, mirroredEdge } from './mirroredEdge'
import { pastRight } from './past'
import { LIES, type Lie, type Piece } from './piece'

/**
 * A corner cabinet from above, the corner at its left. Each leg is a carcass of its own: seen from the room it has its
 * side at its free end only, the other leg at its right end. Boards of the other leg are made in that leg's frame and
 * turned into the cabinet's; a corner at the right is the whole mirrored.
 *
 *      0    otherDepth      width
 *    0 +--------------------+
 *      |          own leg   |
 *      |      +-------------+  depth
 *      |other |
 *      |leg   |
 *      +------+  other
 *      z
 */
export interface Legs {
  readonly kind: Corner['kind']
  readonly own: Carcass
  /** As deep and as wide as it is along the other wall. */
  readonly other: Carcass
  /** The front corners of both free ends, with their face frames. */
  readonly ends: { readonly own: Point; readonly other: Point }
}

/** From above, in the cabinet's frame. */
interface Point {
  readonly x: Mm
  readonly z: Mm
}

/** The legs, with `past` how far a face frame stands past the free end of the other one. */
export function legsOf(own: Carcass, { kind, other, otherDepth }: Corner, past: Mm): Legs {
  const { frame } = own
  const thickness = frame?.thickness ?? 0
  const leg: Carcass = {
    ...own,
    width: settle(other - past),
    depth: settle(otherDepth - thickness),
    frame: frame && { ...frame, rules: { ...frame.rules, pastLeft: past, pastRight: 0 } },
  }
  const ends = {
    own: { x: settle(own.width + pastRight(own)), z: settle(own.depth + thickness) },
    other: { x: settle(otherDepth), z: settle(other) },
  }
  const legs = { kind, own, other: leg, ends }
  return kind === 'diagonal' && frame ? behindSlant(legs, thickness) : legs
}

/**
 * Behind a slanting face frame both legs are as deep as the line of its rear: the face goes from the front corner of one end
 * to that of the other, and the frame is so thick behind it. Seen at the own end, with the frame standing past the side:
 *
 *      side |past| front corner of the end
 *           |    +
 *           |  / /  frame
 *      -----+/ /    depth of the carcass there
 */
function behindSlant(legs: Legs, thickness: Mm): Legs {
  const { own, other, ends } = legs
  const [along, out] = [ends.own.x - ends.other.x, ends.other.z - ends.own.z]
  const long = Math.hypot(along, out)
  const past = { own: ends.own.x - own.width, other: ends.other.z - other.width }
  return {
    ...legs,
    own: { ...own, depth: settle(ends.own.z + (out * past.own - thickness * long) / along) },
    other: { ...other, depth: settle(ends.other.x + (along * past.other - thickness * long) / out) },
  }
}

const TURNED: Readonly<Record<Lie, Lie>> = {
  uprightLookingRight: 'uprightLookingIn',
  uprightLookingLeft: 'uprightLookingOut',
  uprightLookingOut: 'uprightLookingRight',
  uprightLookingIn: 'uprightLookingLeft',
  levelLookingUp: 'levelLookingUp',
  levelLookingDown: 'levelLookingDown',
  onEdgeLookingOut: 'onEdgeLookingRight',
  onEdgeLookingIn: 'onEdgeLookingLeft',
  onEdgeLookingRight: 'onEdgeLookingIn',
  onEdgeLookingLeft: 'onEdgeLookingOut',
}

/** A board of the other leg where it lies in the cabinet: along that wall is towards the corner. */
export function turnedLeg(piece: Piece, { other }: Legs): Piece {
  const turnedWay = ({ x, y, z }: Vec3): Vec3 => ({ x: z, y, z: 0 - x })
  return {
    ...piece,
    box: turnedBox(piece.box, other.width),
    ...(piece.seat ? { seat: turnedBox(piece.seat, other.width) } : {}),
    lie: TURNED[piece.lie],
    banded: { ...piece.banded, edges: edgeOf(piece) },
    explode: { ...piece.explode, by: turnedWay(piece.explode.by) },
  }
}

function turnedBox({ min, max }: Box, width: Mm): Box {
  return {
    min: { x: min.z, y: min.y, z: settle(width - max.x) },
    max: { x: max.z, y: max.y, z: settle(width - min.x) },
  }
}

/** The edge towards the room by its place on the board, which turns with it. */
function edgeOf({ banded: { edges }, lie }: Piece): Piece['banded']['edges'] {
  if (edges !== 'front') return edges
  return LIES[lie].width === '+z' ? 'high' : 'low'
}

const MIRRORED_LIES: Partial<Readonly<Record<Lie, Lie>>> = {
  uprightLookingRight: 'uprightLookingLeft',
  uprightLookingLeft: 'uprightLookingRight',
  onEdgeLookingRight: 'onEdgeLookingLeft',
  onEdgeLookingLeft: 'onEdgeLookingRight',
}

const MIRRORED_ROLES: Partial<Readonly<Record<BoardRole, BoardRole>>> = {
  leftSide: 'rightSide',
  rightSide: 'leftSide',
  leftEnd: 'rightEnd',
  rightEnd: 'leftEnd',
}

/** A board on the other side of the middle of the cabinet, its inside still inside. */
export function mirrored(piece: Piece, width: Mm): Piece {
  const { away, seat, banded, bevels, explode } = piece
  return {
    ...piece,
    role: MIRRORED_ROLES[piece.role] ?? piece.role,
    box: mirroredBox(piece.box, width),
    ...(seat ? { seat: mirroredBox(seat, width) } : {}),
    ...(away ? { away: { ...away, box: mirroredBox(away.box, width) } } : {}),
    lie: MIRRORED_LIES[piece.lie] ?? piece.lie,
    banded: { ...banded, edges: mirroredEdges(piece) },
    ...(bevels ? { bevels: bevels.map((one) => mirroredBevel(one, LIES[piece.lie])) } : {}),
    explode: mirroredWay(explode),
  }
}

export function mirroredBox({ min, max }: Box, width: Mm): Box {
  return { min: { ...min, x: settle(width - max.x) }, max: { ...max, x: settle(width - min.x) } }
}

export function mirroredWay(explode: Explode): Explode {
  return { ...explode, by: { ...explode.by, x: 0 - explode.by.x } }
}

function mirroredEdges({ banded: { edges }, lie }: Piece): Piece['banded']['edges'] {
  const named = edges === 'low' || edges === 'high' ? [edges] : edges
  return typeof named === 'string' ? named : named.map((edge) => mirroredEdge(edge, LIES[lie]))
}
