import { describe, expect, it } from 'vitest'
import type { Front } from '../../../engine/project/document'
import { interferences } from '../../../engine/solids/interference'
import { unseatedJoints } from '../../../engine/solids/seating'
import { aCabinet, boardsOf, rulesWith } from '../../helpers/cabinets'

const DADO_9 = { kind: 'dado', depth: { rule: 'depth', depth: 9 } } as const

describe('the short partitions of two rows that are parted, one over the other', () => {
  const one = { size: { kind: 'share', share: 1 }, shelves: null } as const
  const drawers: Front = { kind: 'columns', columns: [1, 2].map(() => ({ ...one, front: { kind: 'drawer' } })) }
  const rows: Front = { kind: 'rows', rows: [drawers, drawers].map((front) => ({ size: one.size, front })) }
  const boards = boardsOf(
    aCabinet('base', { width: 800, front: rows }),
    rulesWith({ cornerJoint: DADO_9 }, { carcass: 16 }),
  )
  const [lower, upper] = boards.filter(({ role }) => role === 'partition')

  it('sink a quarter of its thickness into the board between them, whatever the shop sinks into its sides', () => {
    // The board lies behind the middle of the front, which leaves 3 at the top; 9 from either side would be 2 more than it is thick.
    const middle = (720 - 3) / 2
    expect(9 + 9).toBeGreaterThan(16)
    expect(lower!.length).toBe(middle - 16 / 2 + 16 / 4 - (16 - 9))
    expect(upper!.length).toBe(720 - 16 + 9 - (middle + 16 / 2 - 16 / 4))
  })

  it('are not in one another, and fill their dados, but for the play of 2 mm in the grooves of drawers', () => {
    expect(interferences(boards)).toEqual([])
    expect(unseatedJoints(boards, 2)).toEqual([])
  })
})
