import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import type { Board } from '../../../engine/cabinets/board'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import type { Cabinet } from '../../../engine/project/document'
import { mirroredFront } from '../../../engine/project/mirror'
import { aCabinet, anyCorner, boardIn, boardsOf, rulesWith, sizeOf } from '../../helpers/cabinets'

/** 920 along its own wall and 580 deep there, 860 along the other and 560 deep. */
const L_BASE = aCabinet('base', {
  ...{ width: 920, height: 720, depth: 580, front: { kind: 'door', hinge: 'left' } },
  interior: { fixedShelves: 1, adjustableShelves: 1, partition: null },
  corner: { kind: 'L', hand: 'left', other: 860, otherDepth: 560 },
})
const BASE_RULES = rulesWith({
  cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: 6 } },
  back: { kind: 'groove', inset: 12, depth: 7, clearance: 2 },
  floor: { kind: 'notched', height: 100, setback: 75 },
  shelves: { ...rulesWith().method.shelves, setback: 10 },
  banding: { carcass: 1, fronts: 0, isInFinishedSize: false },
})

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

describe('a diagonal corner upper', () => {
  const upper = aCabinet('upper', {
    ...{ width: 620, height: 700, depth: 320, front: { kind: 'door', hinge: 'right' } },
    interior: { fixedShelves: 0, adjustableShelves: 1, partition: null },
    corner: { kind: 'diagonal', hand: 'left', other: 620, otherDepth: 320 },
  })
  const boards = boardsOf(upper, rulesWith({ banding: { carcass: 1, fronts: 0, isInFinishedSize: false } }))
  const along = 620 - 320

  it('has the corner of its boards cut off on the line from side to side', () => {
    const bottom = boardIn(boards, 'bottom')
    expect(sizeOf(bottom)).toBe(`${620 - 18} x ${620 - 18}`)
    const cut = along - 2 * 18
    expect(bottom.operations).toEqual([{ kind: 'clip', end: 'end', edge: 'low', length: cut, width: cut }])
    expect(bottom.insideBanding!.length).toBeCloseTo(cut * Math.SQRT2, 3)
    const shelf = boardIn(boards, 'adjustableShelf')
    expect(sizeOf(shelf)).toBe(`${620 - 18 - 1.5} x ${620 - 18 - 1.5}`)
    expect(shelf.operations[0]).toMatchObject({ length: along - 2 * (18 + 1.5), width: along - 2 * (18 + 1.5) })
  })

  it('has one door whose outer corners are the reveal inside the ends of both legs', () => {
    const door = boardIn(boards, 'door')
    expect(door.length).toBe(700 - 3)
    expect(door.width).toBeCloseTo(along * Math.SQRT2 - 2 * (19 + 1.5 * Math.SQRT2), 3)
    const { min, max } = boxOf(door)
    expect(max.x).toBeCloseTo(620 - 1.5, 3)
    expect(max.z).toBeCloseTo(620 - 1.5, 3)
    // Its inner face lies on the line of the front edges, so its nearest corner is where its inner edge begins.
    expect(min.x).toBeCloseTo(320 + (19 + 1.5 * Math.SQRT2) / Math.SQRT2, 3)
  })
})

describe('a corner at the right end of its wall', () => {
  it('is the mirror image of one at the left end, board by board', () => {
    for (let seed = 0; seed < 200; seed++) {
      const { cabinet, rules } = anyCorner(randomFrom(seed))
      const here = buildCabinet(cabinet, rules).boards
      const there = buildCabinet(inMirror(cabinet), rules).boards
      expect(there.length, `seed ${seed}`).toBe(here.length)
      for (const board of here) {
        const other = boardIn(there, ROLES[board.role] ?? board.role, board.number)
        const [a, b] = [boxOf(board), boxOf(other)]
        const name = `seed ${seed}, ${board.role} ${board.number}`
        expect(sizeOf(other), name).toBe(sizeOf(board))
        expect(b.min.x, name).toBeCloseTo(cabinet.width - a.max.x, 2)
        expect(b.max.x, name).toBeCloseTo(cabinet.width - a.min.x, 2)
        expect([b.min.y, b.max.y], name).toEqual([a.min.y, a.max.y])
        expect(b.min.z, name).toBeCloseTo(a.min.z, 2)
        expect(b.max.z, name).toBeCloseTo(a.max.z, 2)
        expect(other.operations.map(({ kind }) => kind).sort(), name).toEqual(
          board.operations.map(({ kind }) => kind).sort(),
        )
        expect(other.explode.by.x, name).toBeCloseTo(-board.explode.by.x, 6)
      }
    }
  })
})

const ROLES: Partial<Record<Board['role'], Board['role']>> = {
  leftSide: 'rightSide',
  rightSide: 'leftSide',
  leftEnd: 'rightEnd',
  rightEnd: 'leftEnd',
}

function inMirror(cabinet: Cabinet): Cabinet {
  const { corner, beside, front } = cabinet
  return {
    ...cabinet,
    front: mirroredFront(front),
    beside: { left: beside.right, right: beside.left },
    corner: { ...corner!, hand: corner!.hand === 'left' ? 'right' : 'left' },
  }
}
