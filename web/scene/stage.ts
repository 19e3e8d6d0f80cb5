import { explodedBy, type Leg, type Part, type Vec3 } from '../../engine/index'
import { keptFor } from './space'

/** How a board leaves its cabinet: on one straight way, or on two of them one after the other. */
export interface Stages {
  readonly first: Stage
  readonly second: Stage
}

/** A straight way: where to, and between which two stands of the slider. */
export interface Stage {
  readonly away: Vec3
  readonly from: number
  readonly to: number
}

/** What the shader is told of a board's way. `explodedBy` stays the rule; a test holds the two together. */
export const stagesOf: (part: Part) => Stages = keptFor(({ explode: { after, ...first } }) => ({
  first: stageOf(first),
  second: after ? stageOf(after) : NOWHERE,
}))

function stageOf(leg: Leg): Stage {
  return { away: explodedBy(leg, 1), from: leg.from, to: leg.to }
}

const NOWHERE: Stage = { away: { x: 0, y: 0, z: 0 }, from: 0, to: 1 }

/** The shader's own rule, written once more for the test: the share of a way that a board has gone at `apart`. */
export function shareGone({ from, to }: Stage, apart: number): number {
  return to > from ? Math.min(1, Math.max(0, (apart - from) / (to - from))) : 1
}
