import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import type { Cabinet, Front } from '../../../engine/project/document'
import { DOORS, USUAL_WIDEST_DOOR } from '../../../engine/project/doors'
import { USUAL_FRAME } from '../../../engine/project/frames'
import { aCabinet, type MethodChanges, PLAIN, rulesWith } from '../../helpers/cabinets'

const { endReveal, topReveal, bottomReveal } = PLAIN.fronts
const FIRST = PLAIN.hinge.firstFromEnd

function doors(said: Partial<Cabinet>, changes: MethodChanges = {}): Board[] {
  const { boards } = buildCabinet(aCabinet('upper', { front: DOORS, ...said }), rulesWith(changes))
  return boards.filter(({ role }) => role === 'door' || role === 'flap')
}

const count = (said: Partial<Cabinet>, changes: MethodChanges = {}) => doors(said, changes).length

describe('a door that may be a pair', () => {
  // Source: 98905.com, stock widths: one door to 24 in.
  it('is one up to the widest single door, a pair beyond, and one again when it is made narrower', () => {
    const widest = USUAL_WIDEST_DOOR + 2 * endReveal
    const high = 1400
    expect([widest - 40, widest, widest + 1, widest].map((width) => count({ width, height: high }))).toEqual([
      1, 1, 2, 1,
    ])
  })

  it('is a pair beyond what the method, or the cabinet itself, says is the widest', () => {
    const fronts = { ...PLAIN.fronts, widestDoor: 450 }
    const edge = 450 + 2 * endReveal
    expect([edge, edge + 1].map((width) => count({ width, height: 1400 }, { fronts }))).toEqual([1, 2])
  })

  // Source: a hinge maker's chart: the hinges of a door are farther apart than it is wide.
  it('is a pair where one door would be as wide as its hinges are apart', () => {
    const height = 720
    const apart = height - topReveal - bottomReveal - 2 * FIRST
    const edge = apart + 2 * endReveal
    expect([edge - 1, edge].map((width) => count({ width, height }))).toEqual([1, 2])
  })

  it('is one door where each of two would be too wide for its hinges as well', () => {
    // Hinges 300 less reveals and ends apart, and doors of half of 600.
    expect(count({ width: 600, height: 300 })).toBe(1)
  })

  it('hangs at its side where it is one, and is a pair as any where it is two', () => {
    const faces = (front: Front, width: number) =>
      buildCabinet(aCabinet('upper', { width, height: 1400, front }), rulesWith()).fronts.map(({ hinge, rect }) => [
        hinge,
        rect,
      ])
    const right = { ...DOORS, hinge: 'right' } as const
    expect(faces(DOORS, 500)).toEqual(faces({ kind: 'door', hinge: 'left' }, 500))
    expect(faces(right, 500)).toEqual(faces({ kind: 'door', hinge: 'right' }, 500))
    expect(faces(right, 900)).toEqual(faces({ kind: 'pair' }, 900))
  })

  it('is so row by row and column by column, and behind a face frame', () => {
    const share = { kind: 'share', share: 1 } as const
    const rows = {
      kind: 'rows',
      rows: [
        { size: share, front: DOORS },
        { size: share, front: DOORS },
      ],
    } as const
    expect(count({ width: 800, height: 1400, front: rows })).toBe(4)
    const fixed = { kind: 'fixed', width: 300 } as const
    const columns = [
      { size: fixed, front: DOORS, shelves: null },
      { size: share, front: DOORS, shelves: null },
    ]
    expect(count({ width: 1100, height: 1400, front: { kind: 'columns', columns } })).toBe(1 + 2)
    const over = { kind: 'rows', rows: [{ size: share, front: { kind: 'columns', columns } }] } as const
    expect(count({ width: 1100, height: 1400, front: over })).toBe(1 + 2)
    expect(count({ width: 900, height: 1400 }, { faceFrame: USUAL_FRAME })).toBe(2)
    expect(count({ width: 500, height: 1400 }, { faceFrame: USUAL_FRAME })).toBe(1)
  })

  it('that is hinged at its top is a flap, however wide', () => {
    expect(doors({ width: 900, front: { ...DOORS, hinge: 'top' } }).map(({ role }) => role)).toEqual(['flap'])
  })
})
