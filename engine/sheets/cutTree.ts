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
  /** Of its rest, as it was when that was listed. */
  roomLength = 0
  roomWidth = 0
  worth = 0
  constructor(
    public length: number,
    public width: number,
    public way: Way,
    /** Index of the kind of part that this piece is; -1 for a piece to be cut. */
    public kind: number,
    public turned: boolean,
  ) {}
}

/** What it takes to cut a board: sizes by their number in the count that all boards share. */
export interface Handling {
  readonly widths: readonly number[]
  /** How often the guides are set for this board by itself: its different rip widths. */
  readonly setups: number
  readonly lengths: readonly number[]
  /** What is cut off after a rip and a crosscut, by its size. */
  readonly trims: readonly number[]
  /** Parts among them. */
  readonly trimmed: number
  /** Parts that lie among others of another time, late or not: the fewer of either on the sheet, and on each of its strips. */
  readonly mixed: number
  /** Boards that are cut alike have the same. */
  readonly pattern: number
}

/** A sheet being planned. `rests` are the twigs that have room left for some part. */
export class Board {
  rests: Twig[] = []
  /** The largest length and width among the rests: a part that is larger need not look here. */
  roomLength = 0
  roomWidth = 0
  /** Sum of the worths of the rests: large rests in one piece are worth more than crumbs. */
  worth = 0
  /** Of the parts on it, grown. */
  used = 0
  stamp = 0
  /** What it takes to cut it, once that was asked. */
  handling: Handling | null = null
  constructor(
    readonly stock: StockKind,
    public root: Twig,
    /** Whether the root is for now less than the sheet, so that its parts draw together. */
    public isHeld = false,
    /** The number by which parts ask for this sheet and no other; undefined where none does. */
    public sheet: number | undefined = undefined,
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

/**
 * An empty sheet, with the number that parts ask for it by. `most`: how much of it, along its first cut's way, may be used
 * at most.
 */
export function freshBoard(stock: StockKind, way: Way, yard: Yard, most = Infinity, sheet?: number): Board {
  const length = way === CROSSCUT ? Math.min(most, stock.length) : stock.length
  const width = way === RIP ? Math.min(most, stock.width) : stock.width
  const root = new Twig(length, width, way, -1, false)
  root.rest = way === RIP ? width : length
  const board = new Board(stock, root, most < Infinity, sheet)
  listRests(board, yard)
  return board
}

export function copyOf(board: Board): Board {
  const copy = new Board(board.stock, board.root, board.isHeld, board.sheet)
  copy.rests = new Array<Twig>(board.rests.length)
  copy.root = copyTwig(board.root, copy.rests)
  copy.roomLength = board.roomLength
  copy.roomWidth = board.roomWidth
  copy.worth = board.worth
  copy.used = board.used
  return copy
}

/** Parts are never changed once they lie somewhere, so copies of a board have the same ones. */
function copyTwig(twig: Twig, rests: Twig[]): Twig {
  const copy = new Twig(twig.length, twig.width, twig.way, twig.kind, twig.turned)
  copy.rest = twig.rest
  copy.level = twig.level
  copy.restAt = twig.restAt
  copy.roomLength = twig.roomLength
  copy.roomWidth = twig.roomWidth
  copy.worth = twig.worth
  if (twig.restAt >= 0) rests[twig.restAt] = copy
  const { pieces } = twig
  for (let at = 0; at < pieces.length; at++) {
    const piece = pieces[at]!
    copy.pieces.push(piece.kind >= 0 ? piece : copyTwig(piece, rests))
  }
  return copy
}

/** Drops pieces with nothing left on them, gives slack back to the piece around it, and lists the rests anew. */
export function tidy(board: Board, yard: Yard): void {
  settleTwig(board.root)
  listRests(board, yard)
}

function settleTwig(twig: Twig): void {
  const kept: Twig[] = []
  let room = twig.way === RIP ? twig.width : twig.length
  for (const piece of twig.pieces) {
    if (piece.kind < 0) {
      settleTwig(piece)
      if (piece.pieces.length === 0) continue
      shrink(piece, twig.way)
    }
    const only = piece.rest === 0 && piece.pieces.length === 1 ? piece.pieces[0]! : piece
    if (only === piece || only.kind >= 0) {
      kept.push(only)
      room -= twig.way === RIP ? only.width : only.length
    } else {
      for (const one of only.pieces) {
        kept.push(one)
        room -= twig.way === RIP ? one.width : one.length
      }
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
  board.handling = null
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
  twig.roomLength = length
  twig.roomWidth = width
  twig.worth = restWorth(length, width, twig.level, yard)
  board.worth += twig.worth
  twig.restAt = board.rests.length
  board.rests.push(twig)
  if (length > board.roomLength) board.roomLength = length
  if (width > board.roomWidth) board.roomWidth = width
}

/**
 * Takes a rest off the list before it is cut. The room stays as it was noted: it may promise too much until the board is
 * tidied, never too little.
 */
export function forgetRest(twig: Twig, board: Board): void {
  if (twig.restAt < 0) return
  board.worth -= twig.worth
  const last = board.rests.pop()!
  if (last !== twig) {
    board.rests[twig.restAt] = last
    last.restAt = twig.restAt
  }
  twig.restAt = -1
}

/** A rest at the last direction takes only parts that are exactly as large across it. */
const LAST_DIRECTION_WORTH = 0.2

/** The third power: one large rest is worth far more than its halves. */
export function restWorth(length: number, width: number, level: number, yard: Yard): number {
  if (length < yard.leastLength || width < yard.leastWidth) return 0
  const share = (length * width) / yard.sheetArea
  const worth = share * share * share
  return level >= yard.depth ? LAST_DIRECTION_WORTH * worth : worth
}

/** The share of a sheet that is as good as waste: too small for any part, or open to exact parts only. */
export function deadShare(length: number, width: number, level: number, yard: Yard): number {
  const isDead = level >= yard.depth || length < yard.leastLength || width < yard.leastWidth
  return isDead ? (length * width) / yard.sheetArea : 0
}

/** Takes a share of what is left behind a sheet's parts for now off the sheet. */
export function holdNarrow(board: Board, share: number, yard: Yard): Board {
  const { root } = board
  const held = Math.floor(share * root.rest)
  if (root.way === RIP) root.width -= held
  else root.length -= held
  root.rest -= held
  board.isHeld = true
  listRests(board, yard)
  return board
}

/** Gives a sheet that was held narrow its whole size back. */
export function release(board: Board, yard: Yard): Board {
  const { root, stock } = board
  const whole = root.way === RIP ? stock.width : stock.length
  root.rest += whole - (root.way === RIP ? root.width : root.length)
  if (root.way === RIP) root.width = whole
  else root.length = whole
  board.isHeld = false
  listRests(board, yard)
  return board
}

/** Parts on a piece, by kind, added to a list. */
export function listParts(twig: Twig, list: number[]): void {
  if (twig.kind >= 0) list.push(twig.kind)
  else for (const piece of twig.pieces) listParts(piece, list)
}

/** How much of a sheet its parts take up along its first cut's way; all behind that is left in one piece. */
export function depthUsed({ root }: Board): number {
  return (root.way === RIP ? root.width : root.length) - root.rest
}
