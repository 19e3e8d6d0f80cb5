import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cleanCuts, freedBy } from '../../../engine/breakdown/clean'
import { type Rect, rectsOverlap } from '../../../engine/geometry/rect'
import { settle } from '../../../engine/units/length'

function rect(left: number, bottom: number, width: number, height: number): Rect {
  return { left, bottom, width, height }
}

function clean(piece: Rect, damages: readonly Rect[], isWorthKeeping: (clean: Rect) => boolean = () => true) {
  const cuts = cleanCuts(piece, damages, 3, isWorthKeeping)
  return freedBy(cuts, damages).map(({ left, bottom, width, height }) => `${width} x ${height} at ${left}, ${bottom}`)
}

describe('what is clean of a damaged piece', () => {
  it('lies above, below and beside the damage, the largest piece freed first', () => {
    expect(clean(rect(0, 0, 2440, 1220), [rect(1000, 400, 200, 100)])).toEqual([
      // from 400 + 100 on
      '2440 x 720 at 0, 500',
      '2440 x 400 at 0, 0',
      // between the two cuts, whose kerfs fall into the damaged rows: 500 - 3 - 403
      '1240 x 94 at 1200, 403',
      '1000 x 94 at 0, 403',
    ])
  })

  it('is freed by as few cuts as there are pieces worth keeping', () => {
    const isWide = ({ width }: Rect) => width >= 300
    const cuts = cleanCuts(rect(0, 0, 2440, 1220), [rect(0, 200, 300, 800)], 3, isWide)
    expect(cuts.map(({ direction, clean }) => `${direction} ${clean.width} x ${clean.height}`)).toEqual([
      'crosscut 2140 x 1220',
    ])
  })

  it('is nothing where all is damaged, and needs no cut where nothing is', () => {
    expect(clean(rect(100, 100, 500, 300), [rect(0, 0, 1000, 1000)])).toEqual([])
    expect(cleanCuts(rect(100, 100, 500, 300), [rect(600, 100, 10, 10)], 3, () => true)).toEqual([])
  })

  it('loses one kerf to a scratch that is narrower than the blade', () => {
    // 500 - 201 above; the blade stands at 198 to 201
    expect(clean(rect(0, 0, 1000, 500), [rect(0, 200, 1000, 1)])).toEqual([
      '1000 x 299 at 0, 201',
      '1000 x 198 at 0, 0',
    ])
  })

  it('is free of every damage of a piece with two', () => {
    expect(clean(rect(0, 0, 1000, 500), [rect(0, 0, 1000, 100), rect(600, 100, 400, 400)])).toEqual([
      // 600 along, 500 - 100 across
      '600 x 400 at 0, 100',
    ])
  })

  it('is found where sums of tenths have dust on them', () => {
    const damages = [rect(252.5, 102.9, 25.1, 10.2), rect(550.2, 65.8, 1.8, 116.4), rect(245.3, 148.1, 242.4, 280.8)]
    const left = clean(rect(0, 0, 552, 508.7), damages, ({ width, height }) => width > 20 && height > 20)
    // Left of the third damage, above the first: from 102.9 + 10.2 on.
    expect(left).toContain('245.3 x 395.6 at 0, 113.1')
  })

  it('is freed in few cuts, whatever tenths of a millimetre are damaged', () => {
    const tenths = (min: number, max: number) => fc.integer({ min: 10 * min, max: 10 * max }).map((n) => n / 10)
    const damage = fc.tuple(tenths(0, 900), tenths(0, 600), tenths(1, 300), tenths(1, 300)).map((all) => rect(...all))
    const kerfs = fc.constantFrom(0, 2.2, 3)
    fc.assert(
      fc.property(fc.array(damage, { minLength: 1, maxLength: 3 }), kerfs, (damages, kerf) => {
        const cuts = cleanCuts(rect(0, 0, 1000.7, 700.3), damages, kerf, ({ width, height }) => width * height > 400)
        expect(cuts.length).toBeLessThan(100)
      }),
      { numRuns: 2000 },
    )
  })

  it('is all that there was less kerfs and waste, at every cut', () => {
    const sizes = fc.integer({ min: 1, max: 900 })
    const places = fc.integer({ min: -200, max: 900 })
    const rects = fc.tuple(places, places, sizes, sizes).map((all) => rect(...all))
    fc.assert(
      fc.property(rects, fc.array(rects, { minLength: 1, maxLength: 3 }), fc.constantFrom(0, 3), (piece, all, kerf) => {
        const cuts = cleanCuts(piece, all, kerf, () => true)
        for (const { direction, takes, clean, rest } of cuts) {
          const along = direction === 'rip' ? 'height' : 'width'
          const dust = settle(takes[along] - clean[along] - Math.max(0, rest[along]))
          expect(dust).toBeLessThanOrEqual(kerf)
          if (rest[along] > 0) expect(dust).toBe(kerf)
        }
        const freed = freedBy(cuts, all)
        for (const one of freed) expect(all.some((damage) => rectsOverlap(one, damage))).toBe(false)
        expect(freed.filter((one, at) => freed.slice(at + 1).some((other) => rectsOverlap(one, other)))).toEqual([])
      }),
      { seed: 51, numRuns: 500 },
    )
  })
})
