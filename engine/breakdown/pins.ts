import type { CutRow } from '../cutlist/row'
import type { JobPart, JobStock } from '../sheets/job'

interface Source {
  readonly stock: readonly JobStock[]
  /** The kind of sheet that was bought, by the id of what is at hand of it. */
  readonly kinds: ReadonlyMap<string, string>
}

/** The kinds of sheets that boards must come from. */
export function pinnedKinds(rows: readonly CutRow[]): ReadonlySet<string> {
  return new Set(rows.flatMap(({ from }) => (from ? [from] : [])))
}

/**
 * Boards that must come from one kind of sheet still must. A single board may come from a piece of such a sheet; more of
 * them come from whole sheets as long as there are any.
 */
export function pinned(parts: readonly JobPart[], rows: readonly CutRow[], stocked: Source): JobPart[] {
  const wish = new Map<string, string>(rows.flatMap(({ key, from }) => (from ? [[key, from] as const] : [])))
  const wishOfBank = new Map(parts.flatMap(({ id, bank }) => (bank && wish.has(id) ? [[bank.id, wish.get(id)!]] : [])))
  return parts.map((part) => {
    const kind = part.bank ? wishOfBank.get(part.bank.id) : wish.get(part.id)
    return kind === undefined ? part : { ...part, from: sourceOf(part, kind, stocked) }
  })
}

function sourceOf(part: JobPart, kind: string, { stock, kinds }: Source): string {
  const pieces = stock
    .filter(({ id }) => kinds.get(id) === kind && id !== kind)
    .filter((piece) => fits(part, piece))
    .sort((a, b) => a.length * a.width - b.length * b.width)
  const isAlone = part.quantity === 1 && !part.bank
  const hasSheets = stock.some(({ id, quantity }) => id === kind && quantity !== 0)
  return pieces.length > 0 && (isAlone || !hasSheets) ? pieces[0]!.id : kind
}

function fits({ length, width, rotate }: JobPart, piece: JobStock): boolean {
  const lies = (along: number, across: number) => along <= piece.length && across <= piece.width
  return lies(length, width) || (rotate === true && lies(width, length))
}
