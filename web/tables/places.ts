import { assignParts, type CutList, type PlacedPart, type SheetAnswer } from '../../engine/index'

/** The last assignment: tables and sheets ask for the same one. */
let known: { readonly cutList: CutList; readonly answer: SheetAnswer; readonly placed: readonly PlacedPart[] } | null =
  null

export function placedParts(cutList: CutList, answer: SheetAnswer): readonly PlacedPart[] {
  if (known?.cutList === cutList && known.answer === answer) return known.placed
  known = { cutList, answer, placed: assignParts(cutList, answer) }
  return known.placed
}

/** On which sheets the parts of each row lie. */
export function sheetsOfRows(placed: readonly PlacedPart[]): ReadonlyMap<string, readonly number[]> {
  const sheets = new Map<string, number[]>()
  for (const { row, sheet } of placed) {
    const list = sheets.get(row)
    if (!list) sheets.set(row, [sheet])
    else if (list.at(-1) !== sheet) list.push(sheet)
  }
  return sheets
}
