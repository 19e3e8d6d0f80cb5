import type { BoardRole } from '../cabinets/board'
import { boxOf } from '../cabinets/boardBox'
import type { Part } from '../parts/part'
import { LEFT_INSIDE } from '../project/machining'
import type { BuildMethod } from '../project/method'
import { type Mm, settle } from '../units/length'

export function withRole(parts: readonly Part[], ...roles: readonly BoardRole[]): Part[] {
  return parts.filter(({ role }) => roles.includes(role))
}

/** Between the uprights left and right of a level board, without what it sinks into them; its length where there are none. */
export function clearSpan(board: Part, parts: readonly Part[]): Mm {
  const { min, max } = boxOf(board)
  const middle = (min.x + max.x) / 2
  const uprights = withRole(parts, 'leftSide', 'rightSide', 'partition')
    .map(boxOf)
    .filter((box) => box.min.y < max.y && min.y < box.max.y)
  const left = Math.max(...uprights.filter((box) => box.max.x <= middle).map((box) => box.max.x))
  const right = Math.min(...uprights.filter((box) => box.min.x >= middle).map((box) => box.min.x))
  return Number.isFinite(right - left) ? settle(right - left) : board.length
}

/**
 * How far the longest drawer box among boards comes out, in mm: by its length, which its slides have too, or by what
 * standard ones leave of it inside less; 0 without one.
 */
export function drawerOut(parts: readonly Part[], { slides }: Pick<BuildMethod, 'slides'>): Mm {
  const longest = Math.max(0, ...withRole(parts, 'drawerSide').map(({ length }) => length))
  return settle(Math.max(0, longest - (slides.extension === 'standard' ? LEFT_INSIDE[0] : 0)))
}
