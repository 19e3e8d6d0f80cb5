import {
  type Axis,
  type BoardRole,
  FIVE_PARTS,
  type Part,
  type PartId,
  SLAB_FRONTS,
  turned as turnedAbout,
  unit,
  type Vec3,
} from '../../engine/index'
import { type Stage, stagesOf } from './stage'

/** What a board looks like, in its own frame: triangles, and the edges to be inked as pairs of points. */
export interface BoardMesh {
  readonly positions: ArrayLike<number>
  readonly normals: ArrayLike<number>
  readonly indices: ArrayLike<number>
  readonly edges: ArrayLike<number>
}

/** Which colour a corner of a board takes. The order is that of the colours in `palette.ts`. */
export const TONE = { face: 0, edge: 1, worked: 2, front: 3, frontEdge: 4, thin: 5, pull: 6, appliance: 7 } as const

/** Where one part stands in the merged arrays, counted in points. */
export interface PartSpan {
  readonly part: PartId
  readonly corners: { readonly from: number; readonly to: number }
  readonly edges: { readonly from: number; readonly to: number }
}

/**
 * All boards of one cabinet as one body, in the cabinet's frame. `away` is how far a point goes when the cabinet is taken
 * fully apart and `stages` when it sets out and arrives, and `awayThen` and `stagesThen` the same of its second way, so
 * that the slider costs one number and no rewriting. Doors and drawer fronts stand last, so that hiding them is drawing
 * less of the same arrays.
 */
export interface MergedCabinet {
  readonly positions: Float32Array
  readonly normals: Float32Array
  readonly away: Float32Array
  readonly stages: Float32Array
  readonly awayThen: Float32Array
  readonly stagesThen: Float32Array
  readonly tones: Uint8Array
  readonly indices: Uint32Array
  readonly edges: Float32Array
  readonly edgesAway: Float32Array
  readonly edgesStages: Float32Array
  readonly edgesAwayThen: Float32Array
  readonly edgesStagesThen: Float32Array
  readonly spans: readonly PartSpan[]
  /** How many indices and edge points are left when the fronts are hidden. */
  readonly withoutFronts: { readonly indices: number; readonly edges: number }
}

const FRONTS: ReadonlySet<BoardRole> = new Set<BoardRole>([...SLAB_FRONTS, ...FIVE_PARTS, 'filler'])

export function isFront(role: BoardRole): boolean {
  return FRONTS.has(role)
}

export function mergeParts(parts: readonly Part[], meshOf: (part: Part) => BoardMesh): MergedCabinet {
  const ordered = [...parts.filter((part) => !isFront(part.role)), ...parts.filter((part) => isFront(part.role))]
  const meshes = ordered.map(meshOf)
  const body = emptyBody(meshes)
  const spans: PartSpan[] = []
  const at = { corner: 0, index: 0, edge: 0 }
  let withoutFronts: MergedCabinet['withoutFronts'] | null = null
  for (const [number, part] of ordered.entries()) {
    if (isFront(part.role)) withoutFronts ??= { indices: at.index, edges: at.edge }
    const mesh = meshes[number]!
    const from = { ...at }
    lay(part, mesh, body, at)
    spans.push({
      part: part.id,
      corners: { from: from.corner, to: at.corner },
      edges: { from: from.edge, to: at.edge },
    })
  }
  return { ...body, spans, withoutFronts: withoutFronts ?? { indices: at.index, edges: at.edge } }
}

type Body = Omit<MergedCabinet, 'spans' | 'withoutFronts'>

