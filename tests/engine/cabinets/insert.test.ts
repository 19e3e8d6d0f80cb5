import { describe, expect, it } from 'vitest'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { cutListOf } from '../../../engine/cutlist/cutListOf'
import { partsOf } from '../../../engine/parts/partsOf'
import type { Cabinet, DrawerInsert, Front } from '../../../engine/project/document'
import { interferences } from '../../../engine/solids/interference'
import { aCabinet, boardIn, boardsOf, rulesWith, sizeOf } from '../../helpers/cabinets'

const TRAY: DrawerInsert = { divisions: 4, height: 60 }
const drawer = (insert?: DrawerInsert): Front => ({ kind: 'drawer', ...(insert ? { insert } : {}) })
const base = (front: Front, changes: Partial<Cabinet> = {}) => aCabinet('base', { front, ...changes })

/**
 * A base of 600 x 580: its drawer box is 600 - 2 x 18 - 2 x 12.7 = 538.6 wide and 550 long (580 less 10 behind it, in steps
 * of 50), of 12 mm with a bottom of 5 that lies 10 up.
 */
const CLEAR = { width: 538.6 - 2 * 12, length: 550 - 2 * 12 }

describe('the insert of a drawer', () => {
  it('is as large as its box is clear inside, less two of play', () => {
    const boards = boardsOf(base(drawer(TRAY)), rulesWith())
    expect(sizeOf(boardIn(boards, 'insertEnd'))).toBe(`${CLEAR.width - 2} x 60`)
    // Between two ends of 5, and a third of 5 into both of them.
    const divider = boardIn(boards, 'insertDivider')
    expect(divider.length).toBeCloseTo(CLEAR.length - 2 - 2 * 5 + (2 * 5) / 3, 2)
    expect([divider.width, divider.thickness]).toEqual([60, 5])
  })

  it('has one divider more than divisions, all of these equally wide', () => {
    const boards = boardsOf(base(drawer(TRAY)), rulesWith())
    const dividers = boards.filter(({ role }) => role === 'insertDivider').map(boxOf)
    expect(dividers.length).toBe(4 + 1)
    const between = dividers.slice(1).map(({ min }, at) => min.x - dividers[at]!.max.x)
    for (const clear of between) expect(clear).toBeCloseTo((CLEAR.width - 2 - 5 * 5) / 4, 2)
  })

  it('lies on the bottom of its box, in the middle of its play', () => {
    const boards = boardsOf(base(drawer(TRAY)), rulesWith())
    const [bottom, end, side] = [
      boxOf(boardIn(boards, 'drawerBottom')),
      boxOf(boardIn(boards, 'insertEnd')),
      boxOf(boardIn(boards, 'drawerSide')),
    ]
    expect(end.min.y).toBe(bottom.max.y)
    expect(end.min.x - side.max.x).toBeCloseTo(1, 6)
  })

  it('has its dividers let into dados and rabbets of its ends', () => {
    const end = boardIn(boardsOf(base(drawer(TRAY)), rulesWith()), 'insertEnd')
    const kinds = end.operations.map((one) => ('depth' in one ? `${one.kind} ${one.depth.toFixed(1)}` : one.kind))
    expect(kinds.sort()).toEqual(['dado 1.7', 'dado 1.7', 'dado 1.7', 'rabbet 1.7', 'rabbet 1.7'])
  })

  it('is no higher than its box inside, and told where it is wished so', () => {
    const low: Front = {
      kind: 'rows',
      rows: [
        { size: { kind: 'fixed', height: 110 }, front: drawer({ divisions: 3, height: 200 }) },
        { size: { kind: 'share', share: 1 }, front: { kind: 'open' } },
      ],
    }
    const { boards, problems } = buildCabinet(base(low), rulesWith())
    const side = boardIn(boards, 'drawerSide')
    const height = side.width - 10 - 5
    expect(boardIn(boards, 'insertEnd').width).toBe(height)
    expect(problems.map(({ message }) => message)).toEqual([
      `B1: the insert of drawer 1 is ${height} mm high, not 200 mm: its box is no higher inside.`,
    ])
  })

  it('is left out and told where its divisions would be too narrow', () => {
    const { boards, problems } = buildCabinet(base(drawer({ divisions: 12, height: 60 }), { width: 380 }), rulesWith())
    // 380 - 36 - 25.4 - 24 - 2 = 292.6, less 13 of 5, in 12.
    const clear = Math.round(((292.6 - 13 * 5) / 12) * 10) / 10
    expect(boards.some(({ role }) => role === 'insertEnd')).toBe(false)
    expect(problems[0]!.message).toBe(
      `B1: the insert of drawer 1 would have divisions of ${clear} mm; 25 mm is the least. It is left out.`,
    )
  })

  it('is in the cut list by its boards, each drawer with its own', () => {
    const bank: Front = {
      kind: 'rows',
      rows: [TRAY, { divisions: 2, height: 60 }, undefined].map((insert) => ({
        size: { kind: 'share', share: 1 },
        front: drawer(insert),
      })),
    }
    const rules = rulesWith()
    const build = buildCabinet(base(bank), rules)
    const parts = partsOf(build, rules)
    const marks = parts.filter(({ role }) => role === 'insertDivider').map(({ mark }) => mark)
    // From the bottom up: two divisions have three dividers, four have five.
    expect(marks).toEqual(Array.from({ length: 3 + 5 }, (_, at) => `B1-ID${at + 1}`))
    expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length)
    const rows = cutListOf([{ mark: 'B1', parts }], rules.materials).rows.filter(({ parts: ids }) =>
      ids.some((id) => id.includes('insert-divider')),
    )
    expect(rows.map(({ parts: ids }) => ids.length)).toEqual([8])
  })

  it('is made to the opening as it was measured', () => {
    const asBuilt = { whole: { width: 560, height: null } }
    const boards = boardsOf(base(drawer(TRAY), { asBuilt }), rulesWith())
    // The opening is drawn 600 - 2 x 18 = 564.
    expect(boardIn(boards, 'insertEnd').length).toBeCloseTo(CLEAR.width - 2 - 4, 6)
    expect(boardIn(boards, 'insertEnd').isMeasured).toBe(true)
  })

  it('shares no room with its box, together or taken apart', () => {
    const boards = boardsOf(base(drawer(TRAY)), rulesWith())
    for (const apart of [0, 0.2, 0.45, 0.55, 1]) expect(interferences(boards, apart)).toEqual([])
  })
})
