import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import type { Board } from '../../../engine/cabinets/board'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { USUAL_FIXINGS } from '../../../engine/project/fixing'
import { interferences } from '../../../engine/solids/interference'
import { settle } from '../../../engine/units/length'
import { aCabinet, boardIn, boardsOf, rulesWith, sizeOf } from '../../helpers/cabinets'
import { anyCorner } from '../../helpers/diced'
import { BASE_RULES, L_BASE } from './cornerBase'

describe('an L corner base', () => {
  const boards = boardsOf(L_BASE, BASE_RULES)
  const size = (role: Board['role'], number = 1) => sizeOf(boardIn(boards, role, number))

  it('has a side at the free end of each leg, as deep as the leg, with the kick cut out', () => {
    expect(size('rightSide')).toBe(`720 x 580`)
    expect(size('leftSide')).toBe(`720 x 560`)
    const kick = { kind: 'notch', x: 0, length: 100, width: 75 }
    expect(boardIn(boards, 'rightSide').operations[0]).toEqual({ ...kick, y: 0 })
    expect(boardIn(boards, 'leftSide').operations[0]).toEqual({ ...kick, y: 560 - 75 })
  })

  it('has its bottom and its top through the corner, less the room between the legs, which is banded', () => {
    const [long, wide] = [920 - 18 + 6, 860 - 18 + 6]
    const away = { kind: 'notch', x: 560, length: long - 560, width: wide - 580 }
    for (const [role, y] of [
      ['bottom', 0],
      ['top', 580],
    ] as const) {
      expect(size(role)).toBe(`${long} x ${wide}`)
      expect(boardIn(boards, role).operations[0]).toEqual({ ...away, y })
      expect(boardIn(boards, role).outline).toBe('L')
      expect(boardIn(boards, role).insideBanding).toEqual({ thickness: 1, length: long - 560 + (wide - 580) })
    }
  })

  it('has two backs: one into the corner, one from its front face, each with half its play at the side', () => {
    const high = 720 - 18 + 7 - (100 + 18 - 7) - 2
    expect(size('back', 1)).toBe(`${high} x ${920 - 18 + 7 - 2 / 2}`)
    expect(size('back', 2)).toBe(`${high} x ${860 - 18 + 7 - 2 / 2 - (12 + 6)}`)
  })

  it('has a post in the corner that both are screwed to, with the pins of its shelf', () => {
    expect(size('cornerPost')).toBe(`${720 - 100 - 18 - 18} x 60`)
    expect(boardIn(boards, 'cornerPost').operations).toHaveLength(1)
    const { min } = boxOf(boardIn(boards, 'cornerPost'))
    expect([min.x, min.z]).toEqual([12 + 6, 12 + 6])
  })

  it('has kick boards along both inside faces, one into the corner and one before it', () => {
    expect(size('kickBoard', 1)).toBe(`${920 - 18 - (560 - 75 - 18)} x 100`)
    expect(size('kickBoard', 2)).toBe(`${860 - 18 - (580 - 75)} x 100`)
  })

  it('has kick boards before legs where the kick of runs is made of boards, up to both its ends, and else none', () => {
    const onLegs = rulesWith({ floor: { kind: 'legs', height: 100, setback: 75 } })
    const kicks = boardsOf(L_BASE, { ...onLegs, kick: 'inLengths' })
    expect(sizeOf(boardIn(kicks, 'kickBoard', 1))).toBe(`${920 - (560 - 75 - 18)} x 100`)
    expect(sizeOf(boardIn(kicks, 'kickBoard', 2))).toBe(`${860 - (580 - 75)} x 100`)
    expect(boardsOf(L_BASE, onLegs).filter(({ role }) => role === 'kickBoard')).toEqual([])
  })

  it('has shelves through the corner, let round the post, their setback at both inside edges', () => {
    const rear = 12 + 6
    expect(size('fixedShelf')).toBe(`${920 - 18 + 6 - rear} x ${860 - 18 + 6 - rear}`)
    const [away, post] = boardIn(boards, 'fixedShelf').operations
    expect(away).toMatchObject({ length: 920 - 18 + 6 - (560 - 10), width: 860 - 18 + 6 - (580 - 10) })
    expect(post).toMatchObject({ kind: 'notch', length: 60 + 3 / 2, width: 18 + 3 / 2 })
    expect(size('adjustableShelf')).toBe(`${920 - 18 - 3 / 2 - rear} x ${860 - 18 - 3 / 2 - rear}`)
  })

  it('has two leaves: the hung one into the inside corner, the other a gap before its face', () => {
    const high = 720 - 100 - 3
    expect(size('door', 1)).toBe(`${high} x ${920 - 1.5 - 560}`)
    expect(size('door', 2)).toBe(`${high} x ${860 - 1.5 - (580 + 19 + 3)}`)
    const cups = boardIn(boards, 'door', 1).operations.filter((one) => 'purpose' in one && one.purpose === 'hingeCup')
    expect(cups).toHaveLength(2)
  })

  it('that leaves its leaves no room is told with the numbers and not built', () => {
    const { boards: none, problems } = buildCabinet({ ...L_BASE, width: 560 + 18 + 149 }, BASE_RULES)
    expect(none).toEqual([])
    expect(problems[0]!.message).toBe(
      'B1: its own leg goes on 149 mm between the 560 mm of the leg across it and its side; 150 mm is the least.',
    )
  })
})

