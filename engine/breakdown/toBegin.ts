import type { Laid } from './walks'
import { numberList } from './wording'
import type { Work } from './work'

/** For every step the numbers of the sheets that it is the first to cut and that nobody has yet. */
export function toBuyBegunBy(steps: readonly (readonly Work[])[], { toBuy }: Pick<Laid, 'toBuy'>): number[][] {
  const waiting = new Set(toBuy)
  return steps.map((works) => works.flatMap(({ task: { sheet } }) => (waiting.delete(sheet) ? [sheet] : [])))
}

/** `Sheet 14 is still to be bought: it must be here for this step.` */
export function toBuyWords(sheets: readonly number[]): string {
  const isOne = sheets.length === 1
  const names = `${isOne ? 'Sheet' : 'Sheets'} ${numberList(sheets)}`
  return `${names} ${isOne ? 'is' : 'are'} still to be bought: ${isOne ? 'it' : 'they'} must be here for this step.`
}
