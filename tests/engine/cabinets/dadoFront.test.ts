import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { legend } from '../../../engine/drawings/worked'
import { partsOf } from '../../../engine/parts/partsOf'
import { type DadoFront, USUAL_DADO_FRONTS } from '../../../engine/project/dadoFront'
import type { Cabinet } from '../../../engine/project/document'
import { USUAL_FRAME } from '../../../engine/project/frames'
import { interferences } from '../../../engine/solids/interference'
import { unseatedJoints } from '../../../engine/solids/seating'
import { volumeOf } from '../../../engine/solids/volume'
import { settle } from '../../../engine/units/length'
import { aCabinet, boardIn, boardsOf, type MethodChanges, rulesWith, sizeOf } from '../../helpers/cabinets'

const SINK = 6
const BAND = 1
const { through, covered, stopped } = USUAL_DADO_FRONTS

/** 600 wide, 580 deep, of 18 mm, with one fixed shelf in dados of 6 in the middle and nothing behind it. */
function built(dadoFront: DadoFront | undefined, changes: MethodChanges = {}, said: Partial<Cabinet> = {}) {
  const rules = rulesWith({
    cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: SINK } },
    banding: { carcass: BAND, fronts: 0, isInFinishedSize: true },
    ...(dadoFront && { dadoFront }),
    ...changes,
  })
  const interior = { fixedShelves: 1, adjustableShelves: 0, partition: null }
  return boardsOf(aCabinet('base', { width: 600, depth: 580, interior, ...said }), rules)
}

const LENGTH = 600 - 2 * 18 + 2 * SINK

const dado = (board: Board) => {
  const found = board.operations.find(({ kind }) => kind === 'dado')
  return found?.kind === 'dado' ? [found.y, found.width] : null
}
const notches = (board: Board) =>
  board.operations.flatMap((one) =>
    one.kind === 'notch' ? [`${one.x},${one.y} ${one.length}x${one.width} ${one.for ?? ''}`.trim()] : [],
  )
const rabbetsIn = (board: Board) =>
  board.operations.flatMap((one) => (one.kind === 'rabbet' ? [`${one.length}x${one.width}`] : [])).sort()
const shelfOf = (boards: readonly Board[]) => boardIn(boards, 'fixedShelf')

describe('dados that run out', () => {
  it('go through the band from the rear edge to the front, and the shelf with them, as without a word of it', () => {
    for (const boards of [built(through), built(undefined)]) {
      expect(dado(boardIn(boards, 'leftSide'))).toEqual([0, 580])
      expect(dado(boardIn(boards, 'rightSide'))).toEqual([0, 580])
      expect(sizeOf(shelfOf(boards))).toBe(`${LENGTH} x 580`)
      expect(notches(shelfOf(boards))).toEqual([])
    }
  })
})

describe('dados that are banded over', () => {
  it('end at the band of their side, and the shelf has no band over its tongues', () => {
    const boards = built(covered)
    // The front edge of a left side is at the far end of its width, that of a right one at the near end.
    expect(dado(boardIn(boards, 'leftSide'))).toEqual([0, 580 - BAND])
    expect(dado(boardIn(boards, 'rightSide'))).toEqual([BAND, 580 - BAND])
    expect(sizeOf(shelfOf(boards))).toBe(`${LENGTH} x 580`)
    expect(notches(shelfOf(boards))).toEqual([`0,0 ${SINK}x${BAND} band`, `${LENGTH - SINK},0 ${SINK}x${BAND} band`])
  })

  it('are drawn as that, and no notch is', () => {
    const words = legend(shelfOf(built(covered)), { unit: 'mm', step: 1 })
    expect(words).toEqual(['2 × end without its band, which stops at the shoulder'])
  })

  it('run to the edge as sawn where the band comes on top of it', () => {
    const boards = built(covered, { banding: { carcass: BAND, fronts: 0, isInFinishedSize: false } })
    expect(dado(boardIn(boards, 'leftSide'))).toEqual([0, 580])
    expect(notches(shelfOf(boards))).toEqual([])
  })

  it('run out where nothing is banded', () => {
    const boards = built(covered, { banding: { carcass: 0, fronts: 0, isInFinishedSize: true } })
    expect(dado(boardIn(boards, 'leftSide'))).toEqual([0, 580])
    expect(notches(shelfOf(boards))).toEqual([])
  })
})

