import { describe, expect, it } from 'vitest'
import { sawnOutOf } from '../../../engine/breakdown/sawnOut'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { toCabinet } from '../../../engine/geometry/placement'
import { partsOf } from '../../../engine/parts/partsOf'
import { newProject } from '../../../engine/project/defaults'
import { USUAL_DOOR_PULLS } from '../../../engine/project/fixing'
import { USUAL_FRAME } from '../../../engine/project/frames'
import { USUAL_HINGE } from '../../../engine/project/machining'
import { interferences } from '../../../engine/solids/interference'
import { settle } from '../../../engine/units/length'
import { aCabinet, boardIn, boardsOf, PLAIN, rulesWith, sizeOf } from '../../helpers/cabinets'
import { bored } from './cornerBase'

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
