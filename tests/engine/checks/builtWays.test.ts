import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { USUAL_FRAME, USUAL_TENON } from '../../../engine/project/frames'
import { aWall, cabinet, the } from '../../helpers/wall'
import { built, findingIn, remedied } from './findings'

describe('a way out of what the build tells', () => {
  it('lets a face frame end flush where a finished end stands, and as before at the other side', () => {
    const skin = { kind: 'skin', material: 'back' as MaterialId } as const
    const beside = { left: skin, right: { kind: 'none' } } as const
    const project = built(aWall(cabinet('B1', { left: 600, width: 600, beside })), { faceFrame: USUAL_FRAME })
    const finding = findingIn(project, /off the side, as its face frame does/)!
    expect(finding.remedy?.label).toBe('Let the face frame of B1 end flush at its left')
    const after = remedied(project, finding)
    expect(the(after, 'B1').overrides.faceFrame).toMatchObject({ pastLeft: 0, pastRight: USUAL_FRAME.pastRight })
    expect(findingIn(after, /off the side/)).toBeNull()
  })

  it('makes tenons that would meet as long as is usual, so that the rails are longer by two of them', () => {
    const joint = { kind: 'tenon', length: 25.4 } as const
    const project = built(aWall(cabinet('B1', { left: 600, width: 600 })), { faceFrame: { ...USUAL_FRAME, joint } })
    const finding = findingIn(project, /members are butted instead/)!
    expect(finding.weight).toBe('stop')
    const after = remedied(project, finding)
    expect(findingIn(after, /members are butted instead/)).toBeNull()
    const rail = derive(after).cabinets[0]!.parts.find(({ role }) => role === 'topRail')!
    expect(rail.length).toBeCloseTo(600 - 2 * 38.1 + 2 * USUAL_TENON, 3)
  })

  it('leaves the shelves out where a pull-out takes all of the height', () => {
    const interior = { fixedShelves: 0, adjustableShelves: 1, partition: null }
    const front = { kind: 'pullOut', box: 250 } as const
    const project = aWall(cabinet('B1', { left: 600, width: 450, front, interior }))
    const finding = findingIn(project, /so shelves and partition are left out/)!
    expect(finding.remedy?.label).toBe('Leave the shelves and partitions out of B1')
    const after = remedied(project, finding)
    expect(the(after, 'B1').interior.adjustableShelves).toBe(0)
    expect(findingIn(after, /are left out/)).toBeNull()
  })
})
