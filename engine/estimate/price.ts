import { assert } from '../basics/assert'
import type { Project } from '../project/document'
import { materialsInOrder } from '../project/materials'
import type { JobStock, SheetJob } from '../sheets/job'
import type { Piece, SheetAnswer, SheetLayout } from '../sheets/layout'

/** One line of what to buy, or of what to take from what is on hand. */
export interface TakenLine {
  readonly stock: JobStock
  readonly sheets: number
  readonly isOffcut: boolean
  /** Of a kind that is counted, or an offcut: none of it is bought. */
  readonly isOnHand: boolean
  /** Of one sheet: its price, or what it is worth where it is on hand. */
  readonly price: number
  readonly cost: number
}

/** The sheets that the layouts take, each size of each material on one line, in the order of the job's stock. */
export function takenLines(job: SheetJob, answer: SheetAnswer): TakenLine[] {
  const counts = new Map<string, number>()
  for (const { stock, copies } of answer.sheets) counts.set(stock, (counts.get(stock) ?? 0) + copies)
  for (const id of counts.keys()) {
    assert(
      job.stock.some((stock) => stock.id === id),
      `the layout uses stock ${id}, which the job does not have`,
    )
  }
  return job.stock.flatMap((stock): TakenLine[] => {
    const sheets = counts.get(stock.id) ?? 0
    const price = stock.price ?? 0
    const isOffcut = stock.offcut ?? false
    const isOnHand = isOffcut || stock.quantity !== undefined
    return sheets === 0 ? [] : [{ stock, sheets, isOffcut, isOnHand, price, cost: inCents(sheets * price) }]
  })
}

/** What is to be bought. */
export function buyList(job: SheetJob, answer: SheetAnswer): TakenLine[] {
  return takenLines(job, answer).filter(({ isOnHand }) => !isOnHand)
}

/** What is taken from what is on hand, offcuts among it. */
export function onHandList(job: SheetJob, answer: SheetAnswer): TakenLine[] {
  return takenLines(job, answer).filter(({ isOnHand }) => isOnHand)
}

/** Lines in the order in which materials are listed everywhere; those of one material stay in the order of its stock. */
export function inOrderOf(materials: Project['materials'], lines: readonly TakenLine[]): TakenLine[] {
  const order = new Map<string, number>(materialsInOrder(materials).map(({ id }, at) => [id, at]))
  const rank = ({ stock }: TakenLine) => order.get(stock.material) ?? order.size
  return [...lines].sort((a, b) => rank(a) - rank(b))
}

/** What lines cost together, in the shop's currency; of what is on hand, what it is worth. */
export function costOfLines(lines: readonly Pick<TakenLine, 'cost'>[]): number {
  return inCents(lines.reduce((sum, { cost }) => sum + cost, 0))
}

/** What all sheets are worth, bought or on hand. An offcut is worth what its stock says, which is usually nothing. */
export function sheetCost(job: SheetJob, answer: SheetAnswer): number {
  return costOfLines(takenLines(job, answer))
}

/** The same by material. */
export function materialCosts(job: SheetJob, answer: SheetAnswer): Record<string, number> {
  const costs: Record<string, number> = {}
  for (const { stock, cost } of takenLines(job, answer))
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
