import { describe, expect, it } from 'vitest'
import { legsAcross } from '../../../engine/cabinets/leg'
import { centresOf } from '../../../engine/cabinets/operation'
import { USUAL_LEGS } from '../../../engine/project/fixing'
import { aCabinet, boardIn, boardsOf, rulesWith } from '../../helpers/cabinets'

const floor = { kind: 'legs', height: 100, setback: 60 } as const

describe('the legs under a carcass', () => {
  it('are 50 from its sides and at most 800 apart', () => {
    expect(legsAcross(600, USUAL_LEGS)).toEqual([50, 550])
    expect(legsAcross(900, USUAL_LEGS)).toEqual([50, 850])
    // 901 - 100 = 801 is more than one step of 800.
    expect(legsAcross(901, USUAL_LEGS)).toEqual([50, 450.5, 851])
  })

  it('bore nothing unless their plates are said to be screwed', () => {
    expect(boardIn(boardsOf(aCabinet('base'), rulesWith({ floor })), 'bottom').operations).toEqual([])
  })

  it('have four screws each in the underside: behind the kick, and before the rear edge', () => {
    const legs = { ...USUAL_LEGS, plateSpread: 40 }
    const { operations, width } = boardIn(boardsOf(aCabinet('base'), rulesWith({ floor, legs })), 'bottom')
    const holes = operations.flatMap((one) =>
      one.kind === 'holeRow' ? centresOf(one).map(({ x, y }) => `${x},${y}`) : [],
    )
    expect(operations).toHaveLength(2 * 2 * 2)
    // The bottom begins at the side of 18, so 50 from the carcass is 32 in it; its y runs from the front edge, 580 deep:
    // the front row is 60 + 50 behind it, the rear row 50 before the other edge; screws 20 to either side.
    const [left, right] = [50 - 18, 550 - 18]
    const [front, rear] = [60 + 50, width - 50]
    const expected = [left, right].flatMap((x) =>
      [front, rear].flatMap((y) => [-20, 20].flatMap((a) => [-20, 20].map((b) => `${x + a},${y + b}`))),
    )
    expect(holes.sort()).toEqual(expected.sort())
  })
})
