import { useThree } from '@react-three/fiber'
import { useEffect, useLayoutEffect, useMemo } from 'react'
import { isRunId } from '../../engine/index'
import { useFollowing } from '../store/turns'
import { arrange, type Stand, standAt } from './arrange'
import { CabinetModel } from './CabinetModel'
import { METRES } from './Camera'
import { litOf } from './lit'
import { paletteOf, watchTheme } from './palette'
import { RunsModel } from './RunsModel'
import { makeShading, type Shading } from './shading'
import { WallModel } from './WallModel'
import { wallFrames } from './walls'

/** The walls and all cabinets on them, as they are now. */
export function Run() {
  const derived = useFollowing('scene', (state) => state.derived)
  const selection = useFollowing('scene', (state) => state.selection)
  const explode = useFollowing('scene', (state) => state.explode)
  const areFrontsHidden = useFollowing('scene', (state) => state.areFrontsHidden)
  const shading = useShading(explode)
  const stands = useMemo(() => arrange(derived), [derived])
  const [cabinets, runs] = useMemo(() => {
    const isRun = ({ built }: Stand) => isRunId(built.id)
    return [stands.filter((stand) => !isRun(stand)), stands.filter(isRun)] as const
  }, [stands])
  const { project } = derived
  const frames = useMemo(() => wallFrames(project), [project])
  return (
    <group scale={METRES}>
      {Object.values(project.walls).map((wall) => (
        <WallModel key={wall.id} wall={wall} frame={frames.get(wall.id)!} shading={shading} />
      ))}
      {cabinets.map((stand) => (
        <CabinetModel
          key={stand.built.id}
          built={stand.built}
          {...standAt(stand, explode)}
          turns={stand.turns}
          lit={litOf(selection, derived, stand.built)}
          areFrontsHidden={areFrontsHidden}
          shading={shading}
        />
      ))}
      <RunsModel
        stands={runs}
        lits={runs.map(({ built }) => litOf(selection, derived, built))}
        areFrontsHidden={areFrontsHidden}
        shading={shading}
      />
    </group>
  )
}

function useShading(explode: number): Shading {
  const canvas = useThree((state) => state.gl.domElement)
  const invalidate = useThree((state) => state.invalidate)
  const shading = useMemo(makeShading, [])
  useEffect(() => () => shading.dispose(), [shading])
  useLayoutEffect(() => {
    const colour = () => {
      shading.setPalette(paletteOf(canvas.parentElement ?? document.body))
      invalidate()
    }
    colour()
    return watchTheme(colour)
  }, [shading, canvas, invalidate])
  useLayoutEffect(() => {
    shading.setApart(explode)
    invalidate()
  }, [shading, explode, invalidate])
  return shading
}
