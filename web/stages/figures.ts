import { type Derived, type SheetAnswer, type SheetJob, takenBy } from '../../engine/index'
import { boundOf, keepingWords, leftCount, ofPartsWords, onNoSheetWords, searchWords } from '../sheets/words'
import type { Layout } from '../store/state'

/** What a design comes to, as far as it is known. */
export interface Figures {
  readonly parts: number
  /** Whole sheets, and offcuts from the rack. */
  readonly sheets: number | null
  readonly offcuts: number
  /** In whole percent of the sheets bought. */
  readonly yield: number | null
  readonly cost: number | null
}

export function figuresOf(derived: Derived, layout: Layout | null): Figures {
  const parts = derived.partOf.size
  if (!layout) return { parts, sheets: null, offcuts: 0, yield: null, cost: null }
  const { job, answer } = layout
  return { parts, ...takenBy(job, answer), yield: yieldOf(job, answer), cost: costOf(job, answer) }
}

/** The share of all sheets that becomes parts, in percent; nothing where there is no sheet. */
function yieldOf({ stock, parts }: SheetJob, { sheets, unplaced }: SheetAnswer): number | null {
  const areaOf = new Map(stock.map(({ id, length, width }) => [id, length * width]))
  const all = sheets.reduce((sum, { stock: id, copies }) => sum + copies * (areaOf.get(id) ?? 0), 0)
  const left = new Map(unplaced.map(({ part, quantity }) => [part, quantity]))
  const used = parts.reduce((sum, { id, length, width, quantity }) => {
    return sum + length * width * (quantity - (left.get(id) ?? 0))
  }, 0)
  return all > 0 ? Math.round((100 * used) / all) : null
}

/** Prices add up in cents, so that ten times 0.1 is 1. */
function costOf({ stock }: SheetJob, { sheets }: SheetAnswer): number {
  const priceOf = new Map(stock.map(({ id, price }) => [id, price ?? 0]))
  const cents = sheets.reduce(
    (sum, { stock: id, copies }) => sum + copies * Math.round(100 * (priceOf.get(id) ?? 0)),
    0,
  )
  return cents / 100
}

/** What is said about the number of sheets. */
export function proofOf(layout: Layout | null): { readonly text: string; readonly isProved: boolean } | null {
  if (!layout) return null
  const { job, answer } = layout
  const left = leftCount(answer)
  if (left > 0) return { text: onNoSheetWords(left), isProved: false }
  if (answer.sheets.length === 0) return null
  const least = boundOf(answer)
  const search = layout.isSettled ? '' : searchWords(job)
  const more = search === '' ? '' : `; still looking for ${search}`
  if (answer.proved) {
    return { text: `no layout ${ofPartsWords(job)} needs fewer than ${least}${more}`, isProved: true }
  }
  if (answer.provedWithLocked) {
    return { text: `no layout that ${keepingWords(job)} needs fewer${more}`, isProved: false }
  }
  return { text: `at least ${least} needed${layout.isSettled ? '' : ', still looking'}`, isProved: false }
}
