import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { SheetJob } from '../../engine/sheets/job'
import type { SheetAnswer } from '../../engine/sheets/layout'
import { checkJob, packSheets } from '../../engine/sheets/pack'
import { tallyOf } from '../../engine/sheets/tally'
import { verify } from '../../engine/sheets/verify'
import { ticks } from '../../engine/units/length'

/** Most jobs are searched for little and to the end, some for longer and stopped on the way. */
const efforts = fc.oneof(
  { weight: 11, arbitrary: fc.constant('glance' as const) },
  { weight: 1, arbitrary: fc.constant('quick' as const) },
)

function packed(job: SheetJob, most: number): SheetAnswer {
  let looks = 0
  return packSheets(job, () => job.effort === 'quick' && ++looks > most)
}

const jobs = fc.record({
  effort: efforts,
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
        const job: SheetJob = { ...rest, stock, parts }
        const answer = packed(job, 3)
        expect(verify(job, answer)).toEqual([])
        for (const layout of answer.sheets) {
          const { parts, kerf, trim, offcuts, waste } = tallyOf(job, layout)
          expect(parts + kerf + trim + offcuts + waste).toBe(ticks(2440) * ticks(1220))
          expect(kerf).toBeGreaterThanOrEqual(0)
        }
      }),
      { numRuns: 1000, seed: 20 },
    )
  })
})

const mixed = fc.record({
  effort: efforts,
  kerf: fc.constantFrom(0, 2.2, 3.175),
  stages: fc.constantFrom<(2 | 3 | null)[]>(2, 3, null),
  firstCut: fc.constantFrom<('rip' | 'crosscut' | 'any')[]>('rip', 'crosscut', 'any'),
  seed: fc.integer({ min: 0, max: 1000 }),
  stock: fc.array(
    fc.record({
      material: fc.constantFrom('ply', 'board'),
      length: fc.integer({ min: 600, max: 3050 }),
      width: fc.integer({ min: 300, max: 1525 }),
      quantity: fc.constantFrom(undefined, 0, 1, 3),
      price: fc.constantFrom(undefined, 0, 40, 65),
      offcut: fc.boolean(),
    }),
    { minLength: 1, maxLength: 4 },
  ),
  parts: fc.array(
    fc.record({
      material: fc.constantFrom('ply', 'board'),
      length: fc.integer({ min: 40, max: 1500 }),
      width: fc.integer({ min: 30, max: 900 }),
      quantity: fc.integer({ min: 1, max: 5 }),
      rotate: fc.boolean(),
    }),
    { maxLength: 10 },
  ),
})

/** A field left undefined is a field left out. */
function jobOf({ stock, parts, ...rest }: typeof mixed extends fc.Arbitrary<infer Drawn> ? Drawn : never): SheetJob {
  return {
    ...rest,
    offcutLeast: { length: 400, width: 200 },
    stock: stock.map(({ quantity, price, ...sheet }, at) => ({
      id: `s${at}`,
      ...sheet,
      ...(quantity === undefined ? {} : { quantity }),
      ...(price === undefined ? {} : { price }),
    })),
    parts: parts.map((part, at) => ({ id: `p${at}`, ...part })),
  }
}

describe('a packing of several materials on sheets of several sizes, prices and numbers', () => {
  it('passes the verifier', () => {
    fc.assert(
      fc.property(mixed, (drawn) => {
        const job = jobOf(drawn)
        expect(verify(job, packed(job, 4))).toEqual([])
      }),
      { numRuns: 600, seed: 21 },
    )
  })

  it('comes to the same bytes for the same job and seed', () => {
    fc.assert(
      fc.property(mixed, (drawn) => {
        const job = jobOf(drawn)
        const answers = [job, structuredClone(job)].map((same) => JSON.stringify(packed(same, 12)))
        expect(answers[0]).toBe(answers[1])
      }),
      { numRuns: 60, seed: 22 },
    )
  })

  it('settles on no more sheets for the money than it began with', () => {
    fc.assert(
      fc.property(mixed, (drawn) => {
        const job = jobOf(drawn)
        const cost = (answer: SheetAnswer) =>
          answer.sheets.reduce((sum, { stock, copies }) => {
            const sheet = job.stock.find(({ id }) => id === stock)!
            return sum + (sheet.offcut ? 0 : copies * (sheet.price ?? 1))
          }, 0)
        const left = (answer: SheetAnswer) => answer.unplaced.reduce((sum, { quantity }) => sum + quantity, 0)
        const [first, settled] = [packSheets(job, () => true), packSheets(job)]
        expect(left(settled)).toBeLessThanOrEqual(left(first))
        if (left(settled) === left(first)) expect(cost(settled)).toBeLessThanOrEqual(cost(first) + 1e-9)
      }),
      { numRuns: 12, seed: 23 },
    )
  })
})

