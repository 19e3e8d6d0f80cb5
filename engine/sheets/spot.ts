import {
  type Board,
  CROSSCUT,
  deadShare,
  forgetRest,
  noteRest,
  RIP,
  restLength,
  restWidth,
  restWorth,
  Twig,
  type Way,
} from './cutTree'
import { type Lot, mayComeFrom, type PartKind } from './lot'

/** A place for a part: on which board, in which rest, turned or not, and which way the rest is cut first. */
export interface Spot {
  board: number
  rest: number
  turned: boolean
  /** Cut the whole rest the other way first, instead of a slice as wide as the part. */
  across: boolean
  /** What it takes from the worth of the rests: the less the better. */
  loss: number
}

/** How a spot is looked for. A rest is overlooked now and then, so that the search does not always do the same. */
export interface Look {
  readonly lot: Lot
  readonly nextBlink: () => number
  /** Rests to be looked at until one is overlooked. */
  untilBlink: number
  /** How bad it is to make waste, beside using up large rests. */
  dead: number
  /** Counts the rests that were looked at: the search is measured in these. */
  work: number
  /** What new settings and cuts cost, where that is minded. */
  fuss: Fuss | null
}

/** What it would cost at the saw to cut a part out of a rest, in the measure of losses. */
export interface Fuss {
  /** The part is from here on the one asked about, as it lies. */
  ask(kind: number, turned: boolean): void
  /** Cutting a piece as large as the part at a level, one way or the other. */
  cut(level: number, isRip: boolean): number
}

/** What it costs to pass a board that has no room, in rests looked at (measured). */
const BOARD_PASSED = 0.25

/** The best spot for a kind of part among the boards from `from` on; its `loss` is Infinity when there is none. */
export function findSpot(boards: readonly Board[], kind: number, look: Look, spot: Spot, from = 0): Spot {
  const wanted = look.lot.kinds[kind]!
  const { length, width, turns, sheet } = wanted
  spot.loss = Infinity
  const { fuss } = look
  for (let at = from; at < boards.length; at++) {
    const board = boards[at]!
    if (!mayComeFrom(wanted, board.stock) || (sheet !== undefined && board.sheet !== sheet)) continue
    if (length <= board.roomLength && width <= board.roomWidth) {
      fuss?.ask(kind, false)
      tryBoard(kind, board, at, length, width, false, look, spot)
    }
    if (turns && width <= board.roomLength && length <= board.roomWidth) {
      fuss?.ask(kind, true)
      tryBoard(kind, board, at, width, length, true, look, spot)
    }
  }
  look.work += BOARD_PASSED * (boards.length - from)
  return spot
}

function tryBoard(
  kind: number,
  board: Board,
  at: number,
  length: number,
  width: number,
  turned: boolean,
  look: Look,
  spot: Spot,
) {
  const { rests } = board
  const { lot, fuss } = look
  const inner = wayInside(lot.kinds[kind]!, turned)
  look.work += rests.length
  for (let index = 0; index < rests.length; index++) {
    const twig = rests[index]!
    const { roomLength, roomWidth } = twig
    if (length > roomLength || width > roomWidth) continue
    if (--look.untilBlink <= 0) {
      look.untilBlink = look.nextBlink()
      continue
    }
    const isRip = twig.way === RIP
    const exact = isRip ? length === roomLength : width === roomWidth
    const { level } = twig
    if (!exact && level >= lot.depth) continue
    const before = twig.worth
    const short = roomLength - length
    const narrow = roomWidth - width
    const left = isRip
      ? value(roomLength, narrow, level, look) + value(short, width, level + 1, look)
      : value(short, roomWidth, level, look) + value(length, narrow, level + 1, look)
    if (!inner || turnsTaken(inner, exact ? level : level + 1, isRip === exact) <= lot.depth)
      take(spot, at, index, turned, false, before - left + (fuss ? fussOf(fuss, level, isRip, short, narrow) : 0))
    if (short === 0 || narrow === 0) continue
    const down = flips(twig, board, lot) ? level - 1 : level
    if (down + 2 > lot.depth || (inner && turnsTaken(inner, down + 2, isRip) > lot.depth)) continue
    const other = isRip
      ? value(short, roomWidth, down + 1, look) + value(length, narrow, down + 2, look)
      : value(roomLength, narrow, down + 1, look) + value(short, width, down + 2, look)
    take(spot, at, index, turned, true, before - other + (fuss ? fussOf(fuss, down + 1, !isRip, short, narrow) : 0))
  }
}

