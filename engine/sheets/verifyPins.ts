import type { SheetJob } from './job'
import type { SheetAnswer } from './layout'
import { sheetCount } from './tally'

/** A sheet on which parts lie that ask for a sheet by its number. */
interface Asked {
  readonly material: string
  /** Which numbers its parts ask for. */
  readonly numbers: readonly number[]
  readonly copies: number
  /** How many sheets of its material come before it. */
  readonly before: number
}

/** What is wrong with parts that ask for one sheet: those of one number lie on one sheet, those of another on another. */
export function wrongInPins(job: SheetJob, answer: Pick<SheetAnswer, 'sheets'>): string[] {
  const wrong: string[] = []
  const seen = new Set<string>()
  for (const { material, numbers, copies } of askedIn(job, answer)) {
    if (numbers.length > 1) wrong.push(`parts of sheets ${numbers.join(' and ')} of ${material} lie on one sheet`)
    const name = `sheet ${numbers[0]} of ${material}`
    if (copies > 1 || seen.has(name)) wrong.push(`the parts of ${name} lie on more than one sheet`)
    seen.add(name)
  }
  return wrong
}

/** A sheet that is asked for has its number, where there are as many sheets and none of its material is locked. */
export function wrongInNumbers(job: SheetJob, answer: Pick<SheetAnswer, 'sheets'>): string[] {
  const asked = askedIn(job, answer)
  if (asked.length === 0) return []
  const materialOf = new Map(job.stock.map(({ id, material }) => [id, material]))
  return asked.flatMap(({ material, numbers: [number], before }) => {
    const isOwn = ({ stock }: { readonly stock: string }) => materialOf.get(stock) === material
    const count = sheetCount({ sheets: answer.sheets.filter(isOwn) })
    const isInTheWay = (job.locked ?? []).some(isOwn)
    return number! > count || isInTheWay || before + 1 === number
      ? []
      : [`sheet ${number} of ${material} is sheet ${before + 1} of ${count}`]
  })
}

function askedIn({ parts, stock }: SheetJob, { sheets }: Pick<SheetAnswer, 'sheets'>): Asked[] {
  const numberOf = new Map(parts.flatMap(({ id, sheet }) => (sheet === undefined ? [] : [[id, sheet] as const])))
  if (numberOf.size === 0) return []
  const materialOf = new Map(stock.map(({ id, material }) => [id, material]))
  const counts = new Map<string, number>()
  return sheets.flatMap(({ stock: id, copies, placements }): Asked[] => {
    const material = materialOf.get(id) ?? ''
    const before = counts.get(material) ?? 0
    counts.set(material, before + copies)
    const numbers = [...new Set(placements.flatMap(({ part }) => numberOf.get(part) ?? []))]
    return numbers.length === 0 ? [] : [{ material, numbers, copies, before }]
  })
}
