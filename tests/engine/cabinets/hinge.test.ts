import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { nearestFree } from '../../../engine/cabinets/clearing'
import { armFor, cupCentre, hingeLine, overlayOf } from '../../../engine/cabinets/hinge'
import { centresOf, type HolePurpose, type HoleRow } from '../../../engine/cabinets/operation'
import { boredBy, removedBy } from '../../../engine/cabinets/removed'
import { boxesOverlap } from '../../../engine/geometry/box'
import { hardwareOf } from '../../../engine/hardware/hardwareOf'
import { partsOf } from '../../../engine/parts/partsOf'
import type { Front } from '../../../engine/project/document'
import { USUAL_HINGE } from '../../../engine/project/machining'
import { aCabinet, boardIn, boardsOf, PLAIN, rulesWith } from '../../helpers/cabinets'

const DOOR = { kind: 'door', hinge: 'left' } as const
const HINGE = { ...USUAL_HINGE, firstFromEnd: 80 }

function rowsFor({ operations }: Board, purpose: HolePurpose): HoleRow[] {
  return operations.filter((one): one is HoleRow => one.kind === 'holeRow' && one.purpose === purpose)
}

/** `x,y` of every hole, in the order they are bored. */
function holes(board: Board, purpose: HolePurpose): string[] {
  return rowsFor(board, purpose).flatMap((row) => centresOf(row).map(({ x, y }) => `${x},${y}`))
}

describe('how far a door covers its side', () => {
  // Source: a hinge maker's quick reference, OL = FD + B - H. The fixed distance and the cranks: common practice, no source.
  it('is the fixed distance and the boring distance, less the plate and the crank of its arm', () => {
    expect(overlayOf('straight', { ...HINGE, plateHeight: 3 })).toBe(11.5 + 5 - 3)
    expect(overlayOf('half', HINGE)).toBe(11.5 + 5 - 9.5)
    expect(overlayOf('inset', HINGE)).toBe(11.5 + 5 - 18)
  })
  it('says which arm it takes: 18 less a reveal of 1.5, half of 18 less half a gap of 3, inside by 1.5', () => {
    expect([18 - 1.5, 18 / 2 - 3 / 2, -1.5].map((overlay) => armFor(overlay, HINGE))).toEqual([
      'straight',
      'half',
      'inset',
    ])
  })
})

