import { describe, expect, it } from 'vitest'
import type { PartId } from '../../../engine/basics/id'
import { refusedExtent } from '../../../engine/breakdown/damage'
import { floorAfter } from '../../../engine/breakdown/floor'
import { atHandNow, replanAfter } from '../../../engine/breakdown/mishap'
import type { Mishap } from '../../../engine/breakdown/mishapKinds'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import { walksOf } from '../../../engine/breakdown/walks'
import type { CutRow } from '../../../engine/cutlist/row'
import { packSheets } from '../../../engine/sheets/pack'
import { crosscut, OFFCUT, PLY, part, rip, SHOP, sheets, showStep, WASTE, weigh } from './sawyer'

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

/** The plan made again, laid out, as the next thing to cut. */
function laidOut(plan: ReturnType<typeof replan>): BreakdownInput {
  const { job, cutList, atHand, firstSheet, cutAways, cutBefore, kinds } = plan
  return { ...INPUT, job, answer: packSheets(job), cutList, atHand, firstSheet, cutAways, cutBefore, kinds }
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
      '1 part is still to be cut, and laid out anew.',
    ])
  })

  it('comes from an offcut with the edges that it really has', () => {
    const { job, cutList, atHand, firstSheet } = replan(ALL, { kind: 'spoiled', parts: ids('A-2') })
    const answer = packSheets(job)
    expect(answer.sheets.map(({ stock }) => stock)).toEqual(['hand2'])
    const { steps } = breakdownOf({ ...INPUT, job, answer, cutList, atHand, firstSheet })
    expect(steps.map(showStep)).toEqual(['crosscut 768: 1 of 888 x 580 | 1 part 768 x 580 | 1 waste 117 x 580'])
    expect(steps[0]!.text).toBe('Set the stop to 768 mm and crosscut 1a3, once.')
    expect(steps[0]!.write).toEqual(['B1-RS'])
  })

  it('must have been cut', () => {
    expect(refused(new Set(), { kind: 'spoiled', parts: ids('A-2') })).toBe(
      'B1-RS is not cut yet, so it cannot be spoiled.',
    )
  })
})

describe('a damaged sheet', () => {
  it('that is whole gives its clean rectangles; the others stay whole', () => {
    // Over the full length, from 590 to 690.
    const rect = { left: 0, bottom: 590, width: 2440, height: 100 }
    const plan = replan(new Set(), { kind: 'damaged', on: 2, rect })
    expect(shownStock(plan)).toEqual([
      's1: 3 of 2440 x 1220, trim 10 and 10',
      'hand1: 1 of 2440 x 1220, trim 10 and 10',
      // 590 less 10, and 1220 - 690 less 10
      'hand2: 1 of 2420 x 580, trim 0 and 0',
      'hand3: 1 of 2420 x 520, trim 0 and 0',
    ])
    expect(plan.told.slice(0, 2)).toEqual([
      'Sheet 2 is damaged over 2440 x 100 mm, from 0 along and 590 mm up.',
      'The first steps cut the damage away and leave 3a and 3b.',
    ])
    expect(plan.cutList.rows.map(({ quantity }) => quantity)).toEqual([4, 2])
  })

  it('takes the parts that lay there with it', () => {
    // The second A lay from 10 + 768 + 3 on.
    const rect = { left: 900, bottom: 300, width: 50, height: 50 }
    const plan = replan(ALL, { kind: 'damaged', on: 1, rect })
    expect(plan.lost).toEqual(['A-2'])
    expect(plan.told.slice(0, 2)).toEqual([
      'Sheet 1 is damaged over 50 x 50 mm, from 900 along and 300 mm up.',
      'Of what is cut, these lay there: B1-RS.',
    ])
  })

  it('must be one of the sheets', () => {
    const rect = { left: 0, bottom: 0, width: 1, height: 1 }
    expect(refused(new Set(), { kind: 'damaged', on: 3, rect })).toBe('There is no sheet 3; they go from 1 to 2.')
    expect(refused(new Set(), { kind: 'damaged', on: '9z', rect })).toBe('There is no piece 9z at hand.')
  })

  it('has its damage on the sheet: what lies wholly off it is refused with the field, the value and the limit', () => {
    const damage = (change: object) => {
      const rect = { left: 0, bottom: 0, width: 100, height: 100, ...change }
      return refused(new Set(), { kind: 'damaged', on: 1, rect })
    }
    expect(damage({ left: 5000 })).toBe(
      'The distance from the first end is 5000 mm; sheet 1 is 2440 mm long, so it must be less than that.',
    )
    expect(damage({ bottom: 1220 })).toBe(
      'The distance from the first edge is 1220 mm; sheet 1 is 1220 mm wide, so it must be less than that.',
    )
    expect(damage({ left: -1 })).toBe('The distance from the first end is -1 mm; it must be at least 0 mm.')
    expect(damage({ width: 0 })).toBe('The length of the damage is 0 mm; it must be more than 0 mm.')
    expect(refusedExtent('length of the damage', 0, { unit: 'in', step: 16 })).toBe(
      'The length of the damage is 0 in; it must be more than 0 in.',
    )
    expect(damage({ height: -2 })).toBe('The width of the damage is -2 mm; it must be more than 0 mm.')
  })

  it('counts only what of a damage is on the sheet', () => {
    const rect = { left: 2300, bottom: 0, width: 5000, height: 5000 }
    const plan = replan(new Set(), { kind: 'damaged', on: 1, rect })
    // 2440 - 2300 and the whole width
    expect(plan.told[0]).toBe('Sheet 1 is damaged over 140 x 1220 mm, from 2300 along and 0 mm up.')
    // 2300 less the trim of the first end
    expect(shownStock(plan)).toContain('hand1: 1 of 2290 x 1200, trim 0 and 0')
  })
})

