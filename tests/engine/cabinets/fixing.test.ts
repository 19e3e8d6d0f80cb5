import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { centresOf, type HolePurpose, type HoleRow } from '../../../engine/cabinets/operation'
import { placesAlong } from '../../../engine/cabinets/spacing'
import { type Fixing, USUAL_FIXINGS } from '../../../engine/project/fixing'
import { aCabinet, boardIn, boardsOf, type MethodChanges, rulesWith } from '../../helpers/cabinets'

const { screws, dowels, looseTenons } = USUAL_FIXINGS

function rowsOf({ operations }: Board, purpose: HolePurpose): HoleRow[] {
  return operations.filter((one): one is HoleRow => one.kind === 'holeRow' && one.purpose === purpose)
}

function told({ face, x, y, up, step, count, diameter, depth }: HoleRow): string {
  return `${count} of ${diameter} in ${face} at ${x},${y}${up === undefined ? '' : ` up ${up}`}, ${step} apart, ${depth} deep`
}

/** A base of 600 x 720 x 580 of 18 mm, butted, with a full top. */
function base(fixing: Fixing, changes: MethodChanges = {}): readonly Board[] {
  return boardsOf(aCabinet('base'), rulesWith({ fixing, ...changes }))
}

describe('the places of fixings in a joint', () => {
  const rule = { fromEdge: 50, spacing: 200 }

  it('are the same from both ends, and no farther apart than they may be', () => {
    // 580 long: 580 - 2 x 50 = 480 between the first and the last; 480 / 200 asks for 3 steps of 160.
    expect(placesAlong({ from: 0, to: 580 }, rule)).toEqual([50, 50 + 160, 50 + 320, 50 + 480])
    // 300 - 100 = 200 is one step of 200 and no more.
    expect(placesAlong({ from: 10, to: 310 }, rule)).toEqual([60, 260])
    expect(placesAlong({ from: 0, to: 301 }, rule)).toEqual([50, 150.5, 251])
  })

  it('are two at least, a quarter in where the joint is too short for more', () => {
    // A stretcher of 75: 75 / 4 = 18.75 from both edges.
    expect(placesAlong({ from: 0, to: 75 }, rule)).toEqual([18.75, 75 - 18.75])
    expect(placesAlong({ from: 0, to: 580 }, { fromEdge: 50, spacing: 0 })).toEqual([50, 530])
  })
})

