import { describe, expect, it } from 'vitest'
import type { PartId } from '../../../engine/basics/id'
import { goOnAfter } from '../../../engine/breakdown/goOn'
import { type LayoutNow, layoutsNow } from '../../../engine/breakdown/layoutsNow'
import { replanAfter } from '../../../engine/breakdown/mishap'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import { packSheets } from '../../../engine/sheets/pack'
import { PLY, part, rip, SHOP, sheets, WASTE } from './sawyer'

/** Two sheets, each ripped into an A and a B and nothing else. */
const GIVEN = sheets({ A: [2420, 600], B: [2420, 590] }, [[2, rip(part('A'), part('B'), WASTE)]])
const INPUT: BreakdownInput = {
  ...GIVEN,
  shop: { ...SHOP, cutOrder: 'sheet by sheet' },
  marks: new Map(),
  materials: { m1: PLY } as unknown as BreakdownInput['materials'],
}

function show({ name, state, isToBuy, places }: LayoutNow): string {
  const marks = places.map(({ part, isCut }) => `${part}${isCut ? ' cut' : ''}`)
  return `${name} ${isToBuy ? 'to be bought' : state}: ${marks.join(' | ')}`
}

function shown(input: BreakdownInput, done: readonly string[]): string[] {
  const now = layoutsNow(input, { done: new Set(done) })
  if (!now.ok) throw new Error(now.message)
  return now.value.map(show)
}

const IDS = breakdownOf(INPUT).steps.map(({ id }) => id)

describe('the layouts of what is being cut', () => {
  it('are not begun at first', () => {
    expect(shown(INPUT, [])).toEqual(['sheet 1 to come: A-1 | B-1', 'sheet 2 to come: A-2 | B-2'])
  })

  it('are begun by the first cut, and cut when every part of them is', () => {
    const [first] = breakdownOf(INPUT).steps
    const begun = shown(INPUT, [first!.id])
    expect(begun.filter((line) => line.includes('begun')).length).toBe(first!.sheets.length)
    expect(shown(INPUT, IDS)).toEqual(['sheet 1 cut: A-1 cut | B-1 cut', 'sheet 2 cut: A-2 cut | B-2 cut'])
  })

  it('are those of the plan made again after a mishap, not of the design', async () => {
    const plan = replanAfter(INPUT, { done: new Set(IDS) }, { kind: 'spoiled', parts: ['A-1' as PartId] })
    if (!plan.ok) throw new Error(plan.message)
    const { input } = await goOnAfter(INPUT, plan.value, async (job) => packSheets(job))
    expect(shown(input, [])).toEqual(['sheet 3 to be bought: A-1'])
  })
})
