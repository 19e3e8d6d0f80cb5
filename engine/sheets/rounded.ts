import type { Random } from '../basics/random'
import { Board, CROSSCUT, freshBoard, listParts, RIP, Twig, tidy, type Way } from './cutTree'
import { firstWay, type Goal } from './goal'
import type { Lot } from './lot'
import { eachOf } from './plan'
import type { WeighedSheet } from './programme'
import type { PatternSection, PatternSheet, PatternStrip } from './staged'

/**
 * A goal that sets out from what a programme takes in fractions: sheets are drawn by their weights, the parts that are
 * already on others left out of them, and what is then without a place is the pool.
 */
export function goalFrom(lot: Lot, taken: readonly WeighedSheet[], count: number, random: Random): Goal {
  const left = lot.kinds.map(({ quantity }) => quantity)
  const boards: Board[] = []
  for (const sheet of drawn(taken, random)) {
    if (boards.length === count) break
    const board = boardOf(sheet, lot, left)
    if (board.used >= LEAST_USED * lot.sheetArea) boards.push(board)
    else giveBack(board, left)
  }
  while (boards.length < count) boards.push(freshBoard(lot.stocks[0]!, firstWay(lot), lot))
  return { boards, pool: eachOf(left) }
}

/** A sheet of which less is left is not worth keeping. */
const LEAST_USED = 0.8

/** Every sheet as often as its whole weight says, and then by chance. */
function drawn(taken: readonly WeighedSheet[], random: Random): PatternSheet[] {
  const whole = taken.flatMap(({ sheet, weight }) => new Array<PatternSheet>(Math.floor(weight + 1e-6)).fill(sheet))
  const parts = taken
    .map(({ sheet, weight }) => ({ sheet, key: Math.log(1 - random()) / Math.max(1e-9, weight % 1) }))
    .sort((a, b) => b.key - a.key)
  return [...whole, ...parts.map(({ sheet }) => sheet)]
}

function giveBack(board: Board, left: number[]): void {
  const parts: number[] = []
  listParts(board.root, parts)
  for (const kind of parts) left[kind]!++
}

function boardOf({ strips }: PatternSheet, lot: Lot, left: number[]): Board {
  const stock = lot.stocks[0]!
  const way = firstWay(lot)
  const root = new Twig(stock.length, stock.width, way, -1, false)
  root.pieces = strips.map((strip) => stripTwig(strip, stock, way, left))
  const board = new Board(stock, root)
  tidy(board, lot)
  return board
}

function stripTwig(strip: PatternStrip, sheet: { length: number; width: number }, way: Way, left: number[]): Twig {
  const twig =
    way === RIP
      ? new Twig(sheet.length, strip.across, CROSSCUT, -1, false)
      : new Twig(strip.across, sheet.width, RIP, -1, false)
  twig.pieces = strip.sections.map((section) => sectionTwig(section, strip.across, way, left))
  return twig
}

function sectionTwig({ along, kinds }: PatternSection, across: number, way: Way, left: number[]): Twig {
  const twig = way === RIP ? new Twig(along, across, RIP, -1, false) : new Twig(across, along, CROSSCUT, -1, false)
  twig.pieces = kinds.map((part) => {
    const piece =
      way === RIP
        ? new Twig(along, part.across, RIP, part.kind, part.turned)
        : new Twig(part.across, along, CROSSCUT, part.kind, part.turned)
    if (left[part.kind]! > 0) left[part.kind]!--
    else piece.gone = true
    return piece
  })
  return twig
}
