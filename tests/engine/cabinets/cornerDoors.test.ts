import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import type { HoleRow } from '../../../engine/cabinets/operation'
import { toCabinet } from '../../../engine/geometry/placement'
import { USUAL_DOOR_PULLS } from '../../../engine/project/fixing'
import { USUAL_FIVE_PART, USUAL_FRAME } from '../../../engine/project/frames'
import { USUAL_HINGE } from '../../../engine/project/machining'
import type { FaceFrame } from '../../../engine/project/method'
import { aCabinet, boardIn, boardsOf, rulesWith, sizeOf } from '../../helpers/cabinets'
import { bored, L_BASE } from './cornerBase'

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
