import { describe, expect, it } from 'vitest'
import { type BoardRole, explodedBy } from '../../../engine/cabinets/board'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import type { Front } from '../../../engine/project/document'
import type { FaceFrame } from '../../../engine/project/method'
import { aCabinet, boardIn, type MethodChanges, rulesWith, sizeOf } from '../../helpers/cabinets'
import { FRAME } from '../../helpers/frames'

const DOOR: Front = { kind: 'door', hinge: 'left' }
const DRAWER: Front = { kind: 'drawer' }
const share = (front: Front) => ({ size: { kind: 'share', share: 1 }, front, shelves: null }) as const
const high = (height: number, front: Front) => ({ size: { kind: 'fixed', height }, front }) as const
const TENON: FaceFrame['joint'] = { kind: 'tenon', length: 15 }
const overlay = (by: number): FaceFrame['fronts'] => ({ kind: 'overlay', by })

/** A base of 900 x 820 x 600 with a kick of 100: stiles 40, top rail 45, bottom rail 36, mullions 38, 6 and 8 past. */
function built(front: Front, frame: Partial<FaceFrame> = {}, changes: MethodChanges = {}) {
  const faceFrame = { ...FRAME, ...frame }
  const floor = { kind: 'legs', height: 100, setback: 50 } as const
  const cabinet = aCabinet('base', { width: 900, height: 820, depth: 600, front })
  return buildCabinet(cabinet, rulesWith({ faceFrame, floor, ...changes }))
}

function x(board: Parameters<typeof boxOf>[0]): [number, number] {
  const { min, max } = boxOf(board)
  return [min.x, max.x]
}

function y(board: Parameters<typeof boxOf>[0]): [number, number] {
  const { min, max } = boxOf(board)
  return [min.y, max.y]
}

describe('a carcass behind a face frame', () => {
  const { boards } = built(DOOR)
  it('is narrower than its cabinet by what the frame stands past it, and begins as far inside', () => {
    expect(x(boardIn(boards, 'leftSide'))).toEqual([6, 6 + 18])
    expect(x(boardIn(boards, 'rightSide'))).toEqual([900 - 8 - 18, 900 - 8])
    expect(boardIn(boards, 'bottom').length).toBe(900 - 6 - 8 - 2 * 18)
  })

  it('is less deep by the thickness of the frame', () => {
    expect(boardIn(boards, 'leftSide').width).toBe(600 - 20)
  })

  it('has no banding where the frame is glued on', () => {
    const banded = built(DOOR, {}, { banding: { carcass: 1, fronts: 1, isInFinishedSize: true } }).boards
    expect(boardIn(banded, 'leftSide').banding).toEqual({ low: 0, high: 0, start: 0, end: 0 })
  })
})

describe('a stile', () => {
  it('must lie on its side: past it by its whole width, nothing is built', () => {
    const { boards, problems } = built(DOOR, { pastLeft: 40, pastRight: 55 })
    expect(boards).toEqual([])
    expect(problems.map(({ weight, message }) => `${weight}: ${message}`)).toEqual([
      'stop: B1: its face frame would stand 40 mm past the left side; its stile is 40 mm wide and must lie on the side, so it must be less.',
      'stop: B1: its face frame would stand 55 mm past the right side; its stile is 40 mm wide and must lie on the side, so it must be less.',
    ])
    expect(built(DOOR, { pastLeft: 39 }).boards.length).toBeGreaterThan(0)
  })
})

