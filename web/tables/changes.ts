import { type CutList, type CutRow, type Derived, type Mm, type RowKey, stretchesOf } from '../../engine/index'

/** What a row was before the drag began; null where a value is what it was. */
export interface RowChange {
  readonly isNew: boolean
  readonly quantity: number | null
  readonly length: Mm | null
  readonly width: Mm | null
}

export const UNCHANGED: RowChange = { isNew: false, quantity: null, length: null, width: null }

/** The rows that are not what they were when the gesture began. */
export function changesOf(
  { rows }: CutList,
  before: Pick<Derived, 'partOf' | 'cutList'> | null,
): ReadonlyMap<RowKey, RowChange> {
  const changes = new Map<RowKey, RowChange>()
  if (!before || before.cutList.rows === rows) return changes
  const rowsBefore = new Map(before.cutList.rows.map((row) => [row.key, row]))
  for (const row of rows) {
    const was = rowsBefore.get(row.key)
    if (was !== row) changes.set(row.key, changeOf(row, was, before.partOf))
  }
  return changes
}

/**
 * Compares by parts, because the row of a board changes with its size: what the boards of this row measured before, and
 * how many of these there were.
 */
function changeOf(row: CutRow, same: CutRow | undefined, partsBefore: Derived['partOf']): RowChange {
  if (same) return same.quantity === row.quantity ? UNCHANGED : { ...UNCHANGED, quantity: same.quantity }
  const was = row.parts.map((part) => partsBefore.get(part)).find((part) => part !== undefined)
  if (!was) return { ...UNCHANGED, isNew: true }
  return {
    ...UNCHANGED,
    length: was.cutLength === row.length ? null : was.cutLength,
    width: was.cutWidth === row.width ? null : was.cutWidth,
  }
}

/** `B1 to B5 U2`: three or more marks in a row are a stretch. */
export function markStretches(marks: readonly string[]): string {
  return stretchesOf(marks).join(' ')
}
