import type { Vec3 } from '../../engine/index'
import { type Box, middleOf } from './space'

/** The view's own frame: right and up on the screen, and back from what is looked at towards the eye. */
interface ViewFrame {
  readonly right: Vec3
  readonly up: Vec3
  readonly back: Vec3
}

/** Left free around what is fitted. */
const MARGIN = 1.08

/**
 * How far from the middle of a box the eye must stand for all eight corners to be seen. `back` points from the box to the
 * eye and has length 1; `fov` is the whole angle of view upwards, in degrees. In the unit of the box.
 */
export function distanceToFit(box: Box, back: Vec3, fov: number, aspect: number): number {
  const tall = Math.tan((fov * Math.PI) / 360)
  const wide = tall * aspect
  const frame = frameOf(back)
  const middle = middleOf(box)
  let distance = 0
  for (const corner of cornersOf(box)) {
    const from = { x: corner.x - middle.x, y: corner.y - middle.y, z: corner.z - middle.z }
    const towardsEye = dot(from, frame.back)
    const needed = Math.max(Math.abs(dot(from, frame.right)) / wide, Math.abs(dot(from, frame.up)) / tall)
    distance = Math.max(distance, towardsEye + needed * MARGIN)
  }
  return distance
}

function frameOf(back: Vec3): ViewFrame {
  const flat = Math.hypot(back.x, back.z)
  const right = flat < 1e-6 ? { x: 1, y: 0, z: 0 } : { x: back.z / flat, y: 0, z: -back.x / flat }
  const up = {
    x: back.y * right.z - back.z * right.y,
    y: back.z * right.x - back.x * right.z,
    z: back.x * right.y - back.y * right.x,
  }
  return { right, up, back }
}

function cornersOf({ min, max }: Box): Vec3[] {
  return [min.x, max.x].flatMap((x) => [min.y, max.y].flatMap((y) => [min.z, max.z].map((z) => ({ x, y, z }))))
}

function dot(a: Vec3, b: Vec3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z
}
