import { assert } from '../basics/assert'
import type { MaterialId, RowKey } from '../basics/id'
import type { Part } from '../parts/part'
import type { Material } from '../project/document'
import { type CutLate, NOTHING_LATE } from '../project/late'
import { materialsInOrder } from '../project/materials'
import { type Group, groupsOf } from './groups'
import type { CutList, CutRow, MaterialTotal } from './row'

type Materials = Readonly<Record<MaterialId, Material>>

/**
 * Equal boards of all cabinets on one row. Rows come by material, the thickest first, and within it the
 * longest and then the widest first, as they are cut.
 */
export function cutListOf(
  cabinets: readonly { readonly mark: string; readonly parts: readonly Part[] }[],
  materials: Materials,
  late: CutLate = NOTHING_LATE,
): CutList {
  const merging = new Map<RowKey, Merging>()
  for (const { mark, parts } of cabinets) {
    for (const group of groupsOf(parts, late)) {
      const before = merging.get(group.key)
      if (before) mergeIn(before, group, mark)
      else merging.set(group.key, begin(group, mark))
    }
  }
  const order = new Map<string, number>(materialsInOrder(materials).map(({ id }, at) => [id, at]))
  const sorted = [...merging.values()].sort((a, b) => bySize(a.group, b.group, order))
  return { rows: sameWhereEqual(marked(sorted)), totals: totalsOf(sorted, materials) }
}

/** The rows of the last list: one that is equal is given again, so that it need not be drawn again. */
let lastRows: ReadonlyMap<RowKey, CutRow> = new Map()

function sameWhereEqual(rows: readonly CutRow[]): CutRow[] {
  const kept = rows.map((row) => {
    const before = lastRows.get(row.key)
    return before && isEqualRow(before, row) ? before : row
  })
  lastRows = new Map(kept.map((row) => [row.key, row]))
  return kept
}

/** Rows of one key are alike in size, material and bands. */
function isEqualRow(a: CutRow, b: CutRow): boolean {
  return (
    a.mark === b.mark &&
    a.name === b.name &&
    a.bank?.along === b.bank?.along &&
    areEqual(a.parts, b.parts) &&
    areEqual(a.cabinets, b.cabinets) &&
    areEqual(a.measured, b.measured)
  )
}

function areEqual(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((one, at) => one === b[at])
}

/** A row while it grows. */
interface Merging {
  readonly group: Group
  readonly names: string[]
  readonly parts: CutRow['parts'][number][]
  readonly measured: CutRow['measured'][number][]
  readonly cabinets: string[]
  banding: number
}

function begin(group: Group, mark: string): Merging {
  const { names, parts, measured, banding } = group
  return { group, names: [...names], parts: [...parts], measured: [...measured], cabinets: [mark], banding }
}

function mergeIn(row: Merging, group: Group, mark: string): void {
  for (const name of group.names) if (!row.names.includes(name)) row.names.push(name)
  row.parts.push(...group.parts)
  row.measured.push(...group.measured)
  if (row.cabinets.at(-1) !== mark) row.cabinets.push(mark)
  row.banding += group.banding
}

function bySize(a: Group, b: Group, order: ReadonlyMap<string, number>): number {
  return (
    order.get(a.material)! - order.get(b.material)! ||
    b.length - a.length ||
    b.width - a.width ||
    byBank(a, b) ||
    (a.key < b.key ? -1 : a.key > b.key ? 1 : 0)
  )
}

/** Those that are in no bank first, then bank by bank, its boards in the order in which they lie. */
function byBank({ bank: a }: Group, { bank: b }: Group): number {
  if (!a || !b) return Number(Boolean(a)) - Number(Boolean(b))
  return a.id === b.id ? a.place - b.place : a.id < b.id ? -1 : 1
}

function marked(sorted: readonly Merging[]): CutRow[] {
  let letter = -1
  let number = 0
  let material: MaterialId | null = null
  return sorted.map(({ group, names, parts, measured, cabinets }) => {
    if (group.material !== material) {
      material = group.material
      letter++
      number = 0
    }
    number++
    return {
      key: group.key,
      mark: `${letters(letter)}${number}`,
      name: names.join(', '),
      material: group.material,
      length: group.length,
      width: group.width,
      thickness: group.thickness,
      quantity: parts.length,
      isGrainBound: group.isGrainBound,
      bank: group.bank,
      from: group.from,
      ...(group.sheet === undefined ? {} : { sheet: group.sheet }),
      bandedEdges: group.bandedEdges,
      outline: group.outline,
      ...(group.isMitred ? { isMitred: true } : {}),
      insideBand: group.insideBand,
      isLate: group.isLate,
      parts,
      measured,
      cabinets,
    }
  })
}

/** Without B, T and U, which begin the marks of cabinets, and without I and O, which read as figures. */
const LETTERS = 'ACDEFGHJKLMNPQRSVWXYZ'

/** A, C, D to Z, then AA, AC and on, as columns of a sheet are lettered. */
export function letters(at: number): string {
  const last = LETTERS[at % LETTERS.length]!
  return at < LETTERS.length ? last : `${letters(Math.floor(at / LETTERS.length) - 1)}${last}`
}

function totalsOf(sorted: readonly Merging[], materials: Materials): MaterialTotal[] {
  const totals = new Map<MaterialId, { parts: number; area: number; volume: number; banding: number }>()
  for (const { group, parts, banding } of sorted) {
    const total = totals.get(group.material) ?? { parts: 0, area: 0, volume: 0, banding: 0 }
    const area = (group.length * group.width * parts.length) / 1e6
    total.parts += parts.length
    total.area += area
    total.volume += (area * group.thickness) / 1000
    total.banding += banding / 1000
    totals.set(group.material, total)
  }
  return [...totals].map(([material, { parts, area, volume, banding }]) => {
    const board = materials[material]
    assert(board, `the cut list holds boards of ${material}, which is not among the materials`)
    return { material, parts, area, weight: volume * board.density, banding }
  })
}
