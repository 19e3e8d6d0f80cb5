import { unreachable } from '../basics/assert'
import { counted } from '../basics/counted'
import { settle } from '../units/length'
import { type Hindrance, hindranceOf, type Lacking, type Size, stockFor } from './hindrance'
import type { JobPart, JobStock, SheetJob } from './job'
import type { SheetAnswer } from './layout'
import { kindsOf, type Lot, type PartKind } from './lot'
import { lockedSheets, pinKey } from './pinned'
import type { Plan } from './plan'

type Unplaced = SheetAnswer['unplaced'][number]

/**
 * Parts that no sheet that is there can give, with the nearest size that would fit; `whole` has what is excluded and
 * what is locked.
 */
export function unfitting(job: SheetJob, whole: SheetJob): Unplaced[] {
  return kindsOf(job).flatMap((kind): Unplaced[] => {
    const hindrance = kind.quantity === 0 ? null : hindranceOf(kind, whole)
    return hindrance ? boardsOf(kind, kind.quantity, wordsFor(hindrance, kind.part)) : []
  })
}

/** Parts that ask for a sheet which is locked without them. */
export function shutOut(job: SheetJob): Unplaced[] {
  const shut = lockedSheets(job)
  if (shut.size === 0) return []
  return job.parts.flatMap((part): Unplaced[] => {
    if (part.sheet === undefined || !shut.has(pinKey(part))) return []
    const own = (job.locked ?? []).flatMap(({ placements }) => placements.filter((place) => place.part === part.id))
    const quantity = part.quantity - own.length
    const reason = `sheet ${part.sheet} of ${part.material}, which it must come from, is locked without it`
    return quantity > 0 ? [{ part: part.id, quantity, reason }] : []
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
    case 'lacking':
      return hindrance.isAll && hindrance.why !== 'kept' ? allLack(hindrance.why, of) : lackWords(hindrance, part)
    case 'trimmed':
      return `the trim leaves nothing of the sheets of ${of}`
    case 'large': {
      const { stock, usable, best, lacking } = hindrance
      const larger = `${size(part)} is larger than ${size(usable)}, what sheet ${stock.id} gives less its trim`
      const isTurning = part.rotate !== true && part.width <= usable.length && part.length <= usable.width
      const fits = isTurning ? 'it would fit if it may be turned (rotate: true)' : `${size(best)} would fit`
      return `${larger}; ${fits}${lacking ? `; ${lackWords(lacking, part)}` : ''}`
    }
    default:
      return unreachable(hindrance)
  }
}

function allLack(why: 'aside' | 'gone', of: string): string {
  return why === 'aside' ? `every sheet of ${of} is excluded` : `there are 0 sheets of ${of} on hand`
}

/** `sheet large would give 2052 x 579, but there are 0 of it on hand`. */
function lackWords({ stock, why }: Lacking, part: JobPart): string {
  const gives = `sheet ${stock.id}${part.from ? ', which it must come from,' : ''} would give ${size(part)}`
  switch (why) {
    case 'aside':
      return `${gives}, but it is excluded`
    case 'gone':
      return `${gives}, but there are 0 of it on hand`
    case 'kept':
      return `${gives}, but locked sheets take all ${stock.quantity} of it on hand`
    default:
      return unreachable(why)
  }
}

function size({ length, width }: Size): string {
  return `${settle(length)} x ${settle(width)}`
}

/** What was left when the sheets ran out, or the stages, counted by part; `whole` has what is locked. */
export function unplacedOf(lot: Lot, { left, boards }: Plan, whole: SheetJob): Unplaced[] {
  const counts = new Map<number, number>()
  for (const kind of left) counts.set(kind, (counts.get(kind) ?? 0) + 1)
  const used = boards.map(({ stock }) => stock.stock.id)
  return [...counts].flatMap(([kind, quantity]) =>
    boardsOf(lot.kinds[kind]!, quantity, whyLeft(lot, lot.kinds[kind]!, used, whole)),
  )
}

function whyLeft({ material, stocks, depth }: Lot, kind: PartKind, used: readonly string[], whole: SheetJob): string {
  const { part, block, from, sheet } = kind
  if (sheet !== undefined) return whyNotOnSheet(kind, material)
  if (from !== undefined) return `sheet ${from}, which it must come from, has no room for it`
  const isThere = ({ excluded, quantity }: JobStock) => !excluded && quantity !== 0
  const own = whole.stock.filter((stock) => stock.material === material && isThere(stock))
  const large = stockFor(whole, (block?.[0] ?? part).id).filter(isThere)
  const ids = new Set(large.map(({ id }) => id))
  const there = stocks.reduce((sum, { stock, quantity }) => sum + (ids.has(stock.id) ? quantity : 0), 0)
  if (block && used.filter((id) => ids.has(id)).length < there)
    return `its boards cannot be cut apart as one piece in ${depth} stages`
  const onHand = countedStock(large)
  const which = large.length === own.length ? '' : ` that ${size(part)} fits on (${[...ids].join(', ')})`
  return onHandCount(large) === 1
    ? `the one ${onHand.slice(2)} of ${material} on hand${which} is used up`
    : `all ${onHand} of ${material} on hand${which} are used up`
}

function whyNotOnSheet({ part, from, sheet }: PartKind, material: string): string {
  const of = from === undefined ? '' : `, of stock ${from},`
  return `sheet ${sheet} of ${material}${of} has no room for ${size(part)} beside what else must come from it, or there is none left to open`
}

function onHandCount(stocks: readonly JobStock[]): number {
  return stocks.reduce((sum, { quantity = Infinity }) => sum + quantity, 0)
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
