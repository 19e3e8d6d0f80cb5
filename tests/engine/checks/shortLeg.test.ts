import { describe, expect, it } from 'vitest'
import type { WallId } from '../../../engine/basics/id'
import type { Cabinet } from '../../../engine/project/document'
import { aRoom, cabinet, the } from '../../helpers/wall'
import { built, findingIn, remedied } from './findings'

const SHORT = /goes on .* between/
/** The least that a leg goes on, and the side that closes it. */
const LEAST = 150
const SIDE = 18

/** In the left or the right corner of a wall of 3600; the leg along the other wall is 560 deep, its own 580. */
function cornered(hand: 'left' | 'right', width: number, other: number, kind: 'L' | 'diagonal' = 'L'): Cabinet {
  return cabinet('B1', {
    left: hand === 'left' ? 0 : 3600 - width,
    width,
    depth: 580,
    front: { kind: 'door', hinge: 'left' },
    corner: { kind, hand, other, otherDepth: 560 },
  })
}

describe('a corner cabinet with a leg that is too short', () => {
  it('is widened by what is missing and pushes its neighbour along', () => {
    const beside = cabinet('B2', { left: 700, width: 600 })
    const project = aRoom(cornered('left', 700, 900), beside)
    const finding = findingIn(project, SHORT)!
    expect(finding.weight).toBe('stop')
    const width = 560 + LEAST + SIDE
    expect(finding.remedy?.label).toBe(`Widen B1 to ${width} mm`)
    const after = remedied(project, finding)
    expect(the(after, 'B1')).toMatchObject({ left: 0, width })
    expect(the(after, 'B2').left).toBe(width)
    expect(findingIn(after, SHORT)).toBeNull()
  })

  it('stays in the corner at the right', () => {
    const project = aRoom(cornered('right', 700, 900))
    const width = 560 + LEAST + SIDE
    expect(the(remedied(project, findingIn(project, SHORT)!), 'B1')).toMatchObject({ left: 3600 - width, width })
  })

  it('has its other leg made longer, where that is free', () => {
    const project = aRoom(cornered('left', 900, 700))
    const other = 580 + LEAST + SIDE
    const finding = findingIn(project, SHORT)!
    expect(finding.remedy?.label).toBe(`Make the other leg of B1 ${other} mm long`)
    expect(the(remedied(project, finding), 'B1')).toMatchObject({ width: 900, corner: { other } })
    // The fourth wall meets the first there, and something stands at it where the leg ends now.
    const { length } = aRoom().walls['w4' as WallId]!
    const next = cabinet('B2', { wall: 'w4' as WallId, left: length - 700 - 600, width: 600, depth: 580 })
    expect(findingIn(aRoom(cornered('left', 900, 700), next), SHORT)?.remedy).toBeUndefined()
  })

  it('behind a slanting frame is asked again until both legs go on far enough', () => {
    const framed = Object.values(aRoom().methods).find((one) => one.faceFrame !== null)!.faceFrame
    const project = built(aRoom(cornered('left', 650, 900, 'diagonal')), { faceFrame: framed })
    const finding = findingIn(project, SHORT)!
    expect(findingIn(remedied(project, finding), SHORT)).toBeNull()
  })

  it('has no way out where nothing can be pushed', () => {
    const full = cabinet('B2', { left: 700, width: 2900 })
    expect(findingIn(aRoom(cornered('left', 700, 900), full), SHORT)?.remedy).toBeUndefined()
  })
})
