import { assignParts, type CutList, type PlacedPart, type SheetAnswer } from '../../engine/index'

/** The last assignment: tables and sheets ask for the same one. */
let known: { readonly cutList: CutList; readonly answer: SheetAnswer; readonly placed: readonly PlacedPart[] } | null =
  null

export function placedParts(cutList: CutList, answer: SheetAnswer): readonly PlacedPart[] {
  if (known?.cutList === cutList && known.answer === answer) return known.placed
  known = { cutList, answer, placed: assignParts(cutList, answer) }
  return known.placed
}

/** On which sheets the parts of each row lie: `3, 4`. */
export function sheetsOfRows(placed: readonly PlacedPart[]): ReadonlyMap<string, string> {
  const last = new Map<string, number>()
  const words = new Map<string, string>()
  for (const { row, sheet } of placed) {
    if (last.get(row) === sheet) continue
    last.set(row, sheet)
    const before = words.get(row)
    words.set(row, before === undefined ? String(sheet) : `${before}, ${sheet}`)
  }
  return words
}
