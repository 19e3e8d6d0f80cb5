import { type Mm, settle } from '../units/length'
import type { Cutout } from './between'

/** What a cut-out is placed by. */
interface Placed {
  readonly left: Mm
  readonly width: Mm
}

/** The middle of a cut-out along the wall: of its cabinet, unless it is moved aside. */
export function middleOfCutout({ left, width }: Placed, cutout: Cutout | null): Mm {
  return settle(left + width / 2 + (cutout?.aside ?? 0))
}

/** From where to where a cut-out goes along the wall. */
export function cutoutAlong(cabinet: Placed, cutout: Cutout): { readonly left: Mm; readonly right: Mm } {
  const middle = middleOfCutout(cabinet, cutout)
  return { left: settle(middle - cutout.width / 2), right: settle(middle + cutout.width / 2) }
}

/** From the left side of its cabinet to a cut-out; less than 0 where it begins before that. */
export function fromLeftOf(cabinet: Placed, cutout: Cutout): Mm {
  return settle(cutoutAlong(cabinet, cutout).left - cabinet.left)
}

/** The cut-out so far from the left side of its cabinet. */
export function movedFromLeft({ width }: Placed, cutout: Cutout, fromLeft: Mm): Cutout {
  return withAside(cutout, settle(fromLeft + cutout.width / 2 - width / 2))
}

/** The cut-out with its middle so far to the right of that of its cabinet; in the middle again at 0. */
export function withAside({ aside: _, ...cutout }: Cutout, aside: Mm): Cutout {
  return aside === 0 ? cutout : { ...cutout, aside }
}

/** What a cut-out begins with, as wide as its cabinet allows: its maker's paper says the size. Common practice, no source. */
const USUAL = {
  sink: { width: 480, depth: 400, fromFront: 70 },
  hob: { width: 560, depth: 490, fromFront: 55 },
} as const
/** Left of the cabinet's width beside a cut-out, in all: two sides and a finger between. */
const BESIDE: Mm = 60

/** A smaller cut-out is none. */
export const LEAST_CUTOUT: Mm = 20

export function usualCutout(of: Cutout['of'], { width }: Pick<Placed, 'width'>): Cutout {
  const usual = USUAL[of]
  return { of, ...usual, width: settle(Math.min(usual.width, Math.max(LEAST_CUTOUT, width - BESIDE))) }
}
