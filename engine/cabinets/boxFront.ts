import type { Box } from '../geometry/box'
import { rightOf, topOf } from '../geometry/rect'
import type { Board, FrontFace } from './board'
import { boxOf } from './boardBox'

/** The front of the drawer box behind a drawer front, the nearest to it; nothing where there is none. */
export function boxFrontBehind(boards: readonly Board[], face: FrontFace): Board | undefined {
  return boards
    .filter((one) => one.role === 'drawerBoxFront' && isMiddleIn(boxOf(one), face))
    .sort((a, b) => boxOf(b).max.z - boxOf(a).max.z)[0]
}

/** Whether the middle of a room is before or behind a front, seen from the room; both in the cabinet's frame. */
export function isMiddleIn({ min, max }: Box, { rect }: FrontFace): boolean {
  const [x, y] = [(min.x + max.x) / 2, (min.y + max.y) / 2]
  return x > rect.left && x < rightOf(rect) && y > rect.bottom && y < topOf(rect)
}
