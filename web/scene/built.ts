import type { Derived, DerivedCabinet, OwnerId, Part, Place } from '../../engine/index'
import { keptFor } from './space'

/** What stands in the scene with its own boards: a cabinet, or a kick or countertop over a run of them. */
export interface Built {
  readonly id: OwnerId
  readonly mark: string
  readonly parts: readonly Part[]
  readonly place: Place
}

export const builtOf: (one: DerivedCabinet) => Built = keptFor(({ cabinet, mark, parts }: DerivedCabinet) => {
  return { id: cabinet.id, mark, parts, place: cabinet }
})

/** All that has boards, cabinets first. */
export function builtIn({ cabinets, runs }: Pick<Derived, 'cabinets' | 'runs'>): Built[] {
  return [...cabinets.map(builtOf), ...runs]
}
