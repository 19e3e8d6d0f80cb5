import { describe, expect, it } from 'vitest'
import { areaBound } from '../../../engine/sheets/bound'
import { listParts } from '../../../engine/sheets/cutTree'
import { drawerFor } from '../../../engine/sheets/draw'
import type { SheetJob } from '../../../engine/sheets/job'
import { lotsOf } from '../../../engine/sheets/lot'
import { firstPlan } from '../../../engine/sheets/plan'
import { stripPlan } from '../../../engine/sheets/stripPlan'
import { verify } from '../../../engine/sheets/verify'
import { kitchenJob } from '../../bench/jobs'
import { aJob, aSheet, boards } from './yard'

const planned = (job: SheetJob) => stripPlan(lotsOf(job)[0]!)

/** What is wrong with the plan of a job; a plan that is missing is wrong. */
function wrongIn(job: SheetJob): unknown {
  const lot = lotsOf(job)[0]!
  const plan = stripPlan(lot)
  if (!plan) return 'no plan'
  return verify(job, { sheets: drawerFor(lot, job)(plan.boards), unplaced: [], bounds: {}, proved: false })
}

const ways = [{}, { firstCut: 'crosscut' }, { firstCut: 'any' }, { stages: 2 }, { stages: null }] as const

describe('a plan by whole strips', () => {
  it.each(ways)('has a place for every part that the saw reaches: %o', (way) => {
    for (const [parts, seed] of [
      [30, 1],
      [80, 2],
      [150, 3],
      [300, 4],
    ] as const) {
      expect(wrongIn({ ...kitchenJob(parts, seed), ...way }), `${parts} parts, seed ${seed}`).toEqual([])
    }
  })

  it('fills sheets with strips that go together: two wide ones and one that is as narrow as what they leave', () => {
    // 1220 is 560 + 560 + 91 and three kerfs of 3; a strip of 91 holds three of 800.
    const job = aJob([boards('800 x 560 x 12'), boards('800 x 91 x 6')])
    expect(planned(job)!.boards).toHaveLength(2)
    expect(wrongIn(job)).toEqual([])
  })

  it('takes fewer sheets for large kitchens than one part after the other', () => {
    const jobs = [1, 2, 3, 4].map((seed) => kitchenJob(300, seed))
    const count = (plan: (lot: ReturnType<typeof lotsOf>[number]) => { readonly boards: readonly unknown[] } | null) =>
      jobs.reduce((sum, job) => sum + plan(lotsOf(job)[0]!)!.boards.length, 0)
    const bound = jobs.reduce((sum, job) => sum + areaBound(lotsOf(job)[0]!), 0)
    expect(count(stripPlan)).toBeLessThan(count(firstPlan))
    expect(count(stripPlan)).toBeLessThan(1.1 * bound)
  })

  it('turns a part that is too long as it lies', () => {
    const long = boards('1300 x 400 x 2', { rotate: true })
    const job = aJob([long], { stock: [aSheet({ length: 1200, width: 1400 })] })
    expect(wrongIn(job)).toEqual([])
  })

  it('counts the narrow boards of one length by their numbers, not by every way to lay them', () => {
    const narrow = Array.from({ length: 60 }, (_, at) => boards(`600 x ${40 + at} x 4`))
    expect(wrongIn(aJob(narrow))).toEqual([])
  })

  it.each([
    [
      'several sizes of sheets',
      aJob([boards('720 x 560 x 4')], { stock: [aSheet(), aSheet({ id: 'b', width: 1000 })] }),
    ],
    ['fewer sheets than it takes', aJob([boards('2000 x 1000 x 4')], { stock: [aSheet({ quantity: 3 })] })],
    ['a part that asks for a sheet', aJob([boards('720 x 560 x 4', { sheet: 1 })])],
    ['a part that asks for a kind of sheet', aJob([boards('720 x 560 x 4', { from: 'sheet' })])],
    ['more kinds than can be tried', aJob(Array.from({ length: 201 }, (_, at) => boards(`${300 + at} x 200 x 1`)))],
    ['more parts than can be tried', aJob([boards('300 x 200 x 3001')])],
  ])('is left to others where there are %s', (_, job) => {
    expect(planned(job)).toBeNull()
  })

  it('has each part once', () => {
    const lot = lotsOf(kitchenJob(150, 5))[0]!
    const counts = lot.kinds.map(() => 0)
    for (const { root } of stripPlan(lot)!.boards) {
      const parts: number[] = []
      listParts(root, parts)
      for (const kind of parts) counts[kind]!++
    }
    expect(counts).toEqual(lot.kinds.map(({ quantity }) => quantity))
  })
})
