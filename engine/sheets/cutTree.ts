import type { PartKind, StockKind } from './lot'

/** Which way a piece is cut: a rip separates its pieces in y, a crosscut in x. */
export const RIP = 0
export const CROSSCUT = 1
export type Way = 0 | 1

/**
 * A piece of a sheet being planned, in grown ticks. Its own pieces lie one after another along its way and are as large
 * as itself across it; what they leave at the end is its rest, the one place where more can be put.
 *
 *     way CROSSCUT      +------+----+---------+
 *                       |  a   | b  |  rest   |
 *                       +------+----+---------+
 */
export class Twig {
  pieces: Twig[] = []
  rest = 0
  /** How many directions lead to its own cut, itself included: 1 for the sheet's first. */
  level = 1
  /** Where it stands in its board's list of rests, -1 when it is not there. */
  restAt = -1
  gone = false
  constructor(
    public length: number,
    public width: number,
    public way: Way,
    /** Index of the kind of part that this piece is; -1 for a piece to be cut. */
    public kind: number,
    public turned: boolean,
  ) {}
}

/** A sheet being planned. `rests` are the twigs that have room left for some part. */
export class Board {
  rests: Twig[] = []
  /** The largest length and width among the rests: a part that is larger need not look here. */
  roomLength = 0
  roomWidth = 0
  /** Sum of the squares of the rests, in sheets: large rests in one piece are worth more than crumbs. */
  worth = 0
  /** Of the parts on it, grown. */
  used = 0
  stamp = 0
  constructor(
    readonly stock: StockKind,
    public root: Twig,
  ) {}
}

/** What the rests of a board are measured by. */
export interface Yard {
  readonly kinds: readonly PartKind[]
  readonly depth: number
  readonly sheetArea: number
  readonly leastLength: number
  readonly leastWidth: number
}

export function restLength(twig: Twig): number {
  return twig.way === RIP ? twig.length : twig.rest
}

export function restWidth(twig: Twig): number {
  return twig.way === RIP ? twig.rest : twig.width
}

export function freshBoard(stock: StockKind, way: Way, yard: Yard, width = stock.width, length = stock.length): Board {
  const root = new Twig(length, width, way, -1, false)
  root.rest = way === RIP ? width : length
  const board = new Board(stock, root)
  listRests(board, yard)
  return board
}

export function copyOf(board: Board): Board {
  const copy = new Board(board.stock, board.root)
  copy.rests = new Array<Twig>(board.rests.length)
  copy.root = copyTwig(board.root, copy.rests)
  copy.roomLength = board.roomLength
  copy.roomWidth = board.roomWidth
  copy.worth = board.worth
  copy.used = board.used
  return copy
}

function copyTwig(twig: Twig, rests: Twig[]): Twig {
  const copy = new Twig(twig.length, twig.width, twig.way, twig.kind, twig.turned)
  copy.rest = twig.rest
  copy.level = twig.level
  copy.restAt = twig.restAt
  if (twig.restAt >= 0) rests[twig.restAt] = copy
  const { pieces } = twig
  for (let at = 0; at < pieces.length; at++) copy.pieces.push(copyTwig(pieces[at]!, rests))
  return copy
}

/** Drops what is gone, gives slack back to the piece around it, and lists the rests anew. */
export function tidy(board: Board, yard: Yard): void {
  settleTwig(board.root)
  listRests(board, yard)
}

function settleTwig(twig: Twig): void {
  const kept: Twig[] = []
  let room = twig.way === RIP ? twig.width : twig.length
  for (const piece of twig.pieces) {
    if (piece.gone) continue
    if (piece.kind < 0) {
      settleTwig(piece)
      if (piece.pieces.length === 0) continue
      shrink(piece, twig.way)
    }
    const only = piece.rest === 0 && piece.pieces.length === 1 ? piece.pieces[0]! : piece
    const stand = only !== piece && only.kind < 0 ? only.pieces : [only]
    for (const one of stand) {
      kept.push(one)
      room -= twig.way === RIP ? one.width : one.length
    }
  }
  twig.pieces = kept
  twig.rest = room
}

/**
 * A strip is as wide as its widest section needs: what all of its sections leave over goes back to the piece that the
 * strip was cut from, along `way`.
 */
function shrink(strip: Twig, way: Way): void {
  let slack = Infinity
  for (const section of strip.pieces) slack = Math.min(slack, section.kind < 0 ? section.rest : 0)
  if (slack === 0 || slack === Infinity) return
  if (way === RIP) strip.width -= slack
  else strip.length -= slack
  const kept: Twig[] = []
  for (const section of strip.pieces) {
    if (way === RIP) section.width -= slack
    else section.length -= slack
    section.rest -= slack
    const only = section.rest === 0 && section.pieces.length === 1 ? section.pieces[0]! : section
    if (only !== section && only.kind < 0) {
      kept.push(...only.pieces)
      strip.rest += only.rest
    } else kept.push(only)
  }
  strip.pieces = kept
}

export function listRests(board: Board, yard: Yard): void {
  board.rests = []
  board.roomLength = 0
  board.roomWidth = 0
  board.worth = 0
  board.used = 0
  listTwig(board.root, 1, board, yard)
}

function listTwig(twig: Twig, level: number, board: Board, yard: Yard): void {
  twig.level = level
  twig.restAt = -1
  noteRest(twig, board, yard)
  for (const piece of twig.pieces) {
    if (piece.kind < 0) listTwig(piece, level + 1, board, yard)
    else board.used += piece.length * piece.width
  }
}

/** Puts the rest of a twig on the board's list if some part may fit in it. */
export function noteRest(twig: Twig, board: Board, yard: Yard): void {
  const length = restLength(twig)
  const width = restWidth(twig)
  if (length < yard.leastLength || width < yard.leastWidth) return
  board.worth += restWorth(length, width, twig.level, yard)
  twig.restAt = board.rests.length
  board.rests.push(twig)
  if (length > board.roomLength) board.roomLength = length
  if (width > board.roomWidth) board.roomWidth = width
}

/** A rest at the last direction takes only parts that are exactly as large across it. */
const LAST_DIRECTION_WORTH = 0.2

export function restWorth(length: number, width: number, level: number, yard: Yard): number {
  if (length < yard.leastLength || width < yard.leastWidth) return 0
  const share = (length * width) / yard.sheetArea
  return level >= yard.depth ? LAST_DIRECTION_WORTH * share * share : share * share
}
