import type { Interval } from '../geometry/interval'
import { type Mm, settle } from '../units/length'

/** Wishes of two ends that differ by less were settled from either end by themselves: they are as far. */
const SAME: Mm = 0.002

/** A place for a hinge near a wish: beside what is taken, and rather at one hand where two are as near; null where there is none. */
type Finder = (wish: Mm, taken: readonly Interval[], rather: 'low' | 'high') => Mm | null

/**
 * The middles of the hinges of a leaf, in no order, near where they are wished along it. Those of a door are placed from its
 * foot up. Those of a flap are placed from both ends in, either the mirror image of the other: a flap has no hand, so that
 * in a mirrored cabinet they are in the mirrored places. What finds no place `room` from the others is left out.
 */
export function spreadOver(
  wishes: readonly Mm[],
  { axis, middle }: { readonly axis: 'x' | 'y'; readonly middle: Mm },
  room: Mm,
  find: Finder,
): Mm[] {
  const places: Mm[] = []
  const near = (wish: Mm, rather: 'low' | 'high', more: readonly Mm[] = []) =>
    find(
      wish,
      [...places, ...more].map((at) => beside(at, room)),
      rather,
    )
  if (axis === 'y') {
    for (const wish of wishes) places.push(...placed(near(wish, 'low')))
    return places
  }
  for (let at = 0; at < Math.floor(wishes.length / 2); at++) {
    const [low, high] = [wishes[at]!, wishes[wishes.length - 1 - at]!]
    places.push(...pairOf({ low, high }, room, near))
  }
  if (wishes.length % 2 === 1) {
    const wish = wishes[(wishes.length - 1) / 2]!
    places.push(...placed(near(wish, wish > middle ? 'high' : 'low')))
  }
  return places
}

/**
 * Two hinges as far from either end. Where both would have the same place it is that of the one that wishes it more, and the
 * other goes beside; where neither does, one in the middle is all that there is room for.
 */
function pairOf(
  wish: { readonly low: Mm; readonly high: Mm },
  room: Mm,
  near: (wish: Mm, rather: 'low' | 'high', more?: readonly Mm[]) => Mm | null,
): Mm[] {
  const [low, high] = [near(wish.low, 'low'), near(wish.high, 'high')]
  if (low === null || high === null || settle(high - low) >= room) return [...placed(low), ...placed(high)]
  const farther = settle(Math.abs(low - wish.low) - Math.abs(high - wish.high))
  if (Math.abs(farther) < SAME) return placed(near(settle((wish.low + wish.high) / 2), 'low'))
  return farther < 0
    ? [low, ...placed(near(wish.high, 'high', [low]))]
    : [...placed(near(wish.low, 'low', [high])), high]
}

function placed(at: Mm | null): Mm[] {
  return at === null ? [] : [at]
}

/** What is taken about a place, as far on either side. */
export function beside(at: Mm, by: Mm): Interval {
  return { from: settle(at - by), to: settle(at + by) }
}
