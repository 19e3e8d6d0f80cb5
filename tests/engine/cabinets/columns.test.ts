import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { columnWidths } from '../../../engine/cabinets/openings'
import { reportOn } from '../../../engine/cabinets/report'
import { boxAround } from '../../../engine/geometry/box'
import { toCabinet } from '../../../engine/geometry/placement'
import type { Cabinet, Front, FrontColumn } from '../../../engine/project/document'
import { aCabinet, BOARDS, boardIn, PLAIN, rulesWith } from '../../helpers/cabinets'

const share = (front: Front, part = 1): FrontColumn => ({ size: { kind: 'share', share: part }, front, shelves: null })
const fixed = (front: Front, width: number): FrontColumn => ({ size: { kind: 'fixed', width }, front, shelves: null })
const columns = (...all: readonly FrontColumn[]): Front => ({ kind: 'columns', columns: all })
const DOOR = { kind: 'door', hinge: 'left' } as const
const DRAWER = { kind: 'drawer' } as const
const FRONTS = { gap: 4, endReveal: 2, topReveal: 3, bottomReveal: 0 }
const NICHE = { kind: 'appliance', width: 550, height: 380, air: 30 } as const

function built(front: Front, changes: Partial<Cabinet> = {}, rules = rulesWith({ fronts: FRONTS })) {
  return buildCabinet(aCabinet('base', { width: 800, front, ...changes }), rules)
}

function xOf(board: Board): readonly [number, number] {
  const { placement, length, width, thickness } = board
  const { min, max } = boxAround(toCabinet(placement, 0, 0, 0), toCabinet(placement, length, width, thickness))
  return [min.x, max.x]
}

