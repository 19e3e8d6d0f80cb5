import {
  costOfLines,
  type Derived,
  onHandList,
  type SheetAnswer,
  type SheetJob,
  sheetCost,
  takenBy,
} from '../../engine/index'
import { boundOf, isPinned, keepingWords, leftCount, lookingWords, ofPartsWords, onNoSheetWords } from '../sheets/words'
import type { Layout } from '../store/state'

/** What a design comes to, as far as it is known. */
export interface Figures {
  readonly parts: number
  /** Whole sheets, and offcuts from the rack. */
  readonly sheets: number | null
  readonly offcuts: number
  /** In whole percent of the sheets bought. */
  readonly yield: number | null
  /** What all sheets are worth, and how much of that is on hand already. */
  readonly cost: number | null
  readonly onHand: number
}

export function figuresOf(derived: Derived, layout: Layout | null): Figures {
  const parts = derived.partOf.size
  if (!layout) return { parts, sheets: null, offcuts: 0, yield: null, cost: null, onHand: 0 }
  const { job, answer } = layout
  const cost = sheetCost(job, answer)
  return {
    parts,
    ...takenBy(job, answer),
    yield: yieldOf(job, answer),
    cost,
    onHand: costOfLines(onHandList(job, answer)),
  }
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

/** What is said about the number of sheets. */
export function proofOf(layout: Layout | null): { readonly text: string; readonly isProved: boolean } | null {
  if (!layout) return null
  const { job, answer } = layout
  const left = leftCount(answer)
  if (left > 0) return { text: onNoSheetWords(left), isProved: false }
  if (answer.sheets.length === 0) return null
  const least = boundOf(answer)
  const more = answer.mayCostLess ? '; one may cost less' : lookingWords(layout)
  if (answer.proved) {
    // The directions themselves are told with the sheets: here is no room for them.
    const these = job.stages === null || isPinned(job) ? ofPartsWords(job) : 'cut this way'
    const counted = takenBy(job, answer).offcuts > 0 ? ', offcuts counted' : ''
    return { text: `no layout ${these} needs fewer than ${least}${counted}${more}`, isProved: !answer.mayCostLess }
  }
  if (answer.provedWithLocked) {
    return { text: `no layout that ${keepingWords(job)} needs fewer${more}`, isProved: false }
  }
  const state = layout.isStopped ? ', looking was stopped' : layout.isSettled ? '' : ', still looking'
  return { text: `at least ${least} needed${state}`, isProved: false }
}
