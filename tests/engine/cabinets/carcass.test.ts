import { describe, expect, it } from 'vitest'
import { backLength, backWidth } from '../../../engine/cabinets/back'
import { bottomLength, bottomWidth } from '../../../engine/cabinets/bottom'
import { backFront, jointDepth } from '../../../engine/cabinets/carcass'
import { nailerLength } from '../../../engine/cabinets/nailer'
import { sideLength, sideWidth } from '../../../engine/cabinets/side'
import { stretcherLength } from '../../../engine/cabinets/stretcher'
import { kickBoardLength, plinthDepth, plinthEndLength } from '../../../engine/cabinets/toeKick'
import { topLength, topWidth } from '../../../engine/cabinets/top'
import {
  aCabinet,
  boardIn,
  boardsOf,
  carcassFrom,
  type MethodChanges,
  PLAIN,
  rulesWith,
  sizeOf,
} from '../../helpers/cabinets'

const DADO_6 = { kind: 'dado', depth: { rule: 'depth', depth: 6 } } as const
const BASE = aCabinet('base', { width: 640, height: 870, depth: 585 })
const UPPER = aCabinet('upper', { width: 640, height: 720, depth: 330 })

const base = (changes: MethodChanges = {}) => carcassFrom(BASE, rulesWith(changes))
const upper = (changes: MethodChanges = {}) => carcassFrom(UPPER, rulesWith(changes))

describe('a housed joint', () => {
  it('is as deep as the rule says, whatever the sheet measures', () => {
    expect(jointDepth({ rule: 'depth', depth: 6 }, 17.5)).toBe(6)
  })
  it('leaves the residual outside it, whatever the sheet measures', () => {
    expect(jointDepth({ rule: 'residual', residual: 10 }, 17.5)).toBe(17.5 - 10)
  })
})

describe('a side', () => {
  it('is as high as the box of an upper', () => {
    expect(sideLength(upper())).toBe(720)
  })
  it('stands on the plinth', () => {
    expect(sideLength(base({ floor: { kind: 'plinth', height: 102, setback: 60 } }))).toBe(870 - 102)
  })
  it('runs to the floor where it is notched', () => {
    expect(sideLength(base({ floor: { kind: 'notched', height: 102, setback: 60 } }))).toBe(870)
  })
  it('stands in the bottom that carries it and in the top that lies over it', () => {
    const changes = { cornerJoint: DADO_6, bottom: 'under', top: 'over' } as const
    expect(sideLength(upper(changes))).toBe(720 - 18 - 18 + 6 + 6)
  })
  it('is as deep as the carcass less an applied back', () => {
    expect(sideWidth(base({ back: { kind: 'applied', margin: 1 } }))).toBe(585 - 6)
  })
  it('is as deep as the carcass less an applied back and the nailers behind it', () => {
    const nailers = { ...PLAIN.nailers, where: 'behind', top: true } as const
    expect(sideWidth(base({ back: { kind: 'applied', margin: 1 }, nailers }))).toBe(585 - 6 - 18)
  })
  it('gives way to nailers behind a captured back only by what its inset does not hold', () => {
    const nailers = { ...PLAIN.nailers, where: 'behind', top: true } as const
    const back = { kind: 'groove', inset: 12, depth: 6, clearance: 2 } as const
    expect(sideWidth(base({ back, nailers }))).toBe(585 - (18 - 12))
  })
})

describe('a bottom', () => {
  it('runs between the sides', () => {
    expect(bottomLength(upper())).toBe(640 - 2 * 18)
  })
  it('runs between the sides and into a dado on each', () => {
    expect(bottomLength(upper({ cornerJoint: DADO_6 }))).toBe(640 - 2 * 18 + 2 * 6)
  })
  it('runs under the sides across the whole width', () => {
    expect(bottomLength(upper({ bottom: 'under' }))).toBe(640)
  })
  it('stays between notched sides even where it would go under', () => {
    const changes = { bottom: 'under', floor: { kind: 'notched', height: 100, setback: 60 } } as const
    expect(bottomLength(base(changes))).toBe(640 - 2 * 18)
  })
  it('makes room for a back in rabbets', () => {
    expect(bottomWidth(upper({ back: { kind: 'rabbet', depth: 9 } }))).toBe(330 - 6)
  })
  it('carries a back in rabbets where it lies under the sides', () => {
    expect(bottomWidth(upper({ back: { kind: 'rabbet', depth: 9 }, bottom: 'under' }))).toBe(330)
  })
})

describe('a top', () => {
  it('runs between the sides and into their dados', () => {
    expect(topLength(upper({ cornerJoint: DADO_6 }))).toBe(640 - 2 * 18 + 2 * 6)
  })
  it('lies over the sides across the whole width', () => {
    expect(topLength(upper({ top: 'over' }))).toBe(640)
  })
  it('makes room for a back in rabbets', () => {
    expect(topWidth(upper({ back: { kind: 'rabbet', depth: 9 } }))).toBe(330 - 6)
  })
  it('of a base gives way to two stretchers butted between the sides', () => {
    const rules = rulesWith({ cornerJoint: DADO_6, baseTop: { kind: 'stretchersFlat', width: 75 } })
    expect(stretcherLength(carcassFrom(BASE, rules))).toBe(640 - 2 * 18)
    const boards = boardsOf(BASE, rules)
    expect(sizeOf(boardIn(boards, 'frontStretcher'))).toBe(`${640 - 2 * 18} x 75`)
    expect(sizeOf(boardIn(boards, 'backStretcher'))).toBe(`${640 - 2 * 18} x 75`)
    expect(boards.some(({ role }) => role === 'top')).toBe(false)
  })
})