describe('the cups of a door', () => {
  it('have their middles half a cup further in than the boring distance', () => {
    // Source: a hinge maker's quick reference: B 3 to 8 gives C 20.5 to 25.5.
    const centres = [3, 4, 5, 6, 7, 8].map((cupFromEdge) => cupCentre({ ...HINGE, cupFromEdge }))
    expect(centres).toEqual([20.5, 21.5, 22.5, 23.5, 24.5, 25.5])
  })
  it('are as far from both ends, and the others spread evenly between', () => {
    expect(hingeLine({ from: 100, to: 1300 }, 3, HINGE)).toEqual([100 + 80, (100 + 1300) / 2, 1300 - 80])
  })
  it('are bored from the hinge side, with two screws 45 apart and 9.5 behind, and mirrored on the other door of a pair', () => {
    // Source: a hinge maker's drawing: 35 across, 45 between the screws, 9.5 behind the cup.
    const boards = boardsOf(aCabinet('upper', { height: 720, front: { kind: 'pair' } }), rulesWith({ hinge: HINGE }))
    const [left, right] = [boardIn(boards, 'door', 1), boardIn(boards, 'door', 2)]
    // The door is 720 less a reveal of 3 at the top high, and half of 600 less 2 x 1.5 and a gap of 3 wide.
    expect([left.length, left.width]).toEqual([717, 297])
    const heights = [80, 717 - 80]
    expect(holes(left, 'hingeCup')).toEqual(heights.map((x) => `${x},22.5`))
    expect(holes(right, 'hingeCup')).toEqual(heights.map((x) => `${x},${297 - 22.5}`))
    const screws = heights.flatMap((x) => [x - 22.5, x + 22.5])
    expect(holes(left, 'hingeScrew')).toEqual(screws.map((x) => `${x},${22.5 + 9.5}`))
    expect(holes(right, 'hingeScrew')).toEqual(screws.map((x) => `${x},${297 - 22.5 - 9.5}`))
  })
  it('of a flap before two bays have their plates on the shelf over either, as far from both ends', () => {
    const size = { kind: 'share', share: 1 } as const
    const rows = [
      { size, front: { kind: 'open' } },
      { size, front: { kind: 'door', hinge: 'top' } },
    ] as const
    const front = { kind: 'rows', rows } as const
    const interior = { fixedShelves: 1, adjustableShelves: 0, partition: { at: 0.37 } }
    const boards = boardsOf(aCabinet('upper', { height: 720, front, interior }), rulesWith({ hinge: HINGE }))
    const [left, right] = boards.filter((board) => board.role === 'fixedShelf').map((one) => holes(one, 'hingePlate'))
    expect([left!.length, right!.length]).toEqual([2, 2])
    const cups = holes(boardIn(boards, 'flap'), 'hingeCup').map((at) => Number(at.split(',')[1]))
    expect(cups.sort((a, b) => a - b)).toEqual([80, 597 - 80])
  })
  it('of a wide flap before two equal bays are two on either shelf, one more than it asks for, and as many are bought', () => {
    const size = { kind: 'share', share: 1 } as const
    const rows = [
      { size, front: { kind: 'open' } },
      { size, front: { kind: 'door', hinge: 'top' } },
    ] as const
    const interior = { fixedShelves: 1, adjustableShelves: 0, partition: { at: 0.5 } }
    const rules = rulesWith({ hinge: HINGE })
    const cabinet = aCabinet('upper', { width: 1200, height: 720, front: { kind: 'rows', rows }, interior })
    const build = buildCabinet(cabinet, rules)
    const plates = build.boards
      .filter(({ role }) => role === 'fixedShelf')
      .map((one) => holes(one, 'hingePlate').length)
    expect(plates).toEqual([4, 4])
    expect(holes(boardIn(build.boards, 'flap'), 'hingeCup')).toHaveLength(4)
    const bought = hardwareOf(build, partsOf(build, rules), rules).filter(({ name }) => / hinge$/.test(name))
    expect(bought.map(({ quantity }) => quantity)).toEqual([4])
  })
  it('are bored along the upper edge of a flap, whose plates are under the top', () => {
    const front = { kind: 'door', hinge: 'top' } as const
    const boards = boardsOf(aCabinet('upper', { height: 720, depth: 330, front }), rulesWith({ hinge: HINGE }))
    // A flap of 597 wide, whose upper edge is 3 under that of the top.
    expect(holes(boardIn(boards, 'flap'), 'hingeCup')).toEqual([`${717 - 22.5},80`, `${717 - 22.5},${597 - 80}`])
    // The top lies between sides of 18, the flap begins 1.5 from the outside of them.
    const first = 1.5 + 80 - 18
    expect(holes(boardIn(boards, 'top'), 'hingePlate').slice(0, 2)).toEqual([
      `${first - 16},${330 - 37}`,
      `${first + 16},${330 - 37}`,
    ])
  })
})