describe('what holds the corners of a butted corner cabinet', () => {
  it('goes into the end and into the edge of what runs through the corner, on one line in both sides', () => {
    const boards = boardsOf(L_BASE, rulesWith({ fixing: USUAL_FIXINGS.dowels }))
    const dowels = (board: Board) =>
      board.operations.flatMap((one) => {
        if (one.kind !== 'holeRow' || one.purpose !== 'dowel') return []
        return [`${one.face}: ${one.count} from ${one.along === 'width' ? one.y : one.x} by ${one.step}`]
      })
    // Along 580 the first is 50 from either end, and 480 are parted into three; along 560 they are 460.
    expect(dowels(boardIn(boards, 'bottom'))).toEqual([
      `low: 4 from 50 by ${settle(460 / 3)}`,
      `end: 4 from ${860 - 18 - 580 + 50} by 160`,
    ])
    expect(dowels(boardIn(boards, 'rightSide'))).toEqual(['inside: 4 from 50 by 160', 'inside: 4 from 50 by 160'])
    expect(dowels(boardIn(boards, 'leftSide'))).toHaveLength(2)
    expect(dowels(boardIn(boards, 'cornerPost'))).toEqual([])
  })
})

describe('an L corner upper with an applied back and inset fronts', () => {
  const upper = aCabinet('upper', {
    ...{ width: 620, height: 700, depth: 330, front: { kind: 'door', hinge: 'left' } },
    interior: { fixedShelves: 0, adjustableShelves: 2, partition: null },
    corner: { kind: 'L', hand: 'left', other: 640, otherDepth: 310 },
  })
  const boards = boardsOf(upper, rulesWith({ back: { kind: 'applied', margin: 2 }, frontMount: 'inset' }))
  const size = (role: Board['role'], number = 1) => sizeOf(boardIn(boards, role, number))

  it('has each board of the size that a sum on paper gives', () => {
    expect(size('rightSide')).toBe(`700 x ${330 - 6}`)
    expect(size('leftSide')).toBe(`700 x ${310 - 6}`)
    expect(size('bottom')).toBe(`${620 - 18 - 6} x ${640 - 18 - 6}`)
    expect(size('top')).toBe(size('bottom'))
    expect(size('back', 1)).toBe(`${700 - 2 * 2} x ${620 - 2 * 2}`)
    expect(size('back', 2)).toBe(`${700 - 2 * 2} x ${640 - 2 - 6}`)
    expect(size('cornerPost')).toBe(`${700 - 2 * 18} x 60`)
    expect(size('adjustableShelf', 2)).toBe(`${620 - 18 - 1.5 - 6} x ${640 - 18 - 1.5 - 6}`)
    expect(size('door', 1)).toBe(`${700 - 2 * 18 - 3 - 1.5} x ${620 - 18 - 1.5 - (310 - 19)}`)
    expect(size('door', 2)).toBe(`${700 - 2 * 18 - 3 - 1.5} x ${640 - 18 - 1.5 - (330 + 3)}`)
  })
})

describe('a corner cabinet by any method', () => {
  // Of the third a side and the stile before it are half a tick off three times over 846 mm: 7.5 mm3, of what 19 may be.
  it.each([711, 733, 860])('has no two boards in one place, however its bevels are settled: seed %s', (seed) => {
    const { cabinet, rules } = anyCorner(randomFrom(seed))
    expect(interferences(boardsOf(cabinet, rules))).toEqual([])
  })
})
