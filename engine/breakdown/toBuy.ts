import { counted } from '../basics/counted'
import type { PartId } from '../basics/id'
import type { JobStock } from '../sheets/job'
import { formatLength, formatWithUnit, PLAIN_MM } from '../units/format'
import { formatMoney } from '../units/money'
import { assignParts } from './assign'
import type { PieceAtHand } from './atHand'
import type { BreakdownInput } from './steps'
import { copiesOf, isInShop, sheetNumbers, walksOf } from './walks'
import { nameList } from './wording'

/** A sheet that a plan takes beside what lies in the shop. */
interface NewSheet {
  readonly number: number
  readonly stock: JobStock
}

/** The sheets of a plan made again that are neither begun nor in the shop: bought, or taken from those on hand. */
export function newSheets(input: BreakdownInput): NewSheet[] {
  const { job, answer, firstSheet = 1, toBuy } = input
  const stock = new Map(job.stock.map((each) => [each.id, each]))
  const numbers = sheetNumbers(input).laid
  return copiesOf(answer).flatMap((layout, at) => {
    const [number, from] = [numbers[at]!, stock.get(layout.stock)!]
    const isNew = number >= firstSheet || toBuy?.has(number)
    return isNew && !isInShop(from) ? [{ number, stock: from }] : []
  })
}

/**
 * A plan made again, with the numbers of the sheets that it asks for and nobody has, which are cut when all that is there
 * is; of a limited stock all are on hand.
 */
export function withToBuy(input: BreakdownInput, before: BreakdownInput): BreakdownInput {
  const known = newSheets({ ...input, toBuy: before.toBuy })
  const toBuy = new Set(known.flatMap(({ stock, number }) => (stock.quantity === undefined ? [number] : [])))
  const there = walksOf(input, 'rip').filter(({ sheet }) => !toBuy.has(sheet))
  const last = Math.max(-1, ...there.map(({ stage }) => stage.round ?? 0)) + 1
  const rounds = new Map([...(input.rounds ?? []), ...[...toBuy].map((number) => [number, last] as const)])
  return { ...input, toBuy, rounds }
}

/**
 * In plain words: what a plan made again takes of sheets more, or less, than were still to be bought, and what has no
 * sheet at all.
 */
export function moreWords(still: readonly PieceAtHand[], after: BreakdownInput): string[] {
  const counts = new Map<string, number>()
  const count = (id: string, by: number) => counts.set(id, (counts.get(id) ?? 0) + by)
  const taken = newSheets(after)
  for (const { stock } of taken) count(stock.id, 1)
  for (const { isToBuy, origin } of still) if (isToBuy) count(origin, -1)
  const known = new Set(still.flatMap(({ isToBuy, sheet }) => (isToBuy ? [sheet] : [])))
  const fresh = taken.filter(({ number }) => !known.has(number))
  const lines = after.job.stock.flatMap((stock) => {
    const more = counts.get(stock.id) ?? 0
    const numbers = fresh.flatMap((sheet) => (sheet.stock.id === stock.id ? [sheet.number] : []))
    return more === 0 ? [] : [sheetsWords(stock, more, numbers, after)]
  })
  return [...lines, ...withoutSheetWords(after)]
}

/** `1 more sheet of 18 mm birch ply is to be bought, 68 €: sheet 14, cut last.` */
function sheetsWords(
  stock: JobStock,
  more: number,
  numbers: readonly number[],
  { shop, ...input }: BreakdownInput,
): string {
  const name = stockName(stock, input)
  const are = Math.abs(more) === 1 ? 'is' : 'are'
  if (more < 0) return `${counted(-more, 'sheet')} of ${name} less ${are} to be bought.`
  const cost = stock.price ? `, ${formatMoney(stock.price * more, shop.currency)}` : ''
  const isBought = stock.quantity === undefined
  const way = isBought ? 'to be bought' : 'taken from those on hand'
  const which = nameList(numbers.map((number) => `sheet ${number}`))
  return `${counted(more, 'more sheet')} of ${name} ${are} ${way}${cost}: ${which}${isBought ? ', cut last' : ''}.`
}

/** By its size too, where sheets of several sizes can be bought. */
function stockName(stock: JobStock, { job, materials, display = PLAIN_MM }: Omit<BreakdownInput, 'shop'>): string {
  const name = materialName(stock.material, materials)
  const isAlone = job.stock.every((other) => other === stock || isInShop(other) || other.material !== stock.material)
  const { length, width } = stock
  return isAlone ? name : `${name}, ${formatLength(length, display)} x ${formatWithUnit(width, display)},`
}

function materialName(id: string, materials: BreakdownInput['materials']): string {
  return materials[id as keyof typeof materials]?.name ?? id
}

/** `B1-LS has no sheet to be cut from: no more of 18 mm birch ply is on hand.` */
function withoutSheetWords({ cutList, answer, marks, materials, job }: BreakdownInput): string[] {
  if (answer.unplaced.length === 0) return []
  const placed = new Set<PartId>(assignParts(cutList, answer).map(({ part }) => part))
  const left = new Map<string, string[]>()
  for (const { material, parts } of cutList.rows) {
    const names = parts.filter((part) => !placed.has(part)).map((part) => marks.get(part) ?? part)
    if (names.length > 0) left.set(material, [...(left.get(material) ?? []), ...names])
  }
  return [...left].map(([material, names]) => {
    const has = names.length === 1 ? 'has' : 'have'
    const name = materialName(material, materials)
    const isEndless = job.stock.some((stock) => stock.material === material && stock.quantity === undefined)
    const why = isEndless ? `no sheet of ${name} is large enough` : `no more of ${name} is on hand`
    return `${nameList(names)} ${has} no sheet to be cut from: ${why}.`
  })
}
