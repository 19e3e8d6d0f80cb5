import type { MaterialId } from '../basics/id'
import type { Placement } from '../geometry/placement'
import type { Rect } from '../geometry/rect'
import { plus, times, type Vec3 } from '../geometry/vector'
import type { Mm } from '../units/length'
import type { Operation } from './operation'

export type BoardRole =
  | 'leftSide'
  | 'rightSide'
  | 'bottom'
  | 'top'
  | 'lid'
  | 'lidStrip'
  | 'frontStretcher'
  | 'backStretcher'
  | 'back'
  | 'topNailer'
  | 'bottomNailer'
  | 'middleNailer'
  | 'fixedShelf'
  | 'adjustableShelf'
  | 'partition'
  | 'divider'
  | 'kickBoard'
  | 'plinthFront'
  | 'plinthBack'
  | 'plinthEnd'
  | 'longKick'
  | 'countertop'
  | 'seatBoard'
  | 'splash'
  | 'lightRail'
  | 'lightRailReturn'
  | 'crown'
  | 'crownReturn'
  | 'valance'
  | 'filler'
  | 'fillerReturn'
  | 'leftEnd'
  | 'rightEnd'
  | 'stile'
  | 'topRail'
  | 'bottomRail'
  | 'midRail'
  | 'mullion'
  | 'doorStile'
  | 'doorRail'
  | 'doorPanel'
  | 'drawerStile'
  | 'drawerRail'
  | 'drawerPanel'
  | 'door'
  | 'flap'
  | 'falseFront'
  | 'blindPanel'
  | 'cornerFiller'
  | 'cornerPost'
  | 'drawerFront'
  | 'drawerSide'
  | 'drawerBoxFront'
  | 'drawerBoxBack'
  | 'drawerBottom'
  | 'insertEnd'
  | 'insertDivider'

/** The thickness of the banding on each edge; 0 where there is none. */
export interface Banding {
  /** The edge at y = 0, along the length. */
  readonly low: Mm
  /** The edge at y = width. */
  readonly high: Mm
  /** The end at x = 0. */
  readonly start: Mm
  /** The end at x = length. */
  readonly end: Mm
}

export const NO_BANDING: Banding = { low: 0, high: 0, start: 0, end: 0 }

/** A board of a cabinet at its finished size, where it lies, before it has a mark or a size to cut. */
export interface Board {
  readonly role: BoardRole
  /** Tells boards of one role apart: 1, 2, 3 from the bottom up and from left to right. */
  readonly number: number
  readonly material: MaterialId
  /** Finished, with its banding: along the grain, across it, and the measured thickness of the sheet. */
  readonly length: Mm
  readonly width: Mm
  readonly thickness: Mm
  readonly banding: Banding
  /** In the cabinet's frame: origin at its back, bottom, left corner on the wall and the floor line of its box. */
  readonly placement: Placement
  readonly operations: readonly Operation[]
  /** Left on its width when it is cut, to be fitted to the wall on site. */
  readonly scribe?: Mm
  /** What its outline is, where that is no rectangle; it is sawn as the rectangle around it. */
  readonly outline?: Outline
  /** Banding on the edges that were sawn inside the rectangle: its thickness and its length in all. */
  readonly insideBanding?: { readonly thickness: Mm; readonly length: Mm }
  /** Made to an opening as it was measured, and not as it was drawn. */
  readonly isMeasured?: true
  /** Where its grain runs on from board to board. */
  readonly run?: GrainRun
  /** Where it goes when the carcass is taken apart, in the cabinet's frame. */
  readonly explode: Explode
}

/** A rectangle less a rectangle at one corner, or less a corner cut off straight. */
export type Outline = 'L' | 'clipped'

/** Boards that are cut side by side from one sheet, so that the grain runs on from one to the next. */
export interface GrainRun {
  /** Tells the runs of one cabinet apart: 1, 2, 3. */
  readonly number: number
  /** End to end along the length, or edge to edge along the width. */
  readonly along: 'length' | 'width'
  /** From 1, the way that the boards' own lengths or widths run. */
  readonly place: number
}

/**
 * A board's way out of the carcass: it moves by `by`, beginning when the carcass is `from` apart and ending when it is
 * `to` apart, both between 0 and 1. Boards leave in the order they can: fronts, then sides, then what sat in the sides.
 */
export interface Explode extends Leg {
  /** The way out of something that left the carcass whole, as the boards of a drawer box do. */
  readonly after?: Leg
}

/** A straight way, in the cabinet's frame, mm. */
export interface Leg {
  readonly by: Vec3
  readonly from: number
  readonly to: number
}

/** How far a board has gone when the carcass is `apart` (0 together, 1 fully apart) taken apart. */
export function explodedBy({ after, ...first }: Explode, apart: number): Vec3 {
  const gone = goneAlong(first, apart)
  return after ? plus(gone, goneAlong(after, apart)) : gone
}

function goneAlong({ by, from, to }: Leg, apart: number): Vec3 {
  const share = to > from ? (apart - from) / (to - from) : 1
  return times(by, Math.min(1, Math.max(0, share)))
}

/** A door, a drawer front or a board that does not move, as seen from the room: in the cabinet's frame, x and y. */
export interface FrontFace {
  readonly kind: 'door' | 'drawer' | 'falseFront' | 'blindPanel' | 'cornerFiller'
  readonly hinge: 'left' | 'right' | 'top' | null
  /** Of a pull-out: its grain runs up, as that of the doors beside it. */
  readonly isPullOut?: true
  readonly rect: Rect
}
