import type { Mm } from '../units/length'

/**
 * A cabinet in a corner of the room, with a leg along either wall. Its width and depth are those of the leg along its own
 * wall; an L has an inside corner between two leaves that are hinged to one another, a diagonal one door before both legs.
 */
export interface Corner {
  readonly kind: 'L' | 'diagonal'
  /** The end of its wall that is the corner. */
  readonly hand: 'left' | 'right'
  /** How far it goes along the other wall, from the corner. */
  readonly other: Mm
  /** Of the leg along the other wall: with the back, without the fronts. */
  readonly otherDepth: Mm
}

/** The narrowest leaf of an L and the least that a diagonal goes on past either side. Common practice, no source. */
export const LEAST_LEAF: Mm = 150
