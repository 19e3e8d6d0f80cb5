import { describe, expect, it } from 'vitest'
import { legsAcross } from '../../../engine/cabinets/leg'
import { centresOf } from '../../../engine/cabinets/operation'
import { toCabinet } from '../../../engine/geometry/placement'
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

describe('the legs under a corner cabinet', () => {
  const cornerBase = (kind: 'L' | 'diagonal', hand: 'left' | 'right') =>
    aCabinet('base', { width: 920, depth: 580, corner: { kind, hand, other: 860, otherDepth: 560 } })
  const rules = rulesWith({ floor, legs: { ...USUAL_LEGS, plateSpread: 40 } })
  /** The middle of each plate, from the corner: half of the spread past its first screw each way. */
  const feet = (cabinet: ReturnType<typeof aCabinet>) => {
    const bottom = boardIn(boardsOf(cabinet, rules), 'bottom')
    const rows = bottom.operations.filter((one) => one.kind === 'holeRow')
    return rows
      .filter((_, at) => at % 2 === 0)
      .map(({ x, y }) => {
        const { x: along, z } = toCabinet(bottom.placement, x + 20, y, 0)
        return `${Math.round(along)},${Math.round(z + 20)}`
      })
  }

  it('stand along both walls, in the corner, and behind both kicks with one in the inside corner', () => {
    // 920 - 100 = 820 is more than one step of 800, 860 - 100 is not; behind the kicks 60 + 50 from the front edges.
    const [x, z] = [560 - 60 - 50, 580 - 60 - 50]
    const rear = ['50,50', '460,50', '870,50', '50,810']
    expect(feet(cornerBase('L', 'left'))).toEqual([...rear, `${x},${z}`, `870,${z}`, `${x},810`])
    const mirrored = [...rear, `${x},${z}`, `870,${z}`, `${x},810`].map((at) =>
      at.replace(/^\d+/, (of) => `${920 - Number(of)}`),
    )
    expect(feet(cornerBase('L', 'right'))).toEqual(mirrored)
  })

  it('stand behind the slanting kick of a diagonal in one line, 60 + 50 square behind it', () => {
    // From (560, 860) to (920, 580): 360 along and 280 out, so 456.07 long; the line of the legs is 110 square to that.
    const long = Math.hypot(360, 280)
    const at870 = 580 - (110 * long + 280 * (870 - 920)) / 360
    const at810 = 920 - (110 * long + 360 * (810 - 580)) / 280
    expect(feet(cornerBase('diagonal', 'left')).slice(4)).toEqual([
      `${Math.round(at810)},810`,
      `870,${Math.round(at870)}`,
    ])
  })
})
