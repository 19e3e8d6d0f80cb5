import { METHOD } from '../basics/source'
import { type Mm, settle } from '../units/length'
import { upward, WAYS } from './apart'
import { backFront, type Carcass, clearWidth, insideFront, sideRear } from './carcass'
import { type Piece, room, UNBANDED } from './piece'
import type { Report } from './report'

/** A stretcher is butted between the sides. */
export function stretcherLength(carcass: Carcass): Mm {
  return clearWidth(carcass)
}

/** A flat rear stretcher starts at the rear edge of the sides, or before a back that sits in their rabbets. */
export function rearStretcherRear(carcass: Carcass): Mm {
  return settle(sideRear(carcass) + (carcass.method.back.kind === 'rabbet' ? carcass.backThickness : 0))
}

/** The front and, but over a sink, the back stretcher of a base, flat under the counter or standing on their edges. */
export function stretchersOf(carcass: Carcass, report: Report): Piece[] {
  const { thickness, depth, height, stretcherWidth, method } = carcass
  const isFlat = carcass.top === 'flat'
  const deep = isFlat ? stretcherWidth : thickness
  const rear = isFlat ? rearStretcherRear(carcass) : backFront(carcass)
  const x = [thickness, thickness + stretcherLength(carcass)] as const
  const y = [height - (isFlat ? thickness : stretcherWidth), height] as const
  const front: Piece = {
    role: 'frontStretcher',
    number: 1,
    material: method.carcassMaterial,
    box: room(x, y, [depth - deep, depth]),
    lie: isFlat ? 'levelLookingDown' : 'onEdgeLookingIn',
    banded: isFlat ? { edges: 'front', thickness: method.banding.carcass } : UNBANDED,
    explode: upward(WAYS.outermost),
  }
  const back: Piece = {
    ...front,
    role: 'backStretcher',
    box: room(x, y, [rear, rear + deep]),
    lie: isFlat ? 'levelLookingDown' : 'onEdgeLookingOut',
    banded: UNBANDED,
  }
  tellBackInFront(carcass, settle(depth - deep), report)
  if (!carcass.hasBackStretcher) return [front]
  if (rear + 2 * deep <= depth) return [front, back]
  report.stop(
    `two stretchers of ${report.say(deep)} do not fit in the ${report.left(depth - rear)} from its back to its front; the back one is left out.`,
    { is: 2 * deep, limit: report.left(depth - rear), source: METHOD },
  )
  return [front]
}

/** A back that is set in so far that it would stand in the front stretcher, or before it. */
function tellBackInFront(carcass: Carcass, rear: Mm, report: Report): void {
  const front = backFront(carcass)
  // One that leaves no room inside at all is told as that.
  if (carcass.method.back.kind === 'none' || front <= rear || front >= insideFront(carcass)) return
  report.stop(
    `the front of its back would be ${report.say(front)} from the wall; its front stretcher begins at ${report.say(rear)}. Set the back in less.`,
    { is: front, limit: rear, source: METHOD },
  )
}
