import { describe, expect, it } from 'vitest'
import type { WallId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { arrange, boxInScene } from '../../../web/scene/arrange'
import { pickPart } from '../../../web/scene/pick'
import { plus } from '../../../web/scene/space'
import { turned, turnedBox, wallFrames } from '../../../web/scene/walls'
import { aCorner, aRoom, cabinet, idOf, OTHER_WALL } from '../../helpers/wall'

const ORIGIN = { x: 0, y: 0, z: 0 }
const b1 = cabinet('B1', { left: 2400, width: 500, depth: 560 })
const b2 = cabinet('B2', { wall: OTHER_WALL, left: 700, width: 600, depth: 540 })
const project = aCorner(b1, b2)

describe('walls in the scene', () => {
  it('stand at right angles where they meet: the second comes out into the room from the end of the first', () => {
    const frames = wallFrames(project)
    expect(frames.get(b1.wall)).toEqual({ origin: ORIGIN, turns: 0 })
    expect(frames.get(OTHER_WALL)).toEqual({ origin: { x: 3600, y: 0, z: 0 }, turns: 1 })
  })

  it('stand in a row, 1200 apart, where they do not', () => {
    const apart = { ...project.walls[OTHER_WALL]!, meets: false }
    const frames = wallFrames({ ...project, walls: { ...project.walls, [OTHER_WALL]: apart } })
    expect(frames.get(OTHER_WALL)).toEqual({ origin: { x: 3600 + 1200, y: 0, z: 0 }, turns: 0 })
  })

  it('turn to the right: along the second is out of the first, and out of it is back along the first', () => {
    expect(turned({ x: 10, y: 20, z: 30 }, 1)).toEqual({ x: -30, y: 20, z: 10 })
    expect(turned(turned({ x: 10, y: 20, z: 30 }, 1), -1)).toEqual({ x: 10, y: 20, z: 30 })
    expect(turned({ x: 10, y: 20, z: 30 }, 2)).toEqual({ x: -10, y: 20, z: -30 })
    expect(turnedBox({ min: ORIGIN, max: { x: 10, y: 20, z: 30 } }, 1)).toEqual({
      min: { x: -30, y: 0, z: 0 },
      max: { x: 0, y: 20, z: 10 },
    })
  })
})

describe('a closed room', () => {
  const at = (mark: string, wall: string) => cabinet(mark, { wall: wall as WallId, left: 800, width: 600 })
  const room = aRoom(at('B1', 'w1'), at('B2', 'w2'), at('B3', 'w3'), at('B4', 'w4'))

  it('comes round: its fourth wall ends where the first begins', () => {
    const { origin, turns } = wallFrames(room).get('w4' as WallId)!
    expect(turns).toBe(3)
    const end = plus(origin, turned({ x: 2800, y: 0, z: 0 }, turns))
    expect([end.x, end.y, end.z].map(Math.abs)).toEqual([0, 0, 0])
  })

  it('is taken apart with every wall clear of both that it meets', () => {
    const boxes = arrange(derive(room)).map((stand) => boxInScene(stand, 1))
    for (const [one, box] of boxes.entries()) {
      for (const other of boxes.slice(one + 1)) {
        const along = (['x', 'z'] as const).map((axis) => {
          return Math.min(box.max[axis], other.max[axis]) - Math.max(box.min[axis], other.min[axis])
        })
        expect(Math.min(...along)).toBeLessThan(0)
      }
    }
  })
})

describe('a cabinet at a wall that is turned', () => {
  const stands = arrange(derive(project))
  const [, second] = stands

  it('stands with its back at that wall', () => {
    const { min, max } = boxInScene(second!, 0)
    expect([min.z, max.z]).toEqual([700, 1300])
    expect([min.x, max.x]).toEqual([3600 - 540, 3600])
  })

  it('is met by a line of sight from the room', () => {
    const ray = { origin: { x: 0, y: 500, z: 1000 }, direction: { x: 1, y: 0, z: 0 } }
    expect(pickPart(ray, stands, 0, false)?.owner).toBe(idOf('B2'))
    expect(pickPart({ ...ray, origin: { x: 0, y: 500, z: 1400 } }, stands, 0, false)).toBeNull()
  })

  it('goes back from the room, taken apart, until it is clear of the first wall', () => {
    const [first, other] = stands.map((stand) => boxInScene(stand, 1))
    expect(other!.min.x - first!.max.x).toBeCloseTo(60, 6)
  })
})
