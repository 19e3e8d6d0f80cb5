import type { Mm } from '../units/length'

/** x right along the wall, y up, z out of the wall into the room. Right-handed: three's own frame. */
export interface Vec3 {
  readonly x: Mm
  readonly y: Mm
  readonly z: Mm
}

export type Axis = '+x' | '-x' | '+y' | '-y' | '+z' | '-z'

const UNIT: Record<Axis, Vec3> = {
  '+x': { x: 1, y: 0, z: 0 },
  '-x': { x: -1, y: 0, z: 0 },
  '+y': { x: 0, y: 1, z: 0 },
  '-y': { x: 0, y: -1, z: 0 },
  '+z': { x: 0, y: 0, z: 1 },
  '-z': { x: 0, y: 0, z: -1 },
}

export function unit(axis: Axis): Vec3 {
  return UNIT[axis]
}

export function plus(a: Vec3, b: Vec3): Vec3 {
  return { x: a.x + b.x, y: a.y + b.y, z: a.z + b.z }
}

export function times(a: Vec3, factor: number): Vec3 {
  return { x: a.x * factor, y: a.y * factor, z: a.z * factor }
}

export function cross(a: Vec3, b: Vec3): Vec3 {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x }
}

export function isSame(a: Vec3, b: Vec3): boolean {
  return a.x === b.x && a.y === b.y && a.z === b.z
}
