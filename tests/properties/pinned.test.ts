import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { SheetJob } from '../../engine/sheets/job'
import { checkJob, packSheets } from '../../engine/sheets/pack'
import { sheetCount } from '../../engine/sheets/tally'
import { verify } from '../../engine/sheets/verify'

const drawn = fc.record({
  effort: fc.oneof(
    { weight: 12, arbitrary: fc.constant('glance' as const) },
    { weight: 1, arbitrary: fc.constant('quick' as const) },
  ),
  kerf: fc.constantFrom(0, 2.2, 3.175),
  stages: fc.constantFrom<(2 | 3 | null)[]>(2, 3, null),
  firstCut: fc.constantFrom<('rip' | 'crosscut' | 'any')[]>('rip', 'crosscut', 'any'),
  stock: fc.array(
    fc.record({
      material: fc.constantFrom('ply', 'board'),
      length: fc.integer({ min: 900, max: 3050 }),
      width: fc.integer({ min: 600, max: 1525 }),
      quantity: fc.constantFrom(undefined, undefined, 2, 4),
      offcut: fc.boolean(),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  parts: fc.array(
    fc.record({
      material: fc.constantFrom('ply', 'board'),
      length: fc.integer({ min: 40, max: 1400 }),
      width: fc.integer({ min: 30, max: 800 }),
      quantity: fc.integer({ min: 1, max: 6 }),
      rotate: fc.boolean(),
      sheet: fc.constantFrom(undefined, undefined, 1, 2, 3, 9),
    }),
    { minLength: 1, maxLength: 12 },
  ),
})

/** A field left undefined is a field left out. */
function jobOf({ stock, parts, ...rest }: typeof drawn extends fc.Arbitrary<infer Drawn> ? Drawn : never): SheetJob {
  return {
    ...rest,
    stock: stock.map(({ quantity, ...sheet }, at) => {
      return { id: `s${at}`, ...sheet, ...(quantity === undefined ? {} : { quantity }) }
    }),
    parts: parts.map(({ sheet, ...part }, at) => ({
      id: `p${at}`,
      ...part,
      ...(sheet === undefined ? {} : { sheet }),
    })),
  }
}

/** The same without what is asked of single sheets. */
function free(job: SheetJob): SheetJob {
  return { ...job, parts: job.parts.map(({ sheet: _, ...part }) => part) }
}

/** Parts that ask for a sheet, counted, and how many of them are on none. */
function asking(job: SheetJob, unplaced: readonly { readonly part: string; readonly quantity: number }[]) {
  const ids = new Set(job.parts.filter(({ sheet }) => sheet !== undefined).map(({ id }) => id))
  const sum = (all: readonly { readonly quantity: number }[]) => all.reduce((total, one) => total + one.quantity, 0)
  return {
    all: sum(job.parts.filter(({ id }) => ids.has(id))),
    out: sum(unplaced.filter(({ part }) => ids.has(part))),
  }
}

describe('a packing with parts that ask for one sheet by its number', () => {
  it('has them on that sheet or tells why not, and calls nothing proved that is not', () => {
    let [all, out] = [0, 0]
    fc.assert(
      fc.property(drawn, (one) => {
        const job = jobOf(one)
        const checked = checkJob(job)
        expect(checked.ok ? '' : checked.message).toBe('')
        let looks = 0
        const answer = packSheets(job, () => job.effort === 'quick' && ++looks > 5)
        expect(verify(job, answer)).toEqual([])
        const told = asking(job, answer.unplaced)
        all += told.all
        out += told.out
        expect(answer.unplaced.filter(({ reason }) => reason === '')).toEqual([])
        // Who asks for nothing may be laid out on as few sheets.
        const easier = packSheets({ ...free(job), effort: 'glance' })
        if (answer.unplaced.length === 0 && easier.proved) {
          expect(sheetCount(answer)).toBeGreaterThanOrEqual(sheetCount(easier))
        }
      }),
      { numRuns: 110, seed: 31 },
    )
    expect(out).toBeLessThan(0.5 * all)
  })

  it('comes to the same bytes for the same job', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        const job: SheetJob = { ...jobOf(one), effort: 'glance' }
        expect(JSON.stringify(packSheets(structuredClone(job)))).toBe(JSON.stringify(packSheets(job)))
      }),
      { numRuns: 12, seed: 32 },
    )
  })

  it('keeps to locked sheets too, and what asks for a locked sheet without being on it is told', () => {
    let shut = 0
    fc.assert(
      fc.property(drawn, fc.nat(5), fc.boolean(), (one, at, hasPlaces) => {
        const job: SheetJob = { ...jobOf(one), effort: 'glance' }
        const before = packSheets(job)
        const from = at % (before.sheets.length + 1)
        const locked = before.sheets.slice(from, from + 2)
        const first = before.sheets.slice(0, from).reduce((sum, { copies }) => sum + copies, 0)
        const lockedAt = locked.map((_, place) => first + (place === 0 ? 0 : locked[0]!.copies))
        const more = job.parts.map((part) => ({ ...part, quantity: part.quantity + 1 }))
        const kept: SheetJob = { ...job, parts: more, locked, ...(hasPlaces ? { lockedAt } : {}) }
        const checked = checkJob(kept)
        if (!checked.ok) return
        const answer = packSheets(kept)
        expect(verify(kept, answer)).toEqual([])
        shut += answer.unplaced.filter(({ reason }) => reason.includes('locked without it')).length
      }),
      { numRuns: 60, seed: 33 },
    )
    expect(shut).toBeGreaterThan(5)
  })
})
