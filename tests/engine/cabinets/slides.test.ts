import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { slideScrews } from '../../../engine/cabinets/slideBoring'
import { settle } from '../../../engine/units/length'
import { aCabinet, boardIn, boardsOf, carcassFrom, PLAIN, rulesWith } from '../../helpers/cabinets'

const DRAWER = { kind: 'drawer' } as const
const cabinet = aCabinet('upper', { height: 300, depth: 560, front: DRAWER })

/** `x,y` of every screw of a slide. */
function screws({ operations }: Board): string[] {
  return operations.flatMap((one) => (one.kind === 'holeRow' && one.purpose === 'slide' ? [`${one.x},${one.y}`] : []))
}

describe('the screws of a slide', () => {
  // Source: dalrun.com, '32mm Cabinetmaking': 37 from the front edge, on a grid of 32. How near to its end: common practice, no source.
  it('begin 37 behind the front and end on the grid of 32, one in the middle', () => {
    // A slide of 500: (500 - 20 - 37) / 32 = 13.8, so 13 steps, and the middle one after 6.
    expect(slideScrews(500, carcassFrom(cabinet, rulesWith()))).toEqual([37, 37 + 6 * 32, 37 + 13 * 32])
    expect(slideScrews(150, carcassFrom(cabinet, rulesWith()))).toEqual([37, 37 + 2 * 32])
  })

  it('are on both sides at the height of the box, mirrored', () => {
    const boards = boardsOf(cabinet, rulesWith())
    // The box begins 16 over the bottom of 18, its line is 25 further up; the box is 550 long: 15 steps, the middle after 7.
    const x = 18 + 16 + 25
    const back = [37, 37 + 7 * 32, 37 + 15 * 32]
    expect(boardIn(boards, 'drawerSide').length).toBe(550)
    expect(screws(boardIn(boards, 'leftSide'))).toEqual(back.map((z) => `${x},${560 - z}`))
    expect(screws(boardIn(boards, 'rightSide'))).toEqual(back.map((z) => `${x},${z}`))
  })

  it('are as much further in as an inset front is thick', () => {
    const boards = boardsOf(cabinet, rulesWith({ frontMount: 'inset' }))
    expect(screws(boardIn(boards, 'rightSide'))[0]).toBe(`${18 + 16 + 25},${19 + 37}`)
  })

  it('of a slide under the box that is set back are so much further in, and its box is the shorter', () => {
    const slides = { ...PLAIN.slides, setback: 13 }
    const slide = { kind: 'undermount', insideDeduction: 41.3 } as const
    const boards = boardsOf(cabinet, rulesWith({ slide, slides }))
    expect(screws(boardIn(boards, 'rightSide'))[0]).toBe(`${18 + 16 + 25},${13 + 37}`)
    // 560 - 10 = 550 is one step of 50 too much when 13 of it are lost before the slide.
    expect(boardIn(boards, 'drawerSide').length).toBe(500)
    const beside = boardsOf(cabinet, rulesWith({ slides }))
    expect(screws(boardIn(beside, 'rightSide'))[0]).toBe(`${18 + 16 + 25},37`)
  })

  it('are there for slides under the box too, on both faces of what parts two columns', () => {
    const column = { size: { kind: 'share', share: 1 }, shelves: null, front: DRAWER } as const
    const front = { kind: 'columns', columns: [column, column] } as const
    const slides = { ...PLAIN.slides, lineUp: 12 }
    const rules = rulesWith({ slide: { kind: 'undermount', insideDeduction: 41.3 }, slides })
    const partition = boardIn(boardsOf(aCabinet('upper', { ...cabinet, front }), rules), 'partition')
    const faces = partition.operations.flatMap((one) =>
      one.kind === 'holeRow' ? [`${one.face} ${one.depth} ${settle(one.x)}`] : [],
    )
    // A partition of 18 that is butted stands on the bottom: 16 and 12 up, and less than half deep.
    expect(faces).toEqual(
      ['outside', 'outside', 'outside', 'inside', 'inside', 'inside'].map((face) => `${face} 8 ${16 + 12}`),
    )
  })
})
