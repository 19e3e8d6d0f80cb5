import { type Mm, settle } from '../units/length'
import type { Front } from './document'
import type { BuildMethod } from './method'

/** One door up to 24 in wide, in whole millimetres, and a pair above. Source: 98905.com, stock widths. */
export const USUAL_WIDEST_DOOR: Mm = 610

/** Doors as a new cabinet has them: one that becomes a pair where it is too wide. */
export const DOORS = { kind: 'door', hinge: 'left', orPair: true } as const satisfies Front

/** How wide a single door may be at most, in mm. */
export function widestDoor({ widestDoor: most }: BuildMethod['fronts']): Mm {
  return most ?? USUAL_WIDEST_DOOR
}

/**
 * What hangs in an opening whose front is so wide and so high, in mm: of a door that may be a pair, a pair where one door
 * would be wider than the widest, or as wide as its hinges are apart, and two narrower ones would not. Source of the
 * latter: a hinge maker's chart, the hinges of a door are farther apart than it is wide.
 */
export function hungAs(
  front: Front,
  { width, height }: { readonly width: Mm; readonly height: Mm },
  { fronts, hinge }: Pick<BuildMethod, 'fronts' | 'hinge'>,
): Front {
  if (front.kind !== 'door' || !front.orPair) return front
  if (front.hinge === 'top') return { kind: 'door', hinge: 'top' }
  const apart = settle(height - 2 * hinge.firstFromEnd)
  const isPair = width > widestDoor(fronts) || (apart <= width && apart > (width - fronts.gap) / 2)
  return isPair ? { kind: 'pair' } : { kind: 'door', hinge: front.hinge }
}
