import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BoardRole } from '../../engine/cabinets/board'
import { carcassOf } from '../../engine/cabinets/carcass'
import { columnRects } from '../../engine/cabinets/openings'
import { SILENT } from '../../engine/cabinets/report'
import type { Front } from '../../engine/project/document'
import { hungAs } from '../../engine/project/doors'
import { settle } from '../../engine/units/length'
import { anyStraight, type Made, SEED } from '../helpers/anyMade'
import { neverPair, widened } from '../helpers/widerLaw'

/** Fronts of one board, as wide as their column or half of it. */
const WHOLE_FRONTS: readonly BoardRole[] = ['door', 'flap', 'drawerFront', 'falseFront']

const anyMore = fc.integer({ min: 1, max: 200 })

describe('a cabinet that is made wider', () => {
  it('whose columns but the last are fixed has everything up to the last partition where it was, with all that is cut there', () => {
    let [compared, grew] = [0, 0]
    const inColumns = anyStraight.filter(({ cabinet }) => cabinet.front.kind === 'columns')
    const property = fc.property(inColumns, anyMore, (any, more) => {
      const { cabinet } = any
      const made = { ...any, cabinet: { ...cabinet, front: neverPair(cabinet.front) } }
      const interior = { ...cabinet.interior, partition: null }
      const both = widened({ ...made, cabinet: { ...cabinet, interior, front: fixedButLast(made) } }, more)
      expect(both.odd).toEqual([])
      const posts = both.pairs.filter(({ role }) => role === 'partition').map(({ before }) => before.max.x)
      const end = Math.max(...posts)
      const last = lastOf(made)
      for (const { name, role, before, after, boards } of both.pairs) {
        if (before.max.x > end) {
          // The front of the last column has all that is more, or either door of a pair half of it.
          if (!WHOLE_FRONTS.includes(role) || last === 'rows') continue
          const grown = settle(after.max.x - after.min.x - (before.max.x - before.min.x))
          expect(grown, name).toBeCloseTo(last === 'pair' ? more / 2 : more, 2)
          grew++
          continue
        }
        compared++
        expect(after, name).toEqual(before)
        const [own, wider] = boards
        expect([wider.length, wider.width], name).toEqual([own.length, own.width])
      }
    })
    fc.assert(property, { numRuns: 1000, seed: SEED })
    expect(compared).toBeGreaterThan(1500)
    expect(grew).toBeGreaterThan(300)
  })
})

/** What closes the last column as it hangs there. */
function lastOf({ cabinet, rules }: Made): Front['kind'] {
  const { front } = cabinet
  const carcass = carcassOf(cabinet, rules, SILENT)
  if (front.kind !== 'columns' || !carcass) return 'rows'
  return hungAs(front.columns.at(-1)!.front, columnRects(front.columns, carcass, SILENT).at(-1)!, rules.method).kind
}

/** The same columns, all but the last at the width that they have. */
function fixedButLast({ cabinet, rules }: Made): Front {
  const { front } = cabinet
  const carcass = carcassOf(cabinet, rules, SILENT)
  if (front.kind !== 'columns' || !carcass) return front
  const rects = columnRects(front.columns, carcass, SILENT)
  const last = rects.length - 1
  return {
    kind: 'columns',
    columns: front.columns.map((column, at) => ({
      ...column,
      size: at === last ? { kind: 'share', share: 1 } : { kind: 'fixed', width: rects[at]!.width },
    })),
  }
}
