import { describe, expect, it } from 'vitest'
import { leastAcross, longestThrough, passes } from '../../../engine/checks/passing'
import { newProject } from '../../../engine/project/defaults'
import type { Cabinet, Project } from '../../../engine/project/document'
import type { ReadyName } from '../../../engine/project/readyKinds'
import { newCabinetAt } from '../../../engine/runs/place'
import { inch } from '../../../engine/units/length'
import { built, findingIn, remedied } from './findings'

const STUCK = /cannot be put in/

/** A ready kind alone on the wall of a new project, built by the method of a name. */
function alone(what: ReadyName, method: string, said: Partial<Cabinet> = {}, unit: 'mm' | 'in' = 'mm'): Project {
  const plain = newProject(unit)
  const { id } = Object.values(plain.methods).find(({ name }) => name === method)!
  const project = { ...plain, method: id }
  const cabinet = { ...newCabinetAt(project, what, 0)!, ...said }
  return { ...project, cabinets: { [cabinet.id]: cabinet } as Project['cabinets'] }
}

const LOOSE = { interior: { fixedShelves: 0, adjustableShelves: 1, partition: null } } as const

describe('a ready corner cabinet', () => {
  it('has no shelf that cannot be put in, by any method, in either unit', () => {
    for (const unit of ['mm', 'in'] as const) {
      for (const { name } of Object.values(newProject(unit).methods)) {
        for (const what of ['cornerBase', 'cornerUpper', 'diagonalBase', 'diagonalUpper'] as const) {
          expect(findingIn(alone(what, name, {}, unit), STUCK)?.message ?? `${what} by ${name}`).toBe(
            `${what} by ${name}`,
          )
        }
      }
    }
  })

  it('has fixed shelves for that: in bases, and behind the stiles of an L', () => {
    const shelves = (what: ReadyName, method: string) => {
      const { fixedShelves, adjustableShelves } = Object.values(alone(what, method).cabinets)[0]!.interior
      return [fixedShelves, adjustableShelves]
    }
    expect(shelves('cornerBase', 'Shop standard')).toEqual([1, 0])
    expect(shelves('diagonalBase', 'Shop standard')).toEqual([1, 0])
    expect(shelves('cornerUpper', 'Shop standard')).toEqual([0, 2])
    expect(shelves('cornerUpper', 'Face frame, inset doors')).toEqual([2, 0])
    expect(shelves('diagonalUpper', 'Face frame, inset doors')).toEqual([0, 2])
  })
})

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
    const told = findingIn(alone('diagonalBase', 'Shop standard', LOOSE), STUCK)
    // From side to side along the slant: both sides end 900 - 18 - 580 before the inside of the other one.
    const width = Math.round(Math.hypot(302, 302) * 10) / 10
    expect(told).toMatchObject({ weight: 'mind', measure: '864.5 mm' })
    expect(told!.message).toContain(`${width} mm by 732 mm`)
    expect(findingIn(alone('diagonalBase', 'Face frame, inset doors', LOOSE), STUCK)?.weight).toBe('mind')
  })

  it('of an upper goes through it on edge', () => {
    expect(findingIn(alone('diagonalUpper', 'Shop standard'), STUCK)).toBeNull()
    expect(findingIn(alone('diagonalUpper', 'Face frame, inset doors'), STUCK)).toBeNull()
  })
})

describe('a loose shelf round the corner of an L without a frame', () => {
  it('of a base is too wide for the opening of either leg', () => {
    const told = findingIn(alone('cornerBase', 'Shop standard', LOOSE), STUCK)!
    // Both legs open 900 - 18 - 580 wide, and 868 - 100 - 2 x 18 high; its diagonal is less than the shelf is wide.
    expect(told).toMatchObject({ weight: 'mind', measure: '864.5 mm' })
    expect(told.message).toContain(`a leg of ${900 - 18 - 580} mm by ${868 - 100 - 36} mm`)
    expect(Math.hypot(302, 732)).toBeLessThan(864.5)
    expect(told.limit).toBe(`${Math.round(longestThrough(18, { width: 302, height: 732 }) * 10) / 10} mm`)
  })

  it('is fixed in one step, which is built in with the other boards', () => {
    const project = alone('cornerBase', 'Shop standard', LOOSE)
    const told = findingIn(project, STUCK)!
    expect(told.remedy?.label).toBe('Fix the shelves of B1')
    const after = remedied(project, told)
    expect(Object.values(after.cabinets)[0]!.interior).toMatchObject({ fixedShelves: 1, adjustableShelves: 0 })
    expect(findingIn(after, STUCK)).toBeNull()
  })

  it('of an upper goes in on edge, and of one that is low does not', () => {
    // 564.5 wide, through 600 - 18 - 330 by 720 - 2 x 18.
    expect(passes({ length: 564.5, thickness: 18 }, { width: 252, height: 684 })).toBe(true)
    expect(findingIn(alone('cornerUpper', 'Shop standard'), STUCK)).toBeNull()
    const one = { fixedShelves: 0, adjustableShelves: 1, partition: null }
    const height = (clear: number) => alone('cornerUpper', 'Shop standard', { height: clear + 36, interior: one })
    // The least height: tilted so far that 252 are filled, by 564.5 cos + 18 sin.
    const least = Array.from({ length: 900 }, (_, at) => (at / 10) * (Math.PI / 180))
      .filter((tilt) => 564.5 * Math.cos(tilt) + 18 * Math.sin(tilt) <= 252)
      .reduce((a, tilt) => Math.min(a, 564.5 * Math.sin(tilt) + 18 * Math.cos(tilt)), 684)
    expect(findingIn(height(least + 2), STUCK)).toBeNull()
    expect(findingIn(height(least - 2), STUCK)).not.toBeNull()
  })

  it('has less height under a fixed shelf', () => {
    const fixed = { fixedShelves: 1, adjustableShelves: 1, partition: null }
    expect(findingIn(alone('cornerUpper', 'Shop standard', { interior: fixed }), STUCK)?.weight).toBe('mind')
  })

  it('is as stuck in the mirrored corner', () => {
    const corner = { kind: 'L', hand: 'right', other: 900, otherDepth: 580 } as const
    const [left, right] = [{ ...corner, hand: 'left' } as const, corner].map((one) =>
      findingIn(alone('cornerBase', 'Shop standard', { ...LOOSE, corner: one }), STUCK),
    )
    expect(right?.message).toBe(left?.message)
  })
})

describe('a loose shelf in a box with a lid', () => {
  const one = { fixedShelves: 0, adjustableShelves: 1, partition: null }
  /** With holes from 32 over the bottom on, so that a low box has some. */
  const box = (said: Partial<Cabinet>) => {
    const project = alone('benchBox', 'Shop standard', { interior: one, ...said })
    const { shelves } = project.methods[project.method]!
    return findingIn(built(project, { shelves: { ...shelves, firstHole: 32 } }), STUCK)
  }

  it('goes in from above between the stretchers, tilted', () => {
    expect(box({})).toBeNull()
  })

  it('does not where it is deep and little is below them', () => {
    // Stretchers of 18 stand at the front and before a back of 6 that is let in 10: 450 - 18 - 34 between them.
    const told = box({ height: 270 })!
    const below = 270 - 100 - 18 - 60
    expect(told).toMatchObject({ weight: 'mind' })
    expect(told.message).toContain(`${450 - 18 - 34} mm are between them and ${below} mm below`)
    const deep = Number.parseFloat(told.measure!)
    expect(deep).toBeGreaterThan(398)
    expect(passes({ length: deep, thickness: 18 }, { width: 398, height: below })).toBe(false)
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