describe('a face frame', () => {
  // The floor of the carcass is at 100 + 18; a bottom rail of 36 flush with it begins at 118 - 36 = 82.
  it('has stiles of its whole height, from the lower edge of the bottom rail to the top of the carcass', () => {
    const { boards } = built(DOOR)
    expect(sizeOf(boardIn(boards, 'stile', 1))).toBe(`${820 - (100 + 18 - 36)} x 40`)
    expect(x(boardIn(boards, 'stile', 2))).toEqual([900 - 40, 900])
  })

  // The width less both stiles, and both tenons where it is tenoned: common practice, no source.
  it('has rails between the stiles', () => {
    const { boards } = built(DOOR)
    expect(sizeOf(boardIn(boards, 'topRail'))).toBe(`${900 - 2 * 40} x 45`)
    expect(sizeOf(boardIn(boards, 'bottomRail'))).toBe(`${900 - 2 * 40} x 36`)
  })

  it('with tenons has rails longer by both, and as many mortises as tenons', () => {
    const { boards } = built({ kind: 'columns', columns: [share(DOOR), share(DOOR)] }, { joint: TENON })
    expect(boardIn(boards, 'topRail').length).toBe(900 - 2 * 40 + 2 * 15)
    expect(boardIn(boards, 'mullion').length).toBe(820 - 82 - 45 - 36 + 2 * 15)
    const mortises = boards.flatMap(({ operations }) => operations.filter(({ kind }) => kind === 'mortise'))
    expect(mortises.length).toBe(2 + 2 + 2)
    expect(mortises[0]).toMatchObject({ edge: 'high', depth: 15, length: 45 - 2 * 6 })
  })

  it('has a mullion that reaches the bottom rail under rows whose equal shares leave a tick', () => {
    const columns: Front = { kind: 'columns', columns: [share(DOOR), share(DOOR)] }
    const front: Front = { kind: 'rows', rows: [share(DRAWER), share(DRAWER), share(columns)] }
    for (const height of [640, 820, 701.125]) {
      const cabinet = aCabinet('base', { width: 900, height, depth: 600, front })
      const { boards } = buildCabinet(cabinet, rulesWith({ faceFrame: { ...FRAME, bottomRail: 38, joint: TENON } }))
      const [, top] = y(boardIn(boards, 'bottomRail'))
      expect(y(boardIn(boards, 'mullion'))[0]).toBe(top - 15)
    }
  })

  it('butts its members where the tenons would meet in a mullion, and says so', () => {
    const { boards, problems } = built(DOOR, { joint: { kind: 'tenon', length: 19 } })
    expect(boardIn(boards, 'topRail').length).toBe(900 - 2 * 40)
    expect(problems[0]?.message).toBe(
      'B1: the tenons of its face frame would be 19 mm long; they must be shorter than 19 mm in its members. The members are butted instead.',
    )
  })

  it('has a bottom rail that stands above the floor by what is chosen', () => {
    expect(y(boardIn(built(DOOR, { proud: 3 }).boards, 'bottomRail'))).toEqual([118 + 3 - 36, 118 + 3])
  })

  it('of a cabinet on no kick begins with the carcass', () => {
    expect(y(boardIn(built(DOOR, {}, { floor: { kind: 'none' } }).boards, 'bottomRail'))).toEqual([0, 36])
  })

  it('has a mid rail between two rows and a mullion between two columns', () => {
    const front: Front = {
      kind: 'columns',
      columns: [share(DOOR), share({ kind: 'rows', rows: [high(150, DRAWER), share(DOOR)] })],
    }
    const { boards } = built(front)
    // Two openings share 820 less the mullion: (820 - 38) / 2 = 391 each.
    const mullion = [40 + 391, 40 + 391 + 38]
    expect(x(boardIn(boards, 'mullion'))).toEqual(mullion)
    // The drawer front of 150 stands under the top rail with its gap of 3, and 3 under it the mid rail begins.
    const low = 820 - 45 - 3 - 150 - 3
    expect(y(boardIn(boards, 'midRail'))).toEqual([low - 38, low])
    expect(x(boardIn(boards, 'midRail'))).toEqual([mullion[1], 900 - 40])
  })
})