describe('the columns of a front', () => {
  it('keep their fixed widths and share what is left beside the gaps', () => {
    const all = [fixed(DOOR, 250), share(DRAWER), share(DRAWER, 3)]
    const left = 796 - 2 * 4 - 250
    const widths = columnWidths(all, 796, 4, reportOn(aCabinet('base').id, 'B1'))
    expect(widths).toEqual([250, left / 4, (left * 3) / 4])
  })

  it('have a partition between them, half covered by the front on either side of the gap', () => {
    const { boards, problems } = built(columns(fixed(DOOR, 250), share(DRAWER)))
    const middle = 2 + 250 + 4 / 2
    expect(problems).toEqual([])
    expect(xOf(boardIn(boards, 'partition'))).toEqual([middle - 18 / 2, middle + 18 / 2])
  })

  it('have it whole between inset fronts, with their play beside it', () => {
    const { boards, fronts } = built(
      columns(fixed(DOOR, 250), share(DRAWER)),
      {},
      rulesWith({ fronts: FRONTS, frontMount: 'inset' }),
    )
    expect(xOf(boardIn(boards, 'partition'))).toEqual([18 + 2 + 250 + 2, 18 + 2 + 250 + 2 + 18])
    expect(fronts[1]!.rect.left).toBe(18 + 2 + 250 + 2 + 18 + 2)
  })

  it('have their drawer boxes in the bays behind them', () => {
    const { boards } = built(columns(fixed(DOOR, 250), share(DRAWER)))
    const bay = [2 + 250 + 2 + 9, 800 - 18] as const
    expect(xOf(boardIn(boards, 'drawerSide', 1))[0]).toBeCloseTo(bay[0] + 12.7, 3)
    expect(xOf(boardIn(boards, 'drawerSide', 2))[1]).toBeCloseTo(bay[1] - 12.7, 3)
  })

  it('have shelves of their own where they ask for them', () => {
    const two = { ...share(DOOR), shelves: { fixedShelves: 2, adjustableShelves: 0 } }
    const interior = { fixedShelves: 1, adjustableShelves: 0, partition: null }
    const { boards } = built(columns(two, share({ kind: 'open' })), { interior })
    expect(boards.filter(({ role }) => role === 'fixedShelf')).toHaveLength(2 + 1)
  })

  it('are told when they are wider than their cabinet, with both widths', () => {
    const { problems } = built(columns(fixed(DOOR, 500), fixed(DOOR, 400)))
    expect(problems.map(({ message }) => message)).toContain(
      `B1: its columns with their gaps are ${500 + 400 + 4} mm wide in all; the front is ${800 - 2 * 2} mm wide.`,
    )
  })

  it('are told when the fixed ones leave nothing for the others', () => {
    const { problems } = built(columns(fixed(DOOR, 800), share(DOOR)))
    expect(problems.map(({ message }) => message)).toContain(
      `B1: its fixed columns with the gaps take ${800 + 4} mm of a front that is 796 mm wide; nothing is left for the other columns.`,
    )
  })

  it('take no drawer inside a row of another column, where no upright would stand between', () => {
    const inner = columns(share(DRAWER), share({ kind: 'falseFront' }))
    const rows: Front = { kind: 'rows', rows: [{ size: { kind: 'share', share: 1 }, front: inner }] }
    const { boards, problems } = built(columns(share(rows), share(DOOR)))
    expect(boards.some(({ role }) => role === 'drawerSide')).toBe(false)
    expect(problems.map(({ message }) => message)).toEqual([
      'B1: column 1 of 2 inside a row is a drawer, and its slides would have no upright between the columns; its place is left open.',
    ])
  })

  it('may be two drawers over a pair of doors: a short partition stands on a board that closes the row', () => {
    const two = columns(fixed(DRAWER, 300), share(DRAWER))
    const front: Front = {
      kind: 'rows',
      rows: [
        { size: { kind: 'fixed', height: 160 }, front: two },
        { size: { kind: 'share', share: 1 }, front: { kind: 'pair' } },
      ],
    }
    const interior = { fixedShelves: 0, adjustableShelves: 1, partition: null }
    const { boards, fronts, problems } = built(front, { interior })
    expect(problems).toEqual([])
    expect(fronts.map(({ kind }) => kind)).toEqual(['door', 'door', 'drawer', 'drawer'])
    // The board lies behind the middle of the gap under the drawers: 3 kept free above, 160, half of 4.
    const middle = 720 - 3 - 160 - 4 / 2
    expect(boardIn(boards, 'fixedShelf').placement.origin.y).toBe(middle - 18 / 2)
    expect(boardIn(boards, 'fixedShelf').length).toBe(800 - 2 * 18 + 2 * (18 / 3))
    const partition = boardIn(boards, 'partition')
    expect(partition.length).toBe(720 - 18 - (middle + 18 / 2))
    expect(xOf(partition)).toEqual([2 + 300 + 4 / 2 - 18 / 2, 2 + 300 + 4 / 2 + 18 / 2])
    const bay = [2 + 300 + 2 + 9, 800 - 18] as const
    expect(xOf(boardIn(boards, 'drawerSide', 3))[0]).toBeCloseTo(bay[0] + 12.7, 3)
    expect(xOf(boardIn(boards, 'drawerSide', 4))[1]).toBeCloseTo(bay[1] - 12.7, 3)
  })

  it('inside a row are not parted where nothing would be left between the boards', () => {
    const two = columns(fixed(DRAWER, 20), share(DRAWER))
    const { boards, problems } = built({ kind: 'rows', rows: [{ size: { kind: 'share', share: 1 }, front: two }] })
    expect(boards.some(({ role }) => role === 'partition')).toBe(false)
    // From the side of 18 to the middle of the gap, less half of the partition: less than nothing.
    expect(2 + 20 + 4 / 2 - 18 / 2 - 18).toBeLessThan(0)
    expect(problems[0]).toMatchObject({
      message: 'B1: a column inside a row would be 0 mm clear between its boards; the row is not parted.',
      ...{ measure: '0 mm', limit: 'over 0 mm' },
    })
  })

  it('of fixed width stay where they are when the cabinet is widened', () => {
    const front = columns(fixed(DOOR, 250), share(DRAWER))
    const [before, after] = [built(front, { width: 800 }).boards, built(front, { width: 900 }).boards]
    for (const role of ['leftSide', 'partition', 'door'] as const) {
      expect(boardIn(after, role), role).toEqual(boardIn(before, role))
    }
    expect(boardIn(after, 'drawerFront').length).toBe(boardIn(before, 'drawerFront').length + 100)
  })
})

