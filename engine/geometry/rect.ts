import type { Mm } from '../units/length'

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

/** Whether two rectangles share area; rectangles that touch do not overlap. */
export function rectsOverlap(a: Rect, b: Rect): boolean {
  return a.left < rightOf(b) && b.left < rightOf(a) && a.bottom < topOf(b) && b.bottom < topOf(a)
}
