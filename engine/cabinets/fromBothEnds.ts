import type { Interval } from '../geometry/interval'
import { AS_SETTLED, type Mm, settle } from '../units/length'

/** At which hand of a wish a place is rather, of two that are as near to it. */
export type Hand = 'low' | 'high'

/** What is to be spread over a line that has no hand: its places on it, or points about it. */
export interface Spread<Place> {
  /** What of the line one place takes. */
  readonly room: Mm
  /**
   * The place nearest to a wish that is clear of those that are taken; null where there is none. Those that are nearer to
   * the middle than `least`, and not in it, are passed over.
   */
  readonly near: (wish: Place, taken: readonly Place[], rather: Hand, least: Mm) => Place | null
  readonly far: (one: Place, other: Place) => Mm
  readonly between: (one: Place, other: Place) => Place
}

/**
 * Places near those that are wished along a line, in no order: from both ends in, either the mirror image of the other, so
 * that in a mirrored cabinet they are in the mirrored places. What finds none is left out. Where the middle of the line is
 * taken and either side of it is as near, there is one at both sides.
 */
export function fromBothEnds<Place>(wishes: readonly Place[], spread: Spread<Place>): Place[] {
  const places: Place[] = []
  const half = Math.floor(wishes.length / 2)
  for (let at = 0; at < half; at++) {
    places.push(...pairOf(wishes[at]!, wishes[wishes.length - 1 - at]!, places, spread))
  }
  if (wishes.length % 2 === 1) places.push(...aboutMiddle(wishes[half]!, places, spread))
  return places
}

/**
 * Two places as far from either end. Where both would have the same it is that of the one that wishes it more, and the other
 * goes beside; where neither does, there is what has room about the middle.
 */
function pairOf<Place>(low: Place, high: Place, taken: readonly Place[], spread: Spread<Place>): Place[] {
  const { near, far, between } = spread
  const [first, last] = [near(low, taken, 'low', 0), near(high, taken, 'high', 0)]
  if (first === null || last === null || areApart(first, last, spread)) return [...placed(first), ...placed(last)]
  const farther = far(first, low) - far(last, high)
  if (Math.abs(farther) < AS_SETTLED) return aboutMiddle(between(low, high), taken, spread)
  return farther < 0
    ? [first, ...placed(near(high, [...taken, first], 'high', 0))]
    : [...placed(near(low, [...taken, last], 'low', 0)), last]
}

/** One in the middle, or at the side of it where it is nearer; where that is either side, both, with room for each. */
function aboutMiddle<Place>(wish: Place, taken: readonly Place[], spread: Spread<Place>): Place[] {
  const nearest = eitherSide(wish, taken, spread, 0)
  const [low, high] = nearest
  if (low === undefined || high === undefined || areApart(low, high, spread)) return nearest
  return eitherSide(wish, taken, spread, spread.room / 2)
}

function eitherSide<Place>(wish: Place, taken: readonly Place[], { near, far }: Spread<Place>, least: Mm): Place[] {
  const [low, high] = [near(wish, taken, 'low', least), near(wish, taken, 'high', least)]
  if (low === null || high === null) return []
  return far(low, high) < AS_SETTLED ? [low] : [low, high]
}

function areApart<Place>(one: Place, other: Place, { far, room }: Spread<Place>): boolean {
  return far(one, other) > room - AS_SETTLED
}

function placed<Place>(at: Place | null): Place[] {
  return at === null ? [] : [at]
}

/** The place nearest to a wish that is in none of the stretches that are taken; null where there is none. */
export type Finder = (wish: Mm, taken: readonly Interval[], rather: Hand) => Mm | null

/** Places on a line, each with so much room: on one across the cabinet from both its ends, on any other one after another. */
export function spreadOver(wishes: readonly Mm[], axis: 'x' | 'y' | 'z', room: Mm, find: Finder): Mm[] {
  const clearOf = (places: readonly Mm[]) => places.map((at) => beside(at, room))
  if (axis !== 'x') {
    const places: Mm[] = []
    for (const wish of wishes) places.push(...placed(find(wish, clearOf(places), 'low')))
    return places
  }
  return fromBothEnds(wishes, {
    room,
    near: (wish, taken, rather, least) =>
      find(wish, [...clearOf(taken), ...(least > 0 ? [beside(wish, least)] : [])], rather),
    far: (one, other) => Math.abs(one - other),
    between: (one, other) => settle((one + other) / 2),
  })
}

/** What is taken about a place, as far on either side. */
export function beside(at: Mm, by: Mm): Interval {
  return { from: settle(at - by), to: settle(at + by) }
}
