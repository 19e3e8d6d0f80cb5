import { counted } from '../basics/counted'
import type { PartId } from '../basics/id'
import type { CutRow } from '../cutlist/row'
import type { Kept } from './keep'
import type { Replan } from './mishap'
import { isSheetName } from './names'
import type { BreakdownInput } from './steps'
import { partsIn } from './task'
import { walksOf } from './walks'
import { nameList } from './wording'

/** Why nothing stayed as it was laid out. */
export function anewWords(fewer: number): string {
  return `Laying all of it out anew takes ${counted(fewer, 'sheet')} fewer than leaving the rest as it was.`
}

/** Of more parts than this it is not told where each is cut from, and more pieces are counted. */
const FEW = 8

/** Where what is missing is cut from, and what stays. */
export function keptWords(
  input: BreakdownInput,
  { cut, lost, kept: first }: Replan,
  { anew, cutList }: Kept,
  givenUp: readonly string[],
): string[] {
  const all = cutList.rows.reduce((sum, { quantity }) => sum + quantity, 0)
  const left = all - anew.length
  const others = [
    ...(cut.length > 0 ? [`${counted(cut.length, 'part')} that ${cut.length === 1 ? 'is' : 'are'} cut`] : []),
    ...(left > 0 ? [`${counted(left, 'part')} still to be cut`] : []),
  ]
  // What is given up to save a sheet is told as such.
  const again = first ? anew.filter((part) => first.anew.includes(part)) : anew
  const named = again.length <= FEW ? again : lost.length <= FEW ? again.filter((part) => lost.includes(part)) : []
  return [
    ...fromWords(input, named),
    ...anewCount(
      input,
      again.filter((part) => !named.includes(part)),
      named.length > 0,
    ),
    ...askedWords(input, again, cutList.rows),
    ...givenUpWords(anew.length - again.length, givenUp),
    ...(others.length > 0 ? [`All else stays as it was: ${nameList(others)}.`] : []),
    ...(all === 0 ? ['Nothing is left to cut.'] : []),
  ]
}

/** Of boards that were chosen from one sheet it is told that a plan made again asks for none. */
function askedWords({ marks }: BreakdownInput, parts: readonly PartId[], rows: readonly CutRow[]): string[] {
  const asked = new Set(rows.flatMap((row) => (row.sheet === undefined ? [] : row.parts)))
  const names = parts.filter((part) => asked.has(part)).map((part) => marks.get(part) ?? part)
  if (names.length === 0) return []
  return [
    names.length > FEW
      ? `${names.length} parts that were chosen from one sheet are cut from where there is room.`
      : `${nameList(names)} ${names.length === 1 ? 'was' : 'were'} chosen from one sheet, and now ${names.length === 1 ? 'is' : 'are'} cut from where there is room.`,
  ]
}

/** `To save a sheet, 2 parts that were to be cut from 10a are laid out anew too.` */
function givenUpWords(parts: number, names: readonly string[]): string[] {
  if (names.length === 0) return []
  const were = counted(parts, 'part that was', 'parts that were')
  return [`To save a sheet, ${were} to be cut from ${piecesOf(names)} ${parts === 1 ? 'is' : 'are'} laid out anew too.`]
}

function piecesOf(names: readonly string[]): string {
  return names.length > FEW ? `${names.length} pieces` : nameList(names)
}

/** `96 others are laid out anew, 17 of them on sheets 13 and 14.` */
function anewCount(input: BreakdownInput, parts: readonly PartId[], areOthers: boolean): string[] {
  if (parts.length === 0) return []
  const are = areOthers
    ? counted(parts.length, 'other is', 'others are')
    : counted(parts.length, 'part is', 'parts are')
  const fresh = placesOf(input, parts).filter(({ isNew }) => isNew)
  const count = fresh.reduce((sum, { marks }) => sum + marks.length, 0)
  const on = nameList(fresh.map(({ name }) => name))
  return [`${are} laid out anew${count === 0 ? '' : `, ${count} of them on ${on}`}.`]
}

/** `B1-LS is cut from 1c.` */
function fromWords(input: BreakdownInput, parts: readonly PartId[]): string[] {
  return placesOf(input, parts).map(({ name, isSheet, isNew, marks }) => {
    const where = isNew ? `${name}, one sheet more` : isSheet ? `a free place on ${name}` : name
    return `${nameList(marks)} ${marks.length === 1 ? 'is' : 'are'} cut from ${where}.`
  })
}

interface PlaceOfParts {
  readonly name: string
  readonly isSheet: boolean
  /** Whether it is a sheet more than there were. */
  readonly isNew: boolean
  readonly marks: readonly string[]
}

/** Which sheets and pieces some parts are laid out on now. */
function placesOf(input: BreakdownInput, parts: readonly PartId[]): PlaceOfParts[] {
  const wanted = new Set(parts)
  return walksOf(input, 'rip').flatMap(({ name, sheet, root, dealt }) => {
    const marks = partsIn(root).flatMap((piece) => {
      const { part, mark } = dealt(piece)
      return part !== null && wanted.has(part) ? [mark] : []
    })
    const isSheet = isSheetName(name, sheet)
    const isNew = isSheet && sheet >= (input.firstSheet ?? 1)
    return marks.length === 0 ? [] : [{ name, isSheet, isNew, marks }]
  })
}
