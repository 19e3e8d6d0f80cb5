import { describe, expect, it } from 'vitest'
import type { PartId } from '../../../engine/basics/id'
import { replanAfter } from '../../../engine/breakdown/mishap'
import type { Mishap } from '../../../engine/breakdown/mishapKinds'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import type { CutRow } from '../../../engine/cutlist/row'
import { packSheets } from '../../../engine/sheets/pack'
import { crosscut, OFFCUT, PLY, part, rip, SHOP, sheets, showStep, WASTE } from './sawyer'

/** Two sheets alike: two A of 768 x 580 in one strip, B of 1000 x 320 in the other, and an offcut. */
const GIVEN = sheets({ A: [768, 580], B: [1000, 320] }, [
  [2, rip(crosscut(part('A'), part('A'), OFFCUT), crosscut(part('B'), WASTE), OFFCUT)],
])
const MARKS = new Map([
  ['A-1', 'B1-LS'],
  ['A-2', 'B1-RS'],
] as [PartId, string][])
const INPUT: BreakdownInput = {
  ...GIVEN,
  job: { ...GIVEN.job, stock: [{ ...GIVEN.job.stock[0]!, quantity: 5 }], offcutLeast: SHOP.offcutLeast },
  shop: { ...SHOP, cutOrder: 'sheet by sheet' },
  marks: MARKS,
  materials: { m1: PLY } as unknown as BreakdownInput['materials'],
}
const STEPS = breakdownOf(INPUT).steps

/** Steps up to the first of a kind, without or with it. */
function before(kind: string) {
  const at = STEPS.findIndex((step) => step.kind === kind)
  return new Set(STEPS.slice(0, at).map(({ id }) => id))
}
const ALL = new Set(STEPS.map(({ id }) => id))

function replan(done: ReadonlySet<string>, mishap: Mishap) {
  const plan = replanAfter(INPUT, { done }, mishap)
  if (!plan.ok) throw new Error(plan.message)
  return plan.value
}

function refused(done: ReadonlySet<string>, mishap: Mishap) {
  const plan = replanAfter(INPUT, { done }, mishap)
  return plan.ok ? 'planned' : plan.message
}

function shownStock({ job }: ReturnType<typeof replan>) {
  return job.stock.map(({ id, quantity, length, width, trim }) => {
    return `${id}: ${quantity} of ${length} x ${width}, trim ${trim?.length} and ${trim?.width}`
  })
}

const ids = (...names: string[]) => names as unknown as PartId[]

describe('a spoiled part', () => {
  it('is cut again from what is left, and all else stays', () => {
    const plan = replan(ALL, { kind: 'spoiled', parts: ids('A-2') })
    expect([plan.lost, plan.cut.length]).toEqual([['A-2'], 5])
    expect(plan.cutList.rows.map(({ key, parts }) => [key, parts])).toEqual([['A', ['A-2']]])
    // 5 less the 2 that are cut; from each, 2440 less 10 less 2 x (768 + 3) = 888 less 10 at the far end; and 1220 - 10 -
    // 583 - 323 = 304 less 10 at the far edge, 2440 less 10 at both ends.
    expect(shownStock(plan)).toEqual([
      's1: 3 of 2440 x 1220, trim 10 and 10',
      'hand1: 2 of 2420 x 294, trim 0 and 0',
      'hand2: 2 of 878 x 580, trim 0 and 0',
    ])
    expect(plan.told).toEqual([
      'B1-RS is spoiled and is cut again.',
      '5 parts stay as cut.',
      'At hand: offcut of sheet 1, 2440 x 304 mm; offcut of sheet 2, 2440 x 304 mm; offcut of sheet 1 (2), 888 x 580 mm; offcut of sheet 2 (2), 888 x 580 mm.',
      '1 part is still to be cut; the sheets are laid out anew for it.',
    ])
  })

  it('comes from an offcut with the edges that it really has', () => {
    const { job, cutList, atHand, firstSheet } = replan(ALL, { kind: 'spoiled', parts: ids('A-2') })
    const answer = packSheets(job)
    expect(answer.sheets.map(({ stock }) => stock)).toEqual(['hand2'])
    const { steps } = breakdownOf({ ...INPUT, job, answer, cutList, atHand, firstSheet })
    expect(steps.map(showStep)).toEqual(['crosscut 768: 1 of 888 x 580 | 1 part 768 x 580 | 1 waste 117 x 580'])
    expect(steps[0]!.text).toBe('Set the stop to 768 mm and crosscut offcut of sheet 1 (2), once.')
    expect(steps[0]!.write).toEqual(['B1-RS'])
  })

  it('must have been cut', () => {
    expect(refused(new Set(), { kind: 'spoiled', parts: ids('A-2') })).toBe(
      'A-2 is not cut yet, so it cannot be spoiled.',
    )
  })
})

