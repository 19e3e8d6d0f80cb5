import { describe, expect, it } from 'vitest'
import type { WallId } from '../../../engine/basics/id'
import { outWithin, swingsOf } from '../../../engine/checks/swing'
import type { Corner } from '../../../engine/project/corner'
import type { Cabinet, Project } from '../../../engine/project/document'
import { aRoom, cabinet, the } from '../../helpers/wall'
import { figureOf, findingIn, remedied } from './findings'

const SWINGS = /its door swings/
/** Fronts of a new metric project are 18 thick. */
const FRONT = 18
const PULL = 40

/** In the corner at the left end of the first wall, which the fourth meets: 900 along both, legs of 580. */
const cornered = (kind: Corner['kind'], hinge: 'left' | 'right', said: Partial<Cabinet> = {}) =>
  cabinet('B1', {
    left: 0,
    width: 900,
    depth: 580,
    front: { kind: 'door', hinge },
    corner: { kind, hand: 'left', other: 900, otherDepth: 580 },
    ...said,
  })

/** A closed room, its first wall so far from the third. */
function apart(depth: number, ...cabinets: readonly Cabinet[]): Project {
  const room = aRoom(...cabinets)
  const sides = ['w2', 'w4'].map((id) => [id, { ...room.walls[id as WallId]!, length: depth }])
  return { ...room, walls: { ...room.walls, ...Object.fromEntries(sides) } }
}

/** Along the third wall, so far from the corner that the fourth makes with it: its right end is opposite the left of the first. */
const across = (fromCorner: number, said: Partial<Cabinet> = {}) =>
  cabinet('B2', { wall: 'w3' as WallId, left: 3600 - fromCorner - 600, width: 600, depth: 580, ...said })

describe('the swing of a corner door', () => {
  const line = Math.hypot(320, 320)
  /** The face stands 18 before the line, which goes at 45 degrees. */
  const out = FRONT / Math.SQRT2

  it('of a diagonal is a quarter circle about the end that it hangs on', () => {
    const [swing] = swingsOf(cornered('diagonal', 'right'), FRONT)
    // Hinged at 900 and 580 it stands straight out from the own wall on its way.
    expect(outWithin(swing!, 'own', { from: 0, to: 3600 })).toBeCloseTo(580 + out + line, 1)
    // Before what ends 100 left of the hinge, less by the circle.
    const there = { from: 0, to: 900 + out - 100 }
    expect(outWithin(swing!, 'own', there)).toBeCloseTo(580 + out + Math.sqrt(line ** 2 - 100 ** 2), 1)
    // Opened square it leans at 45 degrees, as far along as out.
    expect(outWithin(swing!, 'own', { from: 900 + out + 319.99, to: 3600 })).toBeCloseTo(580 + out + 320, 1)
    expect(outWithin(swing!, 'own', { from: 900 + out + 321, to: 3600 })).toBe(0)
    // From the other wall it comes out by what it goes along.
    expect(outWithin(swing!, 'other', { from: 0, to: 3600 })).toBeCloseTo(900 + out + 320, 1)
  })

  it('of an L is that of the leaf that is hung, with the other folded on to it', () => {
    const swings = swingsOf(cornered('L', 'left'), FRONT)
    const whole = { from: 0, to: 3600 }
    // Both leaves are 900 - 580 - 18, and stand out so far before a face at 580 + 18.
    expect(Math.max(...swings.map((swing) => outWithin(swing, 'own', whole)))).toBeCloseTo(598 + 302, 1)
    expect(Math.max(...swings.map((swing) => outWithin(swing, 'other', whole)))).toBeCloseTo(598 + 302, 1)
  })
})

