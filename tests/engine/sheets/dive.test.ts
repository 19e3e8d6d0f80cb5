import { describe, expect, it } from 'vitest'
import { diveFrom } from '../../../engine/sheets/dive'
import { drawerFor } from '../../../engine/sheets/draw'
import { lotsOf } from '../../../engine/sheets/lot'
import { firstPlan } from '../../../engine/sheets/plan'
import { sawFor } from '../../../engine/sheets/saw'
import { sheetCount } from '../../../engine/sheets/tally'
import { verify } from '../../../engine/sheets/verify'
import { kitchenJob } from '../../bench/jobs'
import { endOf, programmeFor, provedAnswer } from './programmes'

describe('settling what a programme takes', () => {
  it('gives sheets that can be cut, with every part on one of them or in the pool', () => {
    // Of these a programme takes more than a sheet fewer than the first plan has.
    for (const seed of [1, 2, 11]) {
      const job = kitchenJob(150, seed)
      const lot = lotsOf(job)[0]!
      const plan = firstPlan(lot)
      const programme = programmeFor(lot)
      expect(programme.value).toBeLessThan(plan.boards.length - 1)
      const goal = endOf(diveFrom(lot, programme, plan, sawFor(lot, seed, 1e6), seed))
      expect(goal.boards).toHaveLength(plan.boards.length - 1)
      const open = goal.boards.filter(({ used }) => used === 0).length
      expect(open).toBeGreaterThanOrEqual(Math.floor(0.25 * goal.boards.length))
      const sheets = drawerFor(lot, job)(goal.boards.filter(({ used }) => used > 0))
      const homeless = new Map<string, number>()
      for (const kind of goal.pool) {
        const { id } = lot.kinds[kind]!.part
        homeless.set(id, (homeless.get(id) ?? 0) + 1)
      }
      const unplaced = [...homeless].map(([part, quantity]) => ({ part, quantity, reason: 'in the pool' }))
      expect(sheets.length).toBeGreaterThan(0)
      expect(verify(job, { sheets, unplaced, bounds: { board: 0 }, proved: false })).toEqual([])
    }
  })

  it.each([
    { parts: 600, seed: 3 },
    { parts: 600, seed: 4 },
    // These leave over about a tenth of a sheet in all.
    { parts: 80, seed: 32 },
    { parts: 80, seed: 46 },
  ])('finds the fewest sheets of kitchens on those that are left open: $parts parts, seed $seed', ({ parts, seed }) => {
    const job = { ...kitchenJob(parts, seed), seconds: 5 }
    const answer = provedAnswer(job)
    expect(verify(job, answer)).toEqual([])
  })

  // These leave over from a thirtieth to a quarter of a sheet in all.
  it.each([
    { parts: 150, seed: 6, sheets: 15 },
    { parts: 150, seed: 40, sheets: 15 },
    { parts: 150, seed: 59, sheets: 12 },
    { parts: 80, seed: 19, sheets: 7 },
  ])('comes to $sheets sheets for $parts parts in the work of half a second, seed $seed', ({ parts, seed, sheets }) => {
    const job = { ...kitchenJob(parts, seed), seconds: 0.5 }
    const answer = provedAnswer(job)
    expect(sheetCount(answer)).toBe(sheets)
    expect(verify(job, answer)).toEqual([])
  })
})
