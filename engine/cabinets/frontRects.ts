import type { Rect } from '../geometry/rect'
import { topOf } from '../geometry/rect'
import type { Front } from '../project/document'
import type { Carcass } from './carcass'
import { betweenRows, columnRects, rowColumnRects, rowHeights } from './openings'
import { SILENT } from './report'

/** What the parts of a divided front cover, in their order; none where it is not divided. `isWhole` of the front of a cabinet. */
export function rectsWithin(front: Front, rect: Rect, isWhole: boolean, carcass: Carcass): Rect[] {
  if (front.kind === 'columns') {
    return isWhole ? columnRects(front.columns, carcass, SILENT) : rowColumnRects(front.columns, rect, carcass, SILENT)
  }
  if (front.kind !== 'rows') return []
  const between = betweenRows(carcass)
  let top = topOf(rect)
  return rowHeights(front.rows, rect.height, between, SILENT).map((height) => {
    const own = { ...rect, bottom: top - height, height }
    top = own.bottom - between
    return own
  })
}
