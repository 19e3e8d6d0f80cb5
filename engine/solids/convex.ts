import type { Box } from '../geometry/box'
import { cross, plus, times, type Vec3 } from '../geometry/vector'

/** A body with flat faces that is hollow nowhere: the corners of each face, turning left seen from outside. */
export type Convex = readonly (readonly Vec3[])[]

/** All that lies on the far side of its normal goes: what stays has normal · point of `at` at most. */
export interface Plane {
  readonly normal: Vec3
  readonly at: number
}

/** Corners nearer than this are one, in mm. */
const DUST = 1e-7

export function convexOfBox({ min, max }: Box): Convex {
  const at = (x: 0 | 1, y: 0 | 1, z: 0 | 1): Vec3 => {
    return { x: x ? max.x : min.x, y: y ? max.y : min.y, z: z ? max.z : min.z }
  }
  return [
    [at(0, 0, 0), at(0, 0, 1), at(0, 1, 1), at(0, 1, 0)],
    [at(1, 0, 0), at(1, 1, 0), at(1, 1, 1), at(1, 0, 1)],
    [at(0, 0, 0), at(1, 0, 0), at(1, 0, 1), at(0, 0, 1)],
    [at(0, 1, 0), at(0, 1, 1), at(1, 1, 1), at(1, 1, 0)],
    [at(0, 0, 0), at(0, 1, 0), at(1, 1, 0), at(1, 0, 0)],
    [at(0, 0, 1), at(1, 0, 1), at(1, 1, 1), at(0, 1, 1)],
  ]
}

/** The part of a body on the near side of a plane; no faces where nothing is left. */
export function cutBy(body: Convex, plane: Plane): Convex {
  if (body.every((face) => face.every((point) => heightOver(plane, point) <= DUST))) return body
  if (body.every((face) => face.every((point) => heightOver(plane, point) >= -DUST))) return []
  const faces = body.map((face) => polygonUnder(face, plane)).filter((face) => face.length > 2)
  const cap = capOf(
    faces.flat().filter((point) => Math.abs(heightOver(plane, point)) <= DUST),
    plane.normal,
  )
  return cap.length > 2 ? [...faces, cap] : faces
}

/** The least box around a body, which has a corner. */
export function boxAroundConvex(body: Convex): Box {
  const first = body[0]![0]!
  const [min, max] = [{ ...first }, { ...first }]
  for (const face of body) {
    for (const { x, y, z } of face) {
      if (x < min.x) min.x = x
      else if (x > max.x) max.x = x
      if (y < min.y) min.y = y
      else if (y > max.y) max.y = y
      if (z < min.z) min.z = z
      else if (z > max.z) max.z = z
    }
  }
  return { min, max }
}

/** What two bodies share. */
export function sharedBy(a: Convex, b: Convex): Convex {
  return facePlanes(b).reduce((left, plane) => (left.length === 0 ? left : cutBy(left, plane)), a)
}

/** In mm3: the cones from a point to every face. */
export function convexVolume(body: Convex): number {
  const apex = body[0]?.[0]
  if (!apex) return 0
  return body.reduce((sum, face) => sum + coneVolume(face, apex), 0)
}

function coneVolume(face: readonly Vec3[], apex: Vec3): number {
  const base = less(face[0]!, apex)
  let six = 0
  for (let at = 1; at + 1 < face.length; at++) six += dot(base, cross(less(face[at]!, apex), less(face[at + 1]!, apex)))
  return six / 6
}

/** The part of a flat polygon on the near side of a plane. */
export function polygonUnder(face: readonly Vec3[], plane: Plane): Vec3[] {
  return face.flatMap((from, at) => {
    const to = face[(at + 1) % face.length]!
    const [a, b] = [heightOver(plane, from), heightOver(plane, to)]
    const crossing = (a < -DUST && b > DUST) || (a > DUST && b < -DUST) ? [between(from, to, a / (a - b))] : []
    return a <= DUST ? [from, ...crossing] : crossing
  })
}

export function heightOver({ normal, at }: Plane, point: Vec3): number {
  return dot(normal, point) - at
}

function facePlanes(body: Convex): Plane[] {
  return body.map((face) => {
    const [a, b, c] = face as [Vec3, Vec3, Vec3]
    const square = cross(less(b, a), less(c, b))
    const normal = times(square, 1 / Math.sqrt(dot(square, square)))
    return { normal, at: dot(normal, a) }
  })
}

/** The points of a plane in order round it, each once, turning left seen from the normal's end. */
function capOf(points: readonly Vec3[], normal: Vec3): Vec3[] {
  const once = points.filter((point, at) => points.findIndex((other) => isNear(other, point)) === at)
  if (once.length < 3) return []
  const middle = times(
    once.reduce((sum, point) => plus(sum, point)),
    1 / once.length,
  )
  const u = less(once[0]!, middle)
  const v = cross(normal, u)
  const turnOf = (point: Vec3) => Math.atan2(dot(less(point, middle), v), dot(less(point, middle), u))
  return once
    .map((point) => ({ point, turn: turnOf(point) }))
    .sort((a, b) => a.turn - b.turn)
    .map(({ point }) => point)
}

function isNear(a: Vec3, b: Vec3): boolean {
  return Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y), Math.abs(a.z - b.z)) < 10 * DUST
}

function between(a: Vec3, b: Vec3, share: number): Vec3 {
  return plus(a, times(less(b, a), share))
}

function less(a: Vec3, b: Vec3): Vec3 {
  return plus(a, times(b, -1))
}

function dot(a: Vec3, b: Vec3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z
}
