import type { CutRow, Derived, JobStock, KeptId, Mm, PartId, Piece, PlacedPart, SheetLayout } from '../../engine/index'
import { lockedIn, once } from '../../engine/index'
import type { Layout, Selection } from '../store/state'
import { placedParts } from '../tables/places'

/** Sheets that are cut alike, drawn once. */
export interface Fold {
  readonly layout: SheetLayout
  readonly stock: JobStock
  readonly kerf: Mm
  /** The number of the first of them, from 1; the others follow it. */
  readonly first: number
  /** The number of the first of them among the sheets of their material, from 1. */
  readonly ofMaterial: number
  /** The name under which it is kept as it is; null where it may be laid out anew. */
  readonly kept: KeptId | null
  /** For each place on the sheet, the mark of the row that lies there. Found when asked. */
  readonly marks: readonly string[]
  /** For each place on the sheet, the bank in which the grain runs on over it; null for none. Found when asked. */
  readonly runs: readonly (string | null)[]
  /** For each place on the sheet, the parts that lie there on the first, second... of the alike sheets. Found when asked. */
  readonly parts: readonly (readonly PlacedPart[])[]
}

/** Every distinct sheet of a layout, with what lies on it in the design that it was made for. */
export function foldsOf(
  { job, answer }: Layout,
  { cutList, heldSheets }: Pick<Derived, 'cutList' | 'heldSheets'>,
): Fold[] {
  const rowOf = once(() => new Map<string, CutRow>(cutList.rows.map((row) => [row.key, row])))
  const stocks = new Map(job.stock.map((stock) => [stock.id, stock]))
  const partsOf = once(() => {
    const parts = answer.sheets.map(({ placements }) => placements.map((): PlacedPart[] => []))
    for (const placed of placedParts(cutList, answer)) parts[placed.layoutIndex]![placed.placement]!.push(placed)
    return parts
  })
  const held = lockedIn(job, answer)
  let sheet = 1
  const counts = new Map<string, number>()
  return answer.sheets.flatMap((layout, at): Fold[] => {
    const stock = stocks.get(layout.stock)
    const first = sheet
    sheet += layout.copies
    if (!stock) return []
    const before = counts.get(stock.material) ?? 0
    counts.set(stock.material, before + layout.copies)
    const marks = once(() => layout.placements.map(({ part }) => rowOf().get(part)?.mark ?? part))
    const runs = once(() => layout.placements.map(({ part }) => rowOf().get(part)?.bank?.id ?? null))
    return [
      {
        ...{ layout, stock, kerf: job.kerf, first, ofMaterial: before + 1, kept: heldSheets[held.indexOf(at)] ?? null },
        get marks() {
          return marks()
        },
        get runs() {
          return runs()
        },
        get parts() {
          return partsOf()[at]!
        },
      },
    ]
  })
}

/** Whether two folds are the same: the same parts, called the same, in the same places of the same sheet. */
export function isSameFold(a: Fold, b: Fold): boolean {
  return (
    a === b ||
    (areCutAlike(a, b) &&
      a.marks.every((mark, at) => mark === b.marks[at]) &&
      a.parts.every((parts, at) => areSameParts(parts, b.parts[at] ?? [])))
  )
}

/** Whether the same parts lie in the same places of the same sheet, whatever they are called. */
export function areCutAlike(a: Fold, b: Fold): boolean {
  return (
    a.first === b.first &&
    a.kerf === b.kerf &&
    a.kept === b.kept &&
    a.layout.copies === b.layout.copies &&
    isSameStock(a.stock, b.stock) &&
    isSamePiece(a.layout.root, b.layout.root)
  )
}

function isSamePiece(a: Piece, b: Piece): boolean {
  if (a === b) return true
  if (a.x !== b.x || a.y !== b.y || a.length !== b.length || a.width !== b.width) return false
  if (a.kind === 'part') return b.kind === 'part' && a.part === b.part && a.rotated === b.rotated
  if (a.kind !== 'cut') return a.kind === b.kind
  return (
    b.kind === 'cut' &&
    a.direction === b.direction &&
    a.pieces.length === b.pieces.length &&
    a.pieces.every((piece, at) => isSamePiece(piece, b.pieces[at]!))
  )
}

function isSameStock(a: JobStock, b: JobStock): boolean {
  const isAsMany = a.quantity === b.quantity
  return isAsMany && a.id === b.id && a.length === b.length && a.width === b.width && a.offcut === b.offcut
}

function areSameParts(a: readonly PlacedPart[], b: readonly PlacedPart[]): boolean {
  return a.length === b.length && a.every(({ part }, at) => part === b[at]!.part)
}

/** What a click on a place selects: its part, or the next of the alike sheets when one of them is selected already. */
export function nextPart(parts: readonly PlacedPart[], selection: Selection): PartId | null {
  const at = selection.kind === 'part' ? parts.findIndex(({ part }) => part === selection.part) : -1
  return parts[(at + 1) % parts.length]?.part ?? null
}

/** The places where something that is selected lies, as one word: the same word means that nothing changed. */
export function litPlaces(fold: Fold, chosen: ReadonlySet<PartId>): string {
  return fold.parts.flatMap((parts, place) => (parts.some(({ part }) => chosen.has(part)) ? [place] : [])).join(' ')
}
