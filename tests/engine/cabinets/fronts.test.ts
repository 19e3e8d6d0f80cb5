import { describe, expect, it } from 'vitest'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { boxFrontLength, boxHeight, boxLength, boxWidth, drawerBottomSize } from '../../../engine/cabinets/drawerBox'
import { frontArea, frontInset, pairDoorWidth, rowHeights } from '../../../engine/cabinets/openings'
import { reportOn } from '../../../engine/cabinets/report'
import type { Front } from '../../../engine/project/document'
import { inch, settle } from '../../../engine/units/length'
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

const REVEALS = { gap: 4, endReveal: 2, topReveal: 5, bottomReveal: 1 }
const BASE = aCabinet('base', { width: 640, height: 720, depth: 580, front: { kind: 'drawer' } })
const base = (changes: MethodChanges = {}) => carcassFrom(BASE, rulesWith({ fronts: REVEALS, ...changes }))

describe('the fronts of a cabinet', () => {
  it('cover it but for the reveals when they overlay it', () => {
    expect(frontArea(base())).toEqual({ left: 2, bottom: 1, width: 640 - 2 * 2, height: 720 - 5 - 1 })
  })
  it('start above the plinth', () => {
    const area = frontArea(base({ floor: { kind: 'plinth', height: 100, setback: 60 } }))
    expect([area.bottom, area.height]).toEqual([100 + 1, 720 - 100 - 5 - 1])
  })
  it('leave a neighbour half of the shared side less half of the gap', () => {
    expect(frontInset(base({ frontMount: 'halfOverlay' }))).toBe(18 / 2 + 4 / 2)
  })
  it('stand in the opening with their play when they are inset', () => {
    const area = frontArea(base({ frontMount: 'inset' }))
    expect([area.left, area.width]).toEqual([18 + 2, 640 - 2 * (18 + 2)])
    // Below it has what it has beside it, which is more than the 1 of a front that covers the bottom.
    expect([area.bottom, area.height]).toEqual([18 + 2, 720 - 18 - 18 - 5 - 2])
  })
  it('are halved by the gap in a pair', () => {
    expect(pairDoorWidth(636, 4)).toBe((636 - 4) / 2)
  })
  it('keep their fixed heights and share what is left, from the top down', () => {
    const rows = [
      { size: { kind: 'fixed', height: 140 }, front: { kind: 'drawer' } },
      { size: { kind: 'share', share: 1 }, front: { kind: 'drawer' } },
      { size: { kind: 'share', share: 3 }, front: { kind: 'drawer' } },
    ] as const
    const left = 714 - 2 * 4 - 140
    expect(rowHeights(rows, 714, 4, reportOn(BASE.id, 'B1'))).toEqual([140, left / 4, (left * 3) / 4])
  })
  it('hang a pair left and right, and lie before the carcass', () => {
    const { fronts, boards } = buildCabinet({ ...BASE, front: { kind: 'pair' } }, rulesWith({ fronts: REVEALS }))
    expect(fronts.map(({ hinge, rect }) => `${hinge} ${rect.left} ${rect.width}`)).toEqual([
      'left 2 316',
      `right ${640 - 2 - 316} 316`,
    ])
    const door = boardIn(boards, 'door')
    expect(sizeOf(door)).toBe('714 x 316')
    expect([door.placement.origin.z, door.placement.thickness]).toEqual([580 + 19, '-z'])
  })
  it('hang a flap at its top, with its grain upright, and leave its opening to shelves', () => {
    const { fronts, boards } = buildCabinet(
      { ...BASE, front: { kind: 'door', hinge: 'top' } },
      rulesWith({ fronts: REVEALS }),
    )
    expect(fronts.map(({ kind, hinge }) => `${kind} ${hinge}`)).toEqual(['door top'])
    expect(sizeOf(boardIn(boards, 'flap'))).toBe('714 x 636')
    expect(boards.some(({ role }) => role === 'door')).toBe(false)
  })
  it('put a board that does not move over the doors of a sink, and no drawer box behind it', () => {
    const rows = [
      { size: { kind: 'fixed', height: 150 }, front: { kind: 'falseFront' } },
      { size: { kind: 'share', share: 1 }, front: { kind: 'pair' } },
    ] as const
    const { boards } = buildCabinet({ ...BASE, front: { kind: 'rows', rows } }, rulesWith({ fronts: REVEALS }))
    const front = boardIn(boards, 'falseFront')
    expect(sizeOf(front)).toBe('636 x 150')
    expect(front.placement.origin.y).toBe(boardIn(boards, 'door').placement.origin.y + (714 - 4 - 150) + 4)
    expect(boards.filter(({ role }) => role === 'door')).toHaveLength(2)
    expect(boards.some(({ role }) => role.startsWith('drawer'))).toBe(false)
  })
  it('run the length of a drawer front from left to right and band all four edges', () => {
    const banding = { carcass: 1, fronts: 2, isInFinishedSize: true }
    const front = boardIn(boardsOf(BASE, rulesWith({ fronts: REVEALS, banding })), 'drawerFront')
    expect(sizeOf(front)).toBe('636 x 714')
    expect(front.banding).toEqual({ low: 2, high: 2, start: 2, end: 2 })
  })
})

