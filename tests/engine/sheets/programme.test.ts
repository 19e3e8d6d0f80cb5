import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import { boundOf } from '../../../engine/sheets/bound'
import type { SheetJob } from '../../../engine/sheets/job'
import type { SheetAnswer } from '../../../engine/sheets/layout'
import { lotsOf } from '../../../engine/sheets/lot'
import { packing, packSheets } from '../../../engine/sheets/pack'
import { patternsOf } from '../../../engine/sheets/staged'
import { sheetCount } from '../../../engine/sheets/tally'
import { verify } from '../../../engine/sheets/verify'
import { kitchenJob } from '../../bench/jobs'
import { bestOnGrid, smallJob } from './grid'
import { demandOf, programmeFor, provedAnswer } from './programmes'

/** More parts of a kind than go on any sheet. */
const PLENTY = 1000

/** The bounds that a job is told on its way, until one is lifted. */
function boundsOf(job: SheetJob): SheetAnswer['bounds'][] {
  const told: SheetAnswer['bounds'][] = []
  for (const answer of packing(job)) {
    if (answer) told.push(answer.bounds)
    if (told.length > 1 && JSON.stringify(told.at(-1)) !== JSON.stringify(told[1])) return told.slice(1)
  }
  return told.slice(1)
}

describe('the best sheet at given prices', () => {
  it('is worth what plain tables over every millimetre say where there is plenty, and no more where there is not', () => {
    let bounded = 0
    for (let seed = 1; seed <= 150; seed++) {
      const job = smallJob(seed)
      const lot = lotsOf(job)[0]!
      const random = randomFrom(seed + 1000)
      const prices = job.parts.map(() => Math.round(random() * 100) / 100)
      const patterns = patternsOf(lot)!
      const ofKinds = Float64Array.from(
        lot.kinds,
        ({ part }) => prices[job.parts.findIndex(({ id }) => id === part.id)]!,
      )
      const onGrid = bestOnGrid(job, prices)
      const plenty = patterns.price(
        ofKinds,
        lot.kinds.map(() => PLENTY),
        5,
      )
      expect(plenty.best, `seed ${seed}`).toBeCloseTo(onGrid, 9)
      expect(plenty.sheets[0]!.worth).toBeCloseTo(plenty.best, 9)
      const one = patterns.price(ofKinds, demandOf(lot), 5)
      expect(one.best).toBeLessThanOrEqual(onGrid + 1e-9)
      if (one.best < onGrid - 1e-9) bounded++
    }
    expect(bounded).toBeGreaterThan(50)
  })

  it('is never worth less than a sheet with no more parts than there are', () => {
    for (let seed = 1; seed <= 150; seed++) {
      const job: SheetJob = { ...smallJob(seed), effort: 'glance' }
      const lot = lotsOf(job)[0]!
      const random = randomFrom(seed + 1000)
      const worth = new Map(job.parts.map(({ id }) => [id, random()]))
      const prices = Float64Array.from(lot.kinds, ({ part }) => worth.get(part.id)!)
      const { best } = patternsOf(lot)!.price(prices, demandOf(lot), 5)
      for (const { placements } of packSheets(job).sheets) {
        const sum = placements.reduce((all, { part }) => all + worth.get(part)!, 0)
        expect(sum, `seed ${seed}`).toBeLessThanOrEqual(best + 1e-9)
      }
    }
  })
})

describe('sheets that may be cut either way first', () => {
  it('are worth what the better way is worth, and bound a job as no layout does that is cut either way', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const job: SheetJob = { ...smallJob(seed), effort: 'glance' }
      const [either, rip, crosscut] = (['any', 'rip', 'crosscut'] as const).map((firstCut) => ({ ...job, firstCut }))
      const worth = [either!, rip!, crosscut!].map((asked) => {
        const lot = lotsOf(asked)[0]!
        return patternsOf(lot)!.price(
          Float64Array.from(lot.kinds, ({ area }) => area ** 0.9 / lot.sheetArea),
          demandOf(lot),
          5,
        ).best
      })
      expect(worth[0], `seed ${seed}`).toBe(Math.max(worth[1]!, worth[2]!))
      const { bound } = programmeFor(lotsOf(either!)[0]!)
      for (const asked of [either!, rip!, crosscut!]) {
        expect(bound).toBeLessThanOrEqual(sheetCount(packSheets(asked)))
      }
    }
  })
})

