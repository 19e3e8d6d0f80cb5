import type { Piece } from '../sheets/layout'

/** How far a piece has come, so that what is still to be done to it keeps its turn. */
export interface Stage {
  /** Blades take turns: the phase in which the piece came to be. */
  readonly phase: number
  /** What was still to be bought when it was planned is cut in a round after what was there; 0 when left out. */
  readonly round?: number
  readonly isSheet: boolean
  readonly hasBeenRipped: boolean
}

export const AS_IT_CAME: Stage = { phase: 0, isSheet: true, hasBeenRipped: false }

/** What is still to become of a piece. */
export interface Future {
  /** As the layout draws it, without what is cut off already. */
  readonly drawn: Piece
  /** What its pieces will be called, where it is cut into some. */
  readonly called: readonly string[]
  readonly stage: Stage
}
