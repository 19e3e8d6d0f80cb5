import type { Box } from '../geometry/box'
import type { Vec3 } from '../geometry/vector'
import { type Mm, settle } from '../units/length'
import type { Board, BoardRole } from './board'
import type { EdgeSlot, Notch, Operation, Recess } from './operation'
import { boardOf, dimensionOf, type Piece } from './piece'
import { sharedRoom } from './rooms'

/** Which boards are let into which. Anything else that meets is butted. */
const HOUSES: Partial<Readonly<Record<BoardRole, readonly BoardRole[]>>> = {
  leftSide: ['bottom', 'top', 'fixedShelf', 'back'],
  rightSide: ['bottom', 'top', 'fixedShelf', 'back'],
  bottom: ['leftSide', 'rightSide', 'back', 'partition'],
  top: ['leftSide', 'rightSide', 'back', 'partition'],
  frontStretcher: ['partition'],
  backStretcher: ['back', 'partition'],
  partition: ['fixedShelf'],
  fixedShelf: ['partition'],
  drawerSide: ['drawerBottom'],
  drawerBoxFront: ['drawerBottom'],
  drawerBoxBack: ['drawerBottom'],
}

/** What is cut out of a board right through, to pass round another. */
const PASSES: Partial<Readonly<Record<BoardRole, readonly BoardRole[]>>> = {
  partition: ['frontStretcher', 'backStretcher', 'topNailer', 'bottomNailer'],
}

/**
 * The boards with what is worked on them for each other: where the room of one board reaches into another, the other
 * is cut away by exactly that.
 */
export function joined(pieces: readonly Piece[]): Board[] {
  return pieces.map((piece) => {
    const board = boardOf(piece)
    const own = piece.cuts?.map((cut) => cutOf(board, inBoard(board, cut))) ?? []
    const operations = [...own, ...pieces.flatMap((mate) => jointFor(board, piece, mate))]
    return operations.length === 0 ? board : { ...board, operations }
  })
}

function jointFor(board: Board, piece: Piece, mate: Piece): Operation[] {
  const houses = HOUSES[piece.role]?.includes(mate.role) ?? false
  const passes = PASSES[piece.role]?.includes(mate.role) ?? false
  if (!houses && !passes) return []
  const shared = sharedRoom(piece.box, mate.seat ?? mate.box)
  if (!shared) return []
  const own = inBoard(board, shared)
  if (passes && isCutThrough(boardOf(mate), shared)) return [notchOf(own)]
  // Of two boards that reach into each other the one that is not cut through receives the other.
  return isCutThrough(board, shared) ? [] : [recessOf(board, own)]
}

function isCutThrough(board: Board, shared: Box): boolean {
  const { min, max } = inBoard(board, shared)
  return settle(max.z - min.z) >= board.thickness
}

/** A box of the cabinet's frame in the frame of a board. */
export function inBoard({ placement: { origin, length, width, thickness } }: Board, box: Box): Box {
  const along = (axis: typeof length): readonly [Mm, Mm] => {
    const { dimension, sign } = dimensionOf(axis)
    const ends = [box.min, box.max].map((corner: Vec3) => settle(sign * (corner[dimension] - origin[dimension])) + 0)
    return [Math.min(...ends), Math.max(...ends)]
  }
  const [x, y, z] = [along(length), along(width), along(thickness)]
  return { min: { x: x[0], y: y[0], z: z[0] }, max: { x: x[1], y: y[1], z: z[1] } }
}

export function notchOf({ min, max }: Box): Notch {
  return { kind: 'notch', x: min.x, y: min.y, length: settle(max.x - min.x), width: settle(max.y - min.y) }
}

/** What a room is in a board that it is cut out of: right through, sunk into a face, or a slot in an edge. */
function cutOf(board: Board, own: Box): Operation {
  const [isAtOutside, isAtInside] = [own.min.z <= 0, own.max.z >= board.thickness]
  if (isAtOutside && isAtInside) return notchOf(own)
  return isAtOutside || isAtInside ? recessOf(board, own) : slotOf(board, own)
}

function slotOf(board: Board, { min, max }: Box): EdgeSlot {
  const length = settle(max.x - min.x)
  return {
    kind: length >= board.length ? 'edgeGroove' : 'mortise',
    edge: min.y <= 0 ? 'low' : 'high',
    x: min.x,
    length,
    up: min.z,
    width: settle(max.z - min.z),
    depth: settle(max.y - min.y),
  }
}

/** What runs with the grain is a groove, what runs across it a dado, and either along an edge or end is a rabbet. */
function recessOf(board: Board, { min, max }: Box): Recess {
  const length = settle(max.x - min.x)
  const width = settle(max.y - min.y)
  const runsAcross = width >= length
  const isAtEdge = runsAcross ? min.x === 0 || max.x === board.length : min.y === 0 || max.y === board.width
  return {
    kind: isAtEdge ? 'rabbet' : runsAcross ? 'dado' : 'groove',
    face: max.z === board.thickness ? 'inside' : 'outside',
    x: min.x,
    y: min.y,
    length,
    width,
    depth: settle(max.z - min.z),
  }
}
