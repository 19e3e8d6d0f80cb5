import { useThree } from '@react-three/fiber'
import { memo, useEffect, useLayoutEffect, useMemo } from 'react'
import { BufferAttribute, BufferGeometry } from 'three'
import { explodedBy, meshOf, shapeKey, type Vec3 } from '../../engine/index'
import type { Built } from './built'
import { Holes } from './Holes'
import { chalkOn, type Lit, sameLit } from './lit'
import { type MergedCabinet, mergeParts } from './merge'
import { meshKeeper } from './meshes'
import { withPulls } from './pulls'
import type { Shading } from './shading'

interface Props {
  readonly built: Built
  /** Where the cabinet's frame is, in mm. */
  readonly x: number
  readonly y: number
  readonly z: number
  /** By how many quarters it is turned with its wall. */
  readonly turns: number
  readonly lit: Lit
  readonly areFrontsHidden: boolean
  readonly shading: Shading
}

const meshFor = meshKeeper(shapeKey, (part) => withPulls(meshOf(part), part))

/** One cabinet in three draws: all its boards, all their edges, and all holes in them. A fourth shows lit parts through what hides them. */
export const CabinetModel = memo(function CabinetModel(props: Props) {
  const { built, x, y, z, turns, lit, areFrontsHidden, shading } = props
  // A cabinet that was only moved keeps its parts, and so its body.
  const { parts } = built
  const merged = useMemo(() => mergeParts(parts, meshFor), [parts])
  const body = useMemo(() => bodyOf(merged), [merged])
  const extent = useMemo(() => extentOf(built), [built])
  const invalidate = useThree((state) => state.invalidate)
  useEffect(() => () => disposeBody(body), [body])
  useLayoutEffect(() => {
    chalk(body, merged, lit)
    body.boards.setDrawRange(0, areFrontsHidden ? merged.withoutFronts.indices : Infinity)
    body.lines.setDrawRange(0, areFrontsHidden ? merged.withoutFronts.edges : Infinity)
    invalidate()
  }, [body, merged, lit, areFrontsHidden, invalidate])
  return (
    <group position={[x, y, z]} rotation={[0, (-turns * Math.PI) / 2, 0]} dispose={null}>
      <mesh geometry={body.boards} material={shading.boards} frustumCulled={false} />
      <lineSegments geometry={body.lines} material={shading.lines} frustumCulled={false} renderOrder={1} />
      <Holes parts={parts} {...extent} lit={lit} areFrontsHidden={areFrontsHidden} shading={shading} />
      {lit.kind === 'parts' && (
        <lineSegments geometry={body.lines} material={shading.through} frustumCulled={false} renderOrder={2} />
      )}
    </group>
  )
}, isSame)

function isSame(a: Props, b: Props): boolean {
  return (
    a.built.parts === b.built.parts &&
    a.x === b.x &&
    a.y === b.y &&
    a.z === b.z &&
    a.turns === b.turns &&
    a.areFrontsHidden === b.areFrontsHidden &&
    a.shading === b.shading &&
    sameLit(a.lit, b.lit)
  )
}

/** The middle of a cabinet as it was drawn, and how far its corners are from that; its boards may be apart. */
function extentOf({ parts, place: { width, height, depth } }: Built) {
  const farthest = Math.max(0, ...parts.map(({ explode }) => lengthOf(explodedBy(explode, 1))))
  return {
    middle: { x: width / 2, y: height / 2, z: depth / 2 },
    reach: Math.hypot(width, height, depth) / 2 + farthest,
  }
}

function lengthOf({ x, y, z }: Vec3): number {
  return Math.hypot(x, y, z)
}

interface Body {
  readonly boards: BufferGeometry
  readonly lines: BufferGeometry
}

function bodyOf(merged: MergedCabinet): Body {
  const boards = new BufferGeometry()
  boards.setAttribute('position', new BufferAttribute(merged.positions, 3))
  boards.setAttribute('normal', new BufferAttribute(merged.normals, 3))
  boards.setAttribute('away', new BufferAttribute(merged.away, 3))
  boards.setAttribute('stage', new BufferAttribute(merged.stages, 2))
  boards.setAttribute('awayThen', new BufferAttribute(merged.awayThen, 3))
  boards.setAttribute('stageThen', new BufferAttribute(merged.stagesThen, 2))
  boards.setAttribute('tone', new BufferAttribute(merged.tones, 1))
  boards.setAttribute('lit', new BufferAttribute(new Uint8Array(merged.tones.length), 1, true))
  boards.setIndex(new BufferAttribute(merged.indices, 1))
  const lines = new BufferGeometry()
  lines.setAttribute('position', new BufferAttribute(merged.edges, 3))
  lines.setAttribute('away', new BufferAttribute(merged.edgesAway, 3))
  lines.setAttribute('stage', new BufferAttribute(merged.edgesStages, 2))
  lines.setAttribute('awayThen', new BufferAttribute(merged.edgesAwayThen, 3))
  lines.setAttribute('stageThen', new BufferAttribute(merged.edgesStagesThen, 2))
  lines.setAttribute('lit', new BufferAttribute(new Uint8Array(merged.edges.length / 3), 1, true))
  return { boards, lines }
}

function disposeBody({ boards, lines }: Body): void {
  boards.dispose()
  lines.dispose()
}

function chalk({ boards, lines }: Body, merged: MergedCabinet, lit: Lit): void {
  const corners = boards.getAttribute('lit')
  const edges = lines.getAttribute('lit')
  for (const span of merged.spans) {
    const strength = chalkOn(lit, span.part)
    corners.array.fill(strength, span.corners.from, span.corners.to)
    edges.array.fill(strength, span.edges.from, span.edges.to)
  }
  corners.needsUpdate = true
  edges.needsUpdate = true
}
