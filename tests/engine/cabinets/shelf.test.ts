import { describe, expect, it } from 'vitest'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { evenLevels } from '../../../engine/cabinets/shelfLevels'
import { aCabinet, boardIn, boardsOf, PLAIN, rulesWith, sizeOf } from '../../helpers/cabinets'

const DADO_6 = { kind: 'dado', depth: { rule: 'depth', depth: 6 } } as const
const holding = (fixedShelves: number, adjustableShelves: number, at: number | null = null) => {
  const partition = at === null ? null : { at }
  return aCabinet('upper', {
    width: 640,
    height: 720,
    depth: 330,
    interior: { fixedShelves, adjustableShelves, partition },
  })
}

describe('a shelf', () => {
  it('fixed in dados spans the clear width and both dados, and keeps its setback', () => {
    const rules = rulesWith({ cornerJoint: DADO_6, shelves: { ...PLAIN.shelves, setback: 12 } })
    expect(sizeOf(boardIn(boardsOf(holding(1, 0), rules), 'fixedShelf'))).toBe(`${640 - 2 * 18 + 2 * 6} x ${330 - 12}`)
  })
  // Source: a joiners' forum thread on dadoes: 1/4 or 3/8 in into 3/4 ply, and never over half. A third: within these.
  it('fixed in a butted carcass is housed by a third of the side', () => {
    expect(boardIn(boardsOf(holding(1, 0), rulesWith()), 'fixedShelf').length).toBe(640 - 2 * 18 + 2 * (18 / 3))
  })
  it('pinned spans just the clear width and rests on a pin in each corner', () => {
    const boards = boardsOf(holding(1, 0), rulesWith({ fixedShelf: 'pinned' }))
    const shelf = boardIn(boards, 'fixedShelf')
    expect(shelf.length).toBe(640 - 2 * 18)
    const holes = boardIn(boards, 'leftSide').operations.flatMap((one) => (one.kind === 'holeRow' ? [one] : []))
    expect(holes.map(({ x }) => x)).toEqual([shelf.placement.origin.y - 2.5, shelf.placement.origin.y - 2.5])
  })
  it('on pins has its clearance in all, and rests on the pins of the nearest holes', () => {
    const shelf = boardIn(boardsOf(holding(0, 1), rulesWith()), 'adjustableShelf')
    expect(shelf.length).toBe(640 - 2 * 18 - 3)
    // In the middle its underside would be at 18 + (684 - 18) / 2 = 351; the holes are at 114 + 32 n, and 114 + 7 x 32
    // plus half a pin is 340.5, nearer than 372.5.
    expect(shelf.placement.origin.y).toBe(18 + 96 + 7 * 32 + 2.5)
  })
  it('behind an inset front stops behind it', () => {
    const cabinet = { ...holding(0, 1), front: { kind: 'pair' } } as const
    expect(boardIn(boardsOf(cabinet, rulesWith({ frontMount: 'inset' })), 'adjustableShelf').width).toBe(330 - 19)
  })
  it('stops before a nailer it would run into', () => {
    const nailers = { ...PLAIN.nailers, bottom: true, width: 400 }
    expect(boardIn(boardsOf(holding(1, 0), rulesWith({ nailers })), 'fixedShelf').width).toBe(330 - 18)
  })
  it('is two shelves beside a partition, each spanning its bay', () => {
    const boards = boardsOf(holding(0, 1, 0.25), rulesWith())
    const clear = 640 - 2 * 18 - 18
    expect(boardIn(boards, 'adjustableShelf', 1).length).toBe(clear / 4 - 3)
    expect(boardIn(boards, 'adjustableShelf', 2).length).toBe((clear * 3) / 4 - 3)
  })
  it('parts the height into equal rooms', () => {
    const room = (684 - 2 * 18) / 3
    expect(evenLevels(2, { from: 18, to: 702 }, 18)).toEqual([18 + room, 18 + room + 18 + room])
  })
  it('goes where most room is left among fixed shelves', () => {
    const boards = boardsOf(holding(1, 2), rulesWith())
    const fixed = boardIn(boards, 'fixedShelf').placement.origin.y
    const first = boardIn(boards, 'adjustableShelf', 1).placement.origin.y
    const second = boardIn(boards, 'adjustableShelf', 2).placement.origin.y
    expect([first < fixed, fixed < second]).toEqual([true, true])
  })
  it('is left out and told of when there are too many', () => {
    const { boards, problems } = buildCabinet(holding(9, 11), rulesWith())
    expect(boards.some(({ role }) => role === 'fixedShelf')).toBe(false)
    expect(problems.map(({ message }) => message)).toEqual([
      'U1: 20 shelves do not fit in 684 mm of height; they are left out.',
    ])
  })
})
