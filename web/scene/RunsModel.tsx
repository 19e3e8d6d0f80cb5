import { useThree } from '@react-three/fiber'
import { memo, useEffect, useLayoutEffect, useMemo, useState } from 'react'
import { BufferAttribute } from 'three'
import type { OwnerId } from '../../engine/index'
import type { Stand } from './arrange'
import { bodyOf, chalk, disposeBody, showFronts } from './body'
import { chalkOn, type Lit, sameLit } from './lit'
import { asidesOf, mergeStands } from './mergeStands'
import { meshFor } from './meshes'
import type { Shading } from './shading'

interface Props {
  readonly stands: readonly Stand[]
  /** For each of them. */
  readonly lits: readonly Lit[]
  readonly areFrontsHidden: boolean
  readonly shading: Shading
}

/**
 * All kicks, countertops and trims in two draws, however many runs there are: a board or two of each would cost as many
 * draws as a cabinet. They have no holes.
 */
export const RunsModel = memo(function RunsModel({ stands, lits, areFrontsHidden, shading }: Props) {
  const standing = useKept(stands, isStanding)
  const merged = useMemo(() => mergeStands(standing, meshFor), [standing])
  const body = useMemo(() => bodyOf(merged), [merged])
  const invalidate = useThree((state) => state.invalidate)
  useEffect(() => () => disposeBody(body), [body])
  useLayoutEffect(() => {
    const { corners, edges } = asidesOf(merged, stands)
    body.boards.setAttribute('aside', new BufferAttribute(corners, 3))
    body.lines.setAttribute('aside', new BufferAttribute(edges, 3))
    invalidate()
  }, [body, merged, stands, invalidate])
  useLayoutEffect(() => {
    const litOwner = new Map<OwnerId, Lit>(stands.map(({ built }, at) => [built.id, lits[at]!]))
    const owners = new Map(stands.flatMap(({ built }) => built.parts.map(({ id }) => [id, built.id] as const)))
    chalk(body, merged, (part) => chalkOn(litOwner.get(owners.get(part)!)!, part))
    showFronts(body, merged, areFrontsHidden)
    invalidate()
  }, [body, merged, stands, lits, areFrontsHidden, invalidate])
  if (merged.spans.length === 0) return null
  return (
    <group dispose={null}>
      <mesh geometry={body.boards} material={shading.boards} frustumCulled={false} />
      <lineSegments geometry={body.lines} material={shading.lines} frustumCulled={false} renderOrder={1} />
      {lits.some(({ kind }) => kind === 'parts') && (
        <lineSegments geometry={body.lines} material={shading.through} frustumCulled={false} renderOrder={2} />
      )}
    </group>
  )
}, isSame)

function isSame(a: Props, b: Props): boolean {
  return (
    a.areFrontsHidden === b.areFrontsHidden &&
    a.shading === b.shading &&
    areSame(a.stands, b.stands, (one, other) => isStanding(one, other) && isAt(one.aside, other.aside)) &&
    areSame(a.lits, b.lits, sameLit)
  )
}

/** Whether the same boards stand in the same place. */
function isStanding(a: Stand, b: Stand): boolean {
  return a.built.parts === b.built.parts && a.turns === b.turns && isAt(a.rest, b.rest)
}

function isAt(a: Stand['rest'], b: Stand['rest']): boolean {
  return a.x === b.x && a.y === b.y && a.z === b.z
}

function areSame<One>(a: readonly One[], b: readonly One[], isOne: (a: One, b: One) => boolean): boolean {
  return a.length === b.length && a.every((one, at) => isOne(one, b[at]!))
}

/** The list as it was before while its members are the same. */
function useKept<One>(now: readonly One[], isOne: (a: One, b: One) => boolean): readonly One[] {
  const [before, setBefore] = useState(now)
  if (before === now || areSame(before, now, isOne)) return before
  setBefore(now)
  return now
}
