import { describe, expect, it } from 'vitest'
import type { CutRow, Derived, Part, PartId } from '../../../engine/index'
import { changesOf, markStretches, type RowChange, UNCHANGED } from '../../../web/tables/changes'

function row(key: string, parts: readonly string[], length: number, width: number): CutRow {
  return { key, parts, length, width, quantity: parts.length } as unknown as CutRow
}

function design(...rows: readonly CutRow[]): Pick<Derived, 'partOf' | 'cutList'> {
  const parts = rows.flatMap(({ parts, length, width }) => {
    return parts.map((id): [PartId, Part] => [id, { id, cutLength: length, cutWidth: width } as Part])
  })
  return { partOf: new Map(parts), cutList: { rows, totals: [] } }
}

function changeOf(now: CutRow, before: Pick<Derived, 'partOf' | 'cutList'> | null): RowChange {
  return changesOf({ rows: [now], totals: [] }, before).get(now.key) ?? UNCHANGED
}

describe('a row of the cut list during a drag', () => {
  it('has changed nothing when nothing is dragged, or when it is what it was', () => {
    expect(changeOf(row('a', ['k1/bottom'], 564, 560), null)).toBe(UNCHANGED)
    expect(changeOf(row('a', ['k1/bottom'], 564, 560), design(row('a', ['k1/bottom'], 564, 560)))).toBe(UNCHANGED)
  })

  it('tells what its boards measured before, although they stood in another row', () => {
    const before = design(row('a', ['k1/bottom', 'k2/bottom'], 564, 560))
    expect(changeOf(row('b', ['k2/bottom'], 744, 560), before)).toEqual({ ...UNCHANGED, length: 564 })
  })

  it('tells how many there were, when boards left it for another row', () => {
    const before = design(row('a', ['k1/bottom', 'k2/bottom'], 564, 560))
    expect(changeOf(row('a', ['k1/bottom'], 564, 560), before)).toEqual({ ...UNCHANGED, quantity: 2 })
  })

  it('is new when none of its boards was there', () => {
    expect(changeOf(row('c', ['k9/shelf'], 500, 300), design()).isNew).toBe(true)
  })
})

describe('the cabinets of a row', () => {
  it('are written as stretches where three or more follow each other', () => {
    expect(markStretches(['B1', 'B2', 'B3', 'B5', 'U1', 'U2'])).toBe('B1 to B3 B5 U1 U2')
    expect(markStretches([])).toBe('')
  })
})
