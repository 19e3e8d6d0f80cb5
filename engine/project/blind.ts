import { inch, type Mm, settle } from '../units/length'
import type { Front } from './document'

/** What opens beside an inside corner is so far from the face round it, so that pulls pass. Source: a dealer glossary, 'at least 3 in from the corner'. */
export const CORNER_FILLER: Mm = inch(3)

/**
 * How wide the blind part of a corner must be at least: the run along the other wall stands before it, its doors before
 * that, and the pulls of both must pass.
 */
export function blindWidthLeast(
  { neighbour, pull }: Pick<Extract<Front, { kind: 'blind' }>, 'neighbour' | 'pull'>,
  frontThickness: Mm,
): Mm {
  return settle(neighbour + frontThickness + pull)
}