describe('a back', () => {
  const groove = { kind: 'groove', inset: 12, depth: 7, clearance: 2 } as const
  it('in grooves spans the clear width and both grooves, less its play', () => {
    expect(backWidth(upper({ back: groove }))).toBe(640 - 2 * 18 + 2 * 7 - 2)
  })
  it('in grooves stands from groove to groove, less its play', () => {
    expect(backLength(upper({ back: groove }))).toBe(720 - 2 * 18 + 2 * 7 - 2)
  })
  it('in grooves runs up to the very top behind stretchers on edge', () => {
    const changes = { back: groove, baseTop: { kind: 'stretchersOnEdge', width: 90 } } as const
    expect(backLength(base(changes))).toBe(870 - 18 + 7 - 2)
  })
  it('in rabbets covers the bottom and the top', () => {
    const carcass = upper({ back: { kind: 'rabbet', depth: 9 } })
    expect(backWidth(carcass)).toBe(640 - 2 * (18 - 9))
    expect(backLength(carcass)).toBe(720)
  })
  it('applied over the carcass stays back all round by its margin', () => {
    const carcass = base({ back: { kind: 'applied', margin: 3 }, floor: { kind: 'legs', height: 100, setback: 50 } })
    expect(backWidth(carcass)).toBe(640 - 2 * 3)
    expect(backLength(carcass)).toBe(870 - 100 - 2 * 3)
  })
  it('leaves the inside to begin at its front face', () => {
    expect(backFront(upper({ back: groove }))).toBe(12 + 6)
  })
})

describe('a nailer', () => {
  it('is butted between the sides', () => {
    expect(nailerLength(upper({ cornerJoint: DADO_6 }))).toBe(640 - 2 * 18)
  })
  it('behind an applied back runs across both sides', () => {
    const nailers = { ...PLAIN.nailers, where: 'behind', top: true } as const
    expect(nailerLength(upper({ back: { kind: 'applied', margin: 1 }, nailers }))).toBe(640)
  })
  it('is not needed where a stretcher stands on edge before the back', () => {
    const nailers = { ...PLAIN.nailers, top: true }
    const boards = boardsOf(BASE, rulesWith({ nailers, baseTop: { kind: 'stretchersOnEdge', width: 90 } }))
    expect(boards.map(({ role }) => role)).not.toContain('topNailer')
  })
})

describe('the floor', () => {
  it('with notched sides has a kick board between them, its face at the setback', () => {
    const rules = rulesWith({ floor: { kind: 'notched', height: 102, setback: 75 } })
    expect(kickBoardLength(carcassFrom(BASE, rules))).toBe(640 - 2 * 18)
    const kick = boardIn(boardsOf(BASE, rules), 'kickBoard')
    expect(sizeOf(kick)).toBe(`${640 - 2 * 18} x 102`)
    expect(kick.placement.origin.z).toBe(585 - 75)
  })
  it('on a plinth has front and back across the width and ends between them', () => {
    const rules = rulesWith({ floor: { kind: 'plinth', height: 102, setback: 60 } })
    expect(plinthDepth(carcassFrom(BASE, rules))).toBe(585 - 60)
    expect(plinthEndLength(carcassFrom(BASE, rules))).toBe(585 - 60 - 2 * 18)
    const boards = boardsOf(BASE, rules)
    expect(sizeOf(boardIn(boards, 'plinthFront'))).toBe('640 x 102')
    expect(sizeOf(boardIn(boards, 'plinthBack'))).toBe('640 x 102')
    expect(sizeOf(boardIn(boards, 'plinthEnd', 2))).toBe(`${585 - 60 - 2 * 18} x 102`)
  })
  it('on legs has no boards, nor has an upper', () => {
    const legs = boardsOf(BASE, rulesWith({ floor: { kind: 'legs', height: 102, setback: 60 } }))
    const hung = boardsOf(UPPER, rulesWith({ floor: { kind: 'plinth', height: 102, setback: 60 } }))
    expect([...legs, ...hung].map(({ role }) => role).filter((role) => /plinth|kick/.test(role))).toEqual([])
  })
})

describe('the shop sizes that are common practice (no source)', () => {
  it('come out of a metric base: sides 768 by 580, stretchers 75', () => {
    const cabinet = aCabinet('base', { width: 600, height: 868, depth: 580 })
    const rules = rulesWith({
      cornerJoint: DADO_6,
      floor: { kind: 'plinth', height: 100, setback: 60 },
      baseTop: { kind: 'stretchersFlat', width: 75 },
    })
    const boards = boardsOf(cabinet, rules)
    expect(sizeOf(boardIn(boards, 'leftSide'))).toBe(`${868 - 100} x 580`)
    expect(sizeOf(boardIn(boards, 'frontStretcher'))).toBe(`${600 - 2 * 18} x 75`)
  })
})