describe('a dowelled carcass', () => {
  it('has holes in the face of the side at the middle of the bottom, and in the ends of the bottom', () => {
    const boards = base(dowels)
    // The bottom lies on the floor line: its middle is 18 / 2 up; from the front edge 50, then every 160.
    const [atBottom, atTop] = rowsOf(boardIn(boards, 'leftSide'), 'dowel')
    expect([atBottom, atTop].map((row) => told(row!))).toEqual([
      '4 of 8 in inside at 9,50, 160 apart, 12 deep',
      `4 of 8 in inside at ${720 - 9},50, 160 apart, 12 deep`,
    ])
    expect(rowsOf(boardIn(boards, 'bottom'), 'dowel').map(told)).toEqual([
      '4 of 8 in start at 0,50 up 9, 160 apart, 20 deep',
      `4 of 8 in end at ${600 - 2 * 18},50 up 9, 160 apart, 20 deep`,
    ])
  })

  it('has none where a board is housed: the housing holds it in place', () => {
    const boards = base(dowels, { cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: 6 } } })
    expect(boards.flatMap((board) => rowsOf(board, 'dowel'))).toEqual([])
  })

  it('has its sides bored from below where the bottom carries them', () => {
    const boards = base(dowels, { bottom: 'under' })
    expect(rowsOf(boardIn(boards, 'leftSide'), 'dowel').map(told)).toContain(
      '4 of 8 in start at 0,50 up 9, 160 apart, 20 deep',
    )
    expect(rowsOf(boardIn(boards, 'bottom'), 'dowel').map(told)).toEqual([
      '4 of 8 in inside at 9,50, 160 apart, 12 deep',
      `4 of 8 in inside at ${600 - 9},50, 160 apart, 12 deep`,
    ])
  })

  it('has two in each end of a stretcher', () => {
    const boards = base(dowels, { baseTop: { kind: 'stretchersFlat', width: 75 } })
    expect(rowsOf(boardIn(boards, 'frontStretcher'), 'dowel').map(told)).toEqual([
      `2 of 8 in start at 0,18.75 up 9, ${75 - 2 * 18.75} apart, 20 deep`,
      `2 of 8 in end at 564,18.75 up 9, ${75 - 2 * 18.75} apart, 20 deep`,
    ])
  })

  it('makes way for the groove of the back', () => {
    // The groove is cut from 10 to 18 before the rear edge, 8 deep: a dowel of 8 at 18 / 2 would open into it.
    const back = { kind: 'groove', inset: 10, depth: 8, clearance: 2 } as const
    const boards = base({ ...dowels, fromEdge: 15 }, { back })
    const [row] = rowsOf(boardIn(boards, 'bottom'), 'dowel')
    const rear = centresOf(row!).map(({ y }) => y)
    const groove = boardIn(boards, 'bottom').operations.find(({ kind }) => kind === 'groove')
    expect(groove).toBeDefined()
    const all = rowsOf(boardIn(boards, 'bottom'), 'dowel').flatMap((one) => centresOf(one).map(({ y }) => y))
    if (groove?.kind !== 'groove') return
    for (const y of [...rear, ...all]) {
      expect(y + 4 + 3 <= groove.y || y - 4 - 3 >= groove.y + groove.width).toBe(true)
    }
  })
})

describe('a carcass with loose tenons', () => {
  it('has mortises with round ends in both boards', () => {
    const boards = base(looseTenons)
    const [inSide] = rowsOf(boardIn(boards, 'rightSide'), 'looseTenon')
    const [inEnd] = rowsOf(boardIn(boards, 'bottom'), 'looseTenon')
    expect([inSide, inEnd].map((row) => [row!.diameter, row!.oval, row!.along, row!.depth])).toEqual([
      [5, 19, 'width', 12],
      [5, 19, 'width', 20],
    ])
  })
})

describe('a screwed carcass', () => {
  it('is bored through the side from outside and sunk for heads, with the rest of the screw in the end', () => {
    const boards = base(screws)
    const [through] = rowsOf(boardIn(boards, 'leftSide'), 'screw')
    expect(told(through!)).toBe('4 of 4.5 in outside at 9,50, 160 apart, 18 deep')
    expect(through!.countersink).toBe(8.5)
    // 50 long, less the 18 of the side.
    expect(told(rowsOf(boardIn(boards, 'bottom'), 'pilot')[0]!)).toBe(
      `4 of 3 in start at 0,50 up 9, 160 apart, ${50 - 18} deep`,
    )
  })

  it('of housed boards passes what the housing leaves of the side', () => {
    const boards = base(screws, { cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: 6 } } })
    expect(rowsOf(boardIn(boards, 'leftSide'), 'screw').map(({ depth }) => depth)).toEqual([18 - 6, 18 - 6])
    expect(rowsOf(boardIn(boards, 'bottom'), 'pilot').map(({ depth }) => depth)).toEqual([50 - 12, 50 - 12])
  })

  it('says so when nothing can be bored: a screw that ends in the side', () => {
    const build = buildCabinet(aCabinet('base'), rulesWith({ fixing: { ...screws, length: 15 } }))
    // Two boards with two ends of four.
    expect(build.problems.map(({ message }) => message)).toEqual([
      'B1: 16 fixings of its corners find no place: other holes, grooves or a thin board are in the way. Nothing is bored for them.',
    ])
  })
})

describe('no fixing', () => {
  it('leaves every board as it was', () => {
    expect(base({ kind: 'none' }).flatMap(({ operations }) => operations)).toEqual([])
  })
})
