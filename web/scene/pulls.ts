import { type Part, pullsIn } from '../../engine/index'
import type { BoardMesh } from './merge'

/** How a plain pull is drawn, whichever is bought: so far from its front, and so thick. */
const OUT = 32
const THICK = 11
const KNOB = 26
/** A hair before the front, so that all of a pull is told from it. */
const FACE = -0.05

/** A board with the pulls that it is bored for, before its outside face. */
export function withPulls(mesh: BoardMesh, part: Part): BoardMesh {
  const bars = pullsIn(part).flatMap(({ from, to }) =>
    from.x === to.x && from.y === to.y ? knobAt(from) : barFrom(from, to),
  )
  return bars.length === 0 ? mesh : joinedMesh([mesh, ...bars.map(boxMesh)])
}

interface Flat {
  readonly x: number
  readonly y: number
}

type Corners = readonly [readonly [number, number, number], readonly [number, number, number]]

function knobAt({ x, y }: Flat): Corners[] {
  return [
    around({ x, y }, { x, y }, KNOB / 2, -OUT * 0.8, -OUT * 0.4),
    around({ x, y }, { x, y }, THICK / 2, -OUT * 0.4, FACE),
  ]
}

function barFrom(from: Flat, to: Flat): Corners[] {
  return [
    around(from, to, THICK / 2, -OUT, THICK - OUT),
    around(from, from, THICK / 2, THICK - OUT, FACE),
    around(to, to, THICK / 2, THICK - OUT, FACE),
  ]
}

function around(a: Flat, b: Flat, half: number, low: number, high: number): Corners {
  return [
    [Math.min(a.x, b.x) - half, Math.min(a.y, b.y) - half, low],
    [Math.max(a.x, b.x) + half, Math.max(a.y, b.y) + half, high],
  ]
}

/** Six faces and twelve edges. */
function boxMesh(corners: Corners): BoardMesh {
  const positions: number[] = []
  const normals: number[] = []
  const indices: number[] = []
  const edges: number[] = []
  for (const axis of [0, 1, 2]) {
    const [u, v] = [(axis + 1) % 3, (axis + 2) % 3]
    const point = (a: 0 | 1, b: 0 | 1, c: 0 | 1) => {
      const at = [0, 0, 0]
      at[axis] = corners[a][axis]!
      at[u] = corners[b][u]!
      at[v] = corners[c][v]!
      return at
    }
    for (const side of [0, 1] as const) {
      const first = positions.length / 3
      const turn = [point(side, 0, 0), point(side, 1, 0), point(side, 1, 1), point(side, 0, 1)]
      positions.push(...(side === 1 ? turn : turn.reverse()).flat())
      const normal = [0, 0, 0]
      normal[axis] = side === 1 ? 1 : -1
      for (let corner = 0; corner < 4; corner++) normals.push(...normal)
      indices.push(first, first + 1, first + 2, first, first + 2, first + 3)
    }
    for (const b of [0, 1] as const) for (const c of [0, 1] as const) edges.push(...point(0, b, c), ...point(1, b, c))
  }
  return { positions, normals, indices, edges }
}

function joinedMesh(meshes: readonly BoardMesh[]): BoardMesh {
  const all = (field: Exclude<keyof BoardMesh, 'indices'>) => meshes.flatMap((mesh) => Array.from(mesh[field]))
  let before = 0
  const indices = meshes.flatMap((mesh) => {
    const from = before
    before += mesh.positions.length / 3
    return Array.from(mesh.indices, (index) => index + from)
  })
  return { positions: all('positions'), normals: all('normals'), indices, edges: all('edges') }
}
