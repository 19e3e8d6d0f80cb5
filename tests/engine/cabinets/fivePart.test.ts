import { describe, expect, it } from 'vitest'
import { type BoardRole, explodedBy } from '../../../engine/cabinets/board'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { doorRailLength, halfPanelSeat, panelSeat, playAcross, woodMovement } from '../../../engine/cabinets/fivePart'
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

describe('a high five-part door', () => {
  /** A tall of 500 x 2100: doors of 497 x 2097. */
  const tall = (midRailFrom: number, front: Front = { kind: 'door', hinge: 'left' }) =>
    buildCabinet(
      aCabinet('tall', { width: 500, height: 2100, front }),
      rulesWith({ frontBuild: { ...FIVE, midRailFrom } }),
    )

  it('has a third rail in the middle of its height, as long as the others', () => {
    const { boards } = tall(1200)
    const rails = boards.filter(({ role }) => role === 'doorRail')
    expect(rails.map(sizeOf)).toEqual(new Array(3).fill(`${497 - 2 * 60 + 2 * 10} x 70`))
    const { min, max } = boxOf(boardIn(boards, 'doorRail', 3))
    // The middle of a door from 0 to 2097 is at 1048.5.
    expect([min.y, max.y]).toEqual([1048.5 - 35, 1048.5 + 35])
  })

  it('has two panels, each half of what three rails leave, and the grooves of two', () => {
    const { boards } = tall(1200)
    expect(halfPanelSeat(2097, FIVE)).toBe((2097 - 3 * 70) / 2 + 2 * 10)
    const panels = boards.filter(({ role }) => role === 'doorPanel')
    expect(panels.map(sizeOf)).toEqual(new Array(2).fill(`${(2097 - 210) / 2 + 20 - 3} x ${397 - 3}`))
  })

  it('has the mid rail grooved along both edges, the others along one', () => {
    const { boards } = tall(1200)
    const edges = (number: number) =>
      boardIn(boards, 'doorRail', number).operations.flatMap((one) => (one.kind === 'edgeGroove' ? [one.edge] : []))
    expect([edges(1), edges(2), edges(3).sort()]).toEqual([['high'], ['low'], ['high', 'low']])
  })

  it('is one that is higher than the method says, and no drawer front', () => {
    expect(tall(2097).boards.filter(({ role }) => role === 'doorRail').length).toBe(2)
    expect(tall(2096).boards.filter(({ role }) => role === 'doorRail').length).toBe(3)
    expect(tall(0).boards.filter(({ role }) => role === 'doorRail').length).toBe(2)
    const drawer = buildCabinet(
      aCabinet('tall', { width: 500, height: 2100, front: { kind: 'drawer' } }),
      rulesWith({ frontBuild: { ...FIVE, areDrawersToo: true, midRailFrom: 1200 } }),
    )
    expect(drawer.boards.filter(({ role }) => role === 'drawerRail').length).toBe(2)
  })

  it('keeps the numbers of its other parts, so that they stay the same parts', () => {
    const numbers = (midRailFrom: number) =>
      tall(midRailFrom, { kind: 'pair' })
        .boards.filter(({ role }) => ['doorStile', 'doorRail', 'doorPanel'].includes(role))
        .map(({ role, number }) => `${role} ${number}`)
    const added = numbers(1200).filter((one) => !numbers(0).includes(one))
    expect(added).toEqual(['doorRail 5', 'doorPanel 3', 'doorRail 6', 'doorPanel 4'])
    expect(numbers(0).every((one) => numbers(1200).includes(one))).toBe(true)
  })

  it('is of one board where three rails leave nothing between them', () => {
    const build = buildCabinet(
      aCabinet('tall', { width: 500, height: 700, front: { kind: 'door', hinge: 'left' } }),
      rulesWith({ frontBuild: { ...FIVE, rail: 240, midRailFrom: 600 } }),
    )
    expect(build.problems.map(({ message }) => message)).toEqual([
      'T1: a door is made of one board, not of five parts: three rails of 240 mm leave nothing of its height of 697 mm.',
    ])
  })
})
