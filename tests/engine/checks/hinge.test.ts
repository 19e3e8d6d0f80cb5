import { describe, expect, it } from 'vitest'
import type { MethodId } from '../../../engine/basics/id'
import { applyEdit } from '../../../engine/project/apply'
import type { Project } from '../../../engine/project/document'
import { USUAL_FIVE_PART } from '../../../engine/project/frames'
import type { HingeRules } from '../../../engine/project/hingeRules'
import { USUAL_HINGE } from '../../../engine/project/machining'
import { aWall, cabinet } from '../../helpers/wall'
import { figureOf, findingIn } from './findings'

const DOOR = { kind: 'door', hinge: 'left' } as const
const PROJECT = aWall(cabinet('B1', { left: 500, width: 450, height: 868, front: DOOR }))

function hungWith(change: Partial<HingeRules>, project: Project = PROJECT): Project {
  const hinge = { ...USUAL_HINGE, ...change }
  return applyEdit(project, { kind: 'editMethod', id: 'm1' as MethodId, change: { hinge } })
}

describe('the hinges of a build method', () => {
  // Source: a hinge maker's quick reference, OL = FD + B - H.
  it('cover what the door does, give or take what they can be set by', () => {
    // Sides of 18 with a reveal of 1.5 are covered by 16.5; the hinges give 11.5 + 5 - H.
    expect(findingIn(hungWith({ plateHeight: 2 }), /cover an edge/)).toBeNull()
    const finding = findingIn(hungWith({ plateHeight: 3 }), /cover an edge/)
    expect(finding?.weight).toBe('mind')
    expect(figureOf(finding?.measure)).toBeCloseTo(18 - 1.5 - (11.5 + 5 - 3), 6)
  })

  it('leave 3 of a door behind their cups', () => {
    // Source: a hinge catalogue of 2023: cups are 10.5 or 12.5 mm deep at least. 3 behind them: common practice, no source.
    for (const cupDepth of [10.5, 12.5, 18 - 3]) expect(findingIn(hungWith({ cupDepth }), /deep leave/)).toBeNull()
    expect(figureOf(findingIn(hungWith({ cupDepth: 18 - 2 }), /deep leave/)?.measure)).toBe(2)
  })

  it('keep their cups out of the groove of a five-part door', () => {
    // A cup of 35 begins 5 from the edge and ends at 40; a groove of 10 in a stile of 50 begins there.
    const framed = (stile: number) =>
      findingIn(
        applyEdit(PROJECT, {
          kind: 'editMethod',
          id: 'm1' as MethodId,
          change: { frontBuild: { ...USUAL_FIVE_PART, stile, groove: 10 } },
        }),
        /groove of the panel/,
      )
    expect(framed(50)).toBeNull()
    expect(framed(49)).toMatchObject({ weight: 'mind', measure: '40 mm', limit: '39 mm' })
  })

  it('find no place where a plate is as long as the door is high, and that is said', () => {
    expect(findingIn(PROJECT, /find no place/)).toBeNull()
    expect(findingIn(hungWith({ plateLength: 800 }), /find no place/)?.measure).toBe('2 hinges')
  })

  it('need their plates on the board that the door hangs on', () => {
    expect(findingIn(PROJECT, /the plates of/)).toBeNull()
    const finding = findingIn(hungWith({ plateFromFront: 900 }), /the plates of/)
    expect(finding).toMatchObject({ weight: 'mind', measure: '900 mm', limit: '580 mm' })
  })

  it('are nothing to speak of where nothing is bored', () => {
    expect(findingIn(hungWith({ cupDiameter: 0 }), /find no place|cover an edge/)).toBeNull()
  })
})
