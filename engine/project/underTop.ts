import { inch, type Mm, settle } from '../units/length'
import { methodOf } from './builtBy'
import type { Cabinet, Project } from './document'

/**
 * What ends lower over the floor is no worktop, but sat on or stood on: the lowest setting of desks that are worked at
 * sitting. EN 527-1, from memory.
 */
export const LOWEST_WORKTOP: Mm = 650

/** What is no higher over the floor is sat on. Common practice, no source. */
const SEAT_HIGH: Mm = inch(20)

/** Whether what ends so high over the floor is sat on. */
export function isSeatHigh({ bottom, height }: Pick<Cabinet, 'bottom' | 'height'>): boolean {
  return settle(bottom + height) <= SEAT_HIGH
}

/** Whether its top is a lid, which a countertop would close for good. */
export function hasLid(cabinet: Cabinet, project: Project): boolean {
  return !cabinet.space && methodOf(cabinet, project).baseTop.kind === 'lid'
}

/** Whether a countertop goes over it where nothing else is said: it does over bases that are as high as a worktop. */
export function isWorktopHigh({ bottom, height }: Pick<Cabinet, 'bottom' | 'height'>): boolean {
  return bottom + height >= LOWEST_WORKTOP
}

/**
 * Whether the countertop goes over a cabinet: over bases, but no lids, that are as high as a worktop or where it is asked
 * for, and over appliances as they say.
 */
export function isUnderTop(cabinet: Cabinet, project: Project): boolean {
  if (cabinet.kind !== 'base') return false
  if (cabinet.space) return cabinet.space.isTopOver
  return !hasLid(cabinet, project) && (cabinet.top?.isOver ?? isWorktopHigh(cabinet))
}
