import { type Rect, rightOf, topOf } from '../geometry/rect'
import type { BuildMethod } from '../project/method'
import { type Mm, settle } from '../units/length'
import { type Carcass, clearBottom, type Frame } from './carcass'

/**
 * The lower edge of a face frame. Its bottom rail ends flush with the floor of the carcass or stands above it by what is
 * chosen. Under a cabinet that hangs, or stands on no kick, there is nothing to reach down to: there it begins with the
 * carcass, and a wide bottom rail stands higher.
 */
export function frameLow(carcass: Carcass, { rules }: Frame): Mm {
  return Math.max(0, settle(clearBottom(carcass) + rules.proud - rules.bottomRail))
}

/** All that the frame takes, seen from the room, in the frame of the carcass: to the top of it, and past it at both sides. */
export function frameArea(carcass: Carcass, frame: Frame): Rect {
  const { pastLeft, pastRight } = frame.rules
  const bottom = frameLow(carcass, frame)
  return {
    left: settle(-pastLeft),
    bottom,
    width: settle(carcass.width + pastLeft + pastRight),
    height: settle(carcass.height - bottom),
  }
}

/** What its stiles and rails leave open. */
export function frameOpening(carcass: Carcass, frame: Frame): Rect {
  const { stile, topRail, bottomRail } = frame.rules
  const area = frameArea(carcass, frame)
  return {
    left: settle(area.left + stile),
    bottom: settle(area.bottom + bottomRail),
    width: settle(area.width - 2 * stile),
    height: settle(area.height - topRail - bottomRail),
  }
}

/** How far a front covers the frame round its opening; below 0 for the gap round an inset one. */
export function coverOf({ rules: { fronts } }: Frame, { fronts: { gap } }: Pick<BuildMethod, 'fronts'>): Mm {
  return fronts.kind === 'overlay' ? fronts.by : -gap
}

/** From one front to the next: the member between them less what both cover of it, or with the gap at both of its edges. */
export function betweenFramed(frame: Frame, method: Pick<BuildMethod, 'fronts'>): Mm {
  return settle(frame.rules.mullion - 2 * coverOf(frame, method))
}

/** The front of an opening. */
export function coveredBy(opening: Rect, frame: Frame, method: Pick<BuildMethod, 'fronts'>): Rect {
  return grown(opening, coverOf(frame, method))
}

/** The opening that a front closes. */
export function openingBehind(front: Rect, frame: Frame, method: Pick<BuildMethod, 'fronts'>): Rect {
  return grown(front, -coverOf(frame, method))
}

function grown(rect: Rect, by: Mm): Rect {
  const [left, bottom] = [settle(rect.left - by), settle(rect.bottom - by)]
  return {
    left,
    bottom,
    width: settle(rightOf(rect) + by - left),
    height: settle(topOf(rect) + by - bottom),
  }
}
