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
