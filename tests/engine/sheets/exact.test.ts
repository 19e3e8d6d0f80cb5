import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import { listParts } from '../../../engine/sheets/cutTree'
import { type Settled, settledExactly } from '../../../engine/sheets/exact'
import type { JobPart, SheetJob } from '../../../engine/sheets/job'
import { type Lot, lotsOf } from '../../../engine/sheets/lot'
import type { PatternStrip } from '../../../engine/sheets/pattern'
import { firstPlan, type Plan } from '../../../engine/sheets/plan'
import { programmeOf } from '../../../engine/sheets/programme'
import { type Listed, patternsOf } from '../../../engine/sheets/staged'
import { sheetCount } from '../../../engine/sheets/tally'
import { verify } from '../../../engine/sheets/verify'
import { kitchenJob } from '../../bench/jobs'
import { endOf, provedAnswer } from './programmes'

const LONG = 240
const WIDE = 120
const KERF = 2
const PLENTY = 1e8

/** Lengths side by side that use up a length, with a cut between each two and a little left over at times. */
function cutUp(length: number, least: number, most: number, random: () => number): number[] {
  const pieces: number[] = []
  let left = length
  while (left >= least) {
    const piece = least + Math.floor(random() * (Math.min(most, left) - least + 1))
    const rest = left - piece - KERF
    pieces.push(rest < least ? left - Math.floor(random() * 2) : piece)
    left = rest < least ? 0 : rest
  }
  return pieces
}

/** Parts that were cut from so many sheets with hardly any waste: rips first, three directions in all. */
function cutJob(sheets: number, seed: number): SheetJob {
  const random = randomFrom(seed)
  const parts = new Map<string, JobPart>()
  for (let sheet = 0; sheet < sheets; sheet++) {
    for (const strip of cutUp(WIDE, 28, 62, random)) {
      for (const length of cutUp(LONG, 36, 110, random)) {
        for (const width of random() < 0.6 ? [strip] : cutUp(strip, 12, 40, random)) {
          const rotate = random() < 0.2
          const id = `${length}x${width}${rotate ? ' free' : ''}`
          const quantity = (parts.get(id)?.quantity ?? 0) + 1
          parts.set(id, { id, material: 'ply', length, width, quantity, rotate })
        }
      }
    }
  }
  const stock = [{ id: 's', material: 'ply', length: LONG, width: WIDE }]
  return { kerf: KERF, stages: 3, firstCut: 'rip', stock, parts: [...parts.values()] }
}

/** As if the best plan had a sheet more than the parts were cut from. */
function settledFor(job: SheetJob, count: number): Settled {
  const lot = lotsOf(job)[0]!
  const patterns = patternsOf(lot)!
  const first = firstPlan(lot)
  const programme = endOf(programmeOf(lot, patterns, { plan: first, bound: 0 }, 1e9))
  const plan: Plan = { boards: new Array(count + 1).fill(first.boards[0]!), left: [] }
  return endOf(settledExactly(lot, programme, { plan, bound: 0 }, PLENTY))
}

function partsOf({ boards }: Plan, lot: Lot): number[] {
  const counts = lot.kinds.map(() => 0)
  for (const { root } of boards) {
    const kinds: number[] = []
    listParts(root, kinds)
    for (const kind of kinds) counts[kind]!++
  }
  return counts
}

/** Prices at which no sheet is worth more than one, none of them nothing. */
function pricesFor(lot: Lot): Float64Array {
  const plan = firstPlan(lot)
  const { prices } = endOf(programmeOf(lot, patternsOf(lot)!, { plan, bound: 0 }, 1e9))
  return prices.map((price, kind) => 0.99 * price + (0.01 * lot.kinds[kind]!.area) / lot.sheetArea)
}

function listedFor(lot: Lot, prices: Float64Array, least: number): Listed {
  const demand = lot.kinds.map(({ quantity }) => quantity)
  return endOf(patternsOf(lot)!.list(prices, demand, least, 12_000_000))
}

/** The strips of a sheet that it has no room for, and those that have no room for what is on them. */
function whatHangsOver(strips: readonly PatternStrip[], { stocks }: Lot): readonly PatternStrip[] {
  const sum = (sizes: readonly number[]) => sizes.reduce((a, b) => a + b, 0)
  if (sum(strips.map(({ across }) => across)) > stocks[0]!.width) return strips
  return strips.filter(
    ({ across, sections }) =>
      sum(sections.map(({ along }) => along)) > stocks[0]!.length ||
      sections.some(({ kinds }) => sum(kinds.map((part) => part.across)) > across),
  )
}

