import type { BoardRole } from '../cabinets/board'
import { boxOf } from '../cabinets/boardBox'
import type { Part } from '../parts/part'
import { LEFT_INSIDE } from '../project/machining'
import type { BuildMethod } from '../project/method'
import { type Mm, settle } from '../units/length'

export function withRole(parts: readonly Part[], ...roles: readonly BoardRole[]): Part[] {
  return parts.filter(({ role }) => roles.includes(role))
}

/**
 * Between the uprights at both ends of a level board, without what it sinks into them, in mm; its length where there are
 * none. What stands on it, or under it, between its ends is taken to bear nothing.
 */
export function clearSpan(board: Part, parts: readonly Part[]): Mm {
  const { min, max } = boxOf(board)
  const uprights = withRole(parts, 'leftSide', 'rightSide', 'partition')
    .map(boxOf)
    .filter((box) => box.min.y < max.y && min.y < box.max.y)
  const left = Math.max(...uprights.filter((box) => settle(box.min.x - min.x) <= 0).map((box) => box.max.x))
  const right = Math.min(...uprights.filter((box) => settle(box.max.x - max.x) >= 0).map((box) => box.min.x))
  return Number.isFinite(right - left) ? settle(right - left) : board.length
}

/** Which bay a level board is in, from 1 at the left; null where it goes past a partition, or there is none. */
export function bayOf(board: Part, parts: readonly Part[]): number | null {
  const { min, max } = boxOf(board)
  const partitions = withRole(parts, 'partition').map(boxOf)
  const isPast = partitions.some((box) => box.min.x > min.x && box.max.x < max.x)
  if (partitions.length === 0 || isPast) return null
  return 1 + partitions.filter((box) => box.max.x <= (min.x + max.x) / 2).length
}

/**
 * How far the longest drawer box among boards comes out, in mm: by its length, which its slides have too, or by what
 * standard ones leave of it inside less; 0 without one.
 */
export function drawerOut(parts: readonly Part[], { slides }: Pick<BuildMethod, 'slides'>): Mm {
  const longest = Math.max(0, ...withRole(parts, 'drawerSide').map(({ length }) => length))
  return settle(Math.max(0, longest - (slides.extension === 'standard' ? LEFT_INSIDE[0] : 0)))
}
