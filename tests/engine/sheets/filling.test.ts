import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Filling, type Limits } from '../../../engine/sheets/filling'
import { distinct, Row } from '../../../engine/sheets/knapsack'

/** Sizes with their worths, the shortest first, and a length. */
const cases = fc
  .record({
    sizes: fc.uniqueArray(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 8 }),
    worths: fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 8, maxLength: 8 }),
    length: fc.integer({ min: 1, max: 200 }),
  })
  .map(({ sizes, worths, length }) => ({ sizes: distinct(sizes), worths: Float64Array.from(worths), length }))

/** As if there were no limits. */
const NONE: Limits = { count: new Int32Array(64).fill(1000), worth: new Float64Array(64).fill(Infinity) }

/** The most that pieces can be worth within limits, by trying every number of each in turn. */
function mostWithin(sizes: readonly number[], worths: Float64Array, length: number, limits: Limits, piece = 0): number {
  if (piece === sizes.length) return 0
  let best = 0
  for (let some = 0; some <= limits.count[piece]! && some * sizes[piece]! <= length; some++) {
    const own = Math.min(some * worths[piece]!, limits.worth[piece]!)
    best = Math.max(best, own + mostWithin(sizes, worths, length - some * sizes[piece]!, limits, piece + 1))
  }
  return best
}

/** The most that pieces can be worth, by trying every length in turn: nothing shared with either way of filling. */
function mostWorth(sizes: readonly number[], worths: Float64Array, length: number): number {
  const best = new Array<number>(length + 1).fill(0)
  for (let at = 1; at <= length; at++) {
    best[at] = best[at - 1]!
    for (const [piece, size] of sizes.entries()) {
      if (size <= at) best[at] = Math.max(best[at]!, best[at - size]! + worths[piece]!)
    }
  }
  return best[length]!
}

describe('pieces side by side', () => {
  it('are worth the most, and fit', () => {
    fc.assert(
      fc.property(cases, ({ sizes, worths, length }) => {
        const filling = new Filling(sizes, length)
        const most = mostWorth(sizes, worths, length)
        expect(filling.fill(worths, 0, NONE)).toBeCloseTo(most, 9)
        const pieces = filling.pieces ?? []
        expect(pieces.reduce((sum, piece) => sum + worths[piece]!, 0)).toBeCloseTo(most, 9)
        expect(pieces.reduce((sum, piece) => sum + sizes[piece]!, 0)).toBeLessThanOrEqual(length)
      }),
      { numRuns: 1000 },
    )
  })

  it('are worth the most within their limits', () => {
    const limited = fc.record({
      ...{ given: cases, counts: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 8, maxLength: 8 }) },
      all: fc.array(fc.integer({ min: 0, max: 250 }), { minLength: 8, maxLength: 8 }),
    })
    fc.assert(
      fc.property(limited, ({ given: { sizes, worths, length }, counts, all }) => {
        const limits = { count: Int32Array.from(counts), worth: Float64Array.from(all) }
        const filling = new Filling(sizes, length)
        const most = mostWithin(sizes, worths, length, limits)
        expect(filling.fill(worths, 0, limits)).toBeCloseTo(most, 9)
      }),
      { numRuns: 1000 },
    )
  })

  it('are worth the most over all points too, where smaller pieces are left out for the better ones', () => {
    fc.assert(
      fc.property(cases, ({ sizes, worths, length }) => {
        const points = Array.from({ length: length + 1 }, (_, at) => at)
        const row = new Row(sizes, points)
        expect(row.fill(worths)).toBeCloseTo(mostWorth(sizes, worths, length), 9)
        const pieces = row.piecesAt(length)
        expect(pieces.reduce((sum, piece) => sum + worths[piece]!, 0)).toBeCloseTo(row.best[length]!, 9)
        expect(pieces.reduce((sum, piece) => sum + sizes[piece]!, 0)).toBeLessThanOrEqual(length)
      }),
      { numRuns: 1000 },
    )
  })

  it('are told only where they are worth more than the least', () => {
    const filling = new Filling([3, 5], 11)
    expect(filling.fill(Float64Array.of(3, 6), 0, NONE)).toBe(12)
    expect(filling.pieces).toEqual([1, 1])
    expect(filling.fill(Float64Array.of(3, 5), 12, NONE)).toBe(12)
    expect(filling.pieces).toBe(null)
  })

  it('are worth no more than is said where there are too many ways to try', () => {
    // All as dense as each other to a hair, and none that fills the length: nothing can be ruled out.
    const sizes = Array.from({ length: 30 }, (_, at) => 20 + 2 * at)
    const worths = Float64Array.from(sizes, (size) => size * (1 + 1e-6 * (size % 7)))
    const filling = new Filling(sizes, 2441)
    const said = filling.fill(worths, 0, NONE)
    const most = mostWorth(sizes, worths, 2441)
    const found = filling.pieces!.reduce((sum, piece) => sum + worths[piece]!, 0)
    expect(said).toBeGreaterThan(found)
    expect(said).toBeGreaterThanOrEqual(most)
    expect(filling.pieces!.reduce((sum, piece) => sum + sizes[piece]!, 0)).toBeLessThanOrEqual(2441)
  })
})
