import type { Mm } from '../units/length'
import { loadOfShelf } from './load'

/** How the ends of a board are held: on pins, let into dadoes, so that they cannot tilt at all, or of two equal spans that go on over one support. */
export type Ends = 'resting' | 'housed' | 'clamped' | 'overMiddle'

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
 * the end tilt a little, so a housed board is judged half way between the two (common practice, no source). In each of two
 * equal spans over a middle support, both loaded, it is w L^4 / (185 E I) (from memory).
 */
const SHARES: Readonly<Record<Ends, number>> = {
  resting: 1,
  housed: (1 + 1 / 5) / 2,
  clamped: 1 / 5,
  overMiddle: 384 / (5 * 185),
}

/** Of a board across the span, in mm4: b t^3 / 12. */
export function inertiaOf({ depth, thickness }: Pick<Bearing, 'depth' | 'thickness'>): number {
  return (depth * thickness ** 3) / 12
}

/**
 * How far the middle of the board goes down at once, in mm: 5 w L^4 / (384 E I) where it rests on its ends, with
 * I = b t^3 / 12. General mechanics. `pressure` in newtons per square millimetre.
 *
 *      w w w w w w w w w          w is the load W over the span L, so w L^4 is W L^3
 *      -----------------
 *      ^               ^
 */
export function sagOf(span: Mm, board: Bearing, pressure: number): Mm {
  return sagUnder(loadOfShelf(span, board.depth, pressure), span, board)
}

/** The same under the even load however much that comes to, as published tables of spans have it. */
export function evenSagOf(span: Mm, board: Bearing, pressure: number): Mm {
  return sagUnder(pressure * span * board.depth, span, board)
}

function sagUnder(load: number, span: Mm, board: Bearing): Mm {
  return (SHARES[board.ends] * 5 * load * span ** 3) / (384 * board.stiffness * inertiaOf(board))
}

/** The ends of a board between two things that bear it. */
export type PointEnds = Exclude<Ends, 'overMiddle'>

/** What the ends take off the sag under a load in the middle: a clamped board gives a quarter, P L^3 / (192 E I). */
const POINT_SHARES: Readonly<Record<PointEnds, number>> = { resting: 1, housed: (1 + 1 / 4) / 2, clamped: 1 / 4 }

/**
 * How far boards side by side, which go down together, give under a load in newtons at the middle of the span, in mm:
 * P L^3 / (48 E I) where they rest on their ends, with E I of all of them. General mechanics.
 */
export function pointSagOf(
  span: Mm,
  boards: readonly { readonly stiffness: number; readonly inertia: number }[],
  load: number,
  ends: PointEnds = 'resting',
): Mm {
  const stiff = boards.reduce((sum, { stiffness, inertia }) => sum + stiffness * inertia, 0)
  return stiff > 0 ? (POINT_SHARES[ends] * load * span ** 3) / (48 * stiff) : Number.POSITIVE_INFINITY
}

/** Halving ten metres so often leaves far less than a tick. */
const HALVINGS = 40
const LONGEST: Mm = 10_000

/**
 * The greatest span, in mm, over which the board sags no more than a limit that may grow with the span, under the even load:
 * what a shelf is asked to carry at most in all would let deep ones be longer than published tables do.
 */
export function greatestSpan(board: Bearing, pressure: number, limitAt: (span: Mm) => Mm): Mm {
  let holds = 0
  let fails = LONGEST
  for (let halving = 0; halving < HALVINGS; halving++) {
    const span = (holds + fails) / 2
    if (evenSagOf(span, board, pressure) <= limitAt(span)) holds = span
    else fails = span
  }
  return holds
}