describe('the plates of a door', () => {
  // Source: dalrun.com, '32mm Cabinetmaking': holes 32 apart, 37 from the front edge; inset 37 plus the face thickness.
  const heights = [80 - 16, 80 + 16, 717 - 80 - 16, 717 - 80 + 16]
  it('are on two holes 32 apart, 37 from the front edge of the side it hangs on, and on no other', () => {
    const boards = boardsOf(aCabinet('upper', { height: 720, depth: 330, front: DOOR }), rulesWith({ hinge: HINGE }))
    expect(holes(boardIn(boards, 'leftSide'), 'hingePlate')).toEqual(heights.map((x) => `${x},${330 - 37}`))
    expect(holes(boardIn(boards, 'rightSide'), 'hingePlate')).toEqual([])
  })
  it('are as much further in as an inset door is thick', () => {
    const rules = rulesWith({ hinge: HINGE, frontMount: 'inset' })
    const boards = boardsOf(aCabinet('upper', { height: 720, depth: 330, front: DOOR }), rules)
    const lines = rowsFor(boardIn(boards, 'leftSide'), 'hingePlate').map(({ y }) => y)
    expect(lines).toEqual([330 - 37 - 19, 330 - 37 - 19])
  })
  it('are bored less than half through a partition that carries doors on both faces', () => {
    const column = { size: { kind: 'share', share: 1 }, shelves: null } as const
    const front = {
      kind: 'columns',
      columns: [
        { ...column, front: { kind: 'door', hinge: 'right' } },
        { ...column, front: DOOR },
      ],
    } as const
    const partition = boardIn(boardsOf(aCabinet('upper', { front }), rulesWith({ hinge: HINGE })), 'partition')
    const rows = rowsFor(partition, 'hingePlate').map(({ face, depth }) => `${face} ${depth}`)
    expect(rows).toEqual(['outside', 'outside', 'inside', 'inside'].map((face) => `${face} ${18 / 2 - 1}`))
  })
  it('are shifted off the dado of a fixed shelf by half a plate, and their cup goes with them', () => {
    // One shelf in the middle: of three hinges the middle one would be at its height.
    const interior = { fixedShelves: 1, adjustableShelves: 0, partition: null }
    const cabinet = aCabinet('upper', { height: 1120, front: DOOR, interior })
    const boards = boardsOf(cabinet, rulesWith({ hinge: HINGE }))
    const shelf = boardIn(boards, 'fixedShelf').placement.origin.y
    const cups = rowsFor(boardIn(boards, 'door'), 'hingeCup').map(({ x }) => x)
    // The door is 1117 high, its middle 558.5; the shelf is from 551 to 569, so half a plate under it is nearer.
    expect(shelf).toBe(551)
    expect(cups).toEqual([80, 551 - 50 / 2, 1117 - 80])
    expect(rowsFor(boardIn(boards, 'leftSide'), 'hingePlate')[1]?.x).toBe(551 - 50 / 2 - 16)
  })
  it('stand between the holes of shelf pins, with wood around each', () => {
    const interior = { fixedShelves: 0, adjustableShelves: 1, partition: null }
    const shelves = { ...PLAIN.shelves, firstHole: 46 }
    const cabinet = aCabinet('upper', { height: 720, front: DOOR, interior })
    const side = boardIn(boardsOf(cabinet, rulesWith({ hinge: HINGE, shelves })), 'leftSide')
    // Pins at 64, 96, 128: the plate's 64 and 96 move by a hole and 3 of wood, 5 + 3, down.
    expect(rowsFor(side, 'hingePlate')[0]?.x).toBe(64 - 8)
  })
})

describe('the plates of a flap', () => {
  it('are bored into a shelf from below beside the dado of what stands on it, where both together are as deep as it is thick', () => {
    const share = (part: number, front: Front) =>
      ({ size: { kind: 'share', share: part }, front, shelves: null }) as const
    const drawer = { size: { kind: 'fixed', width: 180 }, front: { kind: 'drawer' }, shelves: null } as const
    const columns = [share(1, { kind: 'open' }), drawer, share(2, { kind: 'open' })]
    const front: Front = {
      kind: 'rows',
      rows: [
        { size: { kind: 'fixed', height: 130 }, front: { kind: 'columns', columns } },
        { size: { kind: 'share', share: 1 }, front: { kind: 'door', hinge: 'top' } },
      ],
    }
    const fronts = { ...PLAIN.fronts, topReveal: 0 }
    const rules = rulesWith(
      { cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: 6 } }, fronts },
      { carcass: 16 },
    )
    const shelf = boardIn(
      boardsOf(aCabinet('base', { width: 860, height: 744, depth: 450, front }), rules),
      'fixedShelf',
    )
    const dados = shelf.operations.flatMap((one) => (one.kind === 'dado' ? [removedBy(one, shelf)!] : []))
    const plates = rowsFor(shelf, 'hingePlate').flatMap((row) => boredBy(row, shelf))
    expect([dados.length, plates.length]).toEqual([2, 6])
    expect(plates.filter((hole) => dados.some((dado) => boxesOverlap(hole, dado)))).toEqual([])
  })
})

describe('the nearest free place', () => {
  it('is the wish itself, or the nearer end of what is taken, or none', () => {
    const range = { from: 0, to: 100 }
    expect(nearestFree(30, [], range)).toBe(30)
    expect(nearestFree(30, [{ from: 20, to: 36 }], range)).toBe(36)
    expect(
      nearestFree(
        30,
        [
          { from: 20, to: 36 },
          { from: 30, to: 50 },
        ],
        range,
      ),
    ).toBe(20)
    expect(nearestFree(30, [{ from: -5, to: 105 }], range)).toBeNull()
  })
})
