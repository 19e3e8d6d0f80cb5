import type { Part, PartBank } from '../parts/part'
import type { Project, Stock } from '../project/document'
import { stockOf, trimOf, wishedFrom } from '../project/materials'
import { type Mm, settle } from '../units/length'

/** Whatever has boards, with what else was worked out for it. */
export interface WithParts {
  readonly parts: readonly Part[]
}

/** What something became with its banks last. */
const givenTo = new WeakMap<WithParts, WithParts>()
/** What was given to boards last, and for which banks. */
const lastOf = new WeakMap<readonly Part[], { readonly said: string; readonly parts: readonly Part[] }>()

/** With those of its boards that are in a bank put into it; the same object as before for the same boards and banks. */
export function withBanks<T extends WithParts>(one: T, banks: ReadonlyMap<Part, PartBank>): T {
  const parts = banked(one.parts, banks)
  if (one.parts === parts) return one
  const before = givenTo.get(one)
  if (before?.parts === parts) return before as T
  const fresh = { ...one, parts }
  givenTo.set(one, fresh)
  return fresh
}

function banked(parts: readonly Part[], banks: ReadonlyMap<Part, PartBank>): readonly Part[] {
  const own = parts.map((part) => banks.get(part) ?? null)
  if (!own.some(Boolean)) return parts
  const said = JSON.stringify(own)
  const before = lastOf.get(parts)
  if (before?.said === said) return before.parts
  const given = parts.map((part, at) => (own[at] ? { ...part, bank: own[at] } : part))
  lastOf.set(parts, { said, parts: given })
  return given
}

/** What boards take one beside the other, with the kerfs between them. */
export function lengthTogether(boards: readonly Part[], along: PartBank['along'], kerf: Mm): Mm {
  return settle(
    boards.reduce((sum, { cutLength, cutWidth }) => sum + (along === 'length' ? cutLength : cutWidth) + kerf, -kerf),
  )
}

/**
 * Whether one sheet gives all of them side by side, less its trim: one of the kind that is chosen for the last of them that
 * asks for one; else one that can be bought, or is on hand where none can.
 */
export function isRoomFor(boards: readonly Part[], along: PartBank['along'], { stock, shop }: Project): boolean {
  const { cutLength, cutWidth, material } = boards[0]!
  const together = lengthTogether(boards, along, shop.kerf)
  const [length, width] = along === 'width' ? [cutLength, together] : [together, cutWidth]
  const wishes = boards.flatMap((board) => wishedFrom(stock, material, board.from) ?? [])
  const from = wishes.at(-1)
  const own = stockOf(stock, material).filter(({ isExcluded, quantity }) => !isExcluded && quantity !== 0)
  const bought = own.filter(({ quantity }) => quantity === null)
  const there = from ? own.filter(({ id }) => id === from) : bought.length > 0 ? bought : own
  const isLargeEnough = (sheet: Stock) => {
    const trim = 2 * trimOf(sheet, shop)
    return length <= settle(sheet.length - trim) && width <= settle(sheet.width - trim)
  }
  // Where there is no sheet at all they are not parted for its size.
  return there.length === 0 || there.some(isLargeEnough)
}
