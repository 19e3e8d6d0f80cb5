import { describe, expect, it } from 'vitest'
import type { SheetJob } from '../../../engine/sheets/job'
import { packSheets } from '../../../engine/sheets/pack'
import { handlingCost, largestLeft, settingsOf } from '../../../engine/sheets/settings'
import { sheetCount } from '../../../engine/sheets/tally'
import { verify } from '../../../engine/sheets/verify'
import { kitchenJob } from '../../bench/jobs'
import { aJob, aSheet, boards } from './yard'

const NONE = { parts: 0, rips: 0, ripWidths: 0, setups: 0, crosscutLengths: 0, trimmed: 0, trimSizes: 0, patterns: 0 }

describe('the settings of an answer', () => {
  it('are a rip width and a crosscut length for boards of one size, a rip a strip', () => {
    // 2440 holds 3 of 720 with their kerfs, so 5 boards are two strips.
    const answer = packSheets(aJob([boards('720 x 560 x 5')]))
    expect(settingsOf(answer)).toEqual({
      ...NONE,
      ...{ parts: 5, rips: 2, ripWidths: 1, setups: 1, crosscutLengths: 1, patterns: 1 },
    })
  })

  it('count a part as trimmed that is narrower than its strip', () => {
    const parts = [boards('1500 x 1200 x 1'), boards('900 x 590 x 2')]
    expect(settingsOf(packSheets(aJob(parts)))).toMatchObject({ rips: 1, trimmed: 2, trimSizes: 1 })
  })

  it('count each copy of a sheet, and widths that differ once', () => {
    const answer = packSheets(aJob([boards('2440 x 600 x 6')]))
    expect(settingsOf(answer)).toEqual({ ...NONE, parts: 6, rips: 6, ripWidths: 1, setups: 3, patterns: 1 })
  })

  it('are none where nothing is cut', () => {
    const answer = packSheets(aJob([boards('2440 x 1220 x 1')]))
    expect(settingsOf(answer)).toEqual({ ...NONE, parts: 1, patterns: 1 })
  })
})

describe('the cost of handling', () => {
  it('adds up what is counted: two rips of one width, a setup, one length, a pattern', () => {
    const answer = packSheets(aJob([boards('720 x 560 x 5')]))
    expect(handlingCost(settingsOf(answer))).toBe(2 * 4 + 3 + 0.5 + 4 + 0 + 0.5)
  })

  it('weighs a rip of many parts as ten that are trimmed', () => {
    // 2440 holds one of 1500 and 1220 one of 700, so a hundred boards are as many strips on sheets that are all alike.
    const answer = packSheets(aJob([boards('1500 x 700 x 100')]))
    expect(handlingCost(settingsOf(answer))).toBe(100 * 20 + 11 + 100 * 0.5 + 7 + 0.5)
  })

  it('of many parts is the more for each that is trimmed the more of all they are, up to a third, and then the same', () => {
    const costs = Array.from({ length: 121 }, (_, trimmed) => handlingCost({ ...NONE, parts: 120, trimmed }))
    const steps = costs.slice(1).map((cost, at) => cost - costs[at]!)
    const rip = handlingCost({ ...NONE, parts: 120, rips: 1 })
    expect(steps[0]).toBeCloseTo(2)
    for (let at = 1; at < 40; at++) expect(steps[at], `part ${at + 1}`).toBeGreaterThan(steps[at - 1]!)
    expect(steps[24]).toBeLessThan(rip / 8)
    expect(steps[45]).toBeGreaterThan(rip / 2)
    expect(steps[119]).toBeCloseTo(steps[45]!)
  })
})

describe('the largest piece left', () => {
  it('is measured across the sheet: 1220 less two strips of 300 and a kerf after each', () => {
    expect(largestLeft(packSheets(aJob([boards('2440 x 300 x 2')])))).toBe(1220 - 2 * (300 + 3))
  })

  it('is nothing on a sheet that is used to its edge', () => {
    expect(largestLeft(packSheets(aJob([boards('2440 x 608.5 x 2')])))).toBe(0)
  })
})

/** Carcasses as they come: sides, bottoms, stretchers and shelves of a few widths. */
const kitchen: SheetJob = aJob(
  [
    boards('720 x 560 x 12'),
    boards('564 x 560 x 4'),
    boards('864 x 560 x 2'),
    boards('564 x 100 x 8'),
    boards('864 x 100 x 4'),
    boards('560 x 540 x 6'),
    boards('720 x 300 x 8'),
    boards('664 x 300 x 6'),
    boards('660 x 285 x 5'),
  ],
  { stock: [aSheet({ trim: { length: 10, width: 10 } })] },
)

const plain = packSheets({ ...kitchen, goals: [] })
const cost = (job: SheetJob) => handlingCost(settingsOf(packSheets(job)))

describe('the goals after the sheets', () => {
  it.each([[['settings']], [['leftover']], [['leftover', 'settings']], [['settings', 'leftover']]] as const)(
    'cost no sheet: %j',
    (goals) => {
      const answer = packSheets({ ...kitchen, goals: [...goals] })
      expect(verify(kitchen, answer)).toEqual([])
      expect(sheetCount(answer)).toBe(sheetCount(plain))
    },
  )

  it('take fewer settings and cuts when settings are a goal', () => {
    expect(cost({ ...kitchen, goals: ['settings'] })).toBeLessThan(handlingCost(settingsOf(plain)))
  })

  it('leave more in one piece when the leftover is a goal', () => {
    const jobs = [kitchen, ...[1, 2, 3].map((seed) => kitchenJob(40, seed))]
    const left = (goals: SheetJob['goals']) => jobs.map((job) => largestLeft(packSheets({ ...job, goals: goals! })))
    const [more, any] = [left(['leftover']), left([])]
    for (const [at, most] of more.entries()) expect(most).toBeGreaterThanOrEqual(any[at]!)
    const sum = (all: readonly number[]) => all.reduce((a, b) => a + b)
    expect(sum(more)).toBeGreaterThan(1.2 * sum(any))
  })

  it('give back at most three tenths of the leftover for settings that come second', () => {
    const most = largestLeft(packSheets({ ...kitchen, goals: ['leftover'] }))
    const second = packSheets({ ...kitchen, goals: ['leftover', 'settings'] })
    expect(largestLeft(second)).toBeGreaterThan(0.69 * most)
  })

  it.each([
    [40, 11],
    [60, 2],
    [80, 4],
  ])('never ask for more settings where these come first: %i parts, seed %i', (parts, seed) => {
    const made = kitchenJob(parts, seed)
    const usual = cost({ ...made, goals: ['leftover', 'settings'] })
    expect(cost({ ...made, goals: ['settings', 'leftover'] })).toBeLessThanOrEqual(usual)
  })

  it('give back more of a narrow leftover among many parts, but not two thirds', () => {
    const many = { ...kitchen, parts: kitchen.parts.map((part) => ({ ...part, quantity: 2 * part.quantity })) }
    const most = largestLeft(packSheets({ ...many, goals: ['leftover'] }))
    const second = packSheets({ ...many, goals: ['leftover', 'settings'] })
    expect(largestLeft(second)).toBeGreaterThan((0.39 + (0.5 * most) / 1200) * most)
    expect(cost(many)).toBeLessThan(cost({ ...many, goals: ['leftover'] }))
  })
})
