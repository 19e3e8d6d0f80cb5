import { describe, expect, it } from 'vitest'
import type { MaterialId, MethodId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import type { Cabinet, Project } from '../../../engine/project/document'
import { type Fixing, USUAL_FIXINGS, USUAL_FRAME_FIXINGS } from '../../../engine/project/fixing'
import { USUAL_FRAME } from '../../../engine/project/frames'
import { aCorner, aWall, cabinet, OTHER_WALL } from '../../helpers/wall'

const { screws, dowels, looseTenons } = USUAL_FIXINGS
const m1 = 'm1' as MethodId

/** A wall whose cabinets are butted, or housed, and held so. */
function held(fixing: Fixing, cabinets: readonly Cabinet[], isHoused = false, wall = aWall): Project {
  const project = wall(...cabinets)
  const method = project.methods[m1]!
  const cornerJoint = isHoused ? method.cornerJoint : ({ kind: 'butt' } as const)
  return { ...project, methods: { ...project.methods, [m1]: { ...method, fixing, cornerJoint } } }
}

function told(project: Project, words: RegExp) {
  return derive(project).problems.filter(({ message }) => words.test(message))
}

const ALONE = [cabinet('B1', { left: 1000 })]

describe('screws through sides', () => {
  const between = [cabinet('B1', { left: 0 }), cabinet('B2', { left: 600 }), cabinet('B3', { left: 1200 })]

  it('are seen where nothing stands beside: on both sides, or on the last one of a run', () => {
    expect(told(held(screws, ALONE), /are seen/)[0]).toMatchObject({ weight: 'mind', measure: '2 sides' })
    const [finding, ...others] = told(held(screws, between), /are seen/)
    expect(finding!.message).toMatch(/^B3: screws through its right side are seen/)
    expect(others).toEqual([])
  })

  it('are not seen under a finished end, nor are dowels at all', () => {
    const skin = { kind: 'skin', material: 'front' as MaterialId } as const
    const finished = [cabinet('B1', { left: 1000, beside: { left: skin, right: skin } })]
    expect(told(held(screws, finished), /are seen/)).toEqual([])
    expect(told(held(dowels, ALONE), /are seen/)).toEqual([])
  })

  it('are seen in a corner cabinet on the sides of its two legs, as long as nothing stands beside them', () => {
    const corner = { kind: 'L', hand: 'right', other: 900, otherDepth: 580 } as const
    const l = cabinet('B1', { left: 3600 - 920, width: 920, corner })
    const [before, after] = [cabinet('B2', { left: 3600 - 920 - 600 }), cabinet('B3', { wall: OTHER_WALL, left: 900 })]
    const sides = (...others: Cabinet[]) =>
      told(held(screws, [l, ...others], false, aCorner), /^B1: .*are seen/)[0]?.message.match(/both|left|right/)?.[0]
    expect([sides(), sides(before), sides(after), sides(before, after)]).toEqual(['both', 'right', 'left', undefined])
  })

  it('are seen as pockets beside an L whose frames are screwed on, not beside a diagonal, whose frame is glued to its sides', () => {
    const framed = (kind: 'L' | 'diagonal', mark = 'B1') => {
      const corner = { kind, hand: 'right', other: 900, otherDepth: 580 } as const
      const project = held(dowels, [cabinet(mark, { left: 3600 - 920, width: 920, corner })], false, aCorner)
      const method = { ...project.methods[m1]!, faceFrame: USUAL_FRAME, frameFixing: USUAL_FRAME_FIXINGS.pocketScrews }
      return { ...project, methods: { ...project.methods, [m1]: method } }
    }
    expect(told(framed('L'), /are seen/)[0]?.message).toMatch(/^B1: pocket holes in both its sides are seen/)
    expect(told(framed('diagonal'), /are seen/)).toEqual([])
    // What hangs is looked at from below, where both are bored.
    for (const kind of ['L', 'diagonal'] as const) {
      const under = told(framed(kind, 'U1'), /seen from below/).map(({ message }) => message)
      expect(under, kind).toEqual([expect.stringMatching(/^U1: pocket holes in the underside of its bottom/)])
    }
  })

  it('hold in the end with what the side leaves of them', () => {
    // 18 of 50 are in the side and 32 in the end; of 35 they are 17, less than 20.
    expect(told(held(screws, ALONE), /hold in an end/)).toEqual([])
    expect(told(held({ ...screws, length: 35 }, ALONE), /hold in an end/)[0]).toMatchObject({
      measure: '17 mm',
      limit: '20 mm',
    })
  })
})

describe('dowels and loose tenons', () => {
  it('find room in their two holes, or it is told', () => {
    // 12 + 20 = 32 for 30; 12 + 17 = 29.
    expect(told(held(dowels, ALONE), /deep together/)).toEqual([])
    expect(told(held({ ...dowels, inEnd: 17 }, ALONE), /deep together/)[0]).toMatchObject({
      measure: '29 mm',
      limit: '30 mm',
    })
  })

  it('are not set in housed corners, and that is told', () => {
    const [finding] = told(held(looseTenons, ALONE, true), /housed in its corners/)
    expect(finding).toMatchObject({ weight: 'know', measure: '2 ends' })
    expect(told(held(looseTenons, ALONE), /housed in its corners/)).toEqual([])
  })
})