/** Which way a bank of boards is cut apart; undefined for a single board. */
function wayInside({ block }: PartKind, turned: boolean): 'rip' | 'crosscut' | undefined {
  return block && ((block[0]!.bank!.along === 'width') === turned ? 'crosscut' : 'rip')
}

/** How many directions it takes to cut a bank apart that is cut out at a level by a rip, or by a crosscut. */
function turnsTaken(inner: 'rip' | 'crosscut', level: number, isRip: boolean): number {
  return (inner === 'rip') === isRip ? level : level + 1
}

/** A slice first, and the part off the slice unless it is as large across. */
function fussOf(fuss: Fuss, level: number, isRip: boolean, short: number, narrow: number): number {
  const isExact = isRip ? short === 0 : narrow === 0
  return fuss.cut(level, isRip) + (isExact ? 0 : fuss.cut(level + 1, !isRip))
}

function value(length: number, width: number, level: number, { lot, dead }: Look): number {
  const worth = restWorth(length, width, level, lot)
  return dead === 0 ? worth : worth - dead * deadShare(length, width, level, lot)
}

function take(spot: Spot, board: number, rest: number, turned: boolean, across: boolean, loss: number): void {
  if (loss >= spot.loss) return
  spot.board = board
  spot.rest = rest
  spot.turned = turned
  spot.across = across
  spot.loss = loss
}

/** Puts a part on a board at a spot found there, cutting the rest as the spot says. */
export function putAt(board: Board, kind: number, spot: Spot, lot: Lot): void {
  const { length, width } = lot.kinds[kind]!
  const leaf = new Twig(spot.turned ? width : length, spot.turned ? length : width, RIP, kind, spot.turned)
  let twig = board.rests[spot.rest]!
  board.handling = null
  forgetRest(twig, board)
  if (spot.across) {
    if (flips(twig, board, lot)) {
      twig.way = otherWay(twig.way)
      twig.rest = twig.way === RIP ? twig.width : twig.length
    } else {
      const inner = new Twig(restLength(twig), restWidth(twig), otherWay(twig.way), -1, false)
      inner.rest = inner.way === RIP ? inner.width : inner.length
      inner.level = twig.level + 1
      twig.pieces.push(inner)
      twig.rest = 0
      twig = inner
    }
  }
  const strip = slice(twig, leaf)
  noteRest(twig, board, lot)
  if (strip) noteRest(strip, board, lot)
  board.used += leaf.length * leaf.width
}

/** Takes a slice as large as the part off a twig's rest, and the part off the slice. */
function slice(twig: Twig, leaf: Twig): Twig | undefined {
  const isRip = twig.way === RIP
  const along = isRip ? leaf.width : leaf.length
  const across = isRip ? leaf.length : leaf.width
  const whole = isRip ? twig.length : twig.width
  twig.rest -= along
  if (across === whole) {
    twig.pieces.push(leaf)
    return undefined
  }
  const strip = isRip ? new Twig(whole, along, CROSSCUT, -1, false) : new Twig(along, whole, RIP, -1, false)
  strip.rest = whole - across
  strip.level = twig.level + 1
  strip.pieces.push(leaf)
  twig.pieces.push(strip)
  return strip
}

/** An empty sheet may be begun either way where the shop does not mind. */
function flips(twig: Twig, board: Board, { first }: Lot): boolean {
  return first === 'any' && twig === board.root && twig.pieces.length === 0 && !board.isHeld
}

function otherWay(way: Way): Way {
  return way === RIP ? CROSSCUT : RIP
}
