import type { Part } from './part'

/** Parts that are sawn, banded and worked alike, in groups; each in the order of the parts. */
export function alikeParts(parts: readonly Part[]): (readonly [Part, ...Part[]])[] {
  const groups = new Map<string, [Part, ...Part[]]>()
  for (const part of parts) {
    const { material, cutLength, cutWidth, thickness, banding, operations, placement } = part
    // A board that is worked on nothing is the same whichever way it lies.
    const lie = operations.length > 0 ? [placement.length, placement.width] : []
    const key = JSON.stringify([material, cutLength, cutWidth, thickness, banding, operations, lie])
    const group = groups.get(key)
    if (group) group.push(part)
    else groups.set(key, [part])
  }
  return [...groups.values()]
}
