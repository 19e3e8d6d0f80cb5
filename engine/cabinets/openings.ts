import type { Interval } from '../geometry/interval'
import { type Rect, rightOf, topOf } from '../geometry/rect'
import type { Front, FrontRow } from '../project/document'
import { type Mm, settle } from '../units/length'
import { type Carcass, clearBottom, clearTop } from './carcass'
import type { Report } from './report'

/** One opening of the front: what closes it, the room of that seen from the room, and the opening behind it. */
export interface Cell {
  readonly front: Exclude<Front, { kind: 'rows' }>
  readonly rect: Rect
  /** From board to board inside; between two fronts the openings meet in the middle of the gap. */
  readonly opening: Interval
}

/** The front's openings from the bottom up. */
export function cellsOf(front: Front, carcass: Carcass, report: Report): Cell[] {
  const opening = { from: clearBottom(carcass), to: clearTop(carcass) }
  return cellsIn(front, frontArea(carcass), opening, carcass.method.fronts.gap, report)
}

/** What the fronts cover in all, seen from the room. */
export function frontArea(carcass: Carcass): Rect {
  const { topReveal, bottomReveal } = carcass.method.fronts
  const left = frontInset(carcass)
  const bottom = settle((carcass.isInset ? clearBottom(carcass) : carcass.floorHeight) + bottomReveal)
  const top = settle((carcass.isInset ? clearTop(carcass) : carcass.height) - topReveal)
  return { left, bottom, width: settle(carcass.width - 2 * left), height: settle(top - bottom) }
}

/**
 * From the outside of the carcass to the fronts, each side. A full overlay leaves the reveal; a half overlay leaves the
 * other half of a side it shares, and half of the gap to its neighbour; an inset front stands inside the side.
 */
export function frontInset(carcass: Carcass): Mm {
  const { endReveal, gap } = carcass.method.fronts
  switch (carcass.method.frontMount) {
    case 'fullOverlay':
      return settle(endReveal)
    case 'halfOverlay':
      return settle(carcass.thickness / 2 + gap / 2)
    case 'inset':
      return settle(carcass.thickness + endReveal)
  }
}

function cellsIn(front: Front, rect: Rect, opening: Interval, gap: Mm, report: Report): Cell[] {
  if (front.kind !== 'rows') return [{ front, rect, opening }]
  const heights = rowHeights(front.rows, rect.height, gap, report)
  let top = topOf(rect)
  const cells = front.rows.map((row, at) => {
    const height = heights[at]!
    const bottom = settle(top - height)
    const isFirst = at === 0
    const isLast = at === heights.length - 1
    const behind = {
      from: isLast ? opening.from : settle(bottom - gap / 2),
      to: isFirst ? opening.to : settle(top + gap / 2),
    }
    const own = { left: rect.left, bottom, width: rect.width, height }
    top = settle(bottom - gap)
    return cellsIn(row.front, own, behind, gap, report)
  })
  return cells.reverse().flat()
}

/** Fixed rows keep their height; the others share what is left beside the gaps. Equal shares are equal to the tick. */
export function rowHeights(rows: readonly FrontRow[], height: Mm, gap: Mm, report: Report): Mm[] {
  const fixed = rows.reduce((sum, { size }) => sum + (size.kind === 'fixed' ? size.height : 0), 0)
  const shares = rows.reduce((sum, { size }) => sum + (size.kind === 'share' ? size.share : 0), 0)
  const left = height - gap * (rows.length - 1) - fixed
  if (shares === 0 && rows.length > 0 && settle(left) !== 0) {
    const need = report.say(height - left)
    report.mind(`its rows with their gaps are ${need} high in all; the front is ${report.say(height)} high.`)
  }
  return rows.map(({ size }) => settle(size.kind === 'fixed' ? size.height : (left * size.share) / shares))
}

/** Each of two doors that meet in the middle: half of what the gap between them leaves. */
export function pairDoorWidth(width: Mm, gap: Mm): Mm {
  return settle((width - gap) / 2)
}

/** The two halves of a pair, left and right. */
export function pairRects(rect: Rect, gap: Mm): readonly [Rect, Rect] {
  const width = pairDoorWidth(rect.width, gap)
  return [
    { ...rect, width },
    { ...rect, width, left: settle(rightOf(rect) - width) },
  ]
}
