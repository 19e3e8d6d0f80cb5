import type { Mm } from '../units/length'
import type { Vec3 } from './vector'

export interface Box {
  readonly min: Vec3
  readonly max: Vec3
}

export function boxAround(a: Vec3, b: Vec3): Box {
  return {
    min: { x: Math.min(a.x, b.x), y: Math.min(a.y, b.y), z: Math.min(a.z, b.z) },
    max: { x: Math.max(a.x, b.x), y: Math.max(a.y, b.y), z: Math.max(a.z, b.z) },
  }
}

/** The least box that holds both. */
export function boxOver(a: Box, b: Box): Box {
  return {
    min: { x: Math.min(a.min.x, b.min.x), y: Math.min(a.min.y, b.min.y), z: Math.min(a.min.z, b.min.z) },
    max: { x: Math.max(a.max.x, b.max.x), y: Math.max(a.max.y, b.max.y), z: Math.max(a.max.z, b.max.z) },
  }
}

export function boxVolume(box: Box): number {
  return (box.max.x - box.min.x) * (box.max.y - box.min.y) * (box.max.z - box.min.z)
}

/** Whether two boxes share more than `slack` in every direction; boxes that touch do not overlap. */
export function boxesOverlap(a: Box, b: Box, slack: Mm = 0): boolean {
  return (
    Math.min(a.max.x, b.max.x) - Math.max(a.min.x, b.min.x) > slack &&
    Math.min(a.max.y, b.max.y) - Math.max(a.min.y, b.min.y) > slack &&
    Math.min(a.max.z, b.max.z) - Math.max(a.min.z, b.min.z) > slack
  )
}
