import { describe, expect, it } from 'vitest'
import type { PartId } from '../../../engine/basics/id'
import { goOnAfter } from '../../../engine/breakdown/goOn'
import { atHandNow, replanAfter } from '../../../engine/breakdown/mishap'
import type { Mishap } from '../../../engine/breakdown/mishapKinds'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import { packSheets } from '../../../engine/sheets/pack'
import { PLY, part, rip, SHOP, sheets, WASTE } from './sawyer'

/** Two sheets of 2420 x 1200, each of which gives one A and nothing else. */
const GIVEN = sheets({ A: [2420, 1150] }, [[2, rip(part('A'), WASTE)]])

function shopWith(quantity?: number): BreakdownInput {
  const stock = { ...GIVEN.job.stock[0]!, price: 68, ...(quantity === undefined ? {} : { quantity }) }
  return {
    ...{ ...GIVEN, job: { ...GIVEN.job, stock: [stock] }, shop: { ...SHOP, cutOrder: 'sheet by sheet' } },
    marks: new Map(),
    materials: { m1: PLY } as unknown as BreakdownInput['materials'],
  }
}

async function after(before: BreakdownInput, steps: number, mishap: Mishap) {
  const done = new Set(idsOf(before).slice(0, steps))
  const plan = replanAfter(before, { done }, mishap)
  if (!plan.ok) throw new Error(plan.message)
  return goOnAfter(before, plan.value, async (job) => packSheets(job))
}

function idsOf(input: BreakdownInput): string[] {
  return breakdownOf(input).steps.map(({ id }) => id)
}

const spoiled = (...parts: string[]): Mishap => ({ kind: 'spoiled', parts: parts as PartId[] })

/** What lies there when so many steps are done, and what is to be bought. */
function handAfter(input: BreakdownInput, steps: number) {
  const hand = atHandNow(input, { done: new Set(idsOf(input).slice(0, steps)) })
  if (!hand.ok) throw new Error(hand.message)
  const namesOf = (isToBuy: boolean) => hand.value.filter((piece) => (piece.isToBuy ?? false) === isToBuy)
  return { there: namesOf(false).map(({ name }) => name), toBuy: namesOf(true).map(({ name }) => name) }
}

const ALL = idsOf(shopWith()).length
const oneMore = (sheet: number) => `1 more sheet of ply is to be bought, 68 €: sheet ${sheet}, cut last.`

describe('a sheet that nobody has yet', () => {
  it('is told with its price when a mishap takes it, and is not at hand', async () => {
    const first = await after(shopWith(), ALL, spoiled('A-1'))
    expect(first.told).toContain(oneMore(3))
    expect(handAfter(first.input, 0)).toEqual({ there: [], toBuy: ['sheet 3'] })
  })

  it('is still to be bought after the next mishap, and told once', async () => {
    const first = await after(shopWith(), ALL, spoiled('A-1'))
    const second = await after(first.input, 0, spoiled('A-2'))
    expect(second.told).toContain(oneMore(4))
    expect(handAfter(second.input, 0)).toEqual({ there: [], toBuy: ['sheet 3', 'sheet 4'] })
    const same = await after(second.input, 0, spoiled())
    expect(same.told.filter((line) => line.includes('bought'))).toEqual([])
    expect(handAfter(same.input, 0).toBuy).toEqual(['sheet 3', 'sheet 4'])
  })

  it('is there once it is begun', async () => {
    const first = await after(shopWith(), ALL, spoiled('A-1'))
    expect(handAfter(first.input, 1)).toEqual({ there: ['sheet 3'], toBuy: [] })
  })

  it('is not bought where a later mishap does without it, and nothing of it is left at the end', async () => {
    const first = await after(shopWith(), ALL, spoiled('A-1'))
    const second = await after(first.input, 0, spoiled('A-2'))
    const small = shopWith().cutList.rows.map((row) => ({ ...row, length: 1000, width: 500 }))
    const third = await after(second.input, 0, { kind: 'openings', rows: small })
    expect(third.told).toContain('1 sheet of ply less is to be bought.')
    expect(handAfter(third.input, 0).toBuy).toEqual(['sheet 3'])
    const end = handAfter(third.input, idsOf(third.input).length)
    expect([end.toBuy, end.there.filter((name) => name.startsWith('sheet'))]).toEqual([[], []])
  })

  it('comes from those on hand as long as there are any, and is missed when there are none', async () => {
    const more = await after(shopWith(3), ALL, spoiled('A-1'))
    expect(more.told).toContain('1 more sheet of ply is taken from those on hand, 68 €: sheet 3.')
    expect(handAfter(more.input, 0)).toEqual({ there: ['sheet 3'], toBuy: [] })
    const none = await after(shopWith(2), ALL, spoiled('A-1', 'A-2'))
    expect(none.told).toContain('A-1 and A-2 have no sheet to be cut from: no more of ply is on hand.')
  })
})

describe('a sheet that lies there uncut', () => {
  it('keeps its number, whether the plan made again cuts it or not', async () => {
    const first = await after(shopWith(), 0, {
      kind: 'damaged',
      on: 1,
      rect: { left: 0, bottom: 0, width: 9, height: 9 },
    })
    expect(handAfter(first.input, 0).there).toContain('sheet 2')
    const small = shopWith().cutList.rows.map((row) => ({ ...row, length: 1000, width: 500 }))
    const second = await after(shopWith(), 0, { kind: 'openings', rows: small })
    expect(handAfter(second.input, 0).there.sort()).toEqual(['sheet 1', 'sheet 2'])
  })
})
