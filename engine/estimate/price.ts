import { assert } from '../basics/assert'
import type { JobStock, SheetJob } from '../sheets/job'
import type { Piece, SheetAnswer, SheetLayout } from '../sheets/layout'

/** One line of what to buy, or of what to take from the rack. */
export interface BuyLine {
  readonly stock: JobStock
  readonly sheets: number
  readonly isOffcut: boolean
  /** Of one sheet. */
  readonly price: number
  readonly cost: number
}

/** The sheets that the layouts take, each size of each material on one line, in the order of the job's stock. */
export function buyList(job: SheetJob, answer: SheetAnswer): BuyLine[] {
  const counts = new Map<string, number>()
  for (const { stock, copies } of answer.sheets) counts.set(stock, (counts.get(stock) ?? 0) + copies)
  for (const id of counts.keys()) {
    assert(
      job.stock.some((stock) => stock.id === id),
      `the layout uses stock ${id}, which the job does not have`,
    )
  }
  return job.stock.flatMap((stock): BuyLine[] => {
    const sheets = counts.get(stock.id) ?? 0
    const price = stock.price ?? 0
    return sheets === 0
      ? []
      : [{ stock, sheets, isOffcut: stock.offcut ?? false, price, cost: inCents(sheets * price) }]
  })
}

/** What the sheets cost, in the shop's currency. An offcut costs what its stock says, which is usually nothing. */
export function sheetCost(job: SheetJob, answer: SheetAnswer): number {
  return inCents(buyList(job, answer).reduce((sum, { cost }) => sum + cost, 0))
}

/** The same by material. */
export function materialCosts(job: SheetJob, answer: SheetAnswer): Record<string, number> {
  const costs: Record<string, number> = {}
  for (const { stock, cost } of buyList(job, answer))
    costs[stock.material] = inCents((costs[stock.material] ?? 0) + cost)
  return costs
}

/** The share of a sheet, trim and kerfs included, that becomes parts. */
export function yieldOfSheet({ root }: SheetLayout, stock: JobStock): number {
  return partArea(root) / (stock.length * stock.width)
}

function partArea(piece: Piece): number {
  if (piece.kind === 'cut') return piece.pieces.reduce((sum, child) => sum + partArea(child), 0)
  return piece.kind === 'part' ? piece.length * piece.width : 0
}

/** Prices add up in whole cents, so that ten times 0.1 is 1. */
function inCents(amount: number): number {
  return Math.round(amount * 100) / 100
}