describe('the door of a corner cabinet across the room', () => {
  it('cannot be opened square where a front stands in its swing, and is hung on the other end where that helps', () => {
    const reach = 580 + FRONT / Math.SQRT2 + Math.hypot(320, 320)
    // Its hinge is at 900 of the first wall; so is B2, from 700 to 1300.
    const room = (gap: number) => apart(reach + gap + 580, cornered('diagonal', 'right'), across(700))
    const turned = (gap: number) => apart(reach + gap + 580, cornered('diagonal', 'left'), across(700))
    const finding = findingIn(room(-30), SWINGS)!
    expect(finding).toMatchObject({ weight: 'mind' })
    expect(figureOf(finding.measure)).toBeCloseTo(reach - 30, 0)
    expect(figureOf(finding.limit)).toBeCloseTo(reach, 0)
    expect(finding.message).toContain('B2 across the room')
    // Hung on the other end it comes out further, by as much as that end does.
    expect(finding.remedy).toBeUndefined()
    expect(findingIn(room(1), SWINGS)).toBeNull()
    const further = findingIn(turned(1), SWINGS)!
    expect(figureOf(further.limit)).toBeCloseTo(900 + FRONT / Math.SQRT2 + 320, 0)
    expect(further.remedy?.label).toBe('Hinge B1 at the other side')
    const after = remedied(turned(1), further)
    expect(the(after, 'B1').front).toEqual({ kind: 'door', hinge: 'right' })
    expect(findingIn(after, SWINGS)).toBeNull()
  })

  it('counts the pulls of what stands there', () => {
    const reach = 580 + FRONT / Math.SQRT2 + Math.hypot(320, 320)
    const drawers = across(700, { front: { kind: 'drawer' } })
    const room = (gap: number) => apart(reach + gap + 580 + FRONT, cornered('diagonal', 'right'), drawers)
    expect(findingIn(room(PULL - 1), SWINGS)).toMatchObject({ weight: 'know' })
    expect(findingIn(room(PULL + 1), SWINGS)).toBeNull()
  })

  it('is looked at from the wall of its other leg too, and against the bare wall', () => {
    const room = aRoom(cornered('L', 'left'))
    const narrow = (length: number) => {
      const sides = ['w1', 'w3'].map((id) => [id, { ...room.walls[id as WallId]!, length }])
      return { ...room, walls: { ...room.walls, ...Object.fromEntries(sides) } }
    }
    expect(findingIn(narrow(899), SWINGS)?.message).toContain('the wall opposite')
    expect(findingIn(narrow(901), SWINGS)).toBeNull()
  })

  it('is none where the corner is open, and passes what hangs higher', () => {
    const open = cornered('diagonal', 'right', { front: { kind: 'open' } })
    expect(findingIn(apart(1200, open, across(700)), SWINGS)).toBeNull()
    const upper = cabinet('U2', { wall: 'w3' as WallId, left: 2300, width: 600, bottom: 1400, depth: 900 })
    expect(findingIn(apart(1200, cornered('diagonal', 'right'), upper), SWINGS)).toBeNull()
    expect(findingIn(apart(1200, cornered('diagonal', 'right', { height: 1500 }), upper), SWINGS)).not.toBeNull()
  })
})

describe('the folding door of an L beside something that stands out further', () => {
  const FOLDS = /folding door/
  const tall = (gap: number, depth: number) => cabinet('T1', { left: 900 + gap, width: 600, height: 2052, depth })

  it('has both leaves and a pull beside it when it is opened square', () => {
    // The tall is open, so that its face is its depth; the face of the corner is at 580 + 18.
    const project = aRoom(cornered('L', 'left'), tall(3, 700))
    const finding = findingIn(project, FOLDS)!
    expect(finding).toMatchObject({ weight: 'know', measure: '3 mm', limit: `${PULL + FRONT} mm` })
    expect(finding.message).toContain(`${700 - 580 - FRONT} mm further`)
    expect(findingIn(remedied(project, finding), FOLDS)).toBeNull()
    expect(findingIn(aRoom(cornered('L', 'left'), tall(PULL + FRONT, 700)), FOLDS)).toBeNull()
  })

  it('strikes it however it is folded where that stands out almost as far as a leaf is wide', () => {
    const weight = (proud: number) => findingIn(aRoom(cornered('L', 'left'), tall(0, 598 + proud)), FOLDS)?.weight
    expect(weight(302 - PULL)).toBe('know')
    expect(weight(302 - PULL + 1)).toBe('mind')
    expect(weight(0)).toBeUndefined()
  })

  it('clears it where the leaf that is pulled is so short that it ends before it', () => {
    const short = cornered('L', 'left', { corner: { kind: 'L', hand: 'left', other: 800, otherDepth: 580 } })
    // Leaves of 302 and 202: folded, the shorter one ends 100 before the hinges.
    expect(findingIn(aRoom(short, tall(0, 598 + 100)), FOLDS)).toBeNull()
    expect(findingIn(aRoom(short, tall(0, 598 + 101)), FOLDS)).not.toBeNull()
  })
})
