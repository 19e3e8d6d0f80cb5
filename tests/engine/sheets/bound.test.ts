import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundOf } from '../../../engine/sheets/bound'
import { measuresOf } from '../../../engine/sheets/dualFeasible'
import type { SheetJob } from '../../../engine/sheets/job'
import { lotsOf } from '../../../engine/sheets/lot'
import { aJob, aSheet, boards } from './yard'

function bound(job: SheetJob): number {
  return lotsOf(job).reduce((sum, lot) => sum + boundOf(lot), 0)
}

describe('the bound', () => {
  it('is the area, when nothing else is in the way', () => {
    expect(bound(aJob([boards('610 x 610 x 17')], { kerf: 0 }))).toBe(Math.ceil(17 / 8))
  })

  it('knows that boards longer and wider than half a sheet need a sheet each', () => {
    expect(bound(aJob([boards('1221 x 611 x 9')], { kerf: 0 }))).toBe(9)
  })

  it('knows that four strips of 305 fit in 1220 only without a kerf', () => {
    expect(bound(aJob([boards('2440 x 305 x 12')], { kerf: 0 }))).toBe(3)
    expect(bound(aJob([boards('2440 x 305 x 12')]))).toBe(4)
  })

  it('counts a part that may be turned by its better way', () => {
    const parts = [boards('1200 x 800 x 4', { rotate: true })]
    expect(bound(aJob(parts, { kerf: 0 }))).toBe(Math.ceil((4 * 1200 * 800) / (2440 * 1220)))
  })

  it('takes the largest sheets first, as many as there are', () => {
    const stock = [aSheet({ quantity: 1 }), aSheet({ id: 'half', length: 1220 })]
    expect(bound(aJob([boards('1220 x 1220 x 6')], { stock, kerf: 0 }))).toBe(1 + 4)
  })
})

describe('a dual-feasible function', () => {
  const lists = fc.record({
    whole: fc.integer({ min: 4, max: 400 }),
    shares: fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 }),
  })

  it('never makes parts that fit side by side into more than the whole', () => {
    fc.assert(
      fc.property(lists, ({ whole, shares }) => {
        const sizes = shares.map((share) => Math.max(1, Math.round(share * whole)))
        const counted = [...new Set(sizes)]
          .sort((a, b) => a - b)
          .map((size) => ({ size, count: sizes.filter((one) => one === size).length }))
        const measures = measuresOf(whole, counted, 200)
        // One expectation for all sets: there are so many that to expect takes longer than to judge.
        const over: number[] = []
        for (let set = 1; set < 2 ** Math.min(10, sizes.length); set++) {
          const some = sizes.filter((_, at) => (set >> at) & 1)
          if (some.reduce((a, b) => a + b, 0) > whole) continue
          for (const measure of measures) {
            const all = some.reduce((sum, size) => sum + measure(size), 0)
            if (!(all <= 1 + 1e-9)) over.push(all)
          }
        }
        expect(over).toEqual([])
      }),
      { numRuns: 60, seed: 4 },
    )
  })
})
