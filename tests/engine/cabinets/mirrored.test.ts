import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import type { Corner } from '../../../engine/project/corner'
import type { Front } from '../../../engine/project/document'
import { aCabinet, BOARDS, boardIn, boardsOf, rulesWith } from '../../helpers/cabinets'
import { FRAME } from '../../helpers/frames'

function rowsAcross({ operations }: Board): number[] {
  return operations.flatMap((one) => (one.kind === 'holeRow' && one.purpose === 'shelfPin' ? [one.y] : []))
}

describe('a corner at the right end of its wall, with inset doors', () => {
  const corner: Corner = { kind: 'L', hand: 'right', other: 650, otherDepth: 450 }
  const interior = { fixedShelves: 0, adjustableShelves: 2, partition: null }
  const cabinet = aCabinet('base', { width: 650, depth: 450, corner, interior, front: { kind: 'door', hinge: 'left' } })
  const boards = boardsOf(cabinet, rulesWith({ frontMount: 'inset' }))
  const [fromRear, fromFront] = [37, BOARDS.front + 37]

  it('has its shelf pins 37 behind the door in the side of its own leg, whose width begins at the wall', () => {
    expect(rowsAcross(boardIn(boards, 'leftSide'))).toEqual([fromRear, 450 - fromFront])
  })

  it('has them so in the side of the other leg too, whose width begins at its front edge', () => {
    expect(rowsAcross(boardIn(boards, 'rightSide'))).toEqual([450 - fromRear, fromFront])
  })
})

describe('a drawer box that is just as far from a partition as its slide reaches', () => {
  it('is screwed to it from neither side, be it the one at its left or at its right', () => {
    const one = { size: { kind: 'share', share: 1 }, shelves: null } as const
    const [open, drawer] = [
      { ...one, front: { kind: 'open' } } as const,
      { ...one, front: { kind: 'drawer' } } as const,
    ]
    // Half of what the mullion is wider than the partition, and a box that is narrower than its opening by half of 41.3 - 30:
    // 16 + 5.65 is the 20.65 of the slide and 1 of play.
    expect((50 - 18) / 2 + (41.3 - 2 * 15) / 2).toBeCloseTo(41.3 / 2 + 1, 6)
    const faceFrame = { ...FRAME, stile: 38.1, mullion: 50, pastLeft: 6.35, pastRight: 6.35 }
    const rules = rulesWith({ faceFrame, slide: { kind: 'undermount', insideDeduction: 41.3 } }, { drawer: 15 })
    for (const columns of [
      [open, drawer],
      [drawer, open],
    ] as const) {
      const front: Front = { kind: 'columns', columns }
      const partition = boardIn(boardsOf(aCabinet('base', { front }), rules), 'partition')
      expect(partition.operations.filter((work) => work.kind === 'holeRow')).toEqual([])
    }
  })
})