describe('a packing with sheets that are locked, excluded or shown before', () => {
  it('passes the verifier, keeps what is locked and uses nothing that is excluded', () => {
    fc.assert(
      fc.property(mixed, fc.nat(5), fc.nat(3), (drawn, lockedAt, excludedAt) => {
        const free: SheetJob = { ...jobOf(drawn), effort: 'glance' }
        const before = packSheets(free)
        const locked = before.sheets.slice(lockedAt % (before.sheets.length + 1)).slice(0, 2)
        const stock = free.stock.map((sheet, at) => (at === excludedAt ? { ...sheet, excluded: true } : sheet))
        const job: SheetJob = { ...free, stock, locked }
        const checked = checkJob(job)
        expect(checked.ok ? '' : checked.message).toBe('')
        const answer = packSheets(job)
        expect(verify(job, answer)).toEqual([])
        expect(answer.sheets.slice(0, locked.length)).toEqual(locked)
        const excluded = answer.sheets.slice(locked.length).filter((sheet) => sheet.stock === `s${excludedAt}`)
        expect(excluded).toEqual([])
      }),
      { numRuns: 80, seed: 24 },
    )
  })

  it('stays as it was, whatever the seed, while nothing is better', () => {
    fc.assert(
      fc.property(mixed, fc.integer({ min: 1001, max: 2000 }), (drawn, seed) => {
        const job: SheetJob = { ...jobOf(drawn), effort: 'glance' }
        const before = packSheets(job)
        fc.pre(before.unplaced.length === 0)
        const again = { ...job, near: before.sheets }
        expect(packSheets(again).sheets).toEqual(before.sheets)
        const other = packSheets({ ...again, seed })
        expect(verify(again, other)).toEqual([])
      }),
      { numRuns: 40, seed: 25 },
    )
  })
})

describe('a packing with boards that must come from one kind of sheet', () => {
  it('cuts them from it or leaves them out', () => {
    let placed = 0
    fc.assert(
      fc.property(mixed, fc.array(fc.nat(3), { minLength: 10, maxLength: 10 }), (drawn, wishes) => {
        const free: SheetJob = { ...jobOf(drawn), effort: 'glance' }
        const parts = free.parts.map((part, at) => {
          const own = free.stock.filter(({ material }) => material === part.material)
          const from = own[wishes[at]!]?.id
          return from === undefined ? part : { ...part, from }
        })
        const job = { ...free, parts }
        const answer = packSheets(job)
        expect(checkJob(job).ok).toBe(true)
        expect(verify(job, answer)).toEqual([])
        const out = new Set(answer.unplaced.map(({ part }) => part))
        placed += parts.filter(({ id, from }) => from !== undefined && !out.has(id)).length
      }),
      { numRuns: 150, seed: 27 },
    )
    expect(placed).toBeGreaterThan(60)
  })
})

const banked = fc.record({
  kerf: fc.constantFrom(0, 2.2, 3.175),
  stages: fc.constantFrom<(2 | 3 | null)[]>(2, 3, null),
  firstCut: fc.constantFrom<('rip' | 'crosscut' | 'any')[]>('rip', 'crosscut', 'any'),
  along: fc.constantFrom<('length' | 'width')[]>('length', 'width'),
  rotate: fc.boolean(),
  across: fc.integer({ min: 100, max: 1000 }),
  sizes: fc.array(fc.integer({ min: 60, max: 900 }), { minLength: 1, maxLength: 5 }),
  others: fc.array(fc.tuple(fc.integer({ min: 60, max: 900 }), fc.integer({ min: 60, max: 700 })), { maxLength: 8 }),
})

describe('a packing with a bank of boards', () => {
  it('cuts the bank from one sheet, in its order, side by side', () => {
    let placed = 0
    fc.assert(
      fc.property(banked, ({ along, rotate, across, sizes, others, ...rest }) => {
        const bank = { id: 'fronts', along }
        const fronts = sizes.map((size, at) => {
          const [length, width] = along === 'length' ? [size, across] : [across, size]
          return { id: `f${at}`, material: 'm', length, width, quantity: 1 + (at % 2), rotate, bank }
        })
        const plain = others.map(([length, width], at) => ({ id: `p${at}`, material: 'm', length, width, quantity: 2 }))
        const stock = [{ id: 's', material: 'm', length: 2440, width: 1220, trim: { length: 6, width: 6 } }]
        const job: SheetJob = { ...rest, effort: 'glance', stock, parts: [...plain, ...fronts] }
        expect(checkJob(job).ok).toBe(true)
        const answer = packSheets(job)
        expect(verify(job, answer)).toEqual([])
        const out = answer.unplaced.filter(({ part }) => part.startsWith('f'))
        expect([0, fronts.length]).toContain(out.length)
        placed += out.length === 0 ? 1 : 0
      }),
      { numRuns: 120, seed: 26 },
    )
    expect(placed).toBeGreaterThan(40)
  })
})
