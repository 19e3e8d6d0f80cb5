import type { Board } from '../cabinets/board'
import type { Vec3 } from '../geometry/vector'
import { heightOver, type Plane, polygonUnder } from './convex'
import type { Faces } from './faces'
import { bodiesOf, clipPlanes } from './slant'

interface Skin extends Faces {
  readonly edges: number[]
}

/** The skin of a board with its corners cut off along their planes, and closed there. */
export function clippedSkin(square: Skin, board: Board): Skin {
  const planes = clipPlanes(board)
  if (planes.length === 0) return square
  const skin: Skin = { positions: [], normals: [], indices: [], edges: [] }
  for (let first = 0; first < square.positions.length; first += 12) {
    const corners = [0, 3, 6, 9].map((at) => pointAt(square.positions, first + at))
    const left = planes.reduce((face, plane) => polygonUnder(face, plane), corners)
    addFace(skin, left, pointAt(square.normals, first))
  }
  for (let first = 0; first < square.edges.length; first += 6) {
    const ends = [pointAt(square.edges, first), pointAt(square.edges, first + 3)] as const
    const left = planes.reduce<Line | null>((line, plane) => line && lineUnder(line, plane), ends)
    if (left) addLine(skin, left)
  }
  for (const plane of planes) addCaps(skin, capsOn(plane, board), plane)
  return skin
}

type Line = readonly [Vec3, Vec3]

/** The faces that a cut leaves, one for each body of the board that it goes through. */
function capsOn(plane: Plane, board: Board): Vec3[][] {
  const lies = (point: Vec3) => Math.abs(heightOver(plane, point)) < 1e-6
  return bodiesOf(board).flatMap((body) => body.filter((face) => face.every(lies)).map((face) => [...face]))
}

/** A line that two caps share is no edge of the board. */
function addCaps(skin: Skin, caps: readonly (readonly Vec3[])[], plane: Plane): void {
  const lines = new Map<string, Line[]>()
  for (const cap of caps) {
    addFace(skin, cap, plane.normal)
    for (const [at, from] of cap.entries()) {
      const line: Line = [from, cap[(at + 1) % cap.length]!]
      const name = line.map(nameOf).sort().join(' ')
      lines.set(name, [...(lines.get(name) ?? []), line])
    }
  }
  for (const [one, ...others] of lines.values()) if (others.length === 0) addLine(skin, one!)
}

function nameOf({ x, y, z }: Vec3): string {
  return [x, y, z].map((place) => (place + 0).toFixed(3)).join(',')
}

function lineUnder([a, b]: Line, plane: Plane): Line | null {
  const [from, to] = [heightOver(plane, a), heightOver(plane, b)]
  if (from <= 1e-6 && to <= 1e-6) return [a, b]
  if (from >= -1e-6 && to >= -1e-6) return null
  const share = from / (from - to)
  const point = { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share, z: a.z + (b.z - a.z) * share }
  return from < 0 ? [a, point] : [point, b]
}

function addFace(skin: Skin, corners: readonly Vec3[], normal: Vec3): void {
  if (corners.length < 3) return
  const first = skin.positions.length / 3
  for (const { x, y, z } of corners) {
    skin.positions.push(x, y, z)
    skin.normals.push(normal.x, normal.y, normal.z)
  }
  for (let at = 1; at + 1 < corners.length; at++) skin.indices.push(first, first + at, first + at + 1)
}

function addLine(skin: Skin, [a, b]: Line): void {
  skin.edges.push(a.x, a.y, a.z, b.x, b.y, b.z)
}

function pointAt(numbers: readonly number[], at: number): Vec3 {
  return { x: numbers[at]!, y: numbers[at + 1]!, z: numbers[at + 2]! }
}
