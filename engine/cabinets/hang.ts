import { rightOf, topOf } from '../geometry/rect'
import type { Front } from '../project/document'
import type { MethodChoices } from '../project/method'
import type { Mm } from '../units/length'
import type { FrontFace } from './board'

/** What a hinge is bought as: its arm is cranked by how much of the board the door covers. */
export type Hang = 'full overlay' | 'half overlay' | 'inset' | 'face frame overlay' | 'face frame inset'

/** What a door hangs in: sizes in mm, seen from the room. */
export interface Hung {
  readonly width: Mm
  readonly height: Mm
  /** Of the boards that doors hang on. */
  readonly thickness: Mm
  readonly mount: MethodChoices['frontMount']
  /** How it sits on a face frame; null where there is none. */
  readonly onFrame: 'inset' | 'overlay' | null
}

/**
 * On a face frame a door hangs on the frame. Otherwise it hangs on the outermost board with the overlay of its method. On a board that it shares with the front beside it,
 * a partition or a shelf, it covers half; an inset one covers nothing.
 */
export function hangOf(
  { hinge, rect }: Pick<FrontFace, 'hinge' | 'rect'>,
  { width, height, thickness, mount, onFrame }: Hung,
): Hang {
  if (onFrame) return `face frame ${onFrame}`
  if (mount === 'inset') return 'inset'
  switch (hinge) {
    case 'left':
      return rect.left < thickness && mount === 'fullOverlay' ? 'full overlay' : 'half overlay'
    case 'right':
      return rightOf(rect) > width - thickness && mount === 'fullOverlay' ? 'full overlay' : 'half overlay'
    default:
      // Uppers share their sides, never their tops.
      return topOf(rect) > height - thickness ? 'full overlay' : 'half overlay'
  }
}

/** Whether a front hangs on the upright at one side of its opening. */
export function hingeEdge(front: Front, side: 'left' | 'right'): boolean {
  return front.kind === 'pair' || (front.kind === 'door' && front.hinge === side)
}
