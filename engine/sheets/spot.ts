import { type Board, CROSSCUT, listRests, RIP, restLength, restWidth, restWorth, Twig, type Way } from './cutTree'
import type { Lot } from './lot'

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

/** How a spot is looked for: `blink` overlooks a rest now and then, so that the search does not always do the same. */
export interface Look {
  readonly lot: Lot
  readonly blink: () => boolean
  /** Counts the rests that were looked at: the search is measured in these. */
  work: number
}

/** The best spot for a kind of part among the boards from `from` on; `loss` is Infinity when there is none. */
export function findSpot(boards: readonly Board[], kind: number, look: Look, spot: Spot, from = 0): Spot {
  const { length, width, turns } = look.lot.kinds[kind]!
  spot.loss = Infinity
  for (let at = from; at < boards.length; at++) {
    const board = boards[at]!
    if (length <= board.roomLength && width <= board.roomWidth) tryBoard(board, at, length, width, false, look, spot)
    if (turns && width <= board.roomLength && length <= board.roomWidth)
      tryBoard(board, at, width, length, true, look, spot)
  }
  look.work += boards.length >> 2
  return spot
}

function tryBoard(board: Board, at: number, length: number, width: number, turned: boolean, look: Look, spot: Spot) {
  const { rests } = board
  const { lot } = look
  look.work += rests.length
  for (let index = 0; index < rests.length; index++) {
    const twig = rests[index]!
    const roomLength = restLength(twig)
    const roomWidth = restWidth(twig)
    if (length > roomLength || width > roomWidth || look.blink()) continue
    const isRip = twig.way === RIP
    const exact = isRip ? length === roomLength : width === roomWidth
    const { level } = twig
    if (!exact && level >= lot.depth) continue
    const before = restWorth(roomLength, roomWidth, level, lot)
    const left = isRip
      ? restWorth(roomLength, roomWidth - width, level, lot) + restWorth(roomLength - length, width, level + 1, lot)
      : restWorth(roomLength - length, roomWidth, level, lot) + restWorth(length, roomWidth - width, level + 1, lot)
    take(spot, at, index, turned, false, before - left)
    if (length === roomLength || width === roomWidth) continue
    const flips = lot.first === 'any' && twig.pieces.length === 0
    const down = flips ? level - 1 : level
    if (down + 2 > lot.depth) continue
    const other = isRip
      ? restWorth(roomLength - length, roomWidth, down + 1, lot) + restWorth(length, roomWidth - width, down + 2, lot)
      : restWorth(roomLength, roomWidth - width, down + 1, lot) + restWorth(roomLength - length, width, down + 2, lot)
    take(spot, at, index, turned, true, before - other)
  }
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
  if (spot.across) {
    if (lot.first === 'any' && twig.pieces.length === 0) {
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
  slice(twig, leaf)
  listRests(board, lot)
}

/** Takes a slice as large as the part off a twig's rest, and the part off the slice. */
function slice(twig: Twig, leaf: Twig): void {
  const isRip = twig.way === RIP
  const along = isRip ? leaf.width : leaf.length
  const across = isRip ? leaf.length : leaf.width
  const whole = isRip ? twig.length : twig.width
  twig.rest -= along
  if (across === whole) {
    twig.pieces.push(leaf)
    return
  }
  const strip = isRip ? new Twig(whole, along, CROSSCUT, -1, false) : new Twig(along, whole, RIP, -1, false)
  strip.rest = whole - across
  strip.level = twig.level + 1
  strip.pieces.push(leaf)
  twig.pieces.push(strip)
}

function otherWay(way: Way): Way {
  return way === RIP ? CROSSCUT : RIP
}