function emptyBody(meshes: readonly BoardMesh[]): Body {
  const sum = (count: (mesh: BoardMesh) => number) => meshes.reduce((total, mesh) => total + count(mesh), 0)
  const corners = sum((mesh) => mesh.positions.length)
  const edges = sum((mesh) => mesh.edges.length)
  return {
    positions: new Float32Array(corners),
    normals: new Float32Array(corners),
    away: new Float32Array(corners),
    stages: new Float32Array((corners / 3) * 2),
    awayThen: new Float32Array(corners),
    stagesThen: new Float32Array((corners / 3) * 2),
    tones: new Uint8Array(corners / 3),
    indices: new Uint32Array(sum((mesh) => mesh.indices.length)),
    edges: new Float32Array(edges),
    edgesAway: new Float32Array(edges),
    edgesStages: new Float32Array((edges / 3) * 2),
    edgesAwayThen: new Float32Array(edges),
    edgesStagesThen: new Float32Array((edges / 3) * 2),
  }
}

/** Lays one board into the body where `at` points, and moves `at` past it. */
function lay(part: Part, mesh: BoardMesh, body: Body, at: { corner: number; index: number; edge: number }): void {
  const turn = turnOf(part)
  const { first, second } = stagesOf(part)
  const corners = mesh.positions.length / 3
  for (let each = 0; each < mesh.indices.length; each++) body.indices[at.index + each] = mesh.indices[each]! + at.corner
  turned(mesh.positions, body.positions, at.corner, turn, part.placement.origin)
  turned(mesh.normals, body.normals, at.corner, turn, NOWHERE)
  staged(body.away, body.stages, at.corner, corners, first)
  staged(body.awayThen, body.stagesThen, at.corner, corners, second)
  for (let corner = 0; corner < corners; corner++) {
    body.tones[at.corner + corner] = toneOf(part, mesh.positions[3 * corner + 2]!, mesh.normals[3 * corner + 2]!)
  }
  turned(mesh.edges, body.edges, at.edge, turn, part.placement.origin)
  staged(body.edgesAway, body.edgesStages, at.edge, mesh.edges.length / 3, first)
  staged(body.edgesAwayThen, body.edgesStagesThen, at.edge, mesh.edges.length / 3, second)
  at.corner += corners
  at.index += mesh.indices.length
  at.edge += mesh.edges.length / 3
}

const NOWHERE: Vec3 = { x: 0, y: 0, z: 0 }

interface Turn {
  readonly length: Vec3
  readonly width: Vec3
  readonly thickness: Vec3
}

function turnOf({ placement }: Part): Turn {
  const along = (axis: Axis) => (placement.turn ? turnedAbout(unit(axis), placement.turn) : unit(axis))
  return { length: along(placement.length), width: along(placement.width), thickness: along(placement.thickness) }
}

/** Carries points of the board's frame into the cabinet's. Written out flat: this runs for every corner of a drag. */
function turned(from: ArrayLike<number>, to: Float32Array, start: number, turn: Turn, origin: Vec3): void {
  const { length: l, width: w, thickness: t } = turn
  for (let each = 0, out = 3 * start; each < from.length; each += 3, out += 3) {
    const x = from[each]!
    const y = from[each + 1]!
    const z = from[each + 2]!
    to[out] = origin.x + l.x * x + w.x * y + t.x * z
    to[out + 1] = origin.y + l.y * x + w.y * y + t.y * z
    to[out + 2] = origin.z + l.z * x + w.z * y + t.z * z
  }
}

function staged(away: Float32Array, stages: Float32Array, start: number, count: number, stage: Stage): void {
  for (let point = start; point < start + count; point++) {
    away[3 * point] = stage.away.x
    away[3 * point + 1] = stage.away.y
    away[3 * point + 2] = stage.away.z
    stages[2 * point] = stage.from
    stages[2 * point + 1] = stage.to
  }
}

/** A face that is neither the one at 0 nor the one at the full thickness was worked into the board. */
function toneOf(part: Part, z: number, normalZ: number): number {
  const isFlat = Math.abs(normalZ) > 0.5
  if (z < -0.01) return TONE.pull
  if (isFront(part.role)) return isFlat ? TONE.front : TONE.frontEdge
  if (!isFlat) return TONE.edge
  if (z > 0.01 && z < part.thickness - 0.01) return TONE.worked
  return part.role === 'back' || part.role === 'drawerBottom' ? TONE.thin : TONE.face
}
