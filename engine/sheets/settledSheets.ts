import { Board, CROSSCUT, freshBoard, listParts, RIP, Twig, tidy, type Way } from './cutTree'
import { firstWay, type Goal } from './goal'
import type { Lot } from './lot'
import { eachOf } from './plan'
import type { PatternSection, PatternSheet, PatternStrip } from './staged'

/** These sheets in turn, as many as there are to be, without the parts that are already on others; the rest is the pool. */
export function goalOf(lot: Lot, sheets: readonly PatternSheet[], count: number): Goal {
  const left = lot.kinds.map(({ quantity }) => quantity)
  const boards: Board[] = []
  for (const sheet of sheets) {
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

function giveBack(board: Board, left: number[]): void {
  const parts: number[] = []
  listParts(board.root, parts)
  for (const kind of parts) left[kind]!++
}

function boardOf({ way, strips }: PatternSheet, lot: Lot, left: number[]): Board {
  const stock = lot.stocks[0]!
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
  twig.pieces = kinds.flatMap((part): Twig[] => {
    if (left[part.kind]! <= 0) return []
    left[part.kind]!--
    const [length, width] = way === RIP ? [along, part.across] : [part.across, along]
    return [new Twig(length, width, way, part.kind, part.turned)]
  })
  return twig
}
