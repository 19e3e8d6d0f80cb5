import { ticks } from '../units/length'
import { banksOf, blockOf } from './bank'
import type { JobGoal, JobPart, JobStock, SheetJob } from './job'
import { priceIn } from './tally'

/**
 * One material's share of a job, in whole ticks. Every part and every sheet less its trim is grown by one kerf, so that
 * grown parts may touch: a part and the kerf after it always travel together, and the last kerf falls off the sheet.
 *
 *     |part|k|part|k|part|k      the sheet grown by k holds three grown parts exactly
 */
export interface Lot {
  readonly material: string
  readonly kerf: number
  /** How many directions may be taken in turn; Infinity for no limit. */
  readonly depth: number
  readonly first: 'rip' | 'crosscut' | 'any'
  readonly goals: readonly JobGoal[]
  readonly kinds: readonly PartKind[]
  readonly stocks: readonly StockKind[]
  /** Of the largest sheet, grown: what areas are compared with. */
  readonly sheetArea: number
  /** Nothing shorter or narrower than this is of use to any part. */
  readonly leastLength: number
  readonly leastWidth: number
}

/** Parts of one size. `length` and `width` are grown by a kerf. */
export interface PartKind {
  readonly part: JobPart
  readonly length: number
  readonly width: number
  readonly turns: boolean
  readonly quantity: number
  readonly area: number
  /** The stock that it must come from. */
  readonly from: string | undefined
  /** The number of the sheet that it must come from. */
  readonly sheet: number | undefined
  /** The boards that it is cut into in turn, where it is a bank of them. */
  readonly block?: readonly JobPart[]
}

/** Sheets of one size, less trim and grown by a kerf. */
export interface StockKind {
  readonly stock: JobStock
  readonly length: number
  readonly width: number
  readonly quantity: number
  /** What opening one counts for. */
  readonly price: number
  readonly offcut: boolean
}

export function lotsOf(job: SheetJob): Lot[] {
  const materials = [...new Set(job.parts.map(({ material }) => material))]
  return materials.map((material) => lotOf(job, material))
}

function lotOf(job: SheetJob, material: string): Lot {
  const kerf = ticks(job.kerf)
  const stocks = job.stock.filter((stock) => stock.material === material).map((stock) => stockKind(stock, job))
  const kinds = kindsOf(job).filter(({ part }) => part.material === material)
  const there = stocks.filter(({ quantity }) => quantity > 0)
  const fitting = kinds.filter((kind) => kind.quantity > 0 && there.some((stock) => fits(kind, stock)))
  const turned = fitting.filter(({ turns }) => turns)
  return {
    material,
    kerf,
    depth: job.stages === null ? Infinity : (job.stages ?? 3),
    first: job.firstCut ?? 'rip',
    goals: job.goals ?? ['leftover', 'settings'],
    kinds: fitting,
    stocks: there.filter((stock) => fitting.some((kind) => fits(kind, stock))),
    sheetArea: Math.max(1, ...stocks.map(({ length, width }) => length * width)),
    leastLength: least([...fitting.map(({ length }) => length), ...turned.map(({ width }) => width)]),
    leastWidth: least([...fitting.map(({ width }) => width), ...turned.map(({ length }) => length)]),
  }
}

/** Every kind of part, the banks of boards last, each as one block. */
export function kindsOf(job: SheetJob): PartKind[] {
  const kerf = ticks(job.kerf)
  const single = job.parts.filter(({ bank }) => !bank).map((part) => partKind(part, kerf))
  const blocks = banksOf(job).map((bank) => {
    const kind = partKind(blockOf(bank, job.kerf), kerf)
    return bank.boards.length === 1 ? { ...kind, part: bank.boards[0]! } : { ...kind, block: bank.boards }
  })
  return [...single, ...blocks]
}

export function partsIn({ kinds }: Lot): number {
  return kinds.reduce((sum, { quantity }) => sum + quantity, 0)
}

/** With fewer parts of a kind a programme takes most of them more often than they are there: its sheets show less of the way. */
const OF_A_KIND = 1.5

/** Whether most parts come several times. */
export function isRepeated(lot: Lot): boolean {
  return partsIn(lot) >= OF_A_KIND * lot.kinds.length
}

function least(sizes: readonly number[]): number {
  return sizes.reduce((a, b) => Math.min(a, b), Infinity)
}

export function partKind(part: JobPart, kerf: number): PartKind {
  const length = ticks(part.length) + kerf
  const width = ticks(part.width) + kerf
  const turns = part.rotate === true && length !== width
  return {
    part,
    length,
    width,
    turns,
    quantity: part.quantity,
    area: length * width,
    from: part.from,
    sheet: part.sheet,
  }
}

export function stockKind(stock: JobStock, job: SheetJob): StockKind {
  const kerf = ticks(job.kerf)
  return {
    stock,
    length: ticks(stock.length) - 2 * ticks(stock.trim?.length ?? 0) + kerf,
    width: ticks(stock.width) - 2 * ticks(stock.trim?.width ?? 0) + kerf,
    quantity: stock.quantity ?? Infinity,
    price: priceIn(job, stock),
    offcut: stock.offcut === true,
  }
}

export function fits(kind: PartKind, stock: StockKind): boolean {
  if (!mayComeFrom(kind, stock)) return false
  const lies = kind.length <= stock.length && kind.width <= stock.width
  return lies || (kind.turns && kind.width <= stock.length && kind.length <= stock.width)
}

/** Whether a part is not wished from another kind of sheet. */
export function mayComeFrom({ from }: PartKind, { stock }: StockKind): boolean {
  return from === undefined || from === stock.id
}