describe('a damaged sheet', () => {
  it('that is whole gives its clean rectangles; the others stay whole', () => {
    // Over the full length, from 590 to 690.
    const rect = { left: 0, bottom: 590, width: 2440, height: 100 }
    const plan = replan(new Set(), { kind: 'damaged', sheet: 2, rect })
    expect(shownStock(plan)).toEqual([
      's1: 3 of 2440 x 1220, trim 10 and 10',
      'hand1: 1 of 2440 x 1220, trim 10 and 10',
      // 590 less 10, and 1220 - 690 less 10
      'hand2: 1 of 2420 x 580, trim 0 and 0',
      'hand3: 1 of 2420 x 520, trim 0 and 0',
    ])
    expect(plan.told[0]).toBe(
      'Sheet 2 is damaged over 2440 x 100 mm, from 0 along and 590 mm up: cut that away. 2 clean pieces of what lay there can be used.',
    )
    expect(plan.cutList.rows.map(({ quantity }) => quantity)).toEqual([4, 2])
  })

  it('takes the parts that lay there with it', () => {
    // The second A lay from 10 + 768 + 3 on.
    const rect = { left: 900, bottom: 300, width: 50, height: 50 }
    const plan = replan(ALL, { kind: 'damaged', sheet: 1, rect })
    expect(plan.lost).toEqual(['A-2'])
    expect(plan.told.slice(0, 2)).toEqual([
      'Sheet 1 is damaged over 50 x 50 mm, from 900 along and 300 mm up: cut that away. No clean piece of what lay there can be used.',
      'Of what is cut, these lay there: B1-RS.',
    ])
  })

  it('must be one of the sheets', () => {
    const rect = { left: 0, bottom: 0, width: 1, height: 1 }
    expect(refused(new Set(), { kind: 'damaged', sheet: 3, rect })).toBe('There is no sheet 3; they go from 1 to 2.')
  })
})

describe('a batch of another thickness', () => {
  /** Only A changes with the thickness: 0.8 shorter. */
  const rows = GIVEN.cutList.rows.map((row): CutRow => {
    return { ...row, thickness: 17.6, length: row.key === ('A' as string) ? 767.2 : row.length }
  })
  const thinner: Mishap = { kind: 'thickness', material: 'm1', rows }

  it('keeps what is cut and still fits, and cuts the rest to its new size', () => {
    const plan = replan(ALL, thinner)
    expect(plan.cut).toEqual(['B-1', 'B-2'])
    expect(plan.job.parts.map(({ length, quantity }) => [length, quantity])).toEqual([[767.2, 4]])
    expect(plan.told.slice(0, 2)).toEqual([
      'ply measures 17.6 mm: what is still to be cut takes its new sizes.',
      'Of what is cut, these no longer fit: B1-LS, B1-RS, A-3 and A-4.',
    ])
  })

  it('leaves strips that are ripped at hand, each by the name that is written on it', () => {
    const plan = replan(before('square'), thinner)
    expect(plan.pieces.map(({ name }) => name).sort()).toEqual([
      '1a',
      '1b',
      '2a',
      '2b',
      'offcut of sheet 1',
      'offcut of sheet 2',
    ])
    const strip = [...plan.atHand.values()].find(({ names }) => names.includes('1a'))
    // Ripped on both sides, not yet squared.
    expect(strip).toEqual({ names: ['1a', '2a'], rough: { start: 10, low: 0, end: 10, high: 0 } })
  })
})

describe('a sheet that is partly cut', () => {
  it('is stock with its clean edge, and goes on from there without being straightened again', () => {
    const plan = replan(new Set(['1', '2']), { kind: 'spoiled', parts: [] })
    const rest = plan.pieces.find(({ name }) => name === 'rest of sheet 1')!
    // 10 + 580 + 3 from the corner; 1220 - 593 wide with the far factory edge
    expect(rest.place).toEqual({ left: 0, bottom: 593, width: 2440, height: 627 })
    expect(rest.rough).toEqual({ start: 10, low: 0, end: 10, high: 10 })
    const { job, cutList, atHand, firstSheet } = plan
    const answer = packSheets(job)
    const { steps } = breakdownOf({ ...INPUT, job, answer, cutList, atHand, firstSheet })
    const first = steps.find(({ takes }) => takes.name === 'rest of sheet 1')
    expect([first?.kind, first?.takes.length, first?.takes.width]).toEqual(['rip', 2440, 627])
  })
})

describe('a step that is begun', () => {
  it('has cut as many of its pieces as it says', () => {
    const last = STEPS.at(-1)!
    expect([last.kind, last.setting, last.count]).toEqual(['crosscut', 768, 2])
    const done = new Set([...ALL].filter((id) => id !== last.id))
    const plan = replanAfter(INPUT, { done, begun: { step: last.id, pieces: 1 } }, { kind: 'spoiled', parts: [] })
    expect(plan.ok && [...plan.value.cut].sort()).toEqual(['A-1', 'A-2', 'B-1', 'B-2'])
    expect(plan.ok && plan.value.pieces.map(({ name }) => name)).toContain('2a')
  })
})

describe('steps that are called done', () => {
  it('must not build on one that is not', () => {
    expect(refused(new Set(['2']), { kind: 'spoiled', parts: [] })).toBe(
      'Step 2 takes sheet 1, which no step that is done has left.',
    )
  })

  it('must be there', () => {
    expect(refused(new Set(['99']), { kind: 'spoiled', parts: [] })).toBe(
      `There is no step 99; the last one is ${STEPS.length}.`,
    )
  })
})
