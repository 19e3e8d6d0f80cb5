import { assert } from '../basics/assert'
import type { PartId, RowKey } from '../basics/id'
import type { CutList } from '../cutlist/row'
import type { SheetAnswer } from '../sheets/layout'

/** Which part of which cabinet lies where. */
export interface PlacedPart {
  readonly part: PartId
  readonly row: RowKey
  /** From 1, in the order of the layouts with their copies counted out. */
  readonly sheet: number
  readonly layoutIndex: number
  /** Which of the layout's placements it is. */
  readonly placement: number
  readonly x: number
  readonly y: number
  /** Of the part itself, not as it lies. */
  readonly length: number
  readonly width: number
  readonly rotated: boolean
}

/**
 * Gives every place on the sheets to a part. The parts of a row are equal to the saw, so any of them may lie in any of
 * its places: they are dealt out in the order of the row, sheet after sheet, and the same layout always deals alike.
 */
export function assignParts(cutList: Pick<CutList, 'rows'>, answer: SheetAnswer): PlacedPart[] {
  const rows = new Map<string, { readonly key: RowKey; readonly parts: readonly PartId[]; next: number }>()
  for (const { key, parts } of cutList.rows) rows.set(key, { key, parts, next: 0 })
  const placed: PlacedPart[] = []
  let sheet = 0
  answer.sheets.forEach((layout, layoutIndex) => {
    for (let copy = 0; copy < layout.copies; copy++) {
      sheet++
      for (const [placement, { part: id, ...place }] of layout.placements.entries()) {
        const row = rows.get(id)
        assert(row, `the layout places row ${id}, which is not on the cut list`)
        const part = row.parts[row.next++]
        assert(part, `the layout places row ${id} ${row.next} times; the cut list has ${row.parts.length}`)
        placed.push({ part, row: row.key, sheet, layoutIndex, placement, ...place })
      }
    }
  })
  return placed
}
