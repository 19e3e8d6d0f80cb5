import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { SheetJob } from '../../engine/sheets/job'
import { packSheets } from '../../engine/sheets/pack'
import { sheetCount, tallyOf } from '../../engine/sheets/tally'
import { verify } from '../../engine/sheets/verify'
import { inch, ticks } from '../../engine/units/length'

const jobs = fc.record({
  kerf: fc.constantFrom(0, 1.8, 2.2, 3.2),
  stages: fc.constantFrom<(2 | 3 | null)[]>(2, 3, null),
  firstCut: fc.constantFrom<('rip' | 'crosscut' | 'any')[]>('rip', 'crosscut', 'any'),
  trim: fc.constantFrom(0, 6, 10),
  quantity: fc.constantFrom(undefined, 1),
  sizes: fc.array(
    fc.record({
      length: fc.integer({ min: 40, max: 2600 }),
      width: fc.integer({ min: 30, max: 1250 }),
      quantity: fc.integer({ min: 1, max: 6 }),
      rotate: fc.boolean(),
    }),
    { maxLength: 12 },
  ),
})

describe('every packing', () => {
  it('passes the verifier, and accounts for every square tick of its sheets', () => {
    fc.assert(
      fc.property(jobs, ({ sizes, trim, quantity, ...rest }) => {
        const sheet = { id: 's', material: 'm', length: 2440, width: 1220, trim: { length: trim, width: trim } }
        const stock = [quantity === undefined ? sheet : { ...sheet, quantity }]
        const parts = sizes.map((size, at) => ({ id: `p${at}`, material: 'm', ...size }))
        const job: SheetJob = { ...rest, effort: 'quick', stock, parts }
        let looks = 0
        const answer = packSheets(job, () => ++looks > 3)
        expect(verify(job, answer)).toEqual([])
        for (const layout of answer.sheets) {
          const { parts, kerf, trim, offcuts, waste } = tallyOf(job, layout)
          expect(parts + kerf + trim + offcuts + waste).toBe(ticks(2440) * ticks(1220))
          expect(kerf).toBeGreaterThanOrEqual(0)
        }
      }),
      { numRuns: 500, seed: 20 },
    )
  })
})

describe('a strip and its kerfs', () => {
  const inches = (length: number, width: number, strip: number, quantity: number): SheetJob => ({
    kerf: inch(0.125),
    stock: [{ id: 's', material: 'm', length: inch(length), width: inch(width) }],
    parts: [{ id: 'strip', material: 'm', length: inch(length), width: inch(strip), quantity }],
  })

  function leftWidth(job: SheetJob): number {
    const { root } = packSheets(job).sheets[0]!
    return root.kind === 'cut' ? root.pieces.at(-1)!.width : Number.NaN
  }

  it('leave 11 5/8 in of a 48 in sheet after three of 12 in (source: survivalblog.com, Shelving/storage projects, part 2)', () => {
    expect(leftWidth(inches(96, 48, 12, 3))).toBe(inch(48 - 3 * (12 + 0.125)))
  })

  it('leave 3 1/4 in after two of 22 1/4 in (source: ana-white.com, Building Base Cabinets, 2013)', () => {
    expect(leftWidth(inches(96, 48, 22.25, 2))).toBe(inch(48 - 2 * 22.25 - 2 * 0.125))
  })

  it('fit four of 11 in to a sheet, and the count is proved', () => {
    const answer = packSheets(inches(96, 48, 11, 8))
    expect([sheetCount(answer), answer.proved]).toEqual([2, true])
  })
})
