import { type Mm, settle } from '../units/length'

/** A rectangle on a wall or a sheet. `left` and `bottom` are its least x and y. */
export interface Rect {
  readonly left: Mm
  readonly bottom: Mm
  readonly width: Mm
  readonly height: Mm
}

export function rightOf(rect: Rect): Mm {
  return rect.left + rect.width
}

export function topOf(rect: Rect): Mm {
  return rect.bottom + rect.height
}

/** Whether two rectangles share area; rectangles that touch do not overlap, whatever dust their sums have. */
export function rectsOverlap(a: Rect, b: Rect): boolean {
  const [right, top] = [Math.min(rightOf(a), rightOf(b)), Math.min(topOf(a), topOf(b))]
  return settle(right - Math.max(a.left, b.left)) > 0 && settle(top - Math.max(a.bottom, b.bottom)) > 0
}
