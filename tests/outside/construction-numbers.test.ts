import { describe, expect, it } from 'vitest'
import { boxOf } from '../../engine/cabinets/boardBox'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { edgeGives } from '../../engine/checks/overhang'
import { sagOf } from '../../engine/checks/sag'
import { cutSize } from '../../engine/parts/cutSize'
import { newProject } from '../../engine/project/defaults'
import type { Front } from '../../engine/project/document'
import type { MethodChoices } from '../../engine/project/method'
import { inch, settle } from '../../engine/units/length'
import { aCabinet, boardIn, boardsOf, PLAIN, rulesWith } from '../helpers/cabinets'

const methods = (unit: 'mm' | 'in') => Object.values(newProject(unit).methods)
const within = (value: number, least: number, most: number) => {
  expect(value).toBeGreaterThanOrEqual(least)
  expect(value).toBeLessThanOrEqual(most)
}

// Source: general mechanics, and a formula sheet of beams, 'Cantilever, end load (P) ... Cantilever, uniform load (w) wL^4/8EI free end'.
describe('a board that stands out free by 12 in', () => {
  it('of 24 by 3/4 in at 1.8 million psi goes down 0.379 in under 100 lb on its edge, and 0.003 in for every lb per sq ft', () => {
    const [lb, psi] = [4.4482216, 0.0068947573]
    const board = { width: inch(24), thickness: inch(0.75), stiffness: 1.8e6 * psi }
    // I is 24 x 0.75^3 / 12 = 0.84375 in4: 100 x 12^3 / (3 x 1.8e6 x 0.84375), and 24/144 x 12^4 / (8 x 1.8e6 x 0.84375).
    expect(edgeGives(inch(12), board, 100 * lb, 0) / 25.4).toBeCloseTo((100 * 1728) / (3 * 1.8e6 * 0.84375), 5)
    expect(edgeGives(inch(12), board, 0, (1 / 144) * psi) / 25.4).toBeCloseTo(
      ((24 / 144) * 20736) / (8 * 1.8e6 * 0.84375),
      6,
    )
  })
})

// Follows from 5 w L^4 / (384 E I), I = b t^3 / 12, of general mechanics.
describe('the sag of a shelf', () => {
  const shelf = (depth: number, thickness: number) => ({ depth, thickness, stiffness: 3000, ends: 'resting' }) as const
  const sag = sagOf(400, shelf(300, 16), 0.0005)
  it('is 16 times as much over twice the span under an even load, and 8 times under the same load in all', () => {
    expect(sagOf(800, shelf(300, 16), 0.0005) / sag).toBeCloseTo(16, 9)
    expect(sagOf(800, shelf(300, 16), 0.00025) / sag).toBeCloseTo(8, 9)
  })
  it('is an eighth of it at twice the thickness, and the same at any depth', () => {
    expect(sagOf(400, shelf(300, 32), 0.0005) / sag).toBeCloseTo(1 / 8, 9)
    expect(sagOf(400, shelf(450, 16), 0.0005)).toBeCloseTo(sag, 9)
  })
})

describe('the back', () => {
  // Common practice, no source: an eighth of an inch less all round, so that it never shows.
  it('that is planted on is the carcass less what is kept back all round', () => {
    const planted = (margin: number) =>
      boardIn(
        boardsOf(aCabinet('upper', { width: 640, height: 720 }), rulesWith({ back: { kind: 'applied', margin } })),
        'back',
      )
    expect([planted(0).length, planted(0).width].sort()).toEqual([640, 720])
    const back = planted(inch(1 / 8))
    expect([back.length, back.width].sort()).toEqual([settle(640 - inch(1 / 4)), settle(720 - inch(1 / 4))].sort())
  })
  // Common practice, no source: the clear width and both grooves, less 1 to 2 mm of play; grooves 8 to 12 mm from the rear edge.
  it('in grooves has 1 to 2 mm of play in all, 8 to 12 mm before the rear edge, in the methods of a new project', () => {
    const backs = [...methods('mm'), ...methods('in')].flatMap(({ back }) => (back.kind === 'groove' ? [back] : []))
    expect(backs.length).toBeGreaterThan(1)
    for (const back of backs) {
      within(back.clearance, 1, 2)
      within(back.inset, 8, 12)
      const built = boardIn(boardsOf(aCabinet('upper', { width: 640 }), rulesWith({ back })), 'back')
      expect(built.width).toBe(settle(640 - 2 * 18 + 2 * back.depth - back.clearance))
    }
  })
})

describe('the shelves of a new project', () => {
  it.each(['mm', 'in'] as const)(
    'are 3 mm or 1/8 in shorter than there is room, and 5 to 20 mm behind the fronts, in %s (common practice, no source)',
    (unit) => {
      for (const { shelves } of methods(unit)) {
        within(shelves.sideClearance, 3, inch(1 / 8))
        within(shelves.setback, 5, 20)
        const box = aCabinet('upper', {
          width: 600,
          interior: { fixedShelves: 0, adjustableShelves: 1, partition: null },
        })
        const boards = boardsOf(box, rulesWith({ shelves }))
        expect(boardIn(boards, 'adjustableShelf').length).toBe(settle(600 - 2 * 18 - shelves.sideClearance))
        expect(boxOf(boardIn(boards, 'adjustableShelf')).max.z).toBe(settle(box.depth - shelves.setback))
      }
    },
  )
})

