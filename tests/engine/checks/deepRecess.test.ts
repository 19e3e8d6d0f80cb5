import { describe, expect, it } from 'vitest'
import { derive } from '../../../engine/pipeline'
import { fortyCabinets } from '../../../engine/samples/workshop'
import { aWall, cabinet } from '../../helpers/wall'
import { built, findingIn } from './findings'

const plain = aWall(cabinet('B1', { left: 400 }))
const DEEP = /more than half of the/

/** A base of boards of 18 mm whose sides run to the floor, with its bottom let so deep into them. */
const dado = (depth: number) =>
  built(plain, {
    cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth } },
    floor: { kind: 'notched', height: 100, setback: 60 },
  })

// Source: a forum thread, "I wouldn't however exceed half the thickness"; 3/8 in of 3/4 in ply is usual there.
describe('a dado', () => {
  it('is let in by half of its board, and minded where it is deeper', () => {
    expect(findingIn(dado(9), DEEP)).toBeNull()
    expect(findingIn(dado(12), DEEP)).toMatchObject({ weight: 'mind', measure: '12 mm', limit: '9 mm' })
  })

  it('of 3/8 in is let into 3/4 in ply that measures 23/32, half of what it is called', () => {
    const { materials } = plain
    const carcass = Object.values(materials).find(({ id }) => id === plain.methods[plain.method]!.carcassMaterial)!
    const thin = (by: number) => {
      const ply = { ...carcass, thickness: (25.4 * 23) / 32 }
      return { ...dado(by), materials: { ...materials, [carcass.id]: ply } }
    }
    expect(findingIn(thin((25.4 * 3) / 8), DEEP)).toBeNull()
    expect(findingIn(thin((25.4 * 7) / 16), DEEP)).not.toBeNull()
  })
})

describe('a groove for a back', () => {
  it('is minded where it is deeper than half of the boards', () => {
    const groove = (depth: number) => built(plain, { back: { kind: 'groove', inset: 10, depth, clearance: 1.5 } })
    expect(findingIn(groove(9), DEEP)).toBeNull()
    expect(findingIn(groove(11), DEEP)).toMatchObject({ measure: '11 mm', limit: '9 mm' })
  })
})

it('no method of the forty cabinets lets anything in deeper', () => {
  expect(derive(fortyCabinets()).problems.filter(({ message }) => DEEP.test(message))).toEqual([])
})
