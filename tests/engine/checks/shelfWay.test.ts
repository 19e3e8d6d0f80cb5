import { describe, expect, it } from 'vitest'
import { leastAcross, longestThrough, passes } from '../../../engine/checks/passing'
import { newProject } from '../../../engine/project/defaults'
import type { Cabinet, Project } from '../../../engine/project/document'
import type { ReadyName } from '../../../engine/project/readyKinds'
import { newCabinetAt } from '../../../engine/runs/place'
import { inch } from '../../../engine/units/length'
import { findingIn } from './findings'

const STUCK = /cannot be put in/

/** A ready kind alone on the wall of a new project, built by the method of a name. */
function alone(what: ReadyName, method: string, said: Partial<Cabinet> = {}, unit: 'mm' | 'in' = 'mm'): Project {
  const plain = newProject(unit)
  const { id } = Object.values(plain.methods).find(({ name }) => name === method)!
  const project = { ...plain, method: id }
  const cabinet = { ...newCabinetAt(project, what, 0)!, ...said }
  return { ...project, cabinets: { [cabinet.id]: cabinet } as Project['cabinets'] }
}

describe('a loose shelf behind a blind panel', () => {
  it('does not go in through the opening that the panel closes, be that the widest of the face frame', () => {
    const framed = (width: number) =>
      findingIn(alone('blindBase', 'Face frame, inset doors', { width: inch(width) }, 'in'), STUCK)
    const narrow = framed(38)
    expect(narrow).toMatchObject({ weight: 'mind', measure: '35 15/16 in' })
    expect(narrow!.message).toContain('that is 6 1/4 in wide and 28 1/32 in high')
    expect(narrow!.limit).toBe('28 7/16 in')
    expect(narrow!.message).toContain('before the blind panel is on')
    // The wider ones do not go through the opening behind the panel either, and are told by that of the door.
    expect(framed(41.5)!.message).toContain('that is 9 3/4 in wide')
    expect(framed(41.5)!.message).toContain('before the frame,')
    expect(framed(43.5)!.message).toContain('that is 11 3/4 in wide')
  })

  it('goes in before the panel where there is no frame, and that is told', () => {
    const told = findingIn(alone('blindBase', 'Shop standard', { width: 965 }), STUCK)
    expect(told).toMatchObject({ weight: 'know' })
    expect(told!.message).toContain('before the blind panel is on')
  })

  it('goes in past the panel where the opening is high enough, and where there is none', () => {
    const interior = { fixedShelves: 0, adjustableShelves: 1, partition: null }
    const tall = { height: 2100, interior }
    // 2100 high and more than 280 wide: the diagonal is longer than any shelf of a cabinet of 965.
    expect(findingIn(alone('blindBase', 'Shop standard', { width: 965, ...tall }), STUCK)).toBeNull()
    expect(findingIn(alone('pantry', 'Shop standard'), STUCK)).toBeNull()
  })
})

describe('a loose shelf in a diagonal corner', () => {
  it('of a base does not go through the slanting opening, with a frame or without one', () => {
    const told = findingIn(alone('diagonalBase', 'Shop standard'), STUCK)
    // From side to side along the slant: both sides end 900 - 18 - 580 before the inside of the other one.
    const width = Math.round(Math.hypot(302, 302) * 10) / 10
    expect(told).toMatchObject({ weight: 'mind', measure: '864.5 mm' })
    expect(told!.message).toContain(`${width} mm by 732 mm`)
    expect(findingIn(alone('diagonalBase', 'Face frame, inset doors'), STUCK)?.weight).toBe('mind')
  })

  it('of an upper goes through it on edge', () => {
    expect(findingIn(alone('diagonalUpper', 'Shop standard'), STUCK)).toBeNull()
    expect(findingIn(alone('diagonalUpper', 'Face frame, inset doors'), STUCK)).toBeNull()
  })
})

describe('the longest shelf through an opening', () => {
  it('is the longest that passes', () => {
    const opening = { width: 400, height: 300 }
    const longest = longestThrough(18, opening)
    expect(longest).toBeLessThan(500)
    expect(passes({ length: longest - 0.01, thickness: 18 }, opening)).toBe(true)
    expect(passes({ length: longest + 0.01, thickness: 18 }, opening)).toBe(false)
    expect(longestThrough(0, opening)).toBeCloseTo(500, 3)
  })
})

describe('the narrowest way across a board', () => {
  it('is across its edges, and across a corner that is cut off deep', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 600, y: 0 },
      { x: 600, y: 500 },
      { x: 0, y: 500 },
    ]
    expect(leastAcross(square)).toBe(500)
    // Cut to a triangle with legs of 300 and 400: its height over the side of 500 is 240.
    expect(
      leastAcross([
        { x: 0, y: 0 },
        { x: 300, y: 0 },
        { x: 0, y: 400 },
      ]),
    ).toBe(240)
  })
})
