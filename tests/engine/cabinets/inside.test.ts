import { describe, expect, it } from 'vitest'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { dividerRoom } from '../../../engine/cabinets/divider'
import { hingeClearance, rollOutPitch } from '../../../engine/cabinets/rollOut'
import { hardwareOf } from '../../../engine/hardware/hardwareOf'
import { partsOf } from '../../../engine/parts/partsOf'
import type { Cabinet, Front, Interior } from '../../../engine/project/document'
import { aCabinet, BOARDS, boardIn, carcassFrom, PLAIN, rulesWith } from '../../helpers/cabinets'

const EMPTY: Interior = { fixedShelves: 0, adjustableShelves: 0, partition: null }
const BACK = { back: { kind: 'applied', margin: 0 } } as const
const withInside = (interior: Partial<Interior>, front: Front, changes: Partial<Cabinet> = {}) =>
  aCabinet('base', { width: 600, front, interior: { ...EMPTY, ...interior }, ...changes })
const built = (cabinet: Cabinet) => buildCabinet(cabinet, rulesWith(BACK))
const messages = (cabinet: Cabinet) => built(cabinet).problems.map(({ message }) => message)
const drawers = PLAIN.drawers

describe('roll-outs behind doors', () => {
  const two = { rollOuts: { count: 2, height: 100 } }

  it('keep clear of a door that stands open on its side, by its thickness and 5 more', () => {
    const cabinet = withInside(two, { kind: 'door', hinge: 'left' })
    const clearance = BOARDS.front + 5
    expect(hingeClearance(carcassFrom(cabinet, rulesWith()))).toBe(clearance)
    const { boards, problems } = built(cabinet)
    expect(problems).toEqual([])
    // The left side of a box lies where its own slide ends; the right one is not packed out.
    expect(boardIn(boards, 'drawerSide', 1).placement.origin.x).toBeCloseTo(18 + clearance + 12.7, 3)
    const inside = 600 - 2 * 18 - clearance - 2 * 12.7
    expect(boardIn(boards, 'drawerBoxFront', 1).length).toBeCloseTo(inside - 2 * BOARDS.drawer, 3)
  })

  it('keep clear on both sides of a pair, and of none under a flap', () => {
    const inside = (front: Front) => boardIn(built(withInside(two, front)).boards, 'drawerBoxFront', 1).length
    const free = 600 - 2 * 18 - 2 * 12.7 - 2 * BOARDS.drawer
    expect(inside({ kind: 'pair' })).toBeCloseTo(free - 2 * (BOARDS.front + 5), 3)
    expect(inside({ kind: 'door', hinge: 'top' })).toBeCloseTo(free, 3)
  })

  it('stand over one another from the bottom, each with the room that slides ask for', () => {
    const cabinet = withInside(two, { kind: 'pair' })
    const pitch = 100 + drawers.bottomClearance + drawers.topClearance
    expect(rollOutPitch(100, carcassFrom(cabinet, rulesWith()))).toBe(pitch)
    const { boards } = built(cabinet)
    const foot = (number: number) => boardIn(boards, 'drawerBoxFront', number).placement.origin.y
    expect([foot(1), foot(2)]).toEqual([18 + drawers.bottomClearance, 18 + pitch + drawers.bottomClearance])
    expect(boardIn(boards, 'drawerBoxFront', 1).width).toBe(100)
  })

  it('leave the height over them to shelves', () => {
    const { boards } = built(withInside({ ...two, fixedShelves: 1 }, { kind: 'pair' }))
    const pitch = 100 + drawers.bottomClearance + drawers.topClearance
    const rest = 720 - 2 * 18 - 2 * pitch
    expect(boardIn(boards, 'fixedShelf').placement.origin.y).toBeCloseTo(18 + 2 * pitch + (rest - 18) / 2, 3)
  })

  it('are counted on from the drawers, each with a pair of slides', () => {
    const front: Front = {
      kind: 'rows',
      rows: [
        { size: { kind: 'fixed', height: 160 }, front: { kind: 'drawer' } },
        { size: { kind: 'share', share: 1 }, front: { kind: 'pair' } },
      ],
    }
    const rules = rulesWith(BACK)
    const build = buildCabinet(withInside(two, front), rules)
    const slides = hardwareOf(build, partsOf(build, rules), rules).filter(({ name }) => name.includes('slides'))
    expect(slides.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(1 + 2)
    const heightOf = (number: number) => boardIn(build.boards, 'drawerBoxFront', number).placement.origin.y
    expect(heightOf(1)).toBeGreaterThan(heightOf(3))
  })

  it('are left out with both heights where they are too many', () => {
    const cabinet = withInside({ rollOuts: { count: 6, height: 100 } }, { kind: 'pair' })
    expect(messages(cabinet)).toEqual([
      `B1: 6 roll-outs take ${6 * (100 + 16 + 14)} mm of height; there is ${720 - 2 * 18} mm. They are left out.`,
    ])
  })
})

describe('tray dividers', () => {
  it('leave equal rooms between them and beside them', () => {
    const { boards } = built(withInside({ dividers: 3 }, { kind: 'pair' }))
    const clear = (600 - 2 * 18 - 3 * 18) / 4
    expect(dividerRoom(3, { from: 18, to: 600 - 18 }, 18)).toBe(clear)
    const lefts = [1, 2, 3].map((number) => boardIn(boards, 'divider', number).placement.origin.x)
    expect(lefts).toEqual([18 + clear, 18 + 2 * clear + 18, 18 + 3 * clear + 2 * 18])
    expect(boardIn(boards, 'divider', 1).length).toBe(720 - 2 * 18)
  })

  it('take the place of shelves, which is said', () => {
    expect(messages(withInside({ dividers: 2, adjustableShelves: 1 }, { kind: 'pair' }))).toEqual([
      'B1: tray dividers take the place of its shelves, so the shelves are left out.',
    ])
  })

  it('are told to have no hold where a drawer is over them', () => {
    const rows = [
      { size: { kind: 'fixed', height: 140 }, front: { kind: 'drawer' } },
      { size: { kind: 'share', share: 1 }, front: { kind: 'pair' } },
    ] as const
    expect(messages(withInside({ dividers: 2 }, { kind: 'rows', rows }))).toEqual([
      'B1: no board lies over its tray dividers to screw them to. Put a fixed one there, or leave them out.',
    ])
  })

  it('are left out where they would stand too close', () => {
    expect(messages(withInside({ dividers: 15 }, { kind: 'pair' }))).toEqual([
      `B1: 15 tray dividers would leave ${Math.round(((600 - 36 - 15 * 18) / 16) * 10) / 10} mm between them; 30 mm is the least, so they are left out.`,
    ])
  })
})

describe('a pull-out', () => {
  it('has a front as high as its row, and a box as low as it is said to be', () => {
    const { boards, problems } = built(withInside({}, { kind: 'pullOut', box: 150 }))
    expect(problems).toEqual([])
    // Its grain runs up, as that of the doors beside it.
    expect(boardIn(boards, 'drawerFront').length).toBe(720 - 3)
    expect(boardIn(boards, 'drawerBoxFront').width).toBe(150)
    expect(boardIn(boards, 'drawerBoxFront').placement.origin.y).toBe(18 + drawers.bottomClearance)
  })

  it('runs as far back as its own height lets it, under a nailer at the top', () => {
    const deep = withInside({}, { kind: 'pullOut', box: 150 }, { depth: 580 })
    const nailers = { where: 'inside', top: true, bottom: false, width: 90 } as const
    const { boards } = buildCabinet(deep, rulesWith({ ...BACK, nailers }))
    // 580 less the applied back and 10 behind it: 564 leaves 550 in steps of 50; before the nailer it would be 500.
    expect(boardIn(boards, 'topNailer').width).toBe(90)
    expect(boardIn(boards, 'drawerSide', 1).length).toBe(Math.floor((580 - BOARDS.back - 10) / 50) * 50)
    expect(Math.floor((580 - BOARDS.back - 18 - 10) / 50) * 50).toBe(500)
  })
})

describe('the window for pipes', () => {
  const pipes = { width: 300, height: 200, bottom: 250 }

  it('is cut through the back in the middle of its width', () => {
    const back = boardIn(built(withInside({ pipes }, { kind: 'pair' })).boards, 'back')
    expect(back.operations).toEqual([
      { kind: 'notch', x: 250, y: (600 - 300) / 2, length: 200, width: 300, for: 'pipes' },
    ])
  })

  it('is left out where less than 40 of the back would be left beside it', () => {
    const cabinet = withInside({ pipes: { ...pipes, width: 600 - 2 * 39 } }, { kind: 'pair' })
    expect(messages(cabinet)).toEqual([
      'B1: the window for pipes would leave 39 mm of the back beside it; 40 mm is the least, so it is left out.',
    ])
  })

  it('is told by how far it would reach past the back', () => {
    const cabinet = withInside({ pipes: { ...pipes, width: 600 + 2 * 50 } }, { kind: 'pair' })
    expect(buildCabinet(cabinet, rulesWith(BACK)).problems).toMatchObject([
      {
        message:
          'B1: the window for pipes would reach 50 mm past the edge of the back; 40 mm of it must be left round the window, so it is left out.',
        ...{ measure: '0 mm', limit: '40 mm', source: 'common practice, no source' },
      },
    ])
  })

  it('is told where a fixed shelf or an upright crosses it, not where it is free of them', () => {
    // The shelf is in the middle of 720 less 18 below and above: from (720 - 18) / 2 up. The window ends at 250 + 200.
    expect(messages(withInside({ pipes, fixedShelves: 1 }, { kind: 'pair' }))).toEqual([
      `B1: a fixed shelf from ${(720 - 18) / 2} mm to ${(720 + 18) / 2} mm crosses the window for pipes, which goes from 250 mm to ${250 + 200} mm from the floor.`,
    ])
    expect(messages(withInside({ pipes, partition: { at: 0.5 } }, { kind: 'pair' }))).toEqual([
      `B1: a partition from ${(600 - 18) / 2} mm to ${(600 + 18) / 2} mm crosses the window for pipes, which goes from ${(600 - 300) / 2} mm to ${(600 + 300) / 2} mm from the left.`,
    ])
    expect(messages(withInside({ pipes: { ...pipes, bottom: 400 }, fixedShelves: 1 }, { kind: 'pair' }))).toEqual([])
  })
})
