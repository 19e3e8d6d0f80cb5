import type { SheetLayout } from './layout'

/** What the packer is asked. Lengths in mm; x and lengths run along the sheet's grain, y and widths across it. */
export interface SheetJob {
  readonly kerf: number
  /** How many cut directions are taken in turn (3: rip, crosscut, re-rip); null for no limit. 3 when left out. */
  readonly stages?: 2 | 3 | null
  readonly firstCut?: 'rip' | 'crosscut' | 'any'
  /** How much is searched: a glance takes some milliseconds. Thorough when left out. */
  readonly effort?: 'glance' | 'quick' | 'thorough'
  /** Ends the search early; the answer depends on the job and the seed only as long as time does not run out. */
  readonly seconds?: number
  readonly seed?: number
  readonly stock: readonly JobStock[]
  readonly parts: readonly JobPart[]
  /** What is left over and at least this long and wide is an offcut; the rest is waste. */
  readonly offcutLeast?: { readonly length: number; readonly width: number }
  /** What else is wished for, in this order, on as many sheets; each once. Leftover, then settings, when left out. */
  readonly goals?: readonly JobGoal[]
  /** Whether fewer sheets come before cheaper ones; when left out, what is paid for all of them comes first. */
  readonly isCountFirst?: boolean
  /** Sheets that are taken as they are and come first in the answer; their parts and stock are no longer searched for. */
  readonly locked?: readonly SheetLayout[]
  /** For each locked sheet how many sheets are to come before it in the answer, among those of its material, instead. */
  readonly lockedAt?: readonly number[]
  /** The layout that was shown before: while it is sound and none is better, it is the answer, unchanged. */
  readonly near?: readonly SheetLayout[]
}

/** One large piece left over from end to end of a sheet; few settings of guide and stop, and few cuts. */
export type JobGoal = 'leftover' | 'settings'

export interface JobStock {
  readonly id: string
  readonly material: string
  readonly length: number
  readonly width: number
  /** Taken off each end of the length and off each edge of the width. */
  readonly trim?: { readonly length: number; readonly width: number }
  /** As many as are needed when left out. */
  readonly quantity?: number
  readonly price?: number
  readonly offcut?: boolean
  /** Not to be used, although it is there; sheets of it that are locked stay. */
  readonly excluded?: boolean
}

export interface JobPart {
  readonly id: string
  readonly material: string
  readonly length: number
  readonly width: number
  readonly quantity: number
  /** Whether it may be turned; not when left out. */
  readonly rotate?: boolean
  /** The bank that it belongs to: all boards of a bank come from one sheet, side by side in the order of the job. */
  readonly bank?: JobBank
  /** The id of the stock that it must come from; any of its material when left out. */
  readonly from?: string
  /**
   * The sheet that it must come from, by its number among the sheets of its material, from 1; any when left out. Parts of
   * one number share one sheet, and those of another come from another. The answer has them on the sheet of that number
   * where there are as many sheets and no locked one stands there.
   */
  readonly sheet?: number
  /** Whether it is cut after all others: on as many sheets, and with few settings wished, it lies with its like. */
  readonly late?: boolean
}

/**
 * Boards whose grain runs on from one to the next, as a bank of fronts. Along the length they lie end to end and are
 * equally wide; along the width they lie edge to edge and are equally long. There is one kerf between two of them.
 */
export interface JobBank {
  readonly id: string
  readonly along: 'length' | 'width'
}