describe('rabbets under the slanting band of a diagonal', () => {
  const corner = { kind: 'diagonal', hand: 'left', other: 860, otherDepth: 560 } as const
  // The slant goes 920 - 560 = 360 along and 860 - 580 = 280 out, 456.07 long: a band of 1 takes 456.07 / 360 of the end of
  // the own leg, and 456.07 / 280 of that of the other.
  const [own, other] = [Math.hypot(360, 280) / 360, Math.hypot(360, 280) / 280].map((by) => settle(by * BAND)) as [
    number,
    number,
  ]

  it('end where the wood behind it leaves the end of the bottom, and the sides are notched by as much', () => {
    const boards = built(covered, { bottom: 'under' }, { width: 920, corner })
    expect(rabbetsIn(boardIn(boards, 'bottom'))).toEqual([`18x${settle(580 - own)}`, `${settle(560 - other)}x18`])
    expect(notches(boardIn(boards, 'rightSide'))).toEqual([`0,0 ${SINK}x${own} stop`])
    expect(notches(boardIn(boards, 'leftSide'))).toEqual([`0,${settle(560 - other)} ${SINK}x${other} stop`])
    expect(legend(boardIn(boards, 'rightSide'), { unit: 'mm', step: 1 })).toContain('1 × notch, right through')
    expect(interferences(boards)).toEqual([])
    expect(unseatedJoints(boards, 0)).toEqual([])
  })

  it('end there before an inset door too, where the insides of the sides go on to it', () => {
    const front = { kind: 'door', hinge: 'left' } as const
    const boards = built(covered, { bottom: 'under', frontMount: 'inset' }, { width: 920, corner, front })
    expect(rabbetsIn(boardIn(boards, 'bottom'))).toEqual([`18x${settle(580 - own)}`, `${settle(560 - other)}x18`])
    expect(notches(boardIn(boards, 'rightSide'))).toEqual([`0,0 ${SINK}x${settle(14 + own)} stop`])
    expect(interferences(boards)).toEqual([])
    expect(unseatedJoints(boards, 0)).toEqual([])
  })

  it('run to the edge as sawn where the band comes on top of it', () => {
    const banding = { carcass: BAND, fronts: 0, isInFinishedSize: false }
    const boards = built(covered, { bottom: 'under', banding }, { width: 920, corner })
    expect(rabbetsIn(boardIn(boards, 'bottom'))).toEqual(['18x580', '560x18'])
    expect(notches(boardIn(boards, 'rightSide'))).toEqual([])
  })
})

