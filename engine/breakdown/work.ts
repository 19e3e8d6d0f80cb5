import type { Mm } from '../units/length'
import type { Rough } from './factoryEdges'
import type { Step } from './step'
import type { Child, Group, Task } from './task'

/** What is done at the saw. */
export type CutKind = Exclude<Step['kind'], 'pause'>

/** What is done to one piece at one setting. Equal works one after another become one step. */
export interface Work {
  readonly task: Task
  readonly kind: CutKind
  readonly tool: Step['tool']
  readonly hasAttachment: boolean
  readonly blade: 'rip' | 'crosscut'
  readonly setting: Mm | null
  /** What is cut off, with or without a setting. */
  readonly size: Mm
  readonly takes: Taken
  readonly cuts: number
  readonly leaves: readonly Left[]
  /** Whether it is done when the carcasses stand and their openings are measured. */
  readonly isLate: boolean
  /** Works of one run may be gathered into steps; works of different runs are apart. */
  readonly run: number
  /** Of a board in a run of grain. */
  readonly turn?: Group['turn']
  readonly place?: Group['place']
}

/** Where a piece lies on its sheet, or lay before it was cut out: from the corner of the first clean edges. */
export interface Spot {
  readonly x: Mm
  readonly y: Mm
}

export interface Taken extends Spot {
  readonly name: string
  readonly length: Mm
  readonly width: Mm
  readonly rough: Rough
}

export interface Left extends Child, Spot {}
