import { ticks } from '../units/length'
import type { JobStock, SheetJob } from './job'
import type { Piece, SheetAnswer, SheetLayout } from './layout'

/** Areas of one sheet in square ticks of the length grid, so that they add up exactly. */
export interface Tally {
  readonly parts: number
  readonly kerf: number
  readonly trim: number
  readonly offcuts: number
  readonly waste: number
}

/** Where the area of a sheet goes. The kerf is what no piece of the tree accounts for inside the trim. */
export function tallyOf(job: SheetJob, layout: SheetLayout): Tally {
  const stock = job.stock.find(({ id }) => id === layout.stock)!
  const root = area(layout.root)
  const sums = { part: 0, offcut: 0, waste: 0 }
  addUp(layout.root, sums)
  return {
    parts: sums.part,
    offcuts: sums.offcut,
    waste: sums.waste,
    kerf: root - sums.part - sums.offcut - sums.waste,
    trim: ticks(stock.length) * ticks(stock.width) - root,
  }
}

function addUp(piece: Piece, sums: { part: number; offcut: number; waste: number }): void {
  if (piece.kind !== 'cut') sums[piece.kind] += area(piece)
  else for (const inner of piece.pieces) addUp(inner, sums)
}

function area({ length, width }: Piece): number {
  return ticks(length) * ticks(width)
}

export function sheetCount({ sheets }: Pick<SheetAnswer, 'sheets'>): number {
  return sheets.reduce((sum, { copies }) => sum + copies, 0)
}

/** Where fewer sheets come first, the dearest costs so much more than one for nothing: less than one of many sheets. */
const BESIDE_COUNT = 1e-4

/** What a sheet counts for in the search; an offcut that is there already counts nothing. */
export function priceIn({ isCountFirst, stock }: SheetJob, { price = 1, offcut }: JobStock): number {
  if (offcut) return 0
  if (!isCountFirst) return price
  const dearest = stock.reduce((most, one) => Math.max(most, one.price ?? 1), 1)
  return 1 + (BESIDE_COUNT * price) / dearest
}

/** What a layout takes: whole sheets, and offcuts that lie in the rack already. */
export interface Taken {
  readonly sheets: number
  readonly offcuts: number
}

export function takenBy({ stock }: SheetJob, answer: SheetAnswer): Taken {
  const offcutIds = new Set(stock.filter(({ offcut }) => offcut).map(({ id }) => id))
  const offcuts = sheetCount({ sheets: answer.sheets.filter((sheet) => offcutIds.has(sheet.stock)) })
  return { sheets: sheetCount(answer) - offcuts, offcuts }
}
