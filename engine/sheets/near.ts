import type { SheetJob } from './job'
import { layoutKey, type SheetAnswer, type SheetLayout } from './layout'
import { handlingCost, largestLeft, settingsOf } from './settings'
import { standing } from './standing'
import { priceIn, sheetCount } from './tally'
import { verify } from './verify'

/**
 * Answers stay near the layout that was shown before, each material by itself. As long as that is sound for this job and
 * no answer beats it, it is the answer, sheet for sheet; otherwise sheets that are cut as they were come first, in the
 * order they had.
 */
export function stayNear(job: SheetJob): (answer: SheetAnswer) => SheetAnswer {
  const { near, locked = [] } = job
  if (!near) return (answer) => answer
  const materialOf = new Map(job.stock.map(({ id, material }) => [id, material]))
  const materials = [...new Set(job.parts.map(({ material }) => material))]
  const shares = materials.map((material) => shareOf(job, material, materialOf))
  return (answer) => {
    const free = answer.sheets.slice(locked.length)
    const settled = shares.map(({ material, stay }) =>
      stay({
        ...answer,
        sheets: free.filter(({ stock }) => materialOf.get(stock) === material),
        unplaced: answer.unplaced.filter(({ part }) => materialOfPart(job, part) === material),
      }),
    )
    return {
      sheets: [...locked, ...settled.flatMap(({ sheets }) => sheets)],
      unplaced: settled.flatMap(({ unplaced }) => unplaced),
      bounds: answer.bounds,
      proved: settled.every(({ proved }) => proved),
      ...(answer.provedWithLocked === undefined
        ? {}
        : { provedWithLocked: settled.every(({ provedWithLocked }) => provedWithLocked) }),
      ...(settled.some(({ mayCostLess }) => mayCostLess) ? { mayCostLess: true } : {}),
    }
  }
}

function materialOfPart({ parts }: SheetJob, id: string): string | undefined {
  return parts.find((part) => part.id === id)?.material
}

/** One material of a job, and how an answer for it, without its locked sheets, stays near. */
interface Share {
  readonly material: string
  readonly stay: (answer: SheetAnswer) => SheetAnswer
}

function shareOf(job: SheetJob, material: string, materialOf: ReadonlyMap<string, string>): Share {
  const isOwn = ({ stock }: SheetLayout) => materialOf.get(stock) === material
  const locked = (job.locked ?? []).filter(isOwn)
  const lockedKeys = new Set(locked.map(layoutKey))
  const near = job.near!.filter((sheet) => isOwn(sheet) && !lockedKeys.has(layoutKey(sheet)))
  const known = new Map(near.map((sheet, at) => [layoutKey(sheet), at]))
  const parts = job.parts.filter((part) => part.material === material)
  const own = { ...job, locked, parts, stock: job.stock.filter((stock) => stock.material === material) }
  const whole = { sheets: [...locked, ...near], unplaced: [], bounds: {}, proved: false }
  let isSound: boolean | null = null
  function stay(answer: SheetAnswer): SheetAnswer {
    isSound ??= verify(own, standing(own)(whole)).length === 0
    const before = { ...answer, sheets: near, unplaced: [] }
    if (isSound && !beats(job, answer, before)) {
      const isAsFew = sheetCount(before) === sheetCount(answer)
      const isDearer = costOf(job, before) > costOf(job, answer) + 1e-9
      const isProvedHere = answer.provedWithLocked === true && isAsFew
      return {
        ...{ ...before, proved: answer.proved && isAsFew },
        ...(isDearer && isAsFew ? { mayCostLess: true } : {}),
        ...(answer.provedWithLocked === undefined ? {} : { provedWithLocked: isProvedHere }),
      }
    }
    const place = (sheet: SheetLayout) => known.get(layoutKey(sheet)) ?? Infinity
    const placed = answer.sheets.map((sheet) => ({ sheet, place: place(sheet) }))
    placed.sort((a, b) => (a.place === b.place ? 0 : a.place - b.place))
    return { ...answer, sheets: placed.map(({ sheet }) => sheet) }
  }
  return { material, stay }
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

function costOf(job: SheetJob, { sheets }: SheetAnswer): number {
  const prices = new Map(job.stock.map((stock) => [stock.id, priceIn(job, stock)]))
  return sheets.reduce((sum, sheet) => sum + (prices.get(sheet.stock) ?? 0) * sheet.copies, 0)
}
