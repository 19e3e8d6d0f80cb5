import type { Interval } from '../geometry/interval'
import { chartOf, hingesOfRow } from '../project/hingeChart'
import type { HingeRules } from '../project/hingeRules'
import { AS_SETTLED, type Mm, settle } from '../units/length'

/**
 * The height of a door, or the length of a flap along its hinges, and its weight in kg each ask for a number of hinges, and
 * the larger holds. One more than the chart of the method has where it is off the chart.
 */
export function hingesFor(height: Mm, kg: number, hinge: HingeRules): number {
  const chart = chartOf(hinge)
  const row = chart.findIndex((one) => height < one.height + AS_SETTLED && kg < one.weight)
  return hingesOfRow(row === -1 ? chart.length : row)
}

/** How the arm of a hinge is bent: for doors that cover a whole edge, that share one, that stand between the sides. */
export type Arm = 'straight' | 'half' | 'inset'

const ARMS: readonly Arm[] = ['straight', 'half', 'inset']

function crankOf(arm: Arm, { halfCrank, fullCrank }: HingeRules): Mm {
  return arm === 'straight' ? 0 : arm === 'half' ? halfCrank : fullCrank
}

/**
 * How far a door on this arm covers the edge of its side: fixed distance and boring distance, less the plate's height and
 * what the arm is cranked. Below 0 it stands inside. Source: a hinge maker's quick reference (OL = FD + B - H).
 *
 *      |  side  |
 *      |________|
 *          |<-->|  overlay
 *      ____|________________
 *     |    |<->( cup )       door
 */
export function overlayOf(arm: Arm, hinge: HingeRules): Mm {
  return settle(hinge.fixedDistance + hinge.cupFromEdge - hinge.plateHeight - crankOf(arm, hinge))
}

/** The arm whose overlay comes nearest to what a door covers. */
export function armFor(overlay: Mm, hinge: HingeRules): Arm {
  const away = (arm: Arm) => Math.abs(overlayOf(arm, hinge) - overlay)
  return ARMS.reduce((best, arm) => (away(arm) < away(best) ? arm : best))
}

/** From the edge of the door to the middle of its cups: 22.5 where a cup of 35 begins 5 from the edge. */
export function cupCentre({ cupFromEdge, cupDiameter }: HingeRules): Mm {
  return settle(cupFromEdge + cupDiameter / 2)
}

/** What is left around a hole at least, so that it does not tear out. Common practice, no source. */
export const LEAST_WOOD: Mm = 3

/** What a hinge takes along the edge of its door, with the wood that is left around its screws. */
export function hingeRoom({ screwSpread, screwDiameter, cupDiameter, plateLength }: HingeRules): Mm {
  return settle(Math.max(screwSpread + screwDiameter, cupDiameter, plateLength) + 2 * LEAST_WOOD)
}

/** The middles of hinges: the first and the last as far from the ends of the door as they may be, the others spread evenly. */
export function hingeLine({ from, to }: Interval, count: number, hinge: HingeRules): Mm[] {
  const end = Math.min(hinge.firstFromEnd, (to - from) / 4)
  const step = (to - from - 2 * end) / (count - 1)
  return Array.from({ length: count }, (_, at) => settle(from + end + at * step))
}