describe('cutting a damage away', () => {
  const rect = { left: 0, bottom: 590, width: 2440, height: 100 }
  const plan = replan(new Set(), { kind: 'damaged', on: 2, rect })
  const next = laidOut(plan)
  const { steps } = breakdownOf(next)

  it('is the first thing to do, with the line to mark and the pieces that it leaves', () => {
    expect(steps.slice(0, 2).map(showStep)).toEqual([
      // The kerf is on the side of the damage: 1220 - 590 - 3
      'away rail: 1 of 2440 x 1220 | 1 piece 2440 x 590 | 1 piece 2440 x 627',
      // 690 - 593 to the line, and 1220 - 690 beyond; the kerf leaves 97 - 3
      'away rail: 1 of 2440 x 627 | 1 piece 2440 x 530 | 1 waste 2440 x 94',
    ])
    expect(steps.slice(0, 2).map(({ text }) => text)).toEqual([
      'Cut the damage away from sheet 2: mark 590 mm from its first long edge, at both ends, and rip along the rail, the blade beyond the line. 3a is clean.',
      'Cut the damage away from rest of sheet 2: mark 97 mm from its first long edge, at both ends, and rip along the rail, the blade before the line. 3b is clean.',
    ])
    expect(steps.slice(0, 2).map(({ write, blade }) => [...write, blade])).toEqual([
      ['3a', 'rip'],
      ['3b', 'rip'],
    ])
    expect(steps[1]!.sketch.cuts).toEqual([{ left: 0, bottom: 94, width: 2440, height: 3 }])
  })

  it('loses nothing but kerfs, and all parts are there when every step is done', () => {
    for (const step of steps) weigh(step, next.job.kerf)
    const floor = floorAfter(next, { done: new Set(steps.map(({ id }) => id)) })
    expect(floor.ok && floor.value.filter(({ part }) => part !== null).length).toBe(6)
  })

  it('comes before what is cut from the clean pieces', () => {
    const floor = floorAfter(next, { done: new Set(['3']) })
    expect(floor.ok ? '' : floor.message).toBe('Step 3 takes 3b, which no step that is done has left.')
  })

  it('frees the clean pieces: before that none of them can be damaged itself', () => {
    const { firstSheet } = plan
    const spot = { left: 0, bottom: 0, width: 50, height: 50 }
    const freed = next.answer.sheets.flatMap(({ stock }) => next.atHand?.get(stock)?.names ?? [])
    const numbered = walksOf(next, 'rip').find(({ name }) => name === '3a')!.sheet
    expect([freed.includes('3a'), numbered >= firstSheet]).toEqual([true, true])
    const say = (on: number | string, done: readonly string[]) => {
      const again = replanAfter(next, { done: new Set(done) }, { kind: 'damaged', on, rect: spot })
      return again.ok ? again.value.told[0] : again.message
    }
    expect(say(numbered, [])).toBe('3a is not cut free yet; step 1 cuts it from sheet 2.')
    expect(say('3b', ['1'])).toBe('3b is not cut free yet; step 2 cuts it from rest of sheet 2.')
    expect(say(numbered, ['1'])).toBe('3a is damaged over 50 x 50 mm, from 0 along and 0 mm up.')
  })

  it('is still to be done after the next mishap, when it is not done by then', () => {
    const again = replanAfter(next, { done: new Set(['1']) }, { kind: 'spoiled', parts: [] })
    const left = again.ok ? again.value.cutAways : []
    expect(left.map(({ name, cuts }) => [name, cuts.length])).toEqual([['rest of sheet 2', 1]])
    expect(again.ok && again.value.pieces.map(({ name }) => name)).toContain('3a')
  })
})

