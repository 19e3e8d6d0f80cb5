import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cleanRects } from '../../../engine/breakdown/clean'
import { type Rect, rectsOverlap } from '../../../engine/geometry/rect'

function rect(left: number, bottom: number, width: number, height: number): Rect {
  return { left, bottom, width, height }
}

function clean(piece: Rect, damage: Rect, kerf = 3) {
  return cleanRects(piece, damage, kerf).map(
    ({ left, bottom, width, height }) => `${width} x ${height} at ${left}, ${bottom}`,
  )
}

describe('what is clean of a damaged piece', () => {
  it('lies below, above and beside the damage', () => {
    expect(clean(rect(0, 0, 2440, 1220), rect(1000, 400, 200, 100))).toEqual([
      '2440 x 400 at 0, 0',
      // from 400 + 100 on
      '2440 x 720 at 0, 500',
      // between the two cuts, whose kerfs fall into the damaged rows
      '1000 x 94 at 0, 403',
      '1240 x 94 at 1200, 403',
    ])
  })

  it('is cut across first where that leaves a larger piece', () => {
    expect(clean(rect(0, 0, 2440, 1220), rect(0, 200, 300, 800))).toEqual([
      // from 300 on
      '2140 x 1220 at 300, 0',
      '297 x 200 at 0, 0',
      '297 x 220 at 0, 1000',
    ])
  })

  it('is nothing where all is damaged, and the whole piece where nothing is', () => {
    expect(clean(rect(100, 100, 500, 300), rect(0, 0, 1000, 1000))).toEqual([])
    expect(clean(rect(100, 100, 500, 300), rect(600, 100, 10, 10))).toEqual(['500 x 300 at 100, 100'])
  })

  it('loses one kerf to a scratch that is narrower than the blade', () => {
    expect(clean(rect(0, 0, 1000, 500), rect(0, 200, 1000, 1))).toEqual([
      '1000 x 200 at 0, 0',
      // 200 + 3, not 200 + 1
      '1000 x 297 at 0, 203',
    ])
  })

  it('lies in the piece, outside the damage, and never one on another', () => {
    const sizes = fc.integer({ min: 1, max: 900 })
    const places = fc.integer({ min: -200, max: 900 })
    const rects = fc.tuple(places, places, sizes, sizes).map((all) => rect(...all))
    fc.assert(
      fc.property(rects, rects, fc.constantFrom(0, 3), (piece, damage, kerf) => {
        const all = cleanRects(piece, damage, kerf)
        expect(all.filter((one) => rectsOverlap(one, damage))).toEqual([])
        expect(all.filter((one, at) => all.slice(at + 1).some((other) => rectsOverlap(one, other)))).toEqual([])
        for (const { left, bottom, width, height } of all) {
          expect(left).toBeGreaterThanOrEqual(piece.left)
          expect(bottom).toBeGreaterThanOrEqual(piece.bottom)
          expect(left + width).toBeLessThanOrEqual(piece.left + piece.width)
          expect(bottom + height).toBeLessThanOrEqual(piece.bottom + piece.height)
        }
      }),
      { seed: 51, numRuns: 500 },
    )
  })
})
