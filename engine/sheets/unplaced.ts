import { settle, ticks } from '../units/length'
import type { JobPart, SheetJob } from './job'
import type { SheetAnswer } from './layout'
import { fits, kindsOf, type Lot, type PartKind, stockKind } from './lot'
import type { Plan } from './plan'

type Unplaced = SheetAnswer['unplaced'][number]

/** Parts that no sheet of their material can give, with the nearest size that would fit. */
export function unfitting(job: SheetJob): Unplaced[] {
  const kerf = ticks(job.kerf)
  return kindsOf(job).flatMap((kind): Unplaced[] => {
    if (kind.quantity === 0) return []
    const stocks = job.stock.filter(({ material }) => material === kind.part.material)
    if (stocks.some((stock) => fits(kind, stockKind(stock, kerf)))) return []
    const wished = stocks.filter(({ id }) => kind.from === undefined || kind.from === id)
    return boardsOf(kind, kind.quantity, whyUnfit(kind.part, wished))
  })
}

/** Counts the boards of so many parts of a kind; of a bank each board by its own name. */
function boardsOf({ part, block }: PartKind, quantity: number, reason: string): Unplaced[] {
  if (!block) return [{ part: part.id, quantity, reason }]
  const ids = [...new Set(block.map(({ id }) => id))]
  return ids.map((id) => ({
    part: id,
    quantity: block.filter((board) => board.id === id).length,
    reason: `${part.id}: ${reason}`,
  }))
}

/** Names the part's size, the sheet that comes closest less its trim, and the largest part like this that it gives. */
function whyUnfit(part: JobPart, stocks: SheetJob['stock']): string {
  if (stocks.length === 0) return `there is no sheet of ${part.material}${part.from ? ` of stock ${part.from}` : ''}`
  const usable = stocks
    .map(({ id, length, width, trim }) => ({
      id,
      length: length - 2 * (trim?.length ?? 0),
      width: width - 2 * (trim?.width ?? 0),
    }))
    .filter(({ length, width }) => length > 0 && width > 0)
  if (usable.length === 0) return `the trim leaves nothing of the sheets of ${part.material}`
  const ways = usable.flatMap((sheet) => {
    const lying = nearest(part.length, part.width, sheet)
    const turned = nearest(part.width, part.length, sheet)
    return part.rotate ? [lying, { ...turned, length: turned.width, width: turned.length }] : [lying]
  })
  const best = ways.reduce((a, b) => (b.length * b.width > a.length * a.width ? b : a))
  const { sheet } = best
  return `${size(part)} is larger than ${size(sheet)}, what sheet ${sheet.id} gives less its trim; ${size(best)} would fit`
}

interface Size {
  readonly length: number
  readonly width: number
}

function nearest<Sheet extends Size>(length: number, width: number, sheet: Sheet): Size & { readonly sheet: Sheet } {
  return { length: Math.min(length, sheet.length), width: Math.min(width, sheet.width), sheet }
}

function size({ length, width }: Size): string {
  return `${settle(length)} x ${settle(width)}`
}

/** What was left when the sheets ran out, or the stages, counted by part. */
export function unplacedOf(lot: Lot, { left, boards }: Plan): Unplaced[] {
  const counts = new Map<number, number>()
  for (const kind of left) counts.set(kind, (counts.get(kind) ?? 0) + 1)
  return [...counts].flatMap(([kind, quantity]) =>
    boardsOf(lot.kinds[kind]!, quantity, whyLeft(lot, lot.kinds[kind]!, boards.length)),
  )
}

function whyLeft({ material, stocks, depth }: Lot, { block, from }: PartKind, used: number): string {
  if (from !== undefined) return `sheet ${from}, which it must come from, has no room for it`
  const there = stocks.reduce((sum, { quantity }) => sum + quantity, 0)
  if (block && used < there) return `its boards cannot be cut apart as one piece in ${depth} stages`
  return `the ${there} ${there === 1 ? 'sheet' : 'sheets'} of ${material} that are there are used up`
}
