import type { JobPart, SheetJob } from '../sheets/job'
import { type LeftPiece, type Piece, type Place, placementsIn, type SheetLayout } from '../sheets/layout'
import { wrongInSheets } from '../sheets/verify'
import { settle } from '../units/length'
import { along, isLeft, leftOver } from './redrawn'

/** A layout that has a free place, and may be cut from it. */
export interface Ground {
  readonly stock: string
  readonly root: Piece
}

/** A part put on what is left over. */
export interface Inset<Of extends Ground> {
  readonly on: Of
  readonly root: Piece
}

/**
 * The free place that suits a part best: waste before an offcut, then few cuts, then the smallest. Null where none is large
 * enough, and where a cut more would take more directions than the shop allows. The part is called `name` in the tree.
 *
 *     +--------------+        +------+-------+
 *     |              |        | part |       |   cut off and crosscut, or crosscut and cut off
 *     |     left     |        +------+-------+
 *     |              |        |              |
 *     +--------------+        +--------------+
 */
export function insetOf<Of extends Ground>(
  grounds: readonly Of[],
  part: JobPart,
  name: string,
  job: SheetJob,
  /** Trees name parts as they please; the job names rows. */
  rowOf: (name: string) => string,
): Inset<Of> | null {
  const ways = grounds.flatMap((on) =>
    leftIn(on.root).flatMap((left) =>
      waysOf(left, part, name, job).map((way) => ({ on, left, way, rank: rankOf(left, way) })),
    ),
  )
  for (const { on, left, way } of ways.sort((a, b) => compare(a.rank, b.rank))) {
    const root = replaced(on.root, left, way)
    if (wrongInSheets(job, [layoutOf({ ...on, root }, rowOf)]).length === 0) return { on, root }
  }
  return null
}

export function layoutOf({ stock, root }: Ground, rowOf: (name: string) => string): SheetLayout {
  const named = renamed(root, rowOf)
  return { stock, copies: 1, root: named, placements: placementsIn(named) }
}

export function renamed(piece: Piece, rowOf: (name: string) => string): Piece {
  if (piece.kind === 'part') return { ...piece, part: rowOf(piece.part) }
  return piece.kind === 'cut' ? { ...piece, pieces: piece.pieces.map((inner) => renamed(inner, rowOf)) } : piece
}

function leftIn(piece: Piece): LeftPiece[] {
  if (piece.kind === 'cut') return piece.pieces.flatMap(leftIn)
  return isLeft(piece) ? [piece] : []
}

function waysOf(left: LeftPiece, { length, width, rotate }: JobPart, name: string, job: SheetJob): Piece[] {
  const lies = { kind: 'part', part: name, rotated: false, x: left.x, y: left.y, length, width } as const
  const turned = { ...lies, rotated: true, length: width, width: length }
  return [lies, ...(rotate ? [turned] : [])]
    .filter((piece) => piece.length <= left.length && piece.width <= left.width)
    .flatMap((piece) => {
      const { x, y } = left
      const strip = cutOff(piece, { x, y, length: left.length, width: piece.width }, 'crosscut', job)
      const stick = cutOff(piece, { x, y, length: piece.length, width: left.width }, 'rip', job)
      return [cutOff(strip, left, 'rip', job), cutOff(stick, left, 'crosscut', job)]
    })
}

/** A piece at the first corner of a place, and what is left of the place. */
function cutOff(piece: Piece, place: Place, direction: 'rip' | 'crosscut', job: SheetJob): Piece {
  const { x, y, length, width } = place
  const size = along(piece, direction)
  if (size === along(place, direction)) return piece
  const from = settle(size + job.kerf)
  const rest = settle(along(place, direction) - from)
  const other =
    direction === 'rip'
      ? { x, y: settle(y + from), length, width: rest }
      : { x: settle(x + from), y, length: rest, width }
  return { kind: 'cut', direction, x, y, length, width, pieces: rest > 0 ? [piece, leftOver(other, job)] : [piece] }
}

/** A cut in the direction of the cut around it is one of that cut's own, where its pieces lie edge to edge there. */
function replaced(piece: Piece, left: LeftPiece, by: Piece): Piece {
  if (piece === left) return by
  if (piece.kind !== 'cut') return piece
  const isLast = piece.pieces.at(-1) === left
  const pieces = piece.pieces.flatMap((inner) => {
    if (inner !== left || by.kind !== 'cut' || by.direction !== piece.direction) return [replaced(inner, left, by)]
    return isLast || by.pieces.length > 1 ? by.pieces : [by]
  })
  return { ...piece, pieces }
}

type Rank = readonly number[]

function rankOf(left: LeftPiece, way: Piece): Rank {
  const whole = Math.max(0, ...leftIn(way).map(({ length, width }) => length * width))
  return [left.kind === 'waste' ? 0 : 1, cutsIn(way), left.length * left.width, -whole]
}

function cutsIn(piece: Piece): number {
  return piece.kind === 'cut' ? piece.pieces.reduce((sum, inner) => sum + cutsIn(inner), 1) : 0
}

/** The first number that differs tells which comes first. */
export function compare(a: Rank, b: Rank): number {
  const at = a.findIndex((value, place) => value !== b[place])
  return at < 0 ? 0 : a[at]! - b[at]!
}
