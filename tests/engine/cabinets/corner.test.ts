import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import { sawnOutOf } from '../../../engine/breakdown/sawnOut'
import type { Board } from '../../../engine/cabinets/board'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import type { HolePurpose, HoleRow } from '../../../engine/cabinets/operation'
import { toCabinet } from '../../../engine/geometry/placement'
import { partsOf } from '../../../engine/parts/partsOf'
import { newProject } from '../../../engine/project/defaults'
import { USUAL_DOOR_PULLS, USUAL_FIXINGS } from '../../../engine/project/fixing'
import { USUAL_FIVE_PART, USUAL_FRAME } from '../../../engine/project/frames'
import { USUAL_HINGE } from '../../../engine/project/machining'
import type { FaceFrame } from '../../../engine/project/method'
import { interferences } from '../../../engine/solids/interference'
import { settle } from '../../../engine/units/length'
import { aCabinet, anyCorner, boardIn, boardsOf, PLAIN, rulesWith, sizeOf } from '../../helpers/cabinets'

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

  it('has a kick mitred at both ends to lie against the insides of its sides', () => {
    for (const hand of ['left', 'right'] as const) {
      const rules = rulesWith({ floor: { kind: 'notched', height: 100, setback: 75 } })
      const corner = { kind: 'diagonal', hand, other: 900, otherDepth: 580 } as const
      const one = aCabinet('base', { width: 920, depth: 600, front: { kind: 'open' }, corner })
      const standing = boardsOf(one, rules)
      const kick = boardIn(standing, 'kickBoard')
      const [along, out] = [920 - 580, 900 - one.depth]
      // The end at the own wall is the right one with the corner at the left, and its length runs from right to left.
      const [byOwn, byOther] = [(18 * out) / along, (18 * along) / out]
      const [byStart, byEnd] = hand === 'left' ? [byOwn, byOther] : [byOther, byOwn]
      expect(kick.operations).toHaveLength(2)
      expect(kick.operations).toEqual(
        expect.arrayContaining([
          { kind: 'bevel', edge: 'start', face: 'outside', by: expect.closeTo(byStart, 3) },
          { kind: 'bevel', edge: 'end', face: 'outside', by: expect.closeTo(byEnd, 3) },
        ]),
      )
      // Both its long point and its short one are at the inside of the side, 18 from the end of the cabinet.
      const points = [toCabinet(kick.placement, byStart, 0, 0), toCabinet(kick.placement, 0, 0, 18)]
      for (const { x, z } of points) {
        if (hand === 'left') expect(x).toBeCloseTo(920 - 18, 2)
        else expect(z).toBeCloseTo(900 - 18, 2)
      }
      expect(interferences(standing)).toEqual([])
    }
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

describe('the inset door of a diagonal', () => {
  const corner = { kind: 'diagonal', hand: 'left', other: 620, otherDepth: 320 } as const
  const upper = aCabinet('upper', {
    width: 620,
    height: 700,
    depth: 320,
    front: { kind: 'door', hinge: 'right' },
    corner,
  })
  const rules = rulesWith({ frontMount: 'inset', shelves: { ...PLAIN.shelves, setback: 10 } })
  const along = 620 - 320

  it('stands between both sides, its outer corners as far from each as an inset door is, and flush with their edges', () => {
    const boards = boardsOf(upper, rules)
    const door = boardIn(boards, 'door')
    // Between bottom and top; 18 and 1.5 across the wall are that times the root of 2 along the line, at either end.
    expect(door.length).toBe(700 - 2 * 18 - 3 - 1.5)
    expect(door.width).toBeCloseTo(along * Math.SQRT2 - 2 * (18 + 1.5) * Math.SQRT2, 3)
    const { max } = boxOf(door)
    expect(max.x).toBeCloseTo(620 - 18 - 1.5, 3)
    expect(max.z).toBeCloseTo(620 - 18 - 1.5, 3)
    // Its face is on the line between the outer front corners: there x and z are 620 + 320 together.
    const face = toCabinet(door.placement, 0, 0, 0)
    expect(face.x + face.z).toBeCloseTo(620 + 320, 2)
  })

  it('has sides that go on to its face, bevelled, and makes shelves as much shallower as it is thick', () => {
    const boards = boardsOf({ ...upper, interior: { ...upper.interior, fixedShelves: 1, adjustableShelves: 1 } }, rules)
    for (const [role, edge] of [
      ['leftSide', 'high'],
      ['rightSide', 'low'],
    ] as const) {
      const side = boardIn(boards, role)
      expect(sizeOf(side)).toBe(`700 x ${320 + 18}`)
      expect(side.operations).toContainEqual({ kind: 'bevel', edge, face: 'outside', by: 18 })
    }
    // The fixed one, 6 in both sides, ends behind the door, 19 square to the line: times the root of 2 along either wall.
    const fixed = boardIn(boards, 'fixedShelf').operations[0]
    const [cut, loose] = [along - 2 * (18 - 6) + 19 * Math.SQRT2, along - 2 * (18 + 1.5) + 19 * Math.SQRT2]
    expect(fixed).toMatchObject({ kind: 'clip', length: settle(cut), width: settle(cut) })
    const clip = boardIn(boards, 'adjustableShelf').operations[0]
    const more = 10 * Math.SQRT2
    expect(clip).toMatchObject({ kind: 'clip', length: settle(loose + more), width: settle(loose + more) })
  })

  it('is measured from the end of either leg where they are not alike', () => {
    const uneven = { ...upper, corner: { ...corner, other: 720 } }
    const [out, long] = [720 - 320, 500]
    const door = boardIn(boardsOf(uneven, rules), 'door')
    // 300 along, 400 out, so 500 long: 19.5 along is 32.5 of it, 19.5 out is 24.375.
    expect(door.width).toBeCloseTo(long - (19.5 * long) / along - (19.5 * long) / out, 3)
    expect(boxOf(door).max.x).toBeCloseTo(620 - 19.5, 3)
    expect(boxOf(door).max.z).toBeCloseTo(720 - 19.5, 3)
  })

  it('shares no room with anything, on either hand and hinged at either side, and nothing is told', () => {
    for (const hand of ['left', 'right'] as const) {
      for (const hinge of ['left', 'right'] as const) {
        const one = { ...upper, front: { kind: 'door', hinge } as const, corner: { ...corner, hand, other: 700 } }
        const { boards, problems } = buildCabinet(
          { ...one, interior: { ...one.interior, fixedShelves: 1, adjustableShelves: 1 } },
          rules,
        )
        expect(interferences(boards).map(({ a, b }) => `${a.role} in ${b.role}`)).toEqual([])
        expect(problems).toEqual([])
        expect(bored(boardIn(boards, hinge === 'left' ? 'leftSide' : 'rightSide'), 'hingePlate')).toHaveLength(2)
      }
    }
  })
})

/** Each row of a purpose in a board, as one looks at it: where its first hole is along and across the board. */
function bored(board: Board, purpose: HolePurpose): string[] {
  return board.operations.flatMap((one) =>
    one.kind === 'holeRow' && one.purpose === purpose ? [`${one.face} ${one.x}, ${one.y}`] : [],
  )
}

describe('what is bored for the doors of an L', () => {
  const hinge = { ...USUAL_HINGE, firstFromEnd: 80, foldFromEdge: 24 }
  const rules = rulesWith({ hinge, doorPull: USUAL_DOOR_PULLS.knob })
  const high = 720 - 3
  const shop = { ...L_BASE, interior: { ...L_BASE.interior, fixedShelves: 0, adjustableShelves: 0 } }

  it('is cups in both leaves, plates on the side, and plates of the folding hinge on the leaf that is hung', () => {
    const boards = boardsOf(shop, rules)
    const [hung, pulled] = [boardIn(boards, 'door', 1), boardIn(boards, 'door', 2)]
    // The first leaf hangs on the own side at its right, so that its cups are 5 + 35 / 2 from there.
    expect(bored(hung, 'hingeCup')).toEqual([80, high - 80].map((x) => `inside ${x}, ${hung.width - 22.5}`))
    expect(bored(boardIn(boards, 'rightSide'), 'hingePlate')).toEqual(
      [80, high - 80].map((x) => `inside ${x - 16}, 37`),
    )
    // The second has its cups at the edge along the corner, which is the far one of its width as it lies.
    expect(bored(pulled, 'hingeCup')).toEqual([80, high - 80].map((x) => `inside ${x}, ${pulled.width - 22.5}`))
    expect(bored(hung, 'hingePlate')).toEqual([80, high - 80].map((x) => `inside ${x - 16}, 24`))
  })

  it('is a pull in the leaf that is pulled alone, at its free edge', () => {
    for (const hand of ['left', 'right'] as const) {
      const boards = boardsOf({ ...shop, corner: { ...L_BASE.corner!, hand } }, rules)
      const leaf = boardIn(boards, 'door', 2)
      expect(bored(boardIn(boards, 'door', 1), 'pull')).toEqual([])
      const [pull] = leaf.operations.filter((one) => one.kind === 'holeRow' && one.purpose === 'pull')
      const { x, y } = pull as HoleRow
      const at = toCabinet(leaf.placement, x, y, 0)
      // Its free edge is the reveal inside the end of the other leg; the knob is 40 from it and 60 from the top.
      expect([at.y, at.z]).toEqual([720 - 3 - 60, 860 - 1.5 - 40])
      expect(at.x).toBe(hand === 'left' ? 560 + 19 : 920 - 560 - 19)
    }
  })
})

describe('what is bored for the door of a diagonal', () => {
  const rules = rulesWith({ hinge: { ...USUAL_HINGE, firstFromEnd: 80 }, doorPull: USUAL_DOOR_PULLS.bar })
  const diagonal = (hand: 'left' | 'right', side: 'left' | 'right') =>
    aCabinet('base', {
      ...{ width: 920, depth: 580, front: { kind: 'door', hinge: side } },
      corner: { kind: 'diagonal', hand, other: 900, otherDepth: 560 },
    })

  it('is cups at its hinges, plates on the side there, and its pull at the other edge', () => {
    const ways = (['left', 'right'] as const).flatMap((hand) =>
      (['left', 'right'] as const).map((side) => [hand, side] as const),
    )
    for (const [hand, side] of ways) {
      const boards = boardsOf(diagonal(hand, side), rules)
      const door = boardIn(boards, 'door')
      const at = (from: number) => (side === 'left' ? from : settle(door.width - from))
      expect(bored(door, 'hingeCup')).toEqual([80, 717 - 80].map((x) => `inside ${x}, ${at(22.5)}`))
      expect(bored(door, 'pull')).toEqual([`outside ${717 - 60 - 128}, ${settle(door.width - at(40))}`])
      const carrier = boardIn(boards, side === 'left' ? 'leftSide' : 'rightSide')
      const from = side === 'left' ? carrier.width - 37 : 37
      expect(bored(carrier, 'hingePlate')).toEqual([80, 717 - 80].map((x) => `inside ${x - 16}, ${from}`))
      expect(bored(boardIn(boards, side === 'left' ? 'rightSide' : 'leftSide'), 'hingePlate')).toEqual([])
    }
  })
})

describe('five-part doors of corners', () => {
  const build = { ...USUAL_FIVE_PART, stile: 60, rail: 70, groove: 10, play: 3 }
  const rules = rulesWith({ frontBuild: build })

  it('have the parts of two doors in the leaves of an L', () => {
    const boards = boardsOf(L_BASE, rules)
    const size = (role: Board['role'], number: number) => sizeOf(boardIn(boards, role, number))
    const [first, second] = [920 - 1.5 - 560, 860 - 1.5 - (580 + 19 + 3)]
    for (const [at, width] of [
      [1, first],
      [2, second],
    ] as const) {
      expect(size('doorStile', 2 * at)).toBe(`${720 - 3} x 60`)
      expect(size('doorRail', 2 * at)).toBe(`${width - 2 * 60 + 2 * 10} x 70`)
      expect(size('doorPanel', at)).toBe(`${720 - 3 - 2 * 70 + 2 * 10 - 3} x ${width - 2 * 60 + 2 * 10 - 3}`)
    }
    expect(boards.filter(({ role }) => role === 'door')).toEqual([])
  })

  it('have those of one door in a diagonal, turned together', () => {
    const corner = { kind: 'diagonal', hand: 'left', other: 900, otherDepth: 560 } as const
    const boards = boardsOf({ ...L_BASE, depth: 560, width: 900, corner }, rules)
    const width = 340 * Math.SQRT2 - 2 * (19 + 1.5 * Math.SQRT2)
    expect(boardIn(boards, 'doorRail').length).toBeCloseTo(width - 2 * 60 + 2 * 10, 3)
    const parts = boards.filter(({ role }) => role.startsWith('door'))
    expect(parts.map(({ role }) => role)).toEqual(['doorStile', 'doorStile', 'doorRail', 'doorRail', 'doorPanel'])
    expect(parts.every(({ placement }) => placement.turn?.cos === parts[0]!.placement.turn!.cos)).toBe(true)
  })
})

describe('the face frame of a diagonal', () => {
  const faceFrame = { ...USUAL_FRAME, stile: 40, topRail: 45, bottomRail: 50, pastLeft: 6, pastRight: 6 }
  const corner = { kind: 'diagonal', hand: 'left', other: 920, otherDepth: 600 } as const
  const base = aCabinet('base', { width: 920, depth: 600, front: { kind: 'door', hinge: 'left' }, corner })
  const boards = boardsOf(base, rulesWith({ faceFrame }))
  const long = 320 * Math.SQRT2

  it('is as long at its face as from end to end, its rails between the faces of its stiles', () => {
    expect(boardIn(boards, 'topRail').length).toBeCloseTo(long - 2 * 40, 3)
    expect([boardIn(boards, 'topRail').width, boardIn(boards, 'bottomRail').width]).toEqual([45, 50])
    expect(boardIn(boards, 'door').width).toBeCloseTo(long - 2 * 40 - 2 * 3, 3)
  })

  it('has stiles as much wider behind as the frame is thick, bevelled to be in line with the ends of the cabinet', () => {
    for (const [number, edge] of [
      [1, 'low'],
      [2, 'high'],
    ] as const) {
      const stile = boardIn(boards, 'stile', number)
      expect(sizeOf(stile)).toBe(`720 x ${40 + 20}`)
      expect(stile.operations).toEqual([{ kind: 'bevel', edge, face: 'outside', by: 20 }])
    }
    // The whole face, behind, ends on the plane of either end, and so does the narrower one before it.
    const stile = boardIn(boards, 'stile', 2)
    expect(toCabinet(stile.placement, 0, 60, 20).x).toBeCloseTo(920, 2)
    expect(toCabinet(stile.placement, 0, 40, 0).x).toBeCloseTo(920, 2)
    expect(toCabinet(stile.placement, 0, 40, 0).z).toBeCloseTo(600, 2)
  })

  it('stands past the sides, which go on to it with their front edges bevelled', () => {
    const side = boardIn(boards, 'rightSide')
    // In line with the end the frame is 20 times the root of 2 thick; 6 inside of it, it is 6 nearer to the wall.
    expect(side.width).toBeCloseTo(600 - 20 * Math.SQRT2 + 6 + 18, 3)
    expect(boxOf(side).max.x).toBe(920 - 6)
    expect(side.operations).toContainEqual({ kind: 'bevel', edge: 'low', face: 'outside', by: 18 })
  })

  it('is steeper at one end where the legs are not alike, and the saw is told how steep', () => {
    const uneven = { ...base, corner: { ...corner, other: 840 } }
    const stiles = boardsOf(uneven, rulesWith({ faceFrame })).filter(({ role }) => role === 'stile')
    // 320 along and 240 out.
    expect(stiles.map(({ width }) => width)).toEqual([settle(40 + (20 * 320) / 240), 40 + (20 * 240) / 320])
    const { boards: all } = buildCabinet(uneven, rulesWith({ faceFrame }))
    const parts = partsOf({ ...buildCabinet(uneven, rulesWith({ faceFrame })), boards: all }, rulesWith({ faceFrame }))
    const told = sawnOutOf(parts, newProject('mm').shop, { unit: 'mm', step: 0.1 }).filter(
      ({ what }) => what === 'bevel',
    )
    const angle = (Math.atan(320 / 240) * 180) / Math.PI
    const steep = told.filter(({ tilt }) => tilt! > 45)
    expect(steep.map(({ tilt }) => tilt!.toFixed(1))).toEqual([angle.toFixed(1), angle.toFixed(1)])
    expect(steep[0]!.text).toContain(`Most saws tilt to 45°: tilt it ${(90 - angle).toFixed(1)}°`)
  })
})

describe('the face frames of an L', () => {
  const faceFrame: FaceFrame = {
    ...{ ...USUAL_FRAME, stile: 40, topRail: 45, bottomRail: 50, pastLeft: 8, pastRight: 6 },
    ...{ joint: { kind: 'tenon', length: 15 }, fronts: { kind: 'overlay', by: 12 } },
  }
  const corner = { kind: 'L', hand: 'left', other: 860, otherDepth: 580 } as const
  const base = aCabinet('base', { width: 920, depth: 600, front: { kind: 'door', hinge: 'left' }, corner })
  const boards = boardsOf(base, rulesWith({ faceFrame }))
  const size = (role: Board['role'], number = 1) => sizeOf(boardIn(boards, role, number))

  it('have a stile at either free end, and rails that meet in the inside corner without a stile', () => {
    expect([size('stile', 1), size('stile', 2)]).toEqual(['720 x 40', '720 x 40'])
    // Those of the own leg run behind the other frame, 580 - 20 from the wall; the others end at the face of the first.
    expect(size('topRail', 1)).toBe(`${920 - 40 - (580 - 20) + 15} x 45`)
    expect(size('topRail', 2)).toBe(`${860 - 40 - 600 + 15} x 45`)
    expect(size('bottomRail', 2)).toBe(`${860 - 40 - 600 + 15} x 50`)
  })

  it('stand before the carcass and past the sides at the two free ends', () => {
    expect([boxOf(boardIn(boards, 'rightSide')).max.x, boxOf(boardIn(boards, 'leftSide')).max.z]).toEqual([
      920 - 6,
      860 - 8,
    ])
    expect([size('rightSide'), size('leftSide')]).toEqual([`720 x ${600 - 20}`, `720 x ${580 - 20}`])
  })

  it('are covered by the two leaves, which meet before the inside corner', () => {
    const high = 720 - 45 - 50 + 2 * 12
    expect(size('door', 1)).toBe(`${high} x ${920 - 40 + 12 - 580}`)
    expect(size('door', 2)).toBe(`${high} x ${860 - 40 + 12 - (600 + 19 + 3)}`)
  })

  it('that leave no opening wide enough are told with the numbers', () => {
    const { problems } = buildCabinet({ ...base, width: 580 + 40 + 149 }, rulesWith({ faceFrame }))
    expect(problems.map(({ message }) => message)).toEqual([
      'B1: its own leg goes on 149 mm between the 580 mm of the leg across it and its stile; 150 mm is the least.',
    ])
  })
})

describe('a corner cabinet by any method', () => {
  // Of the third a side and the stile before it are half a tick off three times over 846 mm: 7.5 mm3, of what 19 may be.
  it.each([711, 733, 860])('has no two boards in one place, however its bevels are settled: seed %s', (seed) => {
    const { cabinet, rules } = anyCorner(randomFrom(seed))
    expect(interferences(boardsOf(cabinet, rules))).toEqual([])
  })
})
