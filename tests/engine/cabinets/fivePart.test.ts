import { describe, expect, it } from 'vitest'
import { type BoardRole, explodedBy } from '../../../engine/cabinets/board'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { doorRailLength, panelSeat, playAcross, woodMovement } from '../../../engine/cabinets/fivePart'
import type { Front } from '../../../engine/project/document'
import { USUAL_FIVE_PART } from '../../../engine/project/frames'
import { inch } from '../../../engine/units/length'
import { aCabinet, boardIn, type MethodChanges, rulesWith, sizeOf } from '../../helpers/cabinets'

const FIVE = { ...USUAL_FIVE_PART, stile: 60, rail: 70, groove: 10, play: 3 }

/** An upper of 500 x 700 x 330: one door of 497 x 697 with a reveal of 1.5 at its sides and 3 at its top. */
function built(front: Front, changes: MethodChanges = {}) {
  const cabinet = aCabinet('upper', { width: 500, height: 700, front })
  return buildCabinet(cabinet, rulesWith({ frontBuild: FIVE, ...changes }))
}

describe('a five-part door', () => {
  const { boards } = built({ kind: 'door', hinge: 'left' })
  it('has stiles as long as it is high', () => {
    expect(sizeOf(boardIn(boards, 'doorStile', 1))).toBe(`${700 - 3} x 60`)
  })

  it('has rails as long as it is wide, less both stiles, and longer by the two tenons', () => {
    expect(doorRailLength(497, FIVE)).toBe(497 - 2 * 60 + 2 * 10)
    expect(sizeOf(boardIn(boards, 'doorRail', 2))).toBe(`${497 - 2 * 60 + 2 * 10} x 70`)
  })

  it('has a panel as large as its opening and the grooves, less its play', () => {
    expect(panelSeat(497, 60, FIVE)).toBe(497 - 2 * 60 + 2 * 10)
    expect(sizeOf(boardIn(boards, 'doorPanel'))).toBe(`${697 - 2 * 70 + 2 * 10 - 3} x ${497 - 2 * 60 + 2 * 10 - 3}`)
  })

  it('has its cups in the stile that it hangs by, and no banding', () => {
    const cups = (number: number) =>
      boardIn(boards, 'doorStile', number).operations.filter(
        (one) => one.kind === 'holeRow' && one.purpose === 'hingeCup',
      )
    expect([cups(1).length, cups(2).length]).toEqual([2, 0])
    const banded = built(
      { kind: 'door', hinge: 'left' },
      { banding: { carcass: 1, fronts: 1, isInFinishedSize: true } },
    )
    expect(boardIn(banded.boards, 'doorStile', 1).banding).toEqual({ low: 0, high: 0, start: 0, end: 0 })
  })

  it('lifted as a flap has its cups in the upper rail', () => {
    const flap = built({ kind: 'door', hinge: 'top' }).boards
    const holes = (number: number) =>
      boardIn(flap, 'doorRail', number).operations.filter(({ kind }) => kind === 'holeRow')
    expect([holes(1).length, holes(2).length]).toEqual([0, 4])
  })
})

describe('a panel of solid wood', () => {
  const oak = { kind: 'solid', across: 0.00369, moisture: 4 } as const
  it('moves by its width, what the wood moves for each percent, and the percents', () => {
    // 18 in of flat-sawn red oak from 6 to 10 percent: 18 x 0.00369 x 4 = 0.2657 in.
    expect(woodMovement(inch(18), oak)).toBeCloseTo(inch(18 * 0.00369 * 4), 3)
    expect(woodMovement(inch(18), { kind: 'sheet' })).toBe(0)
  })

  it('has the play that it asks for where that is more than the usual, and no less than the usual', () => {
    expect(playAcross(397, FIVE, oak)).toBeCloseTo(397 * 0.00369 * 4, 3)
    expect(playAcross(100, FIVE, oak)).toBe(3)
  })

  it('has it across its grain alone: in the width of a door', () => {
    const panel = boardIn(built({ kind: 'door', hinge: 'left' }, { panelWood: oak }).boards, 'doorPanel')
    expect(panel.length).toBe(697 - 2 * 70 + 2 * 10 - 3)
    expect(panel.width).toBeCloseTo(397 - 397 * 0.00369 * 4, 2)
  })
})

describe('drawer fronts', () => {
  it('are made of five parts where that is chosen for them too', () => {
    const base = (areDrawersToo: boolean) =>
      built({ kind: 'drawer' }, { frontBuild: { ...FIVE, areDrawersToo } }).boards
    expect(base(false).some(({ role }) => role === 'drawerFront')).toBe(true)
    // The grain of its panel runs from left to right.
    expect(sizeOf(boardIn(base(true), 'drawerPanel'))).toBe(`${397 - 3} x ${697 - 2 * 70 + 2 * 10 - 3}`)
  })

  it('too low for two rails are made of one board, and it is said why', () => {
    const rows: Front = {
      kind: 'rows',
      rows: [
        { size: { kind: 'fixed', height: 130 }, front: { kind: 'drawer' } },
        { size: { kind: 'share', share: 1 }, front: { kind: 'door', hinge: 'left' } },
      ],
    }
    const { boards, problems } = built(rows, { frontBuild: { ...FIVE, areDrawersToo: true } })
    expect(boardIn(boards, 'drawerFront').width).toBe(130)
    expect(problems.map(({ message }) => message)).toContain(
      'B1: a drawer front is made of one board, not of five parts: two rails of 70 mm leave nothing of its height of 130 mm.'.replace(
        'B1',
        'U1',
      ),
    )
  })
})

describe('five-part doors that are taken apart', () => {
  // Of a pair each door is (500 - 2 x 1.5 - 3) / 2 = 247 wide; with the gap of 3 between them their middle is at 250.
  const { boards } = built({ kind: 'pair' })
  const gone = (role: BoardRole, number: number) => explodedBy(boardIn(boards, role, number).explode, 1)

  it('let each board go a share of 0.15 of its way from the middle of all fronts: stiles outwards, rails up and down', () => {
    expect(gone('doorStile', 1).x).toBeCloseTo(0.15 * (1.5 + 60 / 2 - 250), 6)
    expect(gone('doorStile', 2).x).toBeCloseTo(0.15 * (1.5 + 247 - 60 / 2 - 250), 6)
    const rails = [gone('doorRail', 1).y, gone('doorRail', 2).y].sort((a, b) => a - b)
    expect(rails[0]).toBeCloseTo((-0.15 * (697 - 70)) / 2, 6)
    expect(rails[1]).toBeCloseTo((0.15 * (697 - 70)) / 2, 6)
  })

  it('keep each panel in the middle of its door', () => {
    expect(gone('doorPanel', 1).x).toBeCloseTo(0.15 * (1.5 + 247 / 2 - 250), 6)
    expect(gone('doorPanel', 1).y).toBeCloseTo(0, 6)
  })

  it('come forward whole before', () => {
    expect(explodedBy(boardIn(boards, 'doorStile', 1).explode, 0.4)).toEqual(
      explodedBy(boardIn(boards, 'doorPanel', 1).explode, 0.4),
    )
  })
})
