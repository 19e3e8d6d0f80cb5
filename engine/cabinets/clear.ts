import type { Interval } from '../geometry/interval'
import { type Rect, rightOf, topOf } from '../geometry/rect'
import { settle } from '../units/length'

/** What of a width is free behind an opening of a face frame: a drawer box must pass both. */
export function clearAcross<Of extends Interval>(width: Of, opening: Rect | null): Of {
  if (!opening) return width
  return {
    ...width,
    from: Math.max(width.from, opening.left),
    to: Math.min(width.to, settle(rightOf(opening))),
  }
}

/** What of a height is free behind an opening of a face frame. */
export function clearUp(height: Interval, opening: Rect | null): Interval {
  if (!opening) return height
  return { from: Math.max(height.from, opening.bottom), to: Math.min(height.to, settle(topOf(opening))) }
}
