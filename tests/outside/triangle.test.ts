import { describe, expect, it } from 'vitest'
import type { WallId } from '../../engine/basics/id'
import type { Project } from '../../engine/project/document'
import { settle } from '../../engine/units/length'
import { findingIn } from '../engine/checks/findings'
import { aCorner, aRoom, aWall, OTHER_WALL, space } from '../helpers/wall'
import { base, HOB, SINK, topped } from './kitchens'

describe('the work triangle', () => {
  // Source: NKBA guideline 3: sink, cooking and fridge, each way from 4 to 9 ft and no more than 26 ft in all.
  const TRIANGLE = /between the middles of their fronts/
  const FOOT = 12 * 25.4
  /** At one wall of 8 m, with their middles so many feet from its left end, all as deep. */
  const inARow = (...feet: readonly [sink: number, hob: number, fridge: number]) => {
    const [sink, hob, fridge] = feet.map((at) => at * FOOT - 300) as [number, number, number]
    const all = [
      base('B1', sink, 600, { cutout: SINK, depth: 600 }),
      base('B2', hob, 600, { cutout: HOB, depth: 600 }),
      space('S3', 'fridge', { left: fridge, width: 600, depth: 600 }),
    ]
    const project = topped(aWall(...all))
    const walls = Object.fromEntries(Object.entries(project.walls).map(([id, wall]) => [id, { ...wall, length: 8000 }]))
    return { ...project, walls } as Project
  }

  /** The hob at the wall that meets it at its right end, so far from the corner. */
  const roundCorner = (sink: number, hob: number, fridge: number) => {
    const all = [
      base('B1', sink * FOOT - 300, 600, { cutout: SINK, depth: 600 }),
      base('B2', hob * FOOT - 300, 600, { cutout: HOB, depth: 600, wall: OTHER_WALL }),
      space('S3', 'fridge', { left: fridge * FOOT - 300, width: 600, depth: 600 }),
    ]
    const project = topped(aCorner(...all))
    const walls = Object.fromEntries(
      Object.entries(project.walls).map(([id, wall]) => [id, { ...wall, length: 15 * FOOT }]),
    )
    return { ...project, walls } as Project
  }

  it('has ways of 4 ft at least and 9 at most', () => {
    expect(findingIn(inARow(6, 2, 10), TRIANGLE)).toBeNull()
    const short = findingIn(inARow(5.9, 2, 10), TRIANGLE)!
    expect(short).toMatchObject({
      weight: 'know',
      limit: `${settle(4 * FOOT)} mm`,
      source: 'NKBA planning guideline 3: the work triangle',
    })
    expect(findingIn(inARow(6, 2, 11), TRIANGLE)).toBeNull()
    expect(findingIn(inARow(6, 2, 11.1), TRIANGLE)).toMatchObject({ limit: `${settle(9 * FOOT)} mm` })
  })

  it('is measured straight from one wall to the other', () => {
    // From the sink to the hob it is 15 ft less its place and 600, and its own place less 600, at a right angle.
    const [along, out] = [(15 - 6) * FOOT - 600, 8 * FOOT - 600]
    const told = findingIn(roundCorner(6, 8, 1.9), TRIANGLE)!
    expect(told.message).toContain(`${Math.round(Math.hypot(along, out) * 10) / 10} mm from sink to hob`)
  })

  it('has 26 ft in all at most, though no way of it is longer than 9', () => {
    // Sink and fridge 9 ft apart, the hob across the room midway between: two ways of 8.5 are 26 with that.
    const across = (way: number) => {
      const deep = Math.sqrt(way ** 2 - 4.5 ** 2) * FOOT + 2 * 600
      const room = aRoom(
        base('B1', 2 * FOOT - 300, 600, { cutout: SINK, depth: 600 }),
        base('B2', (15 - 6.5) * FOOT - 300, 600, { cutout: HOB, depth: 600, wall: 'w3' as WallId }),
        space('S3', 'fridge', { left: 11 * FOOT - 300, width: 600, depth: 600 }),
      )
      const long = (id: string) => (id === 'w2' || id === 'w4' ? deep : 15 * FOOT)
      const walls = Object.fromEntries(
        Object.entries(room.walls).map(([id, wall]) => [id, { ...wall, length: long(id) }]),
      )
      return topped({ ...room, walls } as Project)
    }
    expect(findingIn(across(8.49), TRIANGLE)).toBeNull()
    expect(findingIn(across(8.51), TRIANGLE)).toMatchObject({ limit: `${settle(26 * FOOT)} mm` })
  })

  it('is told of no kitchen that has no hob, no sink or no fridge, nor where one stands at a wall that meets none', () => {
    const far = inARow(3, 2, 20)
    expect(findingIn(far, TRIANGLE)).not.toBeNull()
    for (const gone of Object.keys(far.cabinets)) {
      const cabinets = Object.fromEntries(Object.entries(far.cabinets).filter(([id]) => id !== gone))
      expect(findingIn({ ...far, cabinets } as Project, TRIANGLE)).toBeNull()
    }
    const corner = roundCorner(6, 8, 1.9)
    const apart = { ...corner.walls[OTHER_WALL]!, meets: false }
    expect(findingIn({ ...corner, walls: { ...corner.walls, [OTHER_WALL]: apart } }, TRIANGLE)).toBeNull()
  })
})