describe('settling whether a sheet fewer will do', () => {
  it('never says that there is none of as many sheets as the parts were cut from, and mostly finds one', () => {
    const found: number[] = []
    const open: number[] = []
    for (let seed = 1; seed <= 60; seed++) {
      const count = 2 + (seed % 2)
      const job = cutJob(count, seed)
      const { plan, isNone } = settledFor(job, count)
      expect({ seed, isNone }).toEqual({ seed, isNone: false })
      if (!plan) open.push(seed)
      else {
        found.push(seed)
        const lot = lotsOf(job)[0]!
        expect(plan.boards.length).toBeLessThanOrEqual(count)
        expect(partsOf(plan, lot)).toEqual(lot.kinds.map(({ quantity }) => quantity))
      }
    }
    expect(found.length).toBeGreaterThan(open.length)
  })

  it('finds three sheets for a kitchen of thirty parts of which a programme takes 2.95', () => {
    const job = { ...kitchenJob(30, 34), seconds: 1 }
    const answer = provedAnswer(job)
    expect({ sheets: sheetCount(answer), proved: answer.proved }).toEqual({ sheets: 3, proved: true })
    expect(verify(job, answer)).toEqual([])
  })

  it('proves that a kitchen of thirty parts of which a programme takes 3.92 needs five sheets', () => {
    const job = { ...kitchenJob(30, 95), seconds: 1 }
    const answer = provedAnswer(job)
    expect(answer.bounds).toEqual({ board: 5 })
    expect({ sheets: sheetCount(answer), proved: answer.proved }).toEqual({ sheets: 5, proved: true })
  })

  it('says nothing where the work is spent before all is looked at', () => {
    const job = kitchenJob(30, 95)
    const lot = lotsOf(job)[0]!
    const patterns = patternsOf(lot)!
    const plan = firstPlan(lot)
    const programme = endOf(programmeOf(lot, patterns, { plan, bound: 0 }, 1e9))
    const settled = endOf(settledExactly(lot, programme, { plan, bound: 0 }, 1000))
    expect(plan.boards).toHaveLength(5)
    expect(settled).toEqual({ plan: null, isNone: false })
  })
})

describe('the list of sheets worth so much', () => {
  it('has one with all that is on any such sheet of a layout', () => {
    let looked = 0
    for (let seed = 1; seed <= 40; seed++) {
      const lot = lotsOf(cutJob(2, seed))[0]!
      const prices = pricesFor(lot)
      const sheets = firstPlan(lot).boards.map((board) => partsOf({ boards: [board], left: [] }, lot))
      const worthOf = (counts: readonly number[]) => counts.reduce((sum, count, kind) => sum + count * prices[kind]!, 0)
      const [counts] = sheets.sort((a, b) => worthOf(b) - worthOf(a))
      const listed = listedFor(lot, prices, worthOf(counts!) - 1e-9)
      if (!listed.isAll) continue
      looked++
      const isOn = listed.sheets.some((sheet) => counts!.every((count, kind) => count <= sheet.counts[kind]!))
      expect({ seed, isOn }).toEqual({ seed, isOn: true })
    }
    expect(looked).toBeGreaterThan(10)
  })

  it('has none that is worth more than one, cannot be cut, or has more of a kind than there is', () => {
    let looked = 0
    for (let seed = 1; seed <= 12; seed++) {
      const lot = lotsOf(cutJob(2, seed))[0]!
      const prices = pricesFor(lot)
      for (const { counts, worth, sheet } of listedFor(lot, prices, 0.97).sheets.slice(0, 200)) {
        looked++
        const { strips } = sheet()
        const told = lot.kinds.map(() => 0)
        const kindsOn = strips.flatMap(({ sections }) => sections.flatMap(({ kinds }) => kinds))
        for (const { kind } of kindsOn) told[kind]!++
        expect(told).toEqual([...counts])
        expect(lot.kinds.every(({ quantity }, kind) => counts[kind]! <= quantity)).toBe(true)
        expect(worth).toBeLessThanOrEqual(1 + 1e-9)
        expect(worth).toBeCloseTo(
          counts.reduce((sum, count, kind) => sum + count * prices[kind]!, 0),
          9,
        )
        expect(whatHangsOver(strips, lot)).toEqual([])
      }
    }
    expect(looked).toBeGreaterThan(100)
  })
})
