import { valuesOf } from '../basics/id'
import type { Problem } from '../basics/problem'
import type { CutRow } from '../cutlist/row'
import type { Project } from '../project/document'
import { formatWithUnit } from '../units/format'
import type { LengthDisplay, Mm } from '../units/length'
import type { Outgrown, SheetOrder } from './jobOf'

/** Rows that no sheet of their material can give, and materials of which there is no sheet at all. */
export function stockProblems(project: Project, rows: readonly CutRow[], { outgrown }: SheetOrder): Problem[] {
  return [...rows.flatMap((row) => rowProblems(project, row)), ...outgrown.map((sheet) => keptProblem(project, sheet))]
}

function rowProblems(project: Project, row: CutRow): Problem[] {
  const material = project.materials[row.material]!
  const about = { kind: 'material', material: row.material } as const
  const all = valuesOf(project.stock).filter((stock) => stock.material === row.material)
  const sheets = all.filter(({ isExcluded }) => !isExcluded)
  if (sheets.length === 0 && all.length > 0) {
    return [
      { weight: 'stop', about, message: `${row.mark} (${row.name}): every sheet of ${material.name} is set aside.` },
    ]
  }
  if (sheets.length === 0) {
    return [{ weight: 'stop', about, message: `${row.mark} (${row.name}): there is no sheet of ${material.name}.` }]
  }
  const { trim } = project.shop
  const usable = sheets.map(({ length, width }) => ({ length: length - 2 * trim, width: width - 2 * trim }))
  const fits = (length: Mm, width: Mm) => usable.some((sheet) => length <= sheet.length && width <= sheet.width)
  if (fits(row.length, row.width) || (!row.isGrainBound && fits(row.width, row.length))) return []
  const largest = usable.reduce((a, b) => (b.length * b.width > a.length * a.width ? b : a))
  const size = (length: Mm, width: Mm) => sizeIn(project.display, length, width)
  const message = `${row.mark} (${row.name}) is ${size(row.length, row.width)}; a sheet of ${material.name} less its trim gives ${size(largest.length, largest.width)} at most.`
  return [{ weight: 'stop', about, message }]
}

function sizeIn(display: LengthDisplay, length: Mm, width: Mm): string {
  return `${formatWithUnit(length, display)} x ${formatWithUnit(width, display)}`
}

function keptProblem({ kept, stock, materials, display }: Project, { id, board }: Outgrown): Problem {
  const { material } = stock[kept[id]!.stock]!
  const why = board
    ? `the design no longer asks for a board of ${sizeIn(display, board.length, board.width)} that is on it`
    : 'the sheet, its number, or the trim, kerf or directions of the shop are others now'
  const message = `A kept sheet of ${materials[material]!.name} is not held: ${why}.`
  return { weight: 'mind', about: { kind: 'kept', sheet: id }, message }
}
