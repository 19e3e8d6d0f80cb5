import type { CutRow } from '../cutlist/row'
import { allRows, rowOfPart } from './mishap'
import type { BreakdownInput } from './steps'

/**
 * The rows of what is being cut, with the parts that are made to measured openings as the design has them now. All others
 * stay as they were taken to the saw, whatever became of the design.
 */
export function measuredRows(input: BreakdownInput, design: readonly CutRow[]): CutRow[] {
  const before = allRows(input)
  const known = rowOfPart(before)
  const wereMeasured = before.flatMap(({ measured = [] }) => measured)
  const taken = new Set([...design.flatMap(({ measured }) => measured), ...wereMeasured])
  const rows = new Map<string, CutRow>()
  const add = (row: CutRow, isWanted: (part: CutRow['parts'][number]) => boolean) => {
    const wanted = row.parts.filter(isWanted)
    if (wanted.length === 0) return
    const there = rows.get(row.key) ?? { ...row, parts: [], measured: [] }
    const parts = [...there.parts, ...wanted]
    const measured = [...there.measured, ...(row.measured ?? []).filter(isWanted)]
    rows.set(row.key, { ...there, parts, measured, quantity: parts.length })
  }
  const inDesign = rowOfPart(design)
  for (const row of before) add(row, (part) => !taken.has(part) || !inDesign.has(part))
  for (const row of design) add(row, (part) => taken.has(part) && known.has(part))
  return [...rows.values()]
}
