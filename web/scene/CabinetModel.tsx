import { useThree } from '@react-three/fiber'
import { memo, useEffect, useLayoutEffect, useMemo } from 'react'
import { explodedBy, type Vec3 } from '../../engine/index'
import { ApplianceModel } from './ApplianceModel'
import { bodyOf, chalk, disposeBody, showFronts } from './body'
import type { Built } from './built'
import { Holes } from './Holes'
import { chalkOn, type Lit, sameLit } from './lit'
import { mergeParts } from './merge'
import { meshFor } from './meshes'
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
    chalk(body, merged, (part) => chalkOn(lit, part))
    showFronts(body, merged, areFrontsHidden)
    invalidate()
  }, [body, merged, lit, areFrontsHidden, invalidate])
  return (
    <group position={[x, y, z]} rotation={[0, (-turns * Math.PI) / 2, 0]} dispose={null}>
      {parts.length > 0 && (
        <>
          <mesh geometry={body.boards} material={shading.boards} frustumCulled={false} />
          <lineSegments geometry={body.lines} material={shading.lines} frustumCulled={false} renderOrder={1} />
        </>
      )}
      {built.bodies && <ApplianceModel bodies={built.bodies} lit={lit} shading={shading} />}
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
    a.built.bodies === b.built.bodies &&
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
