import type { Box } from '../geometry/box'
import { settle } from '../units/length'

/** The room that two boxes have in common; null where they only touch, or not even that. */
export function sharedRoom(a: Box, b: Box): Box | null {
  const min = { x: Math.max(a.min.x, b.min.x), y: Math.max(a.min.y, b.min.y), z: Math.max(a.min.z, b.min.z) }
  const max = { x: Math.min(a.max.x, b.max.x), y: Math.min(a.max.y, b.max.y), z: Math.min(a.max.z, b.max.z) }
  const least = Math.min(max.x - min.x, max.y - min.y, max.z - min.z)
  return settle(least) > 0 ? { min, max } : null
}
