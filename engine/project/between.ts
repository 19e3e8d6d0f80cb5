import type { MaterialId, StockId } from '../basics/id'
import type { Mm } from '../units/length'

/** A rectangle cut out of a countertop, in the middle of its cabinet unless it is moved aside. */
export interface Cutout {
  readonly of: 'sink' | 'hob'
  readonly width: Mm
  readonly depth: Mm
  /** From the front edge of the countertop. */
  readonly fromFront: Mm
  /** How far its middle is to the right of that of its cabinet; less than 0 to the left. In the middle where it is left out. */
  readonly aside?: Mm
}

/** How the countertop is over one base, where that is not as over all. */
export interface TopHere {
  /** How far it stands out behind what stands away from the walls. Not at all where it is left out, or at a wall. */
  readonly rear?: Mm
  /** Whether its splash goes on there. As the others where it is left out, and none where all of a top stands away from the walls. */
  readonly hasSplash?: boolean
  /** Whether it goes over it at all. Left out, it does over what is as high as a worktop. Of no effect on a lid. */
  readonly isOver?: boolean
  /** What the top over it has otherwise than the project's. All as the project's where it is left out. */
  readonly own?: OwnTop
}

/** What a top may settle otherwise than the project's; a run of tops is parted where these differ. */
export type OwnTop = Partial<Omit<Countertop, 'seamBolts'>>

/** What goes over several cabinets at once. */
export interface Between {
  /** A kick board in each cabinet, or boards as long as their sheets before all of a run. */
  readonly kick: 'perCabinet' | 'inLengths'
  /** Over all runs of bases; null where somebody else makes it. */
  readonly countertop: Countertop | null
  /** On edge under the fronts of all uppers, before a lamp; null where there is none. */
  readonly lightRail: Trim | null
  /** On edge on top of all uppers and talls. */
  readonly crown: Trim | null
  /** On edge from one upper to the next where a window stands between them. */
  readonly valance: Trim | null
  /** Boards of runs that must come from sheets of one kind, by the ids of the boards. */
  readonly pins: Readonly<Record<string, StockId>>
  /** Boards of runs that must come from one sheet, by their ids: its number among the sheets of their material, from 1. */
  readonly sheets?: Readonly<Record<string, number>>
}

export type TrimKind = 'lightRail' | 'crown' | 'valance'

export interface Trim {
  readonly material: MaterialId
  readonly height: Mm
  /** How far its face stands before the front edge of the carcass; negative for behind it. */
  readonly forward: Mm
}

export interface Countertop {
  readonly material: MaterialId
  /** How far it stands out before the fronts. */
  readonly overhang: Mm
  /** How far it stands out past a free end of the run. */
  readonly ends: Mm
  /** The height of the board that stands on it at the wall; 0 for none. */
  readonly splash: Mm
  /** Of the banding along its front edge, the upper edge of its splash, and their free ends; 0 for none. */
  readonly banding: Mm
  /** What draws its boards together at seams; nothing where it is left out. */
  readonly seamBolts?: SeamBolts
}

/** Bolts across a seam, let in from below: a bore for each nut, and a slot from it to the seam. */
export interface SeamBolts {
  readonly bore: Mm
  readonly slot: Mm
  readonly depth: Mm
  /** From the seam to the middle of the bore. */
  readonly fromSeam: Mm
  /** Of the bolt itself. */
  readonly length: Mm
  /** From the front edge, and from the rear one, to the first bolt, and from one to the next at most. */
  readonly fromEdge: Mm
  readonly spacing: Mm
}

/** Three across a top of 600, from memory. */
export const USUAL_SEAM_BOLTS: SeamBolts = {
  bore: 30,
  slot: 10,
  depth: 20,
  fromSeam: 45,
  length: 100,
  fromEdge: 80,
  spacing: 250,
}