describe('stopped dados', () => {
  it('end 10 mm behind the front edge, and the shelf is notched by as much at both front corners', () => {
    const boards = built(stopped)
    expect(dado(boardIn(boards, 'leftSide'))).toEqual([0, 580 - 10])
    expect(dado(boardIn(boards, 'rightSide'))).toEqual([10, 580 - 10])
    expect(sizeOf(shelfOf(boards))).toBe(`${LENGTH} x 580`)
    expect(notches(shelfOf(boards))).toEqual([`0,0 ${SINK}x10 stop`, `${LENGTH - SINK},0 ${SINK}x10 stop`])
    expect(volumeOf(shelfOf(boards))).toBeCloseTo((LENGTH * 580 - 2 * SINK * 10) * 18, 3)
    expect(legend(shelfOf(boards), { unit: 'mm', step: 1 })).toEqual(['2 × notch, right through'])
  })

  it('stop as far behind as is typed, and so do rabbets at the ends of sides', () => {
    const boards = built({ kind: 'stopped', behind: 12.5 })
    for (const role of ['bottom', 'top'] as const) {
      expect(notches(boardIn(boards, role)).map((notch) => notch.split(' ')[1])).toEqual([
        `${SINK}x12.5`,
        `${SINK}x12.5`,
      ])
    }
    const rabbets = boardIn(boards, 'leftSide').operations.filter(({ kind }) => kind === 'rabbet')
    expect(rabbets.map((one) => one.kind === 'rabbet' && [one.y, one.width])).toEqual([
      [0, 580 - 12.5],
      [0, 580 - 12.5],
    ])
  })

  it('end with a shelf that is set back farther, which keeps its corners', () => {
    const setBack = { ...rulesWith().method.shelves, setback: 25 }
    const boards = built(stopped, { shelves: setBack })
    expect(dado(boardIn(boards, 'leftSide'))).toEqual([0, 580 - 25])
    expect(notches(shelfOf(boards))).toEqual([])
    // 4 mm set back, so that 6 of the 10 are left to be notched.
    const near = built(stopped, { shelves: { ...setBack, setback: 4 } })
    expect(dado(boardIn(near, 'leftSide'))).toEqual([0, 580 - 10])
    expect(notches(shelfOf(near))[0]).toBe(`0,0 ${SINK}x6 stop`)
  })

  it('end as far behind in the bottom and the top that a partition stands in', () => {
    const interior = { fixedShelves: 0, adjustableShelves: 0, partition: { at: 0.5 } }
    const boards = built(stopped, {}, { interior })
    expect(dado(boardIn(boards, 'bottom'))).toEqual([10, 580 - 10])
    const high = 720 - 2 * 18 + 2 * SINK
    expect(notches(boardIn(boards, 'partition'))).toEqual([
      `0,${580 - 10} ${SINK}x10 stop`,
      `${high - SINK},${580 - 10} ${SINK}x10 stop`,
    ])
  })

  it('run out behind a face frame, where nobody sees them', () => {
    const boards = built(stopped, { faceFrame: { ...USUAL_FRAME, pastLeft: 0, pastRight: 0 } })
    expect(dado(boardIn(boards, 'leftSide'))).toEqual([0, 580 - 20])
    expect(notches(shelfOf(boards))).toEqual([])
  })

  it('notch the bottom of an L at the end of both legs, whichever hand it is of', () => {
    for (const hand of ['left', 'right'] as const) {
      const corner = { kind: 'L', hand, other: 860, otherDepth: 560 } as const
      const boards = built(stopped, {}, { width: 920, corner })
      const [away, ...corners] = notches(boardIn(boards, 'bottom'))
      expect(away).toMatch(/^\d+,0 348x268$/)
      expect(corners.map((one) => one.split(' ')[1]).sort()).toEqual([`10x${SINK}`, `${SINK}x10`])
    }
  })

  it('stop in the bottom under an L as well, at the end of both legs, and its grooves for the backs do not', () => {
    const corner = { kind: 'L', hand: 'left', other: 860, otherDepth: 560 } as const
    const back = { kind: 'groove', inset: 20, depth: 5, clearance: 0 } as const
    const boards = built(stopped, { bottom: 'under', back }, { width: 920, corner })
    const bottom = boardIn(boards, 'bottom')
    const sunk = bottom.operations.flatMap((one) =>
      one.kind === 'rabbet' || one.kind === 'groove' ? [`${one.kind} ${one.length}x${one.width}`] : [],
    )
    expect(sunk.filter((one) => one.startsWith('rabbet')).sort()).toEqual([
      `rabbet 18x${580 - 10}`,
      `rabbet ${560 - 10}x18`,
    ])
    expect(interferences(boards)).toEqual([])
    expect(unseatedJoints(boards, 0)).toEqual([])
  })

  it('stop behind the front edges of the sides that stand in the slanting bottom of a diagonal', () => {
    const corner = { kind: 'diagonal', hand: 'left', other: 860, otherDepth: 560 } as const
    const boards = built(stopped, { bottom: 'under' }, { width: 920, corner })
    expect(rabbetsIn(boardIn(boards, 'bottom'))).toEqual([`18x${580 - 10}`, `${560 - 10}x18`])
    for (const side of ['leftSide', 'rightSide'] as const) {
      expect(notches(boardIn(boards, side)).map((notch) => notch.split(' ')[1])).toEqual([`${SINK}x10`])
    }
    expect(interferences(boards)).toEqual([])
    expect(unseatedJoints(boards, 0)).toEqual([])
  })

  it('stop as far behind the outer corner of the slanting edge where sides go on to an inset door', () => {
    const corner = { kind: 'diagonal', hand: 'left', other: 860, otherDepth: 560 } as const
    const front = { kind: 'door', hinge: 'left' } as const
    const boards = built(stopped, { bottom: 'under', frontMount: 'inset' }, { width: 920, corner, front })
    expect(rabbetsIn(boardIn(boards, 'bottom'))).toEqual([`18x${580 - 10}`, `${560 - 10}x18`])
    // The inside of a side of 18 goes on by 18 * 280 / 360 = 14 of the own leg, 18 * 360 / 280 = 23.14 of the other.
    expect(notches(boardIn(boards, 'rightSide')).map((notch) => notch.split(' ')[1])).toEqual([`${SINK}x${14 + 10}`])
    expect(interferences(boards)).toEqual([])
    expect(unseatedJoints(boards, 0)).toEqual([])
  })

  it('are told where they leave less than half of a side', () => {
    const rules = rulesWith({
      cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: SINK } },
      dadoFront: { kind: 'stopped', behind: 300 },
    })
    const { problems } = buildCabinet(aCabinet('base', { depth: 580 }), rules)
    expect(problems.map(({ message }) => message)).toEqual([
      'B1: its dados stop 300 mm behind the front edges; half of the 580 mm of its sides is the most.',
    ])
  })
})

describe('whichever way dados end', () => {
  it('boards are sawn to the same sizes', () => {
    const sizes = [through, covered, stopped].map((dadoFront) => {
      const rules = rulesWith({
        cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: SINK } },
        banding: { carcass: BAND, fronts: 0, isInFinishedSize: true },
        dadoFront,
      })
      const cabinet = aCabinet('base', { interior: { fixedShelves: 2, adjustableShelves: 1, partition: null } })
      return partsOf(buildCabinet(cabinet, rules), rules).map(
        ({ mark, cutLength, cutWidth }) => `${mark} ${cutLength} x ${cutWidth}`,
      )
    })
    expect(sizes[1]).toEqual(sizes[0])
    expect(sizes[2]).toEqual(sizes[0])
  })
})