describe('the fronts of a face frame', () => {
  it('that are inset have the gap all round, and are flush with it', () => {
    const { boards, fronts } = built({ kind: 'pair' }, {}, {})
    const width = (900 - 2 * 40 - 3 * 3) / 2
    expect(fronts[0]!.rect).toEqual({ left: 40 + 3, bottom: 118 + 3, width, height: 820 - 45 - 118 - 2 * 3 })
    expect(boxOf(boardIn(boards, 'door')).max.z).toBe(600)
  })

  it('that cover it are larger than their opening by twice the overlay, and lie on it', () => {
    const { boards, fronts } = built(DOOR, { fronts: overlay(13) })
    expect(fronts[0]!.rect.width).toBe(900 - 2 * 40 + 2 * 13)
    expect(fronts[0]!.rect.height).toBe(820 - 45 - 118 + 2 * 13)
    expect(boxOf(boardIn(boards, 'door')).min.z).toBe(600)
  })

  it('leave of a mullion what they do not cover', () => {
    const { fronts } = built({ kind: 'columns', columns: [share(DOOR), share(DOOR)] }, { fronts: overlay(13) })
    const [left, right] = fronts.map(({ rect }) => rect)
    expect(right!.left - left!.left - left!.width).toBe(38 - 2 * 13)
  })

  it('are told when they would be nearer to each other than their gap', () => {
    const { problems } = built({ kind: 'columns', columns: [share(DOOR), share(DOOR)] }, { fronts: overlay(18) })
    expect(problems[0]?.message).toBe(
      `B1: fronts 18 mm over its face frame would be ${38 - 2 * 18} mm apart; 3 mm is the gap of its build method.`,
    )
  })

  it('hang on the frame: cups are bored in them, and nothing in the carcass', () => {
    const { boards } = built({ kind: 'pair' })
    const bored = (role: 'door' | 'leftSide') =>
      boardIn(boards, role).operations.filter(({ kind }) => kind === 'holeRow')
    expect(bored('door').length).toBe(2 * 2)
    expect(bored('leftSide')).toEqual([])
  })
})

describe('a drawer box behind a face frame', () => {
  it('is as wide as the opening of the frame asks for, which is narrower than the carcass', () => {
    const { boards } = built(DRAWER)
    // The box is 820 less 2 x 12.7 wide: its front stands between its sides of 12.
    expect(boardIn(boards, 'drawerBoxFront').length).toBeCloseTo(900 - 2 * 40 - 2 * 12.7 - 2 * 12, 3)
    expect(x(boardIn(boards, 'drawerSide', 1))[0]).toBeCloseTo(40 + 12.7, 3)
  })

  it('is as wide as the carcass asks for where that is narrower', () => {
    const { boards } = built(DRAWER, { stile: 20 })
    expect(boardIn(boards, 'drawerBoxFront').length).toBeCloseTo(900 - 6 - 8 - 2 * 18 - 2 * 12.7 - 2 * 12, 3)
  })

  it('stands above the bottom rail by what is kept free below it', () => {
    expect(y(boardIn(built(DRAWER, { proud: 4 }).boards, 'drawerSide', 1))[0]).toBe(118 + 4 + 16)
  })
})

describe('a face frame that is taken apart', () => {
  /** How far a member goes once its frame stands before the carcass: `24 + 15` with tenons of 15. */
  const gone = (front: Front, role: BoardRole, number = 1) => {
    const { x, y } = explodedBy(boardIn(built(front, { joint: TENON }).boards, role, number).explode, 1)
    return [x, y]
  }
  const step = 24 + 15

  it('lets its stiles go left and right and its rails up and down, each off its tenons', () => {
    expect(gone(DOOR, 'stile', 1)).toEqual([-step, 0])
    expect(gone(DOOR, 'stile', 2)).toEqual([step, 0])
    expect(gone(DOOR, 'topRail')).toEqual([0, step])
    expect(gone(DOOR, 'bottomRail')).toEqual([0, -step])
  })

  it('lets mullions go apart, with the mid rails between them, and its stiles further', () => {
    const drawers: Front = { kind: 'rows', rows: [share(DRAWER), share(DRAWER)] }
    const front: Front = { kind: 'columns', columns: [share(DOOR), share(drawers), share(DOOR)] }
    expect(gone(front, 'mullion', 1)).toEqual([-step, 0])
    expect(gone(front, 'mullion', 2)).toEqual([step, 0])
    expect(gone(front, 'midRail')).toEqual([0, 0])
    expect(gone(front, 'stile', 1)).toEqual([-3 * step, 0])
  })

  it('lets mid rails go up and down, with the mullions between them, and its rails further', () => {
    const doors: Front = { kind: 'columns', columns: [share(DOOR), share(DOOR)] }
    const front: Front = { kind: 'rows', rows: [share(DRAWER), share(doors)] }
    expect(gone(front, 'midRail')).toEqual([0, 0])
    expect(gone(front, 'mullion')).toEqual([0, -step])
    expect(gone(front, 'topRail')).toEqual([0, 2 * step])
  })
})
