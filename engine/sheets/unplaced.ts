import { settle, ticks } from '../units/length'
import type { JobPart, SheetJob } from './job'
import type { SheetAnswer } from './layout'
import { fits, type Lot, partKind, stockKind } from './lot'

type Unplaced = SheetAnswer['unplaced'][number]

/** Parts that no sheet of their material can give, with the nearest size that would fit. */
export function unfitting(job: SheetJob): Unplaced[] {
  const kerf = ticks(job.kerf)
  return job.parts.flatMap((part): Unplaced[] => {
    if (part.quantity === 0) return []
    const stocks = job.stock.filter(({ material }) => material === part.material)
    if (stocks.some((stock) => fits(partKind(part, kerf), stockKind(stock, kerf)))) return []
    return [{ part: part.id, quantity: part.quantity, reason: whyUnfit(part, stocks) }]
  })
}

/** Names the part's size, the sheet that comes closest less its trim, and the largest part like this that it gives. */
function whyUnfit(part: JobPart, stocks: SheetJob['stock']): string {
  if (stocks.length === 0) return `there is no sheet of ${part.material}`
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

/** What was left when the sheets ran out, counted by part. */
export function unplacedOf(lot: Lot, left: readonly number[]): Unplaced[] {
  const counts = new Map<number, number>()
  for (const kind of left) counts.set(kind, (counts.get(kind) ?? 0) + 1)
  return [...counts].map(([kind, quantity]) => {
    const { part } = lot.kinds[kind]!
    return { part: part.id, quantity, reason: usedUp(lot) }
  })
}

function usedUp({ material, stocks }: Lot): string {
  const there = stocks.reduce((sum, { quantity }) => sum + quantity, 0)
  return `the ${there} ${there === 1 ? 'sheet' : 'sheets'} of ${material} that are there are used up`
}
