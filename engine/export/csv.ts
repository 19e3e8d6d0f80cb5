import type { MaterialId } from '../basics/id'
import { type CutList, type CutRow, rowName } from '../cutlist/row'
import type { Material } from '../project/document'
import { formatLength } from '../units/format'
import type { LengthDisplay, Mm } from '../units/length'

/** A number is written as a number; text is written so that no spreadsheet takes it for a formula. */
export type Cell = string | number

/**
 * A table as comma-separated values: lines end in CRLF, and a field with a comma, a quote or a line end is quoted with its quotes
 * doubled. Source: RFC 4180, section 2.
 */
export function csvOf(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(field).join(',')}\r\n`).join('')
}

function field(cell: Cell): string {
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell + 0) : ''
  const text = harmless(cell)
  return /[",\r\n]/.test(text) || text !== text.trim() ? `"${text.replaceAll('"', '""')}"` : text
}

/**
 * What a spreadsheet would take for a formula gets an apostrophe: text that begins with = + - @, their full-width forms, a tab, a
 * line end or a byte order mark. Source: OWASP, CSV Injection (the full-width forms and the mark from memory).
 */
function harmless(text: string): string {
  return /^[\t\r\n\uFEFF]|^\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]/.test(text) ? `'${text}` : text
}

/**
 * The cut list with its lengths as they are shown. Millimetres are numbers; inches are text such as `30 1/4`, with a whole
 * number in front even when it is 0, because a spreadsheet would read a bare `3/4` as a day in March.
 */
export function cutListCsv(
  cutList: CutList,
  materials: Readonly<Record<MaterialId, Material>>,
  display: LengthDisplay,
): string {
  const { unit } = display
  const head = [
    'Mark',
    'Part',
    'Quantity',
    `Length (${unit})`,
    `Width (${unit})`,
    `Thickness (${unit})`,
    'Material',
    'Grain',
    'Banded long edges',
    'Banded ends',
    'Banded where sawn out',
    `Banding (${unit})`,
    'Cabinets',
    'Cut',
    'Made to',
  ]
  return csvOf([head, ...cutList.rows.map((row) => cellsOf(row, materials, display))])
}

function cellsOf(row: CutRow, materials: Readonly<Record<MaterialId, Material>>, display: LengthDisplay): Cell[] {
  const { long, ends } = row.bandedEdges
  const thickness = Math.max(row.bandedEdges.thickness, row.insideBand)
  return [
    row.mark,
    rowName(row),
    row.quantity,
    ...[row.length, row.width, row.thickness].map((length) => lengthCell(length, display)),
    materials[row.material]?.name ?? row.material,
    grainWords(row),
    long,
    ends,
    row.insideBand > 0 ? 'yes' : 'no',
    long + ends > 0 || row.insideBand > 0 ? lengthCell(thickness, display) : '',
    row.cabinets.join(' '),
    row.isLate ? 'late' : 'first',
    madeTo(row),
  ]
}

function grainWords({ isGrainBound, bank }: CutRow): string {
  const way = isGrainBound ? 'along the length' : 'any way'
  return bank ? `${way}, runs on: ${bank.id}, place ${bank.place}` : way
}

/** Of a row with both, how many are made to what was measured. */
function madeTo({ measured, quantity }: CutRow): string {
  if (measured.length === 0) return 'drawn size'
  return measured.length === quantity ? 'measured opening' : `measured opening: ${measured.length}`
}

function lengthCell(length: Mm, display: LengthDisplay): Cell {
  const shown = formatLength(length, display)
  if (display.unit === 'mm') return Number(shown)
  return /^\d+\/\d+$/.test(shown) ? `0 ${shown}` : shown
}
