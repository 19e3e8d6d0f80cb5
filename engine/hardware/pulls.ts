import type { Rules } from '../cabinets/build'
import type { Part } from '../parts/part'
import { formatSold, PLAIN_MM } from '../units/format'
import type { HardwareRow } from './row'

/** Knobs, and pulls by the distance of their holes as they are sold. */
export function pullsFor(parts: readonly Part[], { display = PLAIN_MM }: Pick<Rules, 'display'>): HardwareRow[] {
  const counts = new Map<string, number>()
  for (const one of parts.flatMap(({ operations }) => operations)) {
    if (one.kind !== 'holeRow' || one.purpose !== 'pull') continue
    const name = one.count === 1 ? 'knob' : `pull with holes ${formatSold(one.step, display)} apart`
    counts.set(name, (counts.get(name) ?? 0) + 1)
  }
  return [...counts].map(([name, quantity]) => ({ name, quantity, length: null }))
}
