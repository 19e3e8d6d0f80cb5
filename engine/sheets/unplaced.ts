import { unreachable } from '../basics/assert'
import { counted } from '../basics/counted'
import { settle } from '../units/length'
import { type Hindrance, hindranceOf, type Size } from './hindrance'
import type { JobPart, SheetJob } from './job'
import type { SheetAnswer } from './layout'
import { kindsOf, type Lot, type PartKind } from './lot'
import type { Plan } from './plan'

type Unplaced = SheetAnswer['unplaced'][number]

/** Parts that no sheet of their material can give, with the nearest size that would fit; `whole` has what is excluded. */
export function unfitting(job: SheetJob, whole: SheetJob): Unplaced[] {
  return kindsOf(job).flatMap((kind): Unplaced[] => {
    const hindrance = kind.quantity === 0 ? null : hindranceOf(kind, whole)
    return hindrance ? boardsOf(kind, kind.quantity, wordsFor(hindrance, kind.part)) : []
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
function wordsFor(hindrance: Hindrance, part: JobPart): string {
  const of = `${part.material}${part.from ? ` of stock ${part.from}` : ''}`
  switch (hindrance.kind) {
    case 'none':
      return `there is no sheet of ${of}`
    case 'aside':
      return `every sheet of ${of} is excluded`
    case 'trimmed':
      return `the trim leaves nothing of the sheets of ${of}`
    case 'large': {
      const { stock, usable, best } = hindrance
      const larger = `${size(part)} is larger than ${size(usable)}, what sheet ${stock.id} gives less its trim`
      const isTurning = part.rotate !== true && part.width <= usable.length && part.length <= usable.width
      return `${larger}; ${isTurning ? 'it would fit if it may be turned (rotate: true)' : `${size(best)} would fit`}`
    }
    default:
      return unreachable(hindrance)
  }
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
  if (there === 0) return `there are 0 sheets of ${material} on hand`
  const onHand = countedStock(stocks)
  return there === 1
    ? `the one ${onHand.slice(2)} of ${material} on hand is used up`
    : `all ${onHand} of ${material} on hand are used up`
}

/** `3 sheets and 1 offcut`. */
export function countedStock(stocks: readonly { readonly offcut?: boolean; readonly quantity?: number }[]): string {
  const count = (isOffcut: boolean) => {
    return stocks.reduce(
      (sum, { offcut, quantity = Infinity }) => sum + (Boolean(offcut) === isOffcut ? quantity : 0),
      0,
    )
  }
  const [sheets, offcuts] = [count(false), count(true)]
  const words = [
    ...(sheets > 0 || offcuts === 0 ? [counted(sheets, 'sheet')] : []),
    ...(offcuts > 0 ? [counted(offcuts, 'offcut')] : []),
  ]
  return words.join(' and ')
}
