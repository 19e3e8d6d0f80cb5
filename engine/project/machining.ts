import { inch, type Mm } from '../units/length'
import type { HingeRules } from './hingeRules'
import type { SlideRules } from './method'

/** Hinges between folding leaves differ from maker to maker. From memory, no source. */
export const USUAL_FOLD: Mm = 20

/**
 * What most shops bore for their hinges. Sources: cups of 35 (iqsdirectory), 13 deep as one hinge maker draws them, screws
 * 45 apart and 9.5 behind the middle of the cup, dowels of 8 (a hinge maker's drawing); the first hinge 3 in from the end
 * (a forum thread: '3 in always seems to work'); plates on the system holes, 5 mm, 32 apart, 37 from the front edge
 * (dalrun.com, '32mm Cabinetmaking'). Fixed distance, cranks and the length of a plate differ from hinge to hinge: common
 * practice, no source.
 */
export const USUAL_HINGE: HingeRules = {
  cupDiameter: 35,
  cupDepth: 13,
  cupFromEdge: 5,
  screwSpread: 45,
  screwBehind: 9.5,
  screwDiameter: 8,
  screwDepth: 11,
  firstFromEnd: inch(3),
  plateFromFront: 37,
  plateSpread: 32,
  plateDiameter: 5,
  plateDepth: 11,
  plateLength: 50,
  plateHeight: 0,
  fixedDistance: 11.5,
  halfCrank: 9.5,
  fullCrank: 18,
  sideAdjustment: 2,
  foldFromEdge: USUAL_FOLD,
}

/** What a pair of slides carries at rest, by class, in pounds. Source: Architectural Woodwork Standards (2009), appendix B. */
export const SLIDE_CLASSES = [50, 75, 100] as const

/**
 * Undermount slides are longer than they are called by so much, and with brackets at the rear by 7/8 in. Source: a drawer
 * maker's page ('approximately 1/2" longer than they are advertised').
 */
export const UNDERMOUNT_LONGER_BY: Mm = inch(1 / 2)

/** What standard slides leave of the box inside, from and to. Source: Architectural Woodwork Standards (2009), appendix B, p. 584. */
export const LEFT_INSIDE: readonly [Mm, Mm] = [inch(4), inch(6)]

/**
 * Slides are screwed on the system holes too: 5 mm, on a grid of 32, the first 37 from the front edge (dalrun.com, '32mm
 * Cabinetmaking'). How far up the box their line runs differs from slide to slide: common practice, no source.
 */
export const USUAL_SLIDES: SlideRules = {
  lineUp: 25,
  firstFromFront: 37,
  pitch: 32,
  holeDiameter: 5,
  holeDepth: 11,
  setback: 0,
  loadClass: SLIDE_CLASSES[0],
}

/** A saved build method that says nothing yet of hinges and slides, with what most shops bore for them. */
export function withMachining(method: Record<string, unknown>): Record<string, unknown> {
  return { hinge: { ...USUAL_HINGE }, slides: { ...USUAL_SLIDES }, ...method }
}
