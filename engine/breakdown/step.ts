import type { Rect } from '../geometry/rect'
import type { CutOrder } from '../project/document'
import type { Mm } from '../units/length'

/** One thing to do at the saw. Equal pieces cut at the same setting one after another are one step. */
export interface Step {
  readonly id: string
  /** Sheets by number from 1, in the order of the layout with its copies counted out. */
  readonly sheets: readonly number[]
  readonly material: string
  /**
   * `away` frees what is clean of a damage; it is measured where the damage is. `pause` cuts nothing: the carcasses are
   * built and measured before the late parts are cut.
   */
  readonly kind: 'pause' | 'away' | 'trim' | 'rip' | 'square' | 'crosscut' | 'rerip'
  /** Whether it is done when the carcasses stand and their openings are measured. */
  readonly isLate: boolean
  readonly tool: 'rail' | 'guides' | 'bench'
  readonly blade: 'rip' | 'crosscut'
  /** Of the blade. */
  readonly teeth: number
  /** Whether the guides wear their attachment for narrow rips. */
  readonly hasAttachment: boolean
  /** What the guides or the stop are set to; null where a line is followed. */
  readonly setting: Mm | null
  /** Whether it is set for this step; not where it stands already, nor where a line is followed. */
  readonly isNewSetting: boolean
  /** The piece that is taken, as it is before the cut; where there are several, their names in one and each by itself. */
  readonly takes: { readonly name: string; readonly names: readonly string[]; readonly length: Mm; readonly width: Mm }
  /** How many pieces are taken. */
  readonly count: number
  /** How many cuts are made in all. */
  readonly cuts: number
  readonly leaves: readonly StepPiece[]
  /** What to write on the pieces: the marks of parts, and on what is cut further its name, such as `3a`. */
  readonly write: readonly string[]
  /** In plain words: what to do. */
  readonly text: string
  readonly cautions: readonly string[]
  /** One of the pieces before the cut, with the lines of its cuts and what falls on either side. */
  readonly sketch: Sketch
}

/** As it leaves the saw: with the factory edges that are still on it. */
export interface StepPiece {
  readonly kind: 'strip' | 'part' | 'piece' | 'offcut' | 'waste'
  readonly name: string
  readonly length: Mm
  readonly width: Mm
  readonly count: number
  /** What an offcut that keeps a factory edge gives inside it, as the layouts draw it; left out where it has none. */
  readonly clean?: { readonly length: Mm; readonly width: Mm }
}

/**
 * One piece of a step before the cut: x along its length, y along its width, from the corner of its reference edge and
 * its first end, in mm.
 */
export interface Sketch {
  readonly length: Mm
  readonly width: Mm
  /** What the blade turns to dust, a rectangle for every cut, the first cut first. */
  readonly cuts: readonly Rect[]
  readonly pieces: readonly SketchPiece[]
  /** Which edge everything is measured from after this step: the long one of a rip, the end of a crosscut. */
  readonly measuredFrom: 'edge' | 'end'
  /** Where that lies: what is before it is taken off by this step. */
  readonly edgeAt: Mm
}

export interface SketchPiece {
  readonly kind: StepPiece['kind']
  readonly name: string
  readonly rect: Rect
}

export interface Effort {
  /** How often a guide or a stop is set anew. */
  readonly settings: number
  readonly bladeChanges: number
  /** Estimated from the shop's own minutes. */
  readonly minutes: number
}

export interface Breakdown extends Effort {
  readonly steps: readonly Step[]
  /** How full sheets are cut: one after another, or all of them at one setting before the next. */
  readonly order: CutOrder
  /** The quicker order, whichever the maker chose. */
  readonly proposed: CutOrder
  /** What each order takes. */
  readonly compared: { readonly [order in CutOrder]: Effort }
  /** What the order that was not taken would take. */
  readonly minutesOtherwise: number
  readonly cautions: readonly string[]
}
