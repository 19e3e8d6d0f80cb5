import { describe, expect, it } from 'vitest'
import { derive, fortyCabinets, isRunId } from '../../../engine/index'
import { arrange, boxInScene, type Stand } from '../../../web/scene/arrange'
import { asidesOf, mergeStands } from '../../../web/scene/mergeStands'
import { meshFor } from '../../../web/scene/meshes'
import { type Box, boxOfBoxes } from '../../../web/scene/space'
import { shareGone } from '../../../web/scene/stage'
import { upright } from './boards'

const FORTY = arrange(derive(fortyCabinets()))
const RUNS = FORTY.filter(({ built }) => isRunId(built.id))

/** Where the points of one stand of a merged body are, as the shader puts them there. */
function boxDrawn(stands: readonly Stand[], which: Stand, apart: number): Box {
  const merged = mergeStands(stands, meshFor)
  const asides = asidesOf(merged, stands).corners
  const ids = new Set(which.built.parts.map(({ id }) => id))
  const spans = merged.spans.filter(({ part }) => ids.has(part))
  return boxOfBoxes(
    spans.flatMap(({ corners }) =>
      Array.from({ length: corners.to - corners.from }, (_, each): Box => {
        const at = corners.from + each
        const gone = (stages: Float32Array) =>
          shareGone({ away: NOWHERE, from: stages[2 * at]!, to: stages[2 * at + 1]! }, apart)
        const along = (axis: 0 | 1 | 2) =>
          merged.positions[3 * at + axis]! +
          asides[3 * at + axis]! * (1 - (1 - apart) ** 3) +
          merged.away[3 * at + axis]! * gone(merged.stages) +
          merged.awayThen[3 * at + axis]! * gone(merged.stagesThen)
        const point = { x: along(0), y: along(1), z: along(2) }
        return { min: point, max: point }
      }),
    ),
  )
}

const NOWHERE = { x: 0, y: 0, z: 0 }

describe('the boards of several stands as one body', () => {
  it('are where each stand is, turned with its wall', () => {
    const built = { id: 'k1', mark: 'B1', parts: [upright('LS', { x: 40 })], place: {} } as unknown as Stand['built']
    const rest = { x: 3000, y: 0, z: 100 }
    const mesh = () => ({ positions: [0, 500, 0], normals: [0, 1, 0], indices: [0], edges: [700, 0, 0] })
    const merged = mergeStands([{ built, turns: 1, rest, aside: { x: 5, y: 6, z: 7 } }], mesh)
    // In its own frame (40, 0, 500): a quarter turn to the right makes along the wall out, and out back to the left.
    expect([...merged.positions]).toEqual([3000 - 500, 0, 100 + 40])
    expect([...merged.normals]).toEqual([-1, 0, 0])
    expect([...merged.edges]).toEqual([3000, 700, 100 + 40])
    expect([...asidesOf(merged, [{ built, turns: 1, rest, aside: { x: 5, y: 6, z: 7 } }]).edges]).toEqual([5, 6, 7])
  })

  it.each([0, 0.3, 1])('are drawn where they are picked, %f apart', (apart) => {
    expect(RUNS.length).toBeGreaterThan(30)
    for (const which of [RUNS[0]!, RUNS.find(({ turns }) => turns === 1) ?? RUNS.at(-1)!, RUNS.at(-1)!]) {
      const [drawn, picked] = [boxDrawn(RUNS, which, apart), boxInScene(which, apart)]
      for (const axis of ['x', 'y', 'z'] as const) {
        expect(drawn.min[axis]).toBeCloseTo(picked.min[axis], 1)
        expect(drawn.max[axis]).toBeCloseTo(picked.max[axis], 1)
      }
    }
  })
})
