import { useThree } from '@react-three/fiber'
import { useEffect, useLayoutEffect, useMemo } from 'react'
import { applianceMesh, chalkAppliance, disposeAppliance } from './applianceMesh'
import { type Lit, WHOLE_CHALK } from './lit'
import type { Shading } from './shading'
import type { Box } from './space'

interface ApplianceModelProps {
  readonly bodies: readonly Box[]
  readonly lit: Lit
  readonly shading: Shading
}

/** An appliance in its space, in two draws. */
export function ApplianceModel({ bodies, lit, shading }: ApplianceModelProps) {
  const mesh = useMemo(() => applianceMesh(bodies), [bodies])
  const invalidate = useThree((state) => state.invalidate)
  useEffect(() => () => disposeAppliance(mesh), [mesh])
  useLayoutEffect(() => {
    chalkAppliance(mesh, lit.kind === 'whole' ? WHOLE_CHALK : 0)
    invalidate()
  }, [mesh, lit, invalidate])
  return (
    <>
      <mesh geometry={mesh.faces} material={shading.boards} frustumCulled={false} />
      <lineSegments geometry={mesh.lines} material={shading.lines} frustumCulled={false} renderOrder={1} />
    </>
  )
}
