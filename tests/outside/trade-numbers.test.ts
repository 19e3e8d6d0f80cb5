import { describe, expect, it } from 'vitest'
import { backWidth } from '../../engine/cabinets/back'
import { NO_BANDING } from '../../engine/cabinets/board'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { boxLength } from '../../engine/cabinets/drawerBox'
import { cutSize } from '../../engine/parts/cutSize'
import { newProject } from '../../engine/project/defaults'
import type { Front } from '../../engine/project/document'
import { USUAL_FRAME, USUAL_OVERLAY } from '../../engine/project/frames'
import { inch, settle } from '../../engine/units/length'
import { aCabinet, boardIn, boardsOf, carcassFrom, PLAIN, rulesWith } from '../helpers/cabinets'

const DOOR: Front = { kind: 'door', hinge: 'left' }
const share = (front: Front) => ({ size: { kind: 'share', share: 1 }, front, shelves: null }) as const
const PLY = { carcass: inch(0.75), back: inch(0.75) }

describe('a back of 3/4 in that is screwed into rabbets', () => {
  it("has them 1/2 in deep (source: Popular Woodworking 148, p. 37, 'Making the rabbet 1/2\" deep')", () => {
    const upper = aCabinet('upper', { width: inch(30) })
    const rules = rulesWith({ back: { kind: 'rabbet', depth: inch(0.5) } }, PLY)
    // 1/4 in of each side is left outside it.
    expect(backWidth(carcassFrom(upper, rules))).toBe(inch(30 - 2 * 0.25))
    const rabbets = boardIn(boardsOf(upper, rules), 'leftSide').operations.filter(({ kind }) => kind === 'rabbet')
    expect(rabbets).toContainEqual(expect.objectContaining({ depth: inch(0.5), width: inch(0.75) }))
  })
})

describe('a side with a lipping of 1/4 in', () => {
  it('of 10 1/4 in is cut of ply 10 in wide (read in a published plan whose name was not kept)', () => {
    const side = { length: inch(30), width: inch(10.25), banding: { ...NO_BANDING, low: inch(0.25) } }
    expect(cutSize(side, { ...PLAIN.banding, isInFinishedSize: true }).width).toBe(inch(10))
  })
})

describe('the usual face frame', () => {
  const built = (front: Front, frame: Partial<typeof USUAL_FRAME> = {}) =>
    buildCabinet(
      aCabinet('base', { width: inch(36), height: inch(30), front }),
      rulesWith({ faceFrame: { ...USUAL_FRAME, ...frame } }),
    )
  const overlay = { kind: 'overlay', by: USUAL_OVERLAY } as const

  // Source: a homeownershub post on face frames, 'Base cabinet stiles: 1 1/2" wide'. Rails between them: common practice, no source.
  it('of a base of 36 in has rails of 33 in between stiles of 1 1/2', () => {
    const { boards } = built(DOOR)
    expect(boardIn(boards, 'stile').width).toBe(inch(1.5))
    expect(boardIn(boards, 'topRail').length).toBe(inch(33))
  })

  // Source: a homeownershub post on face frames, 'Wall cabinet top rail: 2 1/2"'.
  it('may have a top rail of 2 1/2 in over the doors of uppers alone', () => {
    const faceFrame = { ...USUAL_FRAME, upperTopRail: inch(2.5) }
    const railOf = (kind: 'base' | 'upper') =>
      boardIn(buildCabinet(aCabinet(kind, { front: DOOR }), rulesWith({ faceFrame })).boards, 'topRail').width
    expect([railOf('upper'), railOf('base')]).toEqual([inch(2.5), inch(1.5)])
  })

  // Source: a forum thread on face frames, '1-1/4 inch of all of the stiles and rails exposed with my 1/2 inch overlay doors'.
  it('with stiles and rails of 1 3/4 in shows 1 1/4 in of them beside its usual overlay doors', () => {
    const wide = { stile: inch(1.75), topRail: inch(1.75), fronts: overlay }
    const { rect } = built(DOOR, wide).fronts[0]!
    expect(rect.left).toBe(inch(1.25))
    expect(settle(inch(36) - rect.left - rect.width)).toBe(inch(1.25))
    expect(settle(inch(30) - rect.bottom - rect.height)).toBe(inch(1.25))
  })

  // Source: a forum thread on overlay jobs, 'the reveal between all doors/drawers is 1/2"'.
  it('leaves 1/2 in between two of its usual overlay doors', () => {
    const [left, right] = built({ kind: 'columns', columns: [share(DOOR), share(DOOR)] }, { fronts: overlay }).fronts
    expect(settle(right!.rect.left - left!.rect.left - left!.rect.width)).toBe(inch(0.5))
  })
})

describe('the doors of a new project', () => {
  it.each(['mm', 'in'] as const)(
    'are 3 mm or 1/8 in from those of the next cabinet, in %s (common practice, no source)',
    (unit) => {
      const { methods, method } = newProject(unit)
      const { rect } = buildCabinet(aCabinet('base', { front: DOOR }), rulesWith({ fronts: methods[method]!.fronts }))
        .fronts[0]!
      // The next cabinet is built the same, so both reveals of this one lie between the two.
      const between = settle(600 - rect.width)
      expect(between).toBeGreaterThanOrEqual(3)
      expect(between).toBeLessThanOrEqual(inch(1 / 8))
    },
  )
})

// Source: davelers.com, 'Door and drawer faces are some multiple of 32mm (32m) tall minus the desired gap (g)'.
describe('the fronts of a side that is a multiple of 32 high', () => {
  it.each([
    [1, 24],
    [2, 12],
    [3, 8],
    [4, 6],
  ])('are, %i of them on one of 768, each %i x 32 less their gap high', (count, pitches) => {
    const front: Front = { kind: 'rows', rows: Array.from({ length: count }, () => share({ kind: 'drawer' })) }
    const { fronts } = buildCabinet(aCabinet('base', { height: 768, front }), rulesWith())
    expect(fronts.map(({ rect }) => rect.height)).toEqual(Array(count).fill(pitches * 32 - 3))
  })
})

describe('the box of a drawer on undermount slides', () => {
  it('of a new build method leaves them the published half inch', () => {
    const slides = Object.values(newProject('mm').methods).map(({ slide }) => slide)
    expect(slides.filter(({ kind }) => kind === 'undermount')).toEqual([
      { kind: 'undermount', insideDeduction: 41.3, longerBy: inch(0.5) },
    ])
  })

  // Source: a drawer maker's page, such slides are 'approximately 1/2" (.5) Longer Than They Are Advertised', 7/8 in with rear brackets.
  it.each([0.5, 7 / 8])(
    'of 21 in goes where there are 21 in and the %f that its slides are longer, and not in less',
    (longer) => {
      const drawers = { ...PLAIN.drawers, lengthStep: inch(1) }
      const slide = { kind: 'undermount', insideDeduction: 42, longerBy: inch(longer) } as const
      const carcass = carcassFrom(aCabinet('base', { front: { kind: 'drawer' } }), rulesWith({ slide, drawers }))
      expect(boxLength(inch(21 + longer), carcass)).toBe(inch(21))
      expect(boxLength(inch(21 + longer - 1 / 16), carcass)).toBe(inch(20))
    },
  )
})
