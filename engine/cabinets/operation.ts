import type { Mm } from '../units/length'

/**
 * What is worked on a board, in the board's own frame: x from one end along its length, y from one edge across it. The
 * inside face is the one at the full thickness, the outside face the one at 0.
 */
export type Operation = Recess | Notch | HoleRow

export type Face = 'inside' | 'outside'

/** A groove runs with the grain, a dado across it, a rabbet along an edge; all three are a rectangle sunk into a face. */
export interface Recess {
  readonly kind: 'groove' | 'dado' | 'rabbet'
  readonly face: Face
  readonly x: Mm
  readonly y: Mm
  readonly length: Mm
  readonly width: Mm
  readonly depth: Mm
}

/** A rectangle cut out of a corner or an edge, right through. */
export interface Notch {
  readonly kind: 'notch'
  readonly x: Mm
  readonly y: Mm
  readonly length: Mm
  readonly width: Mm
}

/** Equal holes in a line along the board's length; one hole is a row of one. */
export interface HoleRow {
  readonly kind: 'holeRow'
  readonly purpose: 'shelfPin'
  readonly face: Face
  /** Centre of the first hole. */
  readonly x: Mm
  readonly y: Mm
  readonly step: Mm
  readonly count: number
  readonly diameter: Mm
  readonly depth: Mm
}
