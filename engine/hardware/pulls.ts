import type { Part } from '../parts/part'
import { plainMm } from '../units/format'
import type { HardwareRow } from './row'

/** Knobs, and pulls by the distance of their holes in mm, as they are bored. */
export function pullsFor(parts: readonly Part[]): HardwareRow[] {
  const counts = new Map<string, number>()
  for (const one of parts.flatMap(({ operations }) => operations)) {
    if (one.kind !== 'holeRow' || one.purpose !== 'pull') continue
    const name = one.count === 1 ? 'knob' : `pull with holes ${plainMm(one.step)} mm apart`
    counts.set(name, (counts.get(name) ?? 0) + 1)
  }
  return [...counts].map(([name, quantity]) => ({ name, quantity, length: null }))
}
