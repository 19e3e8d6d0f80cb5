import type { Rect } from '../geometry/rect'
import { type Mm, settle } from '../units/length'
import type { FrontFace } from './board'
import type { Carcass } from './carcass'

/** The panel of the blind part, and the strip at its edge towards the middle of the cabinet that closes the corner. */
export function blindFaces(rect: Rect, filler: Mm, carcass: Carcass): FrontFace[] {
  const strip = settle(Math.min(filler, rect.width))
  const panel = { ...rect, width: settle(rect.width - strip) }
  const isAtLeft = rect.left + rect.width / 2 <= carcass.width / 2
  const closing = { ...rect, width: strip, left: isAtLeft ? settle(rect.left + panel.width) : rect.left }
  const rest = isAtLeft ? panel : { ...panel, left: settle(rect.left + strip) }
  const faces: readonly FrontFace[] = [
    { kind: 'blindPanel', hinge: null, rect: rest },
    { kind: 'cornerFiller', hinge: null, rect: closing },
  ]
  return faces.filter(({ rect: { width } }) => width > 0)
}
