import { describe, expect, it } from 'vitest'
import type { Cabinet } from '../../../engine/project/document'
import { aCorner, cabinet, OTHER_WALL } from '../../helpers/wall'
import { figureOf, findingIn, remedied } from './findings'

const MEETS = /its door meets/
/** Fronts of a new metric project are 18 thick; on a slant of 45 degrees that is 18 √2 out from the wall. */
const OUT = 18 * Math.SQRT2

/** In the corner at the left end of the second wall: 900 along both, legs of 580. Its own end is its right one. */
const diagonal = (hinge: 'left' | 'right') =>
  cabinet('B1', {
    wall: OTHER_WALL,
    left: 0,
    width: 900,
    depth: 580,
    front: { kind: 'door', hinge },
    corner: { kind: 'diagonal', hand: 'left', other: 900, otherDepth: 580 },
  })
const tall = (said: Partial<Cabinet>) => cabinet('T1', { width: 600, height: 2052, depth: 700, ...said })
const own = (gap: number, depth = 700) => tall({ wall: OTHER_WALL, left: 900 + gap, depth })

describe('the door of a diagonal corner beside something that stands out further', () => {
  it('cannot be opened square on hinges at that end', () => {
    // Opened it stands at 45 degrees: as far along the wall as the tall stands out before its hinged edge.
    const project = aCorner(diagonal('right'), own(0))
    const finding = findingIn(project, MEETS)!
    expect(finding).toMatchObject({ weight: 'mind', measure: '0 mm', source: 'worked out from the boards' })
    expect(figureOf(finding.limit)).toBeCloseTo(700 - 580 - OUT, 0)
    expect(finding.message).toMatch(/^B1: .*T1.* opened square/)
    expect(findingIn(aCorner(diagonal('right'), own(94)), MEETS)).not.toBeNull()
    expect(findingIn(aCorner(diagonal('right'), own(95)), MEETS)).toBeNull()
    expect(findingIn(remedied(project, finding), MEETS)).toBeNull()
  })

  it('swings against it with its free edge', () => {
    // A circle of 320 √2 about the far end at 580 and 900: at 700 from the wall it is at 580 + √(2 x 320² - 200²).
    const limit = Math.sqrt(2 * 320 ** 2 - 200 ** 2) - 320
    const finding = findingIn(aCorner(diagonal('left'), own(20)), MEETS)!
    expect(figureOf(finding.limit)).toBeCloseTo(limit, 0)
    expect(finding.message).toContain('swing past it')
    expect(findingIn(aCorner(diagonal('left'), own(limit + 0.5)), MEETS)).toBeNull()
  })

  it('is told at the end along the other wall too', () => {
    // The first wall is 3600 long, and the other leg takes 900 of it.
    const other = tall({ left: 3600 - 900 - 600 - 20 })
    expect(findingIn(aCorner(diagonal('left'), other), MEETS)?.message).toContain('opened square')
    expect(findingIn(aCorner(diagonal('right'), other), MEETS)?.message).toContain('swing past it')
  })

  it('clears what is no deeper than its leg, and what stands higher', () => {
    expect(findingIn(aCorner(diagonal('right'), own(0, 580)), MEETS)).toBeNull()
    const upper = cabinet('U1', { wall: OTHER_WALL, left: 900, width: 600, bottom: 1400, depth: 700 })
    expect(findingIn(aCorner(diagonal('right'), upper), MEETS)).toBeNull()
  })
})
