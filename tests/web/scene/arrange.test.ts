import { describe, expect, it } from 'vitest'
import { explodedBy } from '../../../engine/index'
import { arrange, boxOfCabinet, boxOfPart, standAt } from '../../../web/scene/arrange'
import { shifted } from '../../../web/scene/space'
import { built, onAWall, upright } from './boards'

const left = upright('LS', { x: 0, by: { x: -200, y: 0, z: 0 } })
const right = upright('RS', { x: 582, by: { x: 200, y: 0, z: 0 } })
const back = upright('BK', { x: 300, by: { x: 0, y: 0, z: -150 } })

describe('the box of a board', () => {
  it('is its length up, its width out and its thickness to the right', () => {
    expect(boxOfPart(left)).toEqual({ min: { x: 0, y: 0, z: 0 }, max: { x: 18, y: 700, z: 500 } })
  })
})

describe('cabinets taken apart', () => {
  it('stand where they were drawn while closed', () => {
    const [first, second] = arrange(onAWall(built('B1', 100, [left, right]), built('B2', 700, [left, right])))
    expect(standAt(first!, 0)).toEqual({ x: 100, y: 0, z: 0 })
    expect(standAt(second!, 0)).toEqual({ x: 700, y: 0, z: 0 })
  })

  it('step aside about the middle of the run by the least that clears neighbours', () => {
    const stands = arrange(onAWall(built('B1', 0, [left, right]), built('B2', 600, [left, right])))
    // B1 reaches to 600 + 200, B2 to 600 - 200, and 60 stays free between: 460 to be made, half to each side.
    expect(stands[0]!.aside.x).toBeCloseTo(-460 / 2, 9)
    expect(stands[1]!.aside.x).toBeCloseTo(460 / 2, 9)
  })

  it('never cross a neighbour, however narrow', () => {
    const narrow = [left, upright('RS', { x: 132, by: { x: 200, y: 0, z: 0 } })]
    const derived = onAWall(
      built('B1', 0, [left, right]),
      built('B2', 600, narrow, { width: 150 }),
      built('B3', 750, [left, right]),
    )
    const boxes = arrange(derived).map((stand) => shifted(boxOfCabinet(stand.built, 1), standAt(stand, 1)))
    expect(boxes[1]!.min.x - boxes[0]!.max.x).toBeGreaterThanOrEqual(60 - 1e-6)
    expect(boxes[2]!.min.x - boxes[1]!.max.x).toBeGreaterThanOrEqual(60 - 1e-6)
  })

  it('do not cross on the way either, when the sides are out long before the rest', () => {
    const early = [left, right].map((side) => ({ ...side, explode: { ...side.explode, from: 0.2, to: 0.5 } }))
    const stands = arrange(onAWall(built('B1', 0, early), built('B2', 600, early)))
    for (let apart = 0; apart <= 1; apart += 0.05) {
      const [low, high] = stands.map((stand) => shifted(boxOfCabinet(stand.built, apart), standAt(stand, apart)))
      expect(high!.min.x - low!.max.x).toBeGreaterThanOrEqual(-1e-6)
    }
  })

  it('leave alone what has room enough', () => {
    const stands = arrange(onAWall(built('B1', 0, [left, right]), built('B2', 2000, [left, right])))
    expect(stands.map((stand) => stand.aside.x)).toEqual([0, 0])
  })

  it('come off the wall as far as their backs go towards it', () => {
    const [stand] = arrange(onAWall(built('B1', 0, [back])))
    expect(stand!.aside.z).toBe(150)
    expect(explodedBy(back.explode, 1).z + stand!.aside.z).toBe(0)
  })

  it('lift what hangs off what stands below it', () => {
    const up = upright('TP', { x: 0, by: { x: 0, y: 900, z: 0 } })
    const stands = arrange(onAWall(built('B1', 0, [up]), built('U1', 0, [left], { bottom: 1400 })))
    // B1 reaches 700 + 900 = 1600 high, 60 stays free, U1 begins at 1400: 260 to be lifted.
    expect(stands.map((stand) => stand.aside.y)).toEqual([0, 260])
  })

  it('are the same stands for the same design, so that nothing is worked out twice', () => {
    const derived = onAWall(built('B1', 0, [left]))
    expect(arrange(derived)).toBe(arrange(derived))
  })
})
