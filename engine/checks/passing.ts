import type { Mm } from '../units/length'

/**
 * Whether a shelf can be put in through an opening. It goes in with its front or rear edge first, and may be tilted: then
 * its end, a thin rectangle, must fit in the opening. An upright one fits by its sides; a tilted one by the rule for a
 * rectangle in a rectangle (p longer than q, in a x b with a the longer):
 *
 *     b >= (2pqa + (p^2 - q^2) sqrt(p^2 + q^2 - a^2)) / (p^2 + q^2)
 */
export function passes(
  { length, thickness }: { readonly length: Mm; readonly thickness: Mm },
  opening: { readonly width: Mm; readonly height: Mm },
): boolean {
  const [a, b] = [Math.max(opening.width, opening.height), Math.min(opening.width, opening.height)]
  const [p, q] = [Math.max(length, thickness), Math.min(length, thickness)]
  if (p <= a) return q <= b
  const square = p * p + q * q
  return b >= (2 * p * q * a + (p * p - q * q) * Math.sqrt(square - a * a)) / square
}

/** Halving its diagonal so often leaves less than a tick. */
const HALVINGS = 30

/** The longest shelf of a thickness that can be put in through an opening with its front or rear edge first, in mm. */
export function longestThrough(thickness: Mm, opening: { readonly width: Mm; readonly height: Mm }): Mm {
  let passing = 0
  let stuck = Math.hypot(opening.width, opening.height) + thickness
  for (let halving = 0; halving < HALVINGS; halving++) {
    const length = (passing + stuck) / 2
    if (passes({ length, thickness }, opening)) passing = length
    else stuck = length
  }
  return passing
}

interface Point {
  readonly x: Mm
  readonly y: Mm
}

/**
 * How wide the narrowest slit is that a convex board can be pushed through on its edge, in mm: the least, over its edges, of
 * how far its corners are from one. `corners` go round it.
 */
export function leastAcross(corners: readonly Point[]): Mm {
  const widths = corners.flatMap((from, at) => {
    const to = corners[(at + 1) % corners.length]!
    const long = Math.hypot(to.x - from.x, to.y - from.y)
    const away = ({ x, y }: Point) => Math.abs((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x)) / long
    return long > 0 ? [Math.max(...corners.map(away))] : []
  })
  return Math.min(...widths)
}
