import { explodedBy, type Part, type Vec3 } from '../../engine/index'
import { keptFor } from './space'

/** How a board leaves its cabinet: where to, and between which two stands of the slider. */
export interface Stage {
  readonly away: Vec3
  readonly from: number
  readonly to: number
}

/** What the shader is told of a board's way. `explodedBy` stays the rule; a test holds the two together. */
export const stageOf: (part: Part) => Stage = keptFor(({ explode }) => ({
  away: explodedBy(explode, 1),
  from: explode.from,
  to: explode.to,
}))

/** The shader's own rule, written once more for the test: the share of its way that a board has gone at `apart`. */
export function shareGone({ from, to }: Stage, apart: number): number {
  return to > from ? Math.min(1, Math.max(0, (apart - from) / (to - from))) : 1
}
