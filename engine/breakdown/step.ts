import type { CutOrder } from '../project/document'
import type { Mm } from '../units/length'

/** One thing to do at the saw. Equal pieces cut at the same setting one after another are one step. */
export interface Step {
  readonly id: string
  /** Sheets by number from 1, in the order of the layout with its copies counted out. */
  readonly sheets: readonly number[]
  readonly material: string
  readonly kind: 'trim' | 'rip' | 'square' | 'crosscut' | 'rerip'
  readonly tool: 'rail' | 'guides' | 'bench'
  readonly blade: 'rip' | 'crosscut'
  /** What the guides or the stop are set to; null where a line is followed. */
  readonly setting: Mm | null
  /** The piece that is taken, as it is before the cut. */
  readonly takes: { readonly name: string; readonly length: Mm; readonly width: Mm }
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
}

/** As it leaves the saw: with the factory edges that are still on it. */
export interface StepPiece {
  readonly kind: 'strip' | 'part' | 'piece' | 'offcut' | 'waste'
  readonly name: string
  readonly length: Mm
  readonly width: Mm
  readonly count: number
}

export interface Breakdown {
  readonly steps: readonly Step[]
  /** How often a guide or stop is set anew. */
  readonly settings: number
  /** Estimated from the shop's own minutes. */
  readonly minutes: number
  /** How full sheets are cut: one after another, or all of them at one setting before the next. */
  readonly order: CutOrder
  /** What the other order would take. */
  readonly minutesOtherwise: number
  readonly bladeChanges: number
  readonly cautions: readonly string[]
}