describe('the stretchers of a base', () => {
  // Common practice, no source: 3 to 4 in, 75 to 100 mm; as long as what is butted between the sides.
  it.each(['mm', 'in'] as const)('are 75 to 100 mm wide in the methods of a new project, in %s', (unit) => {
    const tops = methods(unit).map(({ baseTop }) => ('width' in baseTop ? baseTop.width : 0))
    for (const width of tops) within(width, 75, inch(4))
    const baseTop: MethodChoices['baseTop'] = { kind: 'stretchersFlat', width: tops[0]! }
    expect(boardIn(boardsOf(aCabinet('base', { width: 640 }), rulesWith({ baseTop })), 'frontStretcher').length).toBe(
      640 - 2 * 18,
    )
  })
})

describe('the sides of a base with a notch for the kick', () => {
  // Source: a forum page on custom cabinets, 'TK notch 3" in depth by 4" in height'.
  it('of 4 by 3 in are cut so', () => {
    const rules = rulesWith({ floor: { kind: 'notched', height: inch(4), setback: inch(3) } })
    const side = boardIn(boardsOf(aCabinet('base', { depth: inch(23.25), height: inch(34.5) }), rules), 'leftSide')
    const [notch] = side.operations.filter(({ kind }) => kind === 'notch')
    expect(notch).toMatchObject({ length: inch(4), width: inch(3) })
  })
})

describe('banded edges', () => {
  // Common practice, no source: the finished size less the bands of both edges of a pair; 1, 2 and 3 mm count.
  it.each([1, 2, 3])('of %i mm come off the finished size, both of a pair', (band) => {
    const board = { length: 720, width: 400, banding: { low: band, high: band, start: 0, end: band } }
    expect(cutSize(board, { ...PLAIN.banding, isInFinishedSize: true })).toMatchObject({
      length: 720 - band,
      width: 400 - 2 * band,
    })
    expect(cutSize(board, { ...PLAIN.banding, isInFinishedSize: false })).toMatchObject({ length: 720, width: 400 })
  })
  // Source: Architectural Woodwork Standards (2009), section 10, 4.4.4.5: 'DADOES or LOCK JOINTS shall NOT run through the edgeband'.
  it.each(['covered', 'stopped'] as const)('have no dado through them where it is %s', (way) => {
    const dadoFront: MethodChoices['dadoFront'] =
      way === 'covered' ? { kind: 'covered' } : { kind: 'stopped', behind: 10 }
    const rules = rulesWith({
      cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: 6 } },
      banding: { carcass: 2, fronts: 0, isInFinishedSize: true },
      dadoFront,
    })
    const interior = { fixedShelves: 1, adjustableShelves: 0, partition: null }
    const side = boardIn(boardsOf(aCabinet('base', { depth: 580, interior }), rules), 'leftSide')
    const dados = side.operations.flatMap((one) => (one.kind === 'dado' ? [one] : []))
    expect(dados.length).toBeGreaterThan(0)
    for (const dado of dados) {
      const [from, to] = [dado.y, settle(dado.y + dado.width)]
      // The front edge is banded, and is at the end of the width that it is.
      expect(side.banding.high).toBe(2)
      expect(Math.max(from, to)).toBeLessThanOrEqual(side.width - 2)
    }
  })
})

describe('the sides of a drawer', () => {
  // Source: Architectural Woodwork Standards (2009), p. 267: 'Allows the use of 1/2" (12.7 mm) thick sides'.
  it('of a new inch project are of 1/2 in board', () => {
    const { materials, methods: by, method } = newProject('in')
    expect(materials[by[method]!.drawerMaterial]!.nominal).toBe(inch(0.5))
  })
})

// Source: one cabinet shop's design page: 'Side panel heights that are 3mm less than a number evenly divisible by 32mm ... have doors that are flush'.
describe('the doors of a side by the 32 mm system', () => {
  const DOOR: Front = { kind: 'door', hinge: 'left' }
  const door = (height: number, topReveal: number) => {
    const fronts = { ...PLAIN.fronts, topReveal, bottomReveal: 0 }
    return buildCabinet(aCabinet('upper', { height, front: DOOR }), rulesWith({ fronts })).fronts[0]!.rect
  }
  it.each([605, 637, 669])('%i mm high, 3 less than a multiple of 32, is flush with it at both ends', (height) => {
    const { bottom, height: own } = door(height, 0)
    expect((height + 3) % 32).toBe(0)
    expect([bottom, own]).toEqual([0, height])
  })
  it.each([608, 640, 672])(
    '%i mm high, a multiple of 32, leaves 3 mm over it and is as high as that of 3 less',
    (height) => {
      const { bottom, height: own } = door(height, 3)
      expect([bottom, own]).toEqual([0, height - 3])
      expect(own).toBe(door(height - 3, 0).height)
    },
  )
})
