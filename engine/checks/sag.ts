import type { Mm } from '../units/length'
import { loadOfShelf } from './load'

/** How the ends of a shelf are held: on pins, let into dadoes, or so that they cannot tilt at all. */
export type Ends = 'resting' | 'housed' | 'clamped'

/** A board that carries an even load between two uprights. */
export interface Bearing {
  /** From front to back. */
  readonly depth: Mm
  /** As measured. */
  readonly thickness: Mm
  /** Modulus of elasticity along the span, in newtons per square millimetre. */
  readonly stiffness: number
  readonly ends: Ends
}

/** How a board with housed ends is judged. */
export const HOUSED_RULE = 'half way between resting and clamped'

/**
 * What the ends take off the sag of a board that only rests. A clamped one sags a fifth: w L^4 / (384 E I). A dado lets
 * the end tilt a little, so a housed board is judged half way between the two (common practice, no source).
 */
const SHARES: Readonly<Record<Ends, number>> = { resting: 1, housed: (1 + 1 / 5) / 2, clamped: 1 / 5 }

/**
 * How far the middle of the board goes down at once, in mm: 5 w L^4 / (384 E I) where it rests on its ends, with
 * I = b t^3 / 12. General mechanics. `pressure` in newtons per square millimetre.
 *
 *      w w w w w w w w w          w is the load W over the span L, so w L^4 is W L^3
 *      -----------------
 *      ^               ^
 */
export function sagOf(span: Mm, board: Bearing, pressure: number): Mm {
  const { depth, thickness, stiffness, ends } = board
  const inertia = (depth * thickness ** 3) / 12
  return (SHARES[ends] * 5 * loadOfShelf(span, depth, pressure) * span ** 3) / (384 * stiffness * inertia)
}

/** Halving ten metres so often leaves far less than a tick. */
const HALVINGS = 40
const LONGEST: Mm = 10_000

/** The greatest span, in mm, over which the board sags no more than a limit that may grow with the span. */
export function greatestSpan(board: Bearing, pressure: number, limitAt: (span: Mm) => Mm): Mm {
  let holds = 0
  let fails = LONGEST
  for (let halving = 0; halving < HALVINGS; halving++) {
    const span = (holds + fails) / 2
    if (sagOf(span, board, pressure) <= limitAt(span)) holds = span
    else fails = span
  }
  return holds
}
