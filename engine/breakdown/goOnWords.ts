import { counted } from '../basics/counted'
import type { PartId } from '../basics/id'
import type { Kept } from './keep'
import type { Replan } from './mishap'
import type { BreakdownInput } from './steps'
import { partsIn } from './task'
import { walksOf } from './walks'
import { nameList } from './wording'

/** Why nothing stayed as it was laid out. */
export function anewWords(fewer: number): string {
  return `Laying all of it out anew takes ${counted(fewer, 'sheet')} fewer than leaving the rest as it was.`
}

/** Of more parts than this it is not told where each is cut from. */
const FEW = 8

/** Where what is missing is cut from, and what stays. */
export function keptWords(
  input: BreakdownInput,
  { cut, lost }: Replan,
  { anew, cutList }: Kept,
  givenUp: readonly string[],
): string[] {
  const all = cutList.rows.reduce((sum, { quantity }) => sum + quantity, 0)
  const left = all - anew.length
  const others = [
    ...(cut.length > 0 ? [`${counted(cut.length, 'part')} that ${cut.length === 1 ? 'is' : 'are'} cut`] : []),
    ...(left > 0 ? [`${counted(left, 'part')} still to be cut`] : []),
  ]
  const again = givenUp.length > 0 ? anew.filter((part) => lost.includes(part)) : anew
  return [
    ...(again.length > FEW ? [`${again.length} parts are laid out anew.`] : fromWords(input, again)),
    ...(givenUp.length > 0 ? [`To save a sheet, what is cut from ${nameList(givenUp)} is laid out anew.`] : []),
    ...(others.length > 0 ? [`All else stays as it was: ${nameList(others)}.`] : []),
    ...(all === 0 ? ['Nothing is left to cut.'] : []),
  ]
}

/** `B1-LS is cut from 1c.` */
function fromWords(input: BreakdownInput, parts: readonly PartId[]): string[] {
  const from = new Map<string, string[]>()
  for (const walk of walksOf(input, 'rip')) {
    const { name, sheet, root } = walk
    const isSheet = name === `sheet ${sheet}`
    const isNew = isSheet && sheet >= (input.firstSheet ?? 1)
    const where = isNew ? `${name}, one sheet more` : isSheet ? `a free place on ${name}` : name
    for (const piece of partsIn(root)) {
      const { part, mark } = walk.dealt(piece)
      if (part !== null && parts.includes(part)) from.set(where, [...(from.get(where) ?? []), mark])
    }
  }
  return [...from].map(([where, marks]) => `${nameList(marks)} ${marks.length === 1 ? 'is' : 'are'} cut from ${where}.`)
}
