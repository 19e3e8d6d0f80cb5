import { describe, expect, it } from 'vitest'
import { arrange } from '../../../web/scene/arrange'
import { distanceTo, pickPart } from '../../../web/scene/pick'
import { built, onAWall, upright } from './boards'

const side = upright('LS', { x: 0, by: { x: -200, y: 0, z: 0 } })
const shelf = upright('SH', { x: 300 })
const door = {
  ...upright('D', { x: 0, role: 'door' }),
  placement: { origin: { x: 600, y: 0, z: 520 }, length: '+y', width: '-x', thickness: '+z' },
} as const
const stands = arrange(onAWall(built('k1', 1000, [side, shelf, door])))

/** A line of sight straight at the wall, at x and y of the wall. */
function lookingAt(x: number, y: number) {
  return { origin: { x, y, z: 5000 }, direction: { x: 0, y: 0, z: -1 } }
}

describe('a press on the picture', () => {
  it('picks the board that is met first', () => {
    expect(pickPart(lookingAt(1310, 350), stands, 0, false)).toEqual({ owner: 'k1', part: 'k1/D' })
  })

  it('goes through the place of a front that is hidden', () => {
    expect(pickPart(lookingAt(1310, 350), stands, 0, true)).toEqual({ owner: 'k1', part: 'k1/SH' })
  })

  it('picks nothing beside the boards', () => {
    expect(pickPart(lookingAt(1200, 350), stands, 0, true)).toBeNull()
    expect(pickPart(lookingAt(1310, 701), stands, 0, false)).toBeNull()
  })

  it('picks the space of an appliance where nothing stands before it, and no part', () => {
    const body = { min: { x: 0, y: 0, z: 20 }, max: { x: 590, y: 850, z: 560 } }
    const space = arrange(onAWall({ ...built('k2', 1000, []), bodies: [body] }))
    expect(pickPart(lookingAt(1310, 350), space, 0, false)).toEqual({ owner: 'k2', part: null })
    expect(pickPart(lookingAt(1595, 350), space, 0, false)).toBeNull()
  })

  it('finds a board where it has gone, and no longer where it was', () => {
    expect(pickPart(lookingAt(1009, 350), stands, 0, true)).toEqual({ owner: 'k1', part: 'k1/LS' })
    expect(pickPart(lookingAt(1009, 350), stands, 1, true)).toBeNull()
    expect(pickPart(lookingAt(1009 - 200, 350), stands, 1, true)).toEqual({ owner: 'k1', part: 'k1/LS' })
    expect(pickPart(lookingAt(1009 - 100, 350), stands, 0.5, true)).toEqual({ owner: 'k1', part: 'k1/LS' })
  })
})

describe('the distance to a box', () => {
  const box = { min: { x: 0, y: 0, z: 0 }, max: { x: 10, y: 20, z: 30 } }

  it('ends at the face that is met', () => {
    expect(distanceTo(box, { x: 5, y: 5, z: 100 }, { x: 0, y: 0, z: -1 })).toBe(100 - 30)
  })

  it('is nothing behind the eye', () => {
    expect(distanceTo(box, { x: 5, y: 5, z: 100 }, { x: 0, y: 0, z: 1 })).toBeNull()
  })

  it('is 0 from inside', () => {
    expect(distanceTo(box, { x: 5, y: 5, z: 5 }, { x: 0, y: 0, z: 1 })).toBe(0)
  })
})
