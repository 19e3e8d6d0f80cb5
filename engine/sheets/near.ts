import type { SheetJob } from './job'
import type { SheetAnswer, SheetLayout } from './layout'
import { handlingCost, largestLeft, settingsOf } from './settings'
import { sheetCount } from './tally'
import { verify } from './verify'

/**
 * Answers stay near the layout that was shown before. As long as that is sound for this job and no answer beats it, it
 * is the answer, sheet for sheet; otherwise sheets that are cut as they were come first, in the order they had.
 */
export function stayNear(job: SheetJob): (answer: SheetAnswer) => SheetAnswer {
  const { near } = job
  if (!near) return (answer) => answer
  const known = new Map(near.map((sheet, at) => [keyOf(sheet), at]))
  let isSound: boolean | null = null
  return (answer) => {
    const before = { ...answer, sheets: near, unplaced: [], proved: false }
    isSound ??= verify(job, { ...before, bounds: {} }).length === 0
    if (isSound && !beats(job, answer, before)) {
      const isAsFew = sheetCount(before) === sheetCount(answer) && costOf(job, before) <= costOf(job, answer) + 1e-9
      return { ...before, proved: answer.proved && isAsFew }
    }
    const locked = job.locked?.length ?? 0
    const place = (sheet: SheetLayout) => known.get(keyOf(sheet)) ?? Infinity
    const free = answer.sheets.slice(locked).map((sheet) => ({ sheet, place: place(sheet) }))
    free.sort((a, b) => (a.place === b.place ? 0 : a.place - b.place))
    return { ...answer, sheets: [...answer.sheets.slice(0, locked), ...free.map(({ sheet }) => sheet)] }
  }
}

function keyOf({ stock, root }: SheetLayout): string {
  return JSON.stringify([stock, root])
}

/** Cheaper, or as cheap and better by the first goal in which they differ. */
function beats(job: SheetJob, answer: SheetAnswer, before: SheetAnswer): boolean {
  if (answer.unplaced.length > 0) return false
  const saved = costOf(job, before) - costOf(job, answer)
  if (Math.abs(saved) > 1e-9) return saved > 0
  for (const goal of job.goals ?? ['leftover', 'settings']) {
    const gain =
      goal === 'leftover'
        ? largestLeft(answer) - largestLeft(before)
        : handlingCost(settingsOf(before)) - handlingCost(settingsOf(answer))
    if (Math.abs(gain) > 1e-9) return gain > 0
  }
  return false
}

function costOf({ stock }: SheetJob, { sheets }: SheetAnswer): number {
  const prices = new Map(stock.map(({ id, price, offcut }) => [id, offcut ? 0 : (price ?? 1)]))
  return sheets.reduce((sum, sheet) => sum + (prices.get(sheet.stock) ?? 0) * sheet.copies, 0)
}
