import type { Box } from '../geometry/box'
import { settle } from '../units/length'
import type { Board, BoardRole } from './board'
import { type DadoEnds, endedAtFront, offFor } from './dadoFront'
import { inBoard, notchOf } from './frame'
import { NAILERS } from './nailer'
import type { EdgeSlot, Notch, Operation, Recess } from './operation'
import { boardOf, type Piece } from './piece'
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
  insertEnd: ['insertDivider'],
}

/** What is cut out of a board right through, to pass round another. */
const PASSES: Partial<Readonly<Record<BoardRole, readonly BoardRole[]>>> = {
  leftSide: NAILERS,
  rightSide: NAILERS,
  partition: ['frontStretcher', 'backStretcher', ...NAILERS],
  fixedShelf: ['cornerPost'],
  adjustableShelf: ['cornerPost'],
}

/**
 * The boards with what is worked on them for each other: where the room of one board reaches into another, the other
 * is cut away by exactly that; but for what is before the end of a dado that stops behind the front edge, which goes of
 * the one. Without a word of a method dados run out.
 */
export function joined(pieces: readonly Piece[], ends: DadoEnds = RUNNING_OUT): Board[] {
  return pieces.map((piece) => {
    const board = boardOf(piece)
    const own = piece.cuts?.map((cut) => cutOf(board, inBoard(board, cut), piece)) ?? []
    const operations = [
      ...own,
      ...pieces.flatMap((mate) => jointFor(board, piece, mate, ends)),
      ...pieces.flatMap((house) => cornersFor(board, piece, house, ends)),
    ]
    return operations.length === 0 ? board : { ...board, operations: [...board.operations, ...operations] }
  })
}

const RUNNING_OUT: DadoEnds = { banding: { carcass: 0, fronts: 0, isInFinishedSize: false } }

function jointFor(board: Board, piece: Piece, mate: Piece, ends: DadoEnds): Operation[] {
  const passes = PASSES[piece.role]?.includes(mate.role) ?? false
  if (!passes && !isHouseOf(piece, mate)) return []
  return sharedRooms(piece, mate).flatMap((shared): Operation[] => {
    if (passes && isCutThrough(boardOf(mate), shared)) return [notchOf(inBoard(board, shared))]
    // Of two boards that reach into each other the one that is not cut through receives the other.
    if (isCutThrough(board, shared)) return []
    const { housed } = endedAtFront(shared, piece, mate, ends)
    return housed ? [recessOf(board, inBoard(board, housed), mate)] : []
  })
}

/** What goes of a board before the end of a dado that it is in. */
function cornersFor(board: Board, piece: Piece, house: Piece, ends: DadoEnds): Notch[] {
  if (!isHouseOf(house, piece)) return []
  return sharedRooms(house, piece).flatMap((shared) => {
    if (isCutThrough(boardOf(house), shared)) return []
    const { off } = endedAtFront(shared, house, piece, ends)
    return off ? [{ ...notchOf(inBoard(board, off)), for: offFor(house, piece, ends) }] : []
  })
}

function isHouseOf(piece: Piece, mate: Piece): boolean {
  return HOUSES[piece.role]?.includes(mate.role) ?? false
}

function sharedRooms(piece: Piece, mate: Piece): Box[] {
  return roomsOf(mate).flatMap((room) => sharedRoom(piece.box, room) ?? [])
}

/** What a board takes of others: of an L its two legs, so that nothing is cut for the corner that it has not. */
function roomsOf({ box, seat, away }: Piece): Box[] {
  if (away?.outline !== 'L') return [seat ?? box]
  const { min, max } = box
  const isAtLeft = away.box.min.x > min.x
  const deep = isAtLeft ? { min, max: { ...max, x: away.box.min.x } } : { min: { ...min, x: away.box.max.x }, max }
  const along = isAtLeft
    ? { min: { ...min, x: away.box.min.x }, max: { ...max, z: away.box.min.z } }
    : { min, max: { ...max, x: away.box.max.x, z: away.box.min.z } }
  return [deep, along]
}

function isCutThrough(board: Board, shared: Box): boolean {
  const { min, max } = inBoard(board, shared)
  return settle(max.z - min.z) >= board.thickness
}

/** What a room is in a board that it is cut out of: right through, sunk into a face, or a slot in an edge. */
function cutOf(board: Board, own: Box, piece: Piece): Operation {
  const [isAtOutside, isAtInside] = [own.min.z <= 0, own.max.z >= board.thickness]
  if (isAtOutside && isAtInside) return notchOf(own)
  return isAtOutside || isAtInside ? recessOf(board, own, piece) : slotOf(board, own)
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

/**
 * What runs with the grain is a groove, what runs across it a dado, and either along an edge or end is a rabbet. What is
 * cut with play is a groove whichever way it runs, as for the second back of a corner.
 */
function recessOf(board: Board, { min, max }: Box, { seat }: Piece): Recess {
  const length = settle(max.x - min.x)
  const width = settle(max.y - min.y)
  const runsAcross = width >= length
  const isAtEdge = runsAcross ? min.x === 0 || max.x === board.length : min.y === 0 || max.y === board.width
  return {
    kind: isAtEdge ? 'rabbet' : runsAcross && !seat ? 'dado' : 'groove',
    face: max.z === board.thickness ? 'inside' : 'outside',
    x: min.x,
    y: min.y,
    length,
    width,
    depth: settle(max.z - min.z),
  }
}
