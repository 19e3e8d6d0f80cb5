import type { Board, BoardRole } from '../../engine/cabinets/board'
import { boxOf } from '../../engine/cabinets/boardBox'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { aroundSlant, isSlantedCut, type Operation } from '../../engine/cabinets/operation'
import { boredBy, removedBy } from '../../engine/cabinets/removed'
import { type Box, boxAround, boxOver } from '../../engine/geometry/box'
import { toCabinet } from '../../engine/geometry/placement'
import type { Cabinet } from '../../engine/project/document'
import { mirroredFront, mirroredInterior } from '../../engine/project/mirror'
import type { Made } from './anyMade'
import { mirroredFrame } from './frames'
import type { Law } from './judge'

/** Every width settles by itself on the grid of 1/3200 mm, so that a few ticks may lie at the other end. */
const TICKS = 0.002
/** The corner of a board that stands slantwise is settled in two directions. */
const SLANTED = 0.01

const OTHER_HAND: Partial<Record<BoardRole, BoardRole>> = {
  leftSide: 'rightSide',
  rightSide: 'leftSide',
  leftEnd: 'rightEnd',
  rightEnd: 'leftEnd',
}

function inMirror({ cabinet, rules }: Made) {
  const { corner, beside, front, interior } = cabinet
  const seen: Cabinet = {
    ...cabinet,
    front: mirroredFront(front),
    interior: mirroredInterior(interior),
    beside: { left: beside.right, right: beside.left },
    corner: corner && { ...corner, hand: corner.hand === 'left' ? 'right' : 'left' },
  }
  return buildCabinet(seen, { ...rules, method: mirroredFrame(rules.method) })
}

function flipped({ min, max }: Box, width: number): Box {
  return { min: { ...min, x: width - max.x }, max: { ...max, x: width - min.x } }
}

function areAlike({ min, max }: Box, other: Box, by: number): boolean {
  return (
    Math.abs(min.x - other.min.x) < by &&
    Math.abs(max.x - other.max.x) < by &&
    Math.abs(min.y - other.min.y) < by &&
    Math.abs(max.y - other.max.y) < by &&
    Math.abs(min.z - other.min.z) < by &&
    Math.abs(max.z - other.max.z) < by
  )
}

/** What is worked on a board, and the room of it in the frame of its cabinet. */
interface Work {
  readonly what: string
  readonly room: Box
}

function workOn(board: Board): Work[] {
  return board.operations.flatMap((one) => {
    const what = whatOf(one)
    return roomsOf(one, board).map((room) => ({ what, room: inCabinet(room, board) }))
  })
}

function whatOf(one: Operation): string {
  if (one.kind === 'bevel') return `bevel ${one.face}`
  return one.kind === 'holeRow' ? one.purpose : one.kind
}

/** In the frame of the board. */
function roomsOf(one: Operation, board: Board): Box[] {
  if (one.kind === 'holeRow') return boredBy(one, board)
  const room = removedBy(isSlantedCut(one) ? aroundSlant(one, board) : one, board)
  return room ? [room] : []
}

function inCabinet({ min, max }: Box, { placement }: Board): Box {
  const between = (low: number, high: number) =>
    boxAround(toCabinet(placement, min.x, low, min.z), toCabinet(placement, max.x, high, max.z))
  const whole = between(min.y, max.y)
  if (!placement.turn) return whole
  const across = boxAround(toCabinet(placement, max.x, min.y, min.z), toCabinet(placement, min.x, max.y, max.z))
  const through = boxAround(toCabinet(placement, min.x, min.y, max.z), toCabinet(placement, max.x, max.y, min.z))
  return boxOver(boxOver(whole, between(max.y, min.y)), boxOver(across, through))
}

/** A board as it lies there, with its box. */
interface Lying {
  readonly board: Board
  readonly box: Box
}

/** What of a board is not where a mirror shows it. */
function apart(board: Board, there: readonly Lying[], width: number): string[] {
  const name = `${board.role} ${board.number}`
  const by = board.placement.turn ? SLANTED : TICKS
  const own = flipped(boxOf(board), width)
  const role = OTHER_HAND[board.role] ?? board.role
  const lying = there.find((one) => one.board.role === role && areAlike(one.box, own, by))
  if (!lying) return [`${name} is not there`]
  const other = lying.board
  const sizes = (['length', 'width', 'thickness'] as const).filter((side) => Math.abs(other[side] - board[side]) > by)
  const { low, high, start, end } = board.banding
  const bands = ({ banding }: Board) => [banding.low + banding.high, banding.start + banding.end].join()
  const isBanded = bands(other) === [low + high, start + end].join()
  const isAway = Math.abs(other.explode.by.x + board.explode.by.x) > by
  const [here, seen] = [workOn(board), workOn(other)]
  const lost = here.filter(({ what, room }) => {
    const place = flipped(room, width)
    return !seen.some((one) => one.what === what && areAlike(one.room, place, by))
  })
  return [
    ...sizes.map((side) => `${side} of ${name}`),
    ...(isBanded ? [] : [`banding of ${name}`]),
    ...(isAway ? [`way out of ${name}`] : []),
    ...(here.length === seen.length ? [] : [`${here.length} works on ${name}, ${seen.length} seen`]),
    ...lost.map(({ what, room }) => `${what} on ${name} at ${room.min.x}, ${room.min.y}, ${room.min.z}`),
  ]
}

/** A mirror shows the boards of the other hand in the mirrored places, with the mirrored work on each. */
export const isMirrored: Law = (built) => {
  const { cabinet, boards } = built
  const there = inMirror(built).boards.map((board): Lying => ({ board, box: boxOf(board) }))
  return [
    ...boards.flatMap((board) => apart(board, there, cabinet.width)),
    ...(there.length === boards.length ? [] : [`${boards.length} boards, ${there.length} seen`]),
  ]
}
