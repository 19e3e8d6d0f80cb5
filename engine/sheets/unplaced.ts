import { ticks } from '../units/length'
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

function whyUnfit(part: JobPart, stocks: SheetJob['stock']): string {
  if (stocks.length === 0) return `there is no sheet of ${part.material}`
  const usable = stocks.map(({ length, width, trim }) => ({
    length: length - 2 * (trim?.length ?? 0),
    width: width - 2 * (trim?.width ?? 0),
  }))
  const largest = usable.reduce((a, b) => (b.length * b.width > a.length * a.width ? b : a))
  const nearest = `${Math.min(part.length, largest.length)} x ${Math.min(part.width, largest.width)}`
  return `${part.length} x ${part.width} is larger than ${largest.length} x ${largest.width}, the largest sheet less its trim; ${nearest} would fit`
}

/** What was left when the sheets ran out, counted by part. */
export function unplacedOf(lot: Lot, left: readonly number[]): Unplaced[] {
  const counts = new Map<number, number>()
  for (const kind of left) counts.set(kind, (counts.get(kind) ?? 0) + 1)
  return [...counts].map(([kind, quantity]) => {
    const { part } = lot.kinds[kind]!
    return { part: part.id, quantity, reason: `the sheets of ${lot.material} that are there are used up` }
  })
}