describe('the linear programme', () => {
  it('is not asked where a section can have too many heights: leaving some out would lift the bound too far', () => {
    const parts = Array.from({ length: 40 }, (_, at) => ({
      ...{ id: `p${at}`, material: 'm', length: 500, width: 60 + ((at * at * 31.17) % 500), quantity: 1 },
    }))
    const job = { kerf: 3, stock: [{ id: 's', material: 'm', length: 2440, width: 1220 }], parts }
    expect(patternsOf(lotsOf(job)[0]!)).toBe(null)
    expect(patternsOf(lotsOf({ ...job, parts: parts.slice(0, 3) })[0]!)).not.toBe(null)
  })

  it('is not asked where there are so many kinds of parts that it would take more memory than there is', () => {
    const parts = Array.from({ length: 10_000 }, (_, at) => ({
      ...{ id: `p${at}`, material: 'm', length: 300 + (at % 100), width: 200 + Math.floor(at / 100), quantity: 1 },
    }))
    const job = { kerf: 3, stock: [{ id: 's', material: 'm', length: 2440, width: 1220 }], parts }
    expect(patternsOf(lotsOf(job)[0]!)).toBe(null)
    expect(patternsOf(lotsOf({ ...job, parts: parts.slice(0, 600) })[0]!)).not.toBe(null)
  })

  it('never asks for more sheets than a layout has', () => {
    for (let seed = 1; seed <= 150; seed++) {
      const job = smallJob(seed)
      const answer = packSheets({ ...job, effort: seed <= 15 ? 'quick' : 'glance' })
      const count = answer.sheets.reduce((sum, { copies }) => sum + copies, 0)
      const { bound, value } = programmeFor(lotsOf(job)[0]!)
      expect(bound, `seed ${seed}`).toBeLessThanOrEqual(count)
      expect(bound).toBeLessThanOrEqual(Math.ceil(value - 1e-6))
    }
  })

  it('bounds a job with a kept sheet as well as the job without, whatever the kept sheet is', () => {
    const job = kitchenJob(150, 1)
    const free = packSheets(job)
    const quick = Object.fromEntries(lotsOf(job).map((lot) => [lot.material, boundOf(lot)]))
    // One board alone on a sheet is never how it would be laid out.
    const [first] = free.sheets.flatMap(({ stock, placements }) =>
      placements.map((placement) => ({ stock, placement })),
    )
    const sheet = job.stock.find(({ id }) => id === first!.stock)!
    const alone = packSheets({
      ...job,
      parts: job.parts.filter(({ id }) => id === first!.placement.part).map((part) => ({ ...part, quantity: 1 })),
    })
    const answer = packSheets({ ...job, locked: alone.sheets })
    expect(verify({ ...job, locked: alone.sheets }, answer)).toEqual([])
    expect(answer.bounds).toEqual(free.bounds)
    expect(free.bounds[sheet.material]).toBeGreaterThan(quick[sheet.material]!)
    expect(answer.proved).toBe(false)
  })

  it('never asks for more sheets than a layout has where sheets are few and of several sizes', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const { stock, parts, ...shop } = smallJob(seed)
      const [whole] = stock
      const half = { ...whole!, id: 'half', length: Math.ceil(whole!.length / 2), price: 0.4 }
      const rest = { ...whole!, id: 'rest', width: Math.ceil(whole!.width / 2), quantity: 2, offcut: true }
      const job: SheetJob = { ...shop, effort: 'glance', stock: [{ ...whole!, quantity: 40 }, half, rest], parts }
      const answer = packSheets(job)
      expect(answer.unplaced, `seed ${seed}`).toEqual([])
      const count = answer.sheets.reduce((sum, { copies }) => sum + copies, 0)
      expect(programmeFor(lotsOf(job)[0]!).bound, `seed ${seed}`).toBeLessThanOrEqual(count)
    }
  })

  it('bounds a kitchen from sheets that are counted, or with an offcut beside them, as well as from any number', () => {
    const job = { ...kitchenJob(150, 1), seconds: 5 }
    const [sheet] = job.stock
    const counted = provedAnswer({ ...job, stock: [{ ...sheet!, quantity: 20 }] })
    expect(counted.bounds).toEqual({ board: 18 })
    // The offcut is no larger than the sheets, which are 18 at least by themselves.
    const offcut = { ...sheet!, id: 'rest', length: 800, width: 150, quantity: 1, offcut: true, trim: undefined }
    const bounds = boundsOf({ ...job, stock: [sheet!, offcut] })
    expect(bounds[0]).toEqual({ board: 17 })
    expect(bounds.at(-1)).toEqual({ board: 18 })
  })

  it('lifts the bound of a kitchen of 150 parts to the sheets of its layout, and so proves it', () => {
    const job = kitchenJob(150, 1)
    expect(boundOf(lotsOf(job)[0]!)).toBe(17)
    const answer = provedAnswer({ ...job, seconds: 5 })
    expect(answer.bounds).toEqual({ board: 18 })
    expect(verify(job, answer)).toEqual([])
  })

  it('takes no more of a kind on a section, or on sections of one length, than there is, and so proves more', () => {
    // As often as it fits a part would make 13 sheets enough in fractions.
    const answer = provedAnswer({ ...kitchenJob(150, 39), seconds: 5 })
    expect(answer.bounds).toEqual({ board: 14 })
    expect(sheetCount(answer)).toBe(14)
  })

  it('leaves the answer to the other bounds at a glance', () => {
    const answer = packSheets({ ...kitchenJob(150, 1), effort: 'glance' })
    expect(answer.bounds).toEqual({ board: 17 })
    expect(answer.proved).toBe(false)
  })
})
