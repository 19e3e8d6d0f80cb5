import { explodedBy, type OwnerId, type PartId, type Vec3 } from '../../engine/index'
import { boxOfPart, type Stand, standAt } from './arrange'
import { isFront } from './merge'
import type { Box } from './space'
import { turned } from './walls'

/** A line of sight, in the frame of the scene, in mm. */
export interface Ray {
  readonly origin: Vec3
  readonly direction: Vec3
}

/**
 * The board first met by a line of sight, or the appliance, which is no part, judged by the boxes of the boards where they are now. Boards are boxes but for
 * notches, and a press into a notch means the board around it.
 */
export function pickPart(
  ray: Ray,
  stands: readonly Stand[],
  apart: number,
  areFrontsHidden: boolean,
): { readonly owner: OwnerId; readonly part: PartId | null } | null {
  let nearest = Infinity
  let picked: { owner: OwnerId; part: PartId | null } | null = null
  for (const stand of stands) {
    const base = standAt(stand, apart)
    const { origin } = ray
    const seen = { x: origin.x - base.x, y: origin.y - base.y, z: origin.z - base.z }
    const [eye, way] = [turned(seen, -stand.turns), turned(ray.direction, -stand.turns)]
    for (const body of stand.built.bodies ?? []) {
      const distance = distanceTo(body, eye, way)
      if (distance === null || distance >= nearest) continue
      nearest = distance
      picked = { owner: stand.built.id, part: null }
    }
    for (const part of stand.built.parts) {
      if (areFrontsHidden && isFront(part.role)) continue
      const by = explodedBy(part.explode, apart)
      const from = { x: eye.x - by.x, y: eye.y - by.y, z: eye.z - by.z }
      const distance = distanceTo(boxOfPart(part), from, way)
      if (distance === null || distance >= nearest) continue
      nearest = distance
      picked = { owner: stand.built.id, part: part.id }
    }
  }
  return picked
}

/** How far along a line of sight a box is met; null when it is missed or behind the eye. */
export function distanceTo(box: Box, origin: Vec3, direction: Vec3): number | null {
  let near = -Infinity
  let far = Infinity
  for (const axis of ['x', 'y', 'z'] as const) {
    if (direction[axis] === 0) {
      if (origin[axis] < box.min[axis] || origin[axis] > box.max[axis]) return null
      continue
    }
    const one = (box.min[axis] - origin[axis]) / direction[axis]
    const other = (box.max[axis] - origin[axis]) / direction[axis]
    near = Math.max(near, Math.min(one, other))
    far = Math.min(far, Math.max(one, other))
  }
  return near > far || far < 0 ? null : Math.max(near, 0)
}