describe('a drawer box', () => {
  it('leaves the slides their clearance on both sides', () => {
    expect(boxWidth(604, base({ slide: { kind: 'side', clearance: 12.5 } }))).toBe(604 - 2 * 12.5)
    // Source: a question-and-answer page on drawer boxes: half an inch for each side, an inch in all.
    expect(boxWidth(inch(15), base({ slide: { kind: 'side', clearance: inch(0.5) } }))).toBe(inch(14))
  })
  it('over undermount slides has its clear width deducted and its own sides added', () => {
    expect(boxWidth(604, base({ slide: { kind: 'undermount', insideDeduction: 42 } }))).toBe(604 - 42 + 2 * 12)
  })
  it('is as high as its opening less what is free below and above it', () => {
    expect(boxHeight({ from: 100, to: 260 }, base())).toBe(260 - 100 - 16 - 14)
  })
  it('is as long as the longest slide before the clearance behind it', () => {
    expect(boxLength(580 - 18, base())).toBe(550)
    expect(boxLength(560, base())).toBe(550)
    expect(boxLength(559, base())).toBe(500)
  })
  // Source: a drawer maker's page, undermount slides are about 1/2 in longer than they are called, 7/8 in with rear brackets.
  it('is so short that undermount slides go in, which are longer than they are called', () => {
    const slide = { kind: 'undermount', insideDeduction: 42 } as const
    const longer = base({ slide: { ...slide, longerBy: inch(0.5) } })
    expect(boxLength(550 + inch(0.5), longer)).toBe(550)
    expect(boxLength(550 + inch(0.5) - 0.1, longer)).toBe(500)
    expect(boxLength(550 + inch(7 / 8) - 0.1, base({ slide: { ...slide, longerBy: inch(7 / 8) } }))).toBe(500)
    // What is kept free behind the box anyway is not added to it.
    expect(boxLength(560, base({ slide }))).toBe(550)
    const roomy = { ...PLAIN.drawers, rearClearance: 30 }
    expect(boxLength(580, base({ slide: { ...slide, longerBy: inch(0.5) }, drawers: roomy }))).toBe(550)
  })
  it('is a whole number of steps long where the depth is exactly that, in inches too', () => {
    const drawers = { ...PLAIN.drawers, lengthStep: inch(2), rearClearance: inch(0.375) }
    for (let steps = 1; steps <= 40; steps++) {
      expect(boxLength(settle(inch(2 * steps) + inch(0.375)), base({ drawers }))).toBe(inch(2 * steps))
    }
  })
  it('has its front and back between its sides', () => {
    expect(boxFrontLength(578.6, base())).toBe(578.6 - 2 * 12)
  })
  // The inside and both grooves, less 1/16 in of play: common practice, no source.
  it('has a bottom across its inside and both grooves less the play', () => {
    expect(drawerBottomSize(550, base())).toBe(550 - 2 * 12 + 2 * 6 - 1.6)
  })
  it('stands behind its front in its own opening', () => {
    const boards = boardsOf(
      BASE,
      rulesWith({ fronts: REVEALS, back: { kind: 'groove', inset: 12, depth: 6, clearance: 2 } }),
    )
    const side = boardIn(boards, 'drawerSide')
    // Clear height 720 - 2 x 18 = 684; clear depth 580 - 12 - 6 = 562, so a slide of 550.
    expect(sizeOf(side)).toBe(`550 x ${684 - 16 - 14}`)
    expect(side.placement.origin).toEqual({ x: 18 + 12.7, y: 18 + 16, z: 580 })
    expect(sizeOf(boardIn(boards, 'drawerBottom'))).toBe(`${604 - 2 * 12.7 - 24 + 12 - 1.6} x ${550 - 24 + 12 - 1.6}`)
  })
  it('is lower under a nailer that reaches into its opening, and shorter before it', () => {
    const nailers = { ...PLAIN.nailers, top: true, width: 80 }
    // 580 - 18 - 10 = 552 is 550; a back of nothing and no nailer would give 570, also 550; a deeper cabinet tells them apart.
    const deep = { ...BASE, depth: 612 }
    expect(boardIn(boardsOf(deep, rulesWith({ nailers })), 'drawerSide').length).toBe(550)
    expect(boardIn(boardsOf(deep, rulesWith()), 'drawerSide').length).toBe(600)
  })
})

describe('openings in rows', () => {
  it('meet in the middle of the gap, and the drawers know it', () => {
    const front: Front = {
      kind: 'rows',
      rows: [
        { size: { kind: 'fixed', height: 150 }, front: { kind: 'drawer' } },
        { size: { kind: 'share', share: 1 }, front: { kind: 'drawer' } },
      ],
    }
    const boards = boardsOf({ ...BASE, front }, rulesWith({ fronts: REVEALS }))
    // The upper opening: from half the gap below its front (720 - 5 - 150 - 2 = 563) to the underside of the top (702).
    expect(boardIn(boards, 'drawerSide', 3).width).toBe(702 - 563 - 16 - 14)
    expect(boardIn(boards, 'drawerSide', 1).width).toBe(563 - 18 - 16 - 14)
  })
})
