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
export function sheetsOfRows({ sheets }: SheetAnswer): ReadonlyMap<string, string> {
  const numbers = new Map<string, number[]>()
  let first = 1
  for (const { placements, copies } of sheets) {
    for (const row of new Set(placements.map(({ part }) => part))) {
      const known = numbers.get(row) ?? []
      for (let copy = 0; copy < copies; copy++) known.push(first + copy)
      numbers.set(row, known)
    }
    first += copies
  }
  return new Map([...numbers].map(([row, list]) => [row, list.join(', ')]))
}
