import { times, type Vec3 } from '../geometry/vector'
import type { Mm } from '../units/length'
import type { Explode } from './board'

/*
 * How a carcass comes apart, so that nothing passes through anything at any moment:
 *
 *   0 .. 0.35     fronts, drawer boxes, face frame and kick board come forward
 *   0.4 .. 0.6    the boards of a drawer box leave its bottom
 *   0.4 .. 0.7    the members of a face frame, and of fronts in five parts, leave one another (membersApart.ts)
 *   0.3 .. 0.6    sides go left and right, off every tongue, what stands beside them ahead of them; shelves of two bays
 *                 follow them half way
 *   0.55 .. 0.85  what lies level goes up or down, the outermost fastest
 *   0.85 .. 1     the back, free of its grooves by now, goes to the rear, and several partitions make room for each other
 */

/** Forward; what must stay ahead of something else gets the longer way. */
export function forward(way: Mm): Explode {
  return { by: { x: 0, y: 0, z: way }, from: 0, to: 0.35 }
}

/** Forward with its drawer box, and then off the bottom of it. */
export function forwardAndOff(way: Mm, off: Vec3): Explode {
  return { ...forward(way), after: { by: times(off, WAYS.boxBoard), from: 0.4, to: 0.6 } }
}

/** To the left (-1) or to the right (1), with the sides. */
export function sideways(direction: -1 | 1, way: Mm): Explode {
  return { by: { x: direction * way, y: 0, z: 0 }, from: 0.3, to: 0.6 }
}

export function upward(way: Mm): Explode {
  return { by: { x: 0, y: way, z: 0 }, from: 0.55, to: 0.85 }
}

export function downward(way: Mm): Explode {
  return { by: { x: 0, y: -way, z: 0 }, from: 0.55, to: 0.85 }
}

/** A board of the plinth: down ahead of the bottom, and away from the other three. */
export function plinthApart(x: Mm, z: Mm): Explode {
  return { by: { x, y: -WAYS.plinth, z }, from: 0.55, to: 0.85 }
}

/** To the rear once the grooves above and below have gone. */
export function rearward(way: Mm): Explode {
  return { by: { x: 0, y: 0, z: -way }, from: 0.85, to: 1 }
}

/** Nailers behind the back have nothing behind them and go before it. */
export function rearwardFirst(way: Mm): Explode {
  return { by: { x: 0, y: 0, z: -way }, from: 0.3, to: 0.6 }
}

/** Shelves of the outer bays follow the sides; those between two partitions stay until these leave them. */
export function bayApart(at: number, count: number): Explode {
  if (count === 1) return STAYS
  if (at === 0) return sideways(-1, WAYS.bayShelf)
  if (at === count - 1) return sideways(1, WAYS.bayShelf)
  return spread(at + 0.5 - count / 2)
}

/** A partition of several moves away from the middle once the boards above and below have gone. */
export function partitionApart(number: number, bays: number): Explode {
  return bays <= 2 ? STAYS : spread(number - bays / 2)
}

function spread(place: number): Explode {
  return { by: { x: place * WAYS.spread, y: 0, z: 0 }, from: 0.85, to: 1 }
}

export const STAYS: Explode = { by: { x: 0, y: 0, z: 0 }, from: 0, to: 1 }

/** How far each goes, in mm; of two that go the same way the outer one goes further. */
export const WAYS = {
  side: 300,
  /** What stands beside a side stays ahead of it. */
  beside: 420,
  bayShelf: 160,
  /** From bay to bay; the outer shelves go further than all of them together. */
  spread: 24,
  outermost: 300,
  /** Between a lid and what it lies on. */
  lidAhead: 100,
  nailer: 200,
  drawerLine: 100,
  plinth: 450,
  plinthSpread: 80,
  back: 200,
  nailerBehind: 350,
  kick: 200,
  /** Ahead of a kick board that comes out from under it, and behind the fronts. */
  frame: 220,
  front: 350,
  /** Between a drawer front and its box. */
  drawerFrontAhead: 120,
  /** Less than what the drawer front is ahead. */
  boxBoard: 70,
} as const
