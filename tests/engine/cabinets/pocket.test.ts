import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { pocketIn } from '../../../engine/cabinets/pocket'
import { hardwareOf } from '../../../engine/hardware/hardwareOf'
import { partsOf } from '../../../engine/parts/partsOf'
import { USUAL_FIXINGS, USUAL_POCKETS } from '../../../engine/project/fixing'
import { holesOf } from '../../../engine/solids/bores'
import { aCabinet, boardIn, boardsOf, rulesWith } from '../../helpers/cabinets'
import { FRAME } from '../../helpers/frames'
import { bought, told } from './pockets'

describe('a pocket hole', () => {
  it('begins so far from the end that its axis comes out in the middle of the thickness', () => {
    // Of 20 mm at 15 degrees: 10 / tan 15 = 10 / 0.26795 = 37.32 from the end; the axis is 10 / sin 15 = 10 / 0.25882 =
    // 38.64 long, less 16 under the head.
    const { fromEnd, depth } = pocketIn(20, USUAL_POCKETS)
    expect([fromEnd.toFixed(2), depth.toFixed(2)]).toEqual(['37.32', (38.637 - 16).toFixed(2)])
  })

  it('has a mouth as long as its bore is cut aslant', () => {
    const rail = boardIn(boardsOf(aCabinet('base'), rulesWith({ faceFrame: FRAME })), 'topRail')
    const [mouth] = holesOf(rail)
    // 9.5 / sin 15 = 36.71.
    expect([mouth!.diameter, mouth!.length.toFixed(2), mouth!.opens, mouth!.along]).toEqual([
      9.5,
      '36.71',
      '+z',
      { x: -1, y: 0, z: 0 },
    ])
    expect(holesOf(rail).filter(({ opens }) => opens === '-z')).toEqual([])
  })
})

describe('a carcass with pocket screws', () => {
  const fixing = USUAL_FIXINGS.pocketScrews

  it('has them in the underside of its bottom and in the upper faces of its stretchers', () => {
    const boards = boardsOf(aCabinet('base'), rulesWith({ fixing, baseTop: { kind: 'stretchersFlat', width: 75 } }))
    // The bottom is 580 deep: 480 in three steps of 160. The stretcher has two, a quarter of 75 in.
    expect(told(boardIn(boards, 'bottom'))).toEqual([
      '4 in outside to start from 33.59,50.00, 160.00 across',
      `4 in outside to end from ${(564 - 33.59).toFixed(2)},50.00, 160.00 across`,
    ])
    expect(told(boardIn(boards, 'frontStretcher'))[0]).toBe('2 in outside to start from 33.59,18.75, 37.50 across')
    expect(told(boardIn(boards, 'leftSide'))).toEqual([])
    expect(bought({ fixing, baseTop: { kind: 'stretchersFlat', width: 75 } })).toBe(2 * 4 + 2 * 2 * 2)
  })

  it('has those of a stretcher on edge at its front behind it, and those of nailers behind them', () => {
    const nailers = { where: 'inside', top: true, bottom: false, width: 90 } as const
    const boards = boardsOf(aCabinet('base'), rulesWith({ fixing, baseTop: { kind: 'frontRail', width: 90 }, nailers }))
    expect(told(boardIn(boards, 'frontStretcher'))[0]).toMatch(/^2 in inside to (start|end)/)
    expect(told(boardIn(boards, 'topNailer'))[0]).toMatch(/^2 in outside to (start|end)/)
  })

  it('has none where a screw would come out of the side', () => {
    // It would go (40 - 16) x cos 15 = 23.2 into a side of 18.
    const build = buildCabinet(aCabinet('base'), rulesWith({ fixing, pockets: { ...USUAL_POCKETS, screwLength: 40 } }))
    expect(build.boards.flatMap(told)).toEqual([])
    expect(build.problems.map(({ message }) => message)[0]).toMatch(/^B1: 16 fixings of its corners find no place/)
  })
})

describe('a carcass with biscuits', () => {
  it('has slots as deep and as long as the cutter leaves them, and one where two find no room', () => {
    const boards = boardsOf(
      aCabinet('base'),
      rulesWith({ fixing: USUAL_FIXINGS.biscuits, baseTop: { kind: 'stretchersFlat', width: 75 } }),
    )
    const slots = (board: Board) =>
      board.operations.flatMap((one) =>
        one.kind === 'holeRow'
          ? [`${one.count} of ${one.diameter} x ${one.oval}, ${one.depth} deep in ${one.face}`]
          : [],
      )
    // A cutter of 100 set 12 deep: 2 x sqrt(50^2 - 38^2) = 2 x sqrt(1056) = 65.
    expect(Math.round(2 * Math.sqrt(50 ** 2 - (50 - 12) ** 2))).toBe(65)
    expect(slots(boardIn(boards, 'bottom'))).toEqual(['4 of 4 x 65, 12 deep in start', '4 of 4 x 65, 12 deep in end'])
    // Two of 65 do not fit in 75.
    expect(slots(boardIn(boards, 'frontStretcher'))).toEqual([
      '1 of 4 x 65, 12 deep in start',
      '1 of 4 x 65, 12 deep in end',
    ])
  })

  it('buys one for each slot in an end, by its size', () => {
    const rules = rulesWith({ fixing: USUAL_FIXINGS.biscuits })
    const build = buildCabinet(aCabinet('base'), rules)
    expect(hardwareOf(build, partsOf(build, rules), rules)).toContainEqual({
      name: 'biscuit #20',
      quantity: 16,
      length: 23,
    })
  })
})
