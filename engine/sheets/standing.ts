import type { SheetJob } from './job'
import { layoutKey, type SheetAnswer, type SheetLayout } from './layout'
import { numberAskedFor } from './pinned'
import { sheetCount } from './tally'

/** A sheet of a material that has its place: as many sheets come before it, of the answer or of its material. */
interface Held {
  readonly sheet: SheetLayout
  readonly at: number
}

/**
 * Gives every locked sheet the number that it had, as far as the sheets of its own material go, and every sheet that parts
 * ask for by its number that number, where there are as many and no locked sheet stands there. The answer lists its sheets
 * by material; the others of a material keep their order.
 */
export function standing(job: SheetJob): (answer: SheetAnswer) => SheetAnswer {
  const { locked = [], lockedAt } = job
  const isAsking = job.parts.some(({ sheet }) => sheet !== undefined)
  const hasPlaces = lockedAt !== undefined && locked.length > 0
  if (!hasPlaces && !isAsking) return (answer) => answer
  const materialOf = new Map(job.stock.map(({ id, material }) => [id, material]))
  const materials = [...new Set(job.parts.map(({ material }) => material))]
  const numberOf = numberAskedFor(job)
  return (answer) => {
    const free = answer.sheets.slice(locked.length)
    // Without places locked sheets come first, of whatever material.
    const sheets: SheetLayout[] = lockedAt ? [] : [...locked]
    for (const material of materials) {
      const isOwn = ({ stock }: SheetLayout) => materialOf.get(stock) === material
      const before = sheetCount({ sheets })
      const own = free.filter(isOwn)
      const kept = lockedAt
        ? locked.flatMap((sheet, at) => (isOwn(sheet) ? [{ sheet, at: lockedAt[at]! - before }] : []))
        : []
      const first = lockedAt ? 0 : sheetCount({ sheets: locked.filter(isOwn) })
      const asked = [...own, ...kept.map(({ sheet }) => sheet)].flatMap((sheet): Held[] => {
        const number = numberOf(sheet)
        return number === undefined ? [] : [{ sheet, at: number - 1 }]
      })
      const isFree = ({ sheet }: Held) => numberOf(sheet) === undefined
      kept.sort((a, b) => a.at - b.at)
      const others = own.filter((sheet) => numberOf(sheet) === undefined)
      sheets.push(...inPlaces(isAsking ? merged(others) : others, kept.filter(isFree), asked, first))
    }
    return { ...answer, sheets }
  }
}

/** Layouts that stood apart for the sake of a number stand together again. */
function merged(sheets: readonly SheetLayout[]): SheetLayout[] {
  const alike = new Map<string, SheetLayout>()
  for (const sheet of sheets) {
    const key = layoutKey(sheet)
    const known = alike.get(key)
    alike.set(key, known ? { ...known, copies: known.copies + sheet.copies } : sheet)
  }
  return [...alike.values()]
}

/**
 * The sheets of one material one after another, behind so many that stand already; copies stand apart where a sheet that is
 * asked for has its place between.
 */
function inPlaces(
  others: readonly SheetLayout[],
  locked: readonly Held[],
  asked: readonly Held[],
  first: number,
): SheetLayout[] {
  const all = first + sheetCount({ sheets: [...others, ...[...locked, ...asked].map(({ sheet }) => sheet)] })
  const [free, kept] = [[...others], [...locked]]
  const byNumber = [...asked].sort((a, b) => a.at - b.at)
  const sheets: SheetLayout[] = []
  let count = first
  const put = (sheet: SheetLayout) => {
    sheets.push(sheet)
    count += sheet.copies
  }
  const take = (held: Held) => {
    byNumber.splice(byNumber.indexOf(held), 1)
    put(held.sheet)
  }
  while (count < all) {
    const due = byNumber.find(({ at }) => at === count) ?? byNumber.find(({ at }) => at < count)
    const [sheet] = free
    if (kept.length > 0 && kept[0]!.at <= count) put(kept.shift()!.sheet)
    else if (due) take(due)
    else if (sheet) {
      const next = byNumber[0]?.at ?? Infinity
      const copies = Math.min(sheet.copies, next - count)
      if (copies === sheet.copies) free.shift()
      else free[0] = { ...sheet, copies: sheet.copies - copies }
      put(copies === sheet.copies ? sheet : { ...sheet, copies })
    } else if (kept.length > 0) put(kept.shift()!.sheet)
    // There are not as many sheets as the number says.
    else take(byNumber.find(({ at }) => at >= all) ?? byNumber[0]!)
  }
  return sheets
}
