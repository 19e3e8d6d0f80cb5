import type { Part, Vec3 } from '../../engine/index'
import type { Stand } from './arrange'
import { type BoardMesh, type MergedCabinet, mergeParts, type PartSpan } from './merge'
import { turned } from './walls'

/** The boards of several that stand in the scene as one body, in the scene's frame. How far each steps aside is laid by `asidesOf`. */
export function mergeStands(stands: readonly Stand[], meshOf: (part: Part) => BoardMesh): MergedCabinet {
  const merged = mergeParts(
    stands.flatMap(({ built }) => built.parts),
    meshOf,
  )
  const standOf = standsByPart(stands)
  for (const { part, corners, edges } of merged.spans) {
    const { turns, rest } = standOf.get(part)!
    carry(merged.positions, corners, turns, rest)
    carry(merged.edges, edges, turns, rest)
    for (const way of [merged.normals, merged.away, merged.awayThen]) carry(way, corners, turns, NOWHERE)
    for (const way of [merged.edgesAway, merged.edgesAwayThen]) carry(way, edges, turns, NOWHERE)
  }
  return merged
}

/** For every corner and every edge point of a body, how far its stand steps aside when everything is taken fully apart. */
export function asidesOf({ spans }: Pick<MergedCabinet, 'spans'>, stands: readonly Stand[]) {
  const standOf = standsByPart(stands)
  const all = (points: 'corners' | 'edges') => {
    const asides = new Float32Array(3 * Math.max(0, ...spans.map((span) => span[points].to)))
    for (const span of spans) {
      const { x, y, z } = standOf.get(span.part)!.aside
      for (let point = span[points].from; point < span[points].to; point++) asides.set([x, y, z], 3 * point)
    }
    return asides
  }
  return { corners: all('corners'), edges: all('edges') }
}

const NOWHERE: Vec3 = { x: 0, y: 0, z: 0 }

function standsByPart(stands: readonly Stand[]) {
  return new Map(stands.flatMap((stand) => stand.built.parts.map(({ id }) => [id, stand] as const)))
}

/** Carries points of a stand's own frame into the scene's, where they lie. */
function carry(points: Float32Array, { from, to }: PartSpan['corners'], turns: number, by: Vec3): void {
  for (let at = 3 * from; at < 3 * to; at += 3) {
    const { x, y, z } = turned({ x: points[at]!, y: points[at + 1]!, z: points[at + 2]! }, turns)
    points[at] = x + by.x
    points[at + 1] = y + by.y
    points[at + 2] = z + by.z
  }
}
