import { Board, CROSSCUT, freshBoard, listParts, RIP, Twig, tidy, type Way } from './cutTree'
import { firstWay, type Goal } from './goal'
import type { Lot } from './lot'
import type { PatternSection, PatternSheet, PatternStrip } from './pattern'
import { sheetsAskedFor } from './pinned'
import { eachOf } from './plan'

/**
 * These sheets in turn, as many as there are to be, without the parts that are already on others; the rest is the pool.
 * One with parts that ask for a sheet by its number is that sheet, once, without what asks for another.
 */
export function goalOf(lot: Lot, sheets: readonly PatternSheet[], count: number, leastUsed = LEAST_USED): Goal {
  const left = lot.kinds.map(({ quantity }) => quantity)
  const boards: Board[] = []
  const asked = new Set(sheetsAskedFor(lot))
  const isAsking = asked.size > 0
  for (const sheet of sheets) {
    if (boards.length === count) break
    const number = asked.size > 0 ? numberOf(sheet, lot, asked) : undefined
    // Those that are asked for and to come yet need their room.
    if (number === undefined && boards.length + asked.size >= count) continue
    const others = isAsking ? lot.kinds.map((kind) => kind.sheet !== undefined && kind.sheet !== number) : []
    const board = boardOf(sheet, lot, left, others)
    board.sheet = number
    if (board.used >= leastUsed * lot.sheetArea) {
      boards.push(board)
      if (number !== undefined) asked.delete(number)
    } else giveBack(board, left)
  }
  for (const number of asked) boards.push(freshBoard(lot.stocks[0]!, firstWay(lot), lot, Infinity, number))
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

/** The first number that parts on a sheet ask for, of those that no sheet is yet. */
function numberOf({ strips }: PatternSheet, { kinds }: Lot, asked: ReadonlySet<number>): number | undefined {
  const all = strips.flatMap(({ sections }) => sections.flatMap((section) => section.kinds))
  return all.map(({ kind }) => kinds[kind]!.sheet).find((sheet) => sheet !== undefined && asked.has(sheet))
}

function boardOf({ way, strips }: PatternSheet, lot: Lot, left: number[], isElsewhere: readonly boolean[]): Board {
  const stock = lot.stocks[0]!
  const root = new Twig(stock.length, stock.width, way, -1, false)
  root.pieces = strips.map((strip) => stripTwig(strip, stock, way, left, isElsewhere))
  const board = new Board(stock, root)
  tidy(board, lot)
  return board
}

/** A strip of these sections as long as its sheet, without the parts of which none is left; its rests are not listed yet. */
export function stripTwig(
  strip: PatternStrip,
  sheet: { length: number; width: number },
  way: Way,
  left: number[],
  isElsewhere: readonly boolean[] = [],
): Twig {
  const twig =
    way === RIP
      ? new Twig(sheet.length, strip.across, CROSSCUT, -1, false)
      : new Twig(strip.across, sheet.width, RIP, -1, false)
  twig.pieces = strip.sections.map((section) => sectionTwig(section, strip.across, way, left, isElsewhere))
  return twig
}

function sectionTwig(
  { along, kinds }: PatternSection,
  across: number,
  way: Way,
  left: number[],
  isElsewhere: readonly boolean[],
): Twig {
  const twig = way === RIP ? new Twig(along, across, RIP, -1, false) : new Twig(across, along, CROSSCUT, -1, false)
  for (const part of kinds) {
    if (left[part.kind]! <= 0 || isElsewhere[part.kind]) continue
    left[part.kind]!--
    const [length, width] = way === RIP ? [along, part.across] : [part.across, along]
    twig.pieces.push(new Twig(length, width, way, part.kind, part.turned))
  }
  return twig
}
