import type { PartId } from '../basics/id'
import type { Part } from '../parts/part'

/** One thing to do between the saw and the wall, with the boards that are taken up for it. */
export interface AssemblyStep {
  readonly stage: 'machining' | 'carcass' | 'drawer boxes' | 'standing' | 'fitting'
  readonly text: string
  readonly marks: readonly string[]
  readonly parts: readonly PartId[]
}

export function stepOf(stage: AssemblyStep['stage'], text: string, parts: readonly Part[]): AssemblyStep {
  return { stage, text, marks: parts.map(({ mark }) => mark), parts: parts.map(({ id }) => id) }
}