describe('the next mishap', () => {
  const first = replan(ALL, { kind: 'spoiled', parts: ids('A-2') })
  const next = laidOut(first)
  const again = (mishap: Mishap) => {
    const plan = replanAfter(next, { done: new Set() }, mishap)
    if (!plan.ok) throw new Error(plan.message)
    return plan.value
  }

  it('finds every piece that lies there, also those that no layout uses', () => {
    const { pieces } = again({ kind: 'spoiled', parts: [] })
    // A-2 is laid out on 1a3; the others lie on the rack.
    expect(pieces.map(({ name }) => name).sort()).toEqual(['1a3', '1c', '2a3', '2c'])
  })

  it('numbers sheets on from the last sheet, however many pieces are at hand', () => {
    // Sheets 1 and 2 are cut; the four pieces that they left are no sheets.
    expect([first.firstSheet, again({ kind: 'spoiled', parts: [] }).firstSheet]).toEqual([3, 3])
  })

  it('calls what comes of a piece after the piece, and of what is left of a sheet otherwise than before', () => {
    const named = (name: string) => {
      const atHand = new Map([['s1', { names: [name, name], rough: { start: 0, low: 0, end: 0, high: 0 } }]])
      return breakdownOf({ ...INPUT, atHand }).steps.flatMap(({ write }) => write)
    }
    expect(named('1c')).toContain('1c1')
    expect(named('rest of sheet 1')).toContain('1R1')
    expect(named('rest of sheet 1 (2)')).toContain('1RR1')
  })

  it('can be a damage on a piece that no layout uses', () => {
    const rect = { left: 2000, bottom: 0, width: 440, height: 304 }
    const plan = again({ kind: 'damaged', on: '2c', rect })
    expect(plan.told[0]).toBe('2c is damaged over 440 x 304 mm, from 2000 along and 0 mm up.')
    // 2000 less 10 at its first end, 304 less 10 at the far edge; 1a3 is a piece and no sheet, so 2c is cut under 3
    const clean = plan.job.stock.find(({ id }) => plan.atHand.get(id)?.names.includes('3a'))
    expect([clean?.length, clean?.width]).toEqual([1990, 294])
  })

  it('tells what is left of this damage, though an earlier one is still to be cut away', () => {
    // 3a and 3b are to be freed of sheet 2; of the other sheet nothing is left.
    const earlier = laidOut(
      replan(new Set(), { kind: 'damaged', on: 2, rect: { left: 0, bottom: 590, width: 2440, height: 100 } }),
    )
    const all = { left: 0, bottom: 0, width: 2440, height: 1220 }
    const hand = atHandNow(earlier, { done: new Set() })
    const name = hand.ok ? hand.value.find(({ name, isWhole }) => isWhole && name !== 'sheet 2')!.name : ''
    const plan = replanAfter(earlier, { done: new Set() }, { kind: 'damaged', on: name, rect: all })
    expect(plan.ok && plan.value.cutAways.map(({ name }) => name)).toEqual(['sheet 2'])
    expect(plan.ok && plan.value.told.slice(0, 2)).toEqual([
      `${name.replace('sheet', 'Sheet')} is damaged over 2440 x 1220 mm, from 0 along and 0 mm up.`,
      'Nothing of what lay there is left to use.',
    ])
  })

  it('can spoil a part that was cut before the first, and keeps the others', () => {
    const plan = again({ kind: 'spoiled', parts: ids('B-1') })
    expect([plan.lost, plan.cut.length]).toEqual([['B-1'], 4])
    expect(plan.cutList.rows.flatMap(({ parts }) => parts).sort()).toEqual(['A-2', 'B-1'])
  })
})

describe('what the shop wishes', () => {
  const wished = (change: Partial<BreakdownInput>) => {
    const plan = replanAfter({ ...INPUT, ...change }, { done: ALL }, { kind: 'spoiled', parts: ids('B-2') })
    if (!plan.ok) throw new Error(plan.message)
    return plan.value.job
  }
  const pinned = INPUT.cutList.rows.map((row) => ({ ...row, from: 's1' }) as unknown as CutRow)

  it('holds for the new plan too', () => {
    expect(wished({}).goals).toBeUndefined()
    expect(wished({ job: { ...INPUT.job, goals: ['settings'] } }).goals).toEqual(['settings'])
  })

  it('keeps a single board on a piece of the kind of sheet that it must come from', () => {
    const job = wished({ cutList: { rows: pinned } })
    // 1000 x 320 does not lie on 2420 x 294, nor on 878 x 580.
    expect(job.parts.map(({ id, from }) => [id, from])).toEqual([['B', 's1']])
    const plan = replanAfter(
      { ...INPUT, cutList: { rows: pinned } },
      { done: ALL },
      { kind: 'spoiled', parts: ids('A-2') },
    )
    expect(plan.ok && plan.value.job.parts.map(({ id, from }) => [id, from])).toEqual([['A', 'hand2']])
  })

  it('counts whole sheets that lie there with those that boards must come from', () => {
    const plan = replanAfter(
      { ...INPUT, cutList: { rows: pinned } },
      { done: new Set() },
      { kind: 'spoiled', parts: [] },
    )
    // 5 less the 2 that were laid out, and those 2 again
    expect(plan.ok && plan.value.job.stock.map(({ id, quantity }) => [id, quantity])).toEqual([['s1', 3 + 2]])
    expect(plan.ok && plan.value.job.parts.map(({ from }) => from)).toEqual(['s1', 's1'])
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
    expect(plan.pieces.map(({ name }) => name).sort()).toEqual(['1a', '1b', '1c', '2a', '2b', '2c'])
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
