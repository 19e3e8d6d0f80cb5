import type { Mm } from '../units/length'
import type { Cells } from './cells'

export interface Faces {
  readonly positions: number[]
  readonly normals: number[]
  readonly indices: number[]
}

type Direction = 0 | 1 | 2

/** The rectangles between wood and air, the largest that a plane allows taken first along one direction. */
export function facesOf(cells: Cells): Faces {
  const faces: Faces = { positions: [], normals: [], indices: [] }
  for (const normal of [0, 1, 2] as const) {
    for (const sign of [1, -1] as const) addFaces(cells, normal, sign, faces)
  }
  return faces
}

/** Whether there is wood in a cell; outside the board there is none. */
export function woodAt({ x, y, z, isWood }: Cells, at: readonly number[]): boolean {
  const [i, j, k] = at as readonly [number, number, number]
  const [across, up, deep] = [x.length - 1, y.length - 1, z.length - 1]
  if (i < 0 || j < 0 || k < 0 || i >= across || j >= up || k >= deep) return false
  return isWood[i + across * (j + up * k)] === 1
}

export function planesOf(cells: Cells): readonly [readonly Mm[], readonly Mm[], readonly Mm[]] {
  return [cells.x, cells.y, cells.z]
}

/** u, v and the normal are right-handed, so that going round u then v turns left seen from the normal's end. */
function addFaces(cells: Cells, normal: Direction, sign: 1 | -1, faces: Faces): void {
  const u = ((normal + 1) % 3) as Direction
  const v = ((normal + 2) % 3) as Direction
  const planes = planesOf(cells)
  const [uCount, vCount] = [planes[u].length - 1, planes[v].length - 1]
  for (let layer = 0; layer < planes[normal].length - 1; layer++) {
    const shows = new Uint8Array(uCount * vCount)
    for (let b = 0; b < vCount; b++) {
      for (let a = 0; a < uCount; a++) {
        const at = [0, 0, 0]
        at[normal] = layer
        at[u] = a
        at[v] = b
        const beyond = [...at]
        beyond[normal] = layer + sign
        if (woodAt(cells, at) && !woodAt(cells, beyond)) shows[a + uCount * b] = 1
      }
    }
    const level = planes[normal][sign > 0 ? layer + 1 : layer]!
    for (const [a, a2, b, b2] of rectanglesIn(shows, uCount, vCount)) {
      const corners = [
        [planes[u][a]!, planes[v][b]!],
        [planes[u][a2]!, planes[v][b]!],
        [planes[u][a2]!, planes[v][b2]!],
        [planes[u][a]!, planes[v][b2]!],
      ] as const
      addQuad(faces, normal, sign, level, sign > 0 ? corners : [...corners].reverse())
    }
  }
}

function addQuad(
  faces: Faces,
  normal: Direction,
  sign: 1 | -1,
  level: Mm,
  corners: readonly (readonly [Mm, Mm])[],
): void {
  const first = faces.positions.length / 3
  for (const [a, b] of corners) {
    const point = [0, 0, 0]
    point[normal] = level
    point[(normal + 1) % 3] = a
    point[(normal + 2) % 3] = b
    const direction = [0, 0, 0]
    direction[normal] = sign
    faces.positions.push(...point)
    faces.normals.push(...direction)
  }
  faces.indices.push(first, first + 1, first + 2, first, first + 2, first + 3)
}

/** Parts the marked squares of a table into rectangles: [from, to, from, to] in columns and rows. */
function rectanglesIn(shows: Uint8Array, columns: number, rows: number): [number, number, number, number][] {
  const found: [number, number, number, number][] = []
  for (let b = 0; b < rows; b++) {
    for (let a = 0; a < columns; a++) {
      if (!shows[a + columns * b]) continue
      let [a2, b2] = [a + 1, b + 1]
      while (a2 < columns && shows[a2 + columns * b]) a2++
      while (b2 < rows && isMarked(shows, a + columns * b2, a2 + columns * b2)) b2++
      for (let row = b; row < b2; row++) shows.fill(0, a + columns * row, a2 + columns * row)
      found.push([a, a2, b, b2])
    }
  }
  return found
}

function isMarked(shows: Uint8Array, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (!shows[at]) return false
  return true
}
