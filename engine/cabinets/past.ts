import type { Rect } from '../geometry/rect'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import type { Carcass } from './carcass'

/*
 * A carcass is worked out from its own left. Its cabinet begins where the face frame does, which stands past it:
 *
 *      | past |  carcass
 *      0      0' -------->
 */

/** How far the carcass begins from the left of its cabinet. */
export function pastLeft({ frame }: Carcass): Mm {
  return frame ? settle(frame.rules.pastLeft) : 0
}

/** How far the cabinet ends past the right of its carcass. */
export function pastRight({ frame }: Carcass): Mm {
  return frame ? settle(frame.rules.pastRight) : 0
}

/** A place of the carcass in the frame of its cabinet. */
export function inCabinet(rect: Rect, carcass: Carcass): Rect {
  const by = pastLeft(carcass)
  return by === 0 ? rect : { ...rect, left: settle(rect.left + by) }
}

export function boardInCabinet(board: Board, carcass: Carcass): Board {
  const by = pastLeft(carcass)
  if (by === 0) return board
  const { origin } = board.placement
  return { ...board, placement: { ...board.placement, origin: { ...origin, x: settle(origin.x + by) } } }
}
