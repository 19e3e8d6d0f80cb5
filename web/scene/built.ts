import type { Derived, DerivedCabinet, OwnerId, Part, Place } from '../../engine/index'
import type { Box } from './space'
import { keptFor } from './space'

/** What stands in the scene with its own boards: a cabinet, or a kick or countertop over a run of them. */
export interface Built {
  readonly id: OwnerId
  readonly mark: string
  readonly parts: readonly Part[]
  readonly place: Place
  /** What of it no board is: an appliance in its space, in its own frame. */
  readonly bodies?: readonly Box[]
}

export const builtOf: (one: DerivedCabinet) => Built = keptFor(({ cabinet, mark, parts, bodies }: DerivedCabinet) => {
  return { id: cabinet.id, mark, parts, place: cabinet, ...(bodies && { bodies }) }
})

/** All that has boards, cabinets first. */
export function builtIn({ cabinets, runs }: Pick<Derived, 'cabinets' | 'runs'>): Built[] {
  return [...cabinets.map(builtOf), ...runs]
}
