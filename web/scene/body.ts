import { BufferAttribute, BufferGeometry } from 'three'
import type { PartId } from '../../engine/index'
import type { MergedCabinet } from './merge'

/** What is given to the graphics of boards that are drawn together: their faces, and their edges. */
export interface Body {
  readonly boards: BufferGeometry
  readonly lines: BufferGeometry
}

export function bodyOf(merged: MergedCabinet): Body {
  const boards = new BufferGeometry()
  boards.setAttribute('position', new BufferAttribute(merged.positions, 3))
  boards.setAttribute('normal', new BufferAttribute(merged.normals, 3))
  letApart(boards, merged.away, merged.stages, merged.awayThen, merged.stagesThen)
  boards.setAttribute('tone', new BufferAttribute(merged.tones, 1))
  boards.setAttribute('lit', new BufferAttribute(new Uint8Array(merged.tones.length), 1, true))
  boards.setIndex(new BufferAttribute(merged.indices, 1))
  const lines = new BufferGeometry()
  lines.setAttribute('position', new BufferAttribute(merged.edges, 3))
  letApart(lines, merged.edgesAway, merged.edgesStages, merged.edgesAwayThen, merged.edgesStagesThen)
  lines.setAttribute('lit', new BufferAttribute(new Uint8Array(merged.edges.length / 3), 1, true))
  return { boards, lines }
}

/** Which way every corner goes when the boards come apart, and when: at first, and then. */
function letApart(
  body: BufferGeometry,
  away: Float32Array,
  stage: Float32Array,
  awayThen: Float32Array,
  stageThen: Float32Array,
): void {
  body.setAttribute('away', new BufferAttribute(away, 3))
  body.setAttribute('stage', new BufferAttribute(stage, 2))
  body.setAttribute('awayThen', new BufferAttribute(awayThen, 3))
  body.setAttribute('stageThen', new BufferAttribute(stageThen, 2))
}

export function disposeBody({ boards, lines }: Body): void {
  boards.dispose()
  lines.dispose()
}

/** Lays chalk on every board as strongly as is said, from 0 to 255. */
export function chalk({ boards, lines }: Body, { spans }: MergedCabinet, strengthOf: (part: PartId) => number): void {
  const corners = boards.getAttribute('lit')
  const edges = lines.getAttribute('lit')
  for (const span of spans) {
    const strength = strengthOf(span.part)
    corners.array.fill(strength, span.corners.from, span.corners.to)
    edges.array.fill(strength, span.edges.from, span.edges.to)
  }
  corners.needsUpdate = true
  edges.needsUpdate = true
}

/** Doors and drawer fronts stand last: they are hidden by drawing less. */
export function showFronts({ boards, lines }: Body, { withoutFronts }: MergedCabinet, areFrontsHidden: boolean): void {
  boards.setDrawRange(0, areFrontsHidden ? withoutFronts.indices : Infinity)
  lines.setDrawRange(0, areFrontsHidden ? withoutFronts.edges : Infinity)
}