describe('the niche for an appliance', () => {
  const rows: Front = {
    kind: 'rows',
    rows: [
      { size: { kind: 'share', share: 1 }, front: NICHE },
      { size: { kind: 'fixed', height: 200 }, front: DRAWER },
    ],
  }
  const back = { kind: 'applied', margin: 0 } as const
  const withBack = rulesWith({ fronts: FRONTS, back })

  it('has no front, and stands on a board that ends before the back by its air', () => {
    const { boards, fronts, problems } = built(rows, { width: 600 }, withBack)
    expect(problems).toEqual([])
    expect(fronts.map(({ kind }) => kind)).toEqual(['drawer'])
    const board = boardIn(boards, 'fixedShelf')
    expect(board.width).toBe(580 - BOARDS.back - 30)
    // The board lies behind the middle of the gap over the drawer.
    expect(board.placement.origin.y).toBe(0 + 200 + 4 / 2 - 18 / 2)
  })

  it('has a window in the back 40 mm inside the boards around it', () => {
    const { boards } = built(rows, { width: 600 }, withBack)
    const windows = boardIn(boards, 'back').operations.filter(({ kind }) => kind === 'notch')
    const low = 200 + 4 / 2 + 18 / 2
    expect(windows).toEqual([
      expect.objectContaining({ length: 720 - 18 - low - 2 * 40, width: 600 - 2 * 18 - 2 * 40 }),
    ])
  })

  it('is told when it is narrower or lower than its maker asks for', () => {
    const front = { ...NICHE, width: 600, height: 700, air: 0 }
    expect(built(front, { width: 600 }).problems.map(({ message }) => message)).toEqual([
      `B1: the niche is ${600 - 2 * 18} mm wide between its boards; the appliance asks for 600 mm.`,
      `B1: the niche is ${720 - 2 * 18} mm high between its boards; the appliance asks for 700 mm.`,
    ])
  })

  it('is told when it is not as deep as its maker asks for before the air behind it', () => {
    // The inside of the cabinet is 580 less a back of its own thickness that lies on the rear edges.
    const inside = 580 - BOARDS.back
    const of = (depth: number) =>
      built(
        { ...rows, rows: [{ ...rows.rows[0]!, front: { ...NICHE, depth } }, rows.rows[1]!] },
        { width: 600 },
        withBack,
      )
    expect(of(inside - 30).problems).toEqual([])
    expect(of(inside - 29).problems.map(({ message }) => message)).toEqual([
      `B1: the niche is ${inside - 30} mm deep before the 30 mm for air; the appliance asks for ${inside - 29} mm.`,
    ])
  })

  it('takes no partition', () => {
    const interior = { fixedShelves: 0, adjustableShelves: 0, partition: { at: 0.5 } }
    const { boards, problems } = built(rows, { width: 600, interior }, withBack)
    expect(boards.some(({ role }) => role === 'partition')).toBe(false)
    expect(problems.map(({ message }) => message)).toEqual([
      'B1: a partition would stand in the niche for an appliance; it is left out.',
    ])
  })

  it('leaves its room to no shelf', () => {
    const interior = { fixedShelves: 1, adjustableShelves: 0, partition: null }
    const { problems } = built({ ...NICHE, air: 0 }, { width: 600, interior }, rulesWith({ shelves: PLAIN.shelves }))
    expect(problems.map(({ message }) => message)).toEqual([
      'B1: there is a niche for an appliance from its bottom to its top, so shelves and partition are left out.',
    ])
  })

  it('is told with the drawers that it shares the height with', () => {
    const interior = { fixedShelves: 1, adjustableShelves: 0, partition: null }
    expect(built(rows, { width: 600, interior }, withBack).problems.map(({ message }) => message)).toEqual([
      'B1: there are drawers and a niche for an appliance from its bottom to its top, so shelves and partition are left out.',
    ])
  })
})
