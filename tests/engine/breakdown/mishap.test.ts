import { describe, expect, it } from 'vitest'
import { atHandNow, replanAfter } from '../../../engine/breakdown/mishap'
import type { Mishap } from '../../../engine/breakdown/mishapKinds'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import type { CutRow } from '../../../engine/cutlist/row'
import { checkJob, packSheets } from '../../../engine/sheets/pack'
import { showStep } from './sawyer'
import { ALL, before, GIVEN, INPUT, ids, laidOut, refused, replan, STEPS, shownStock } from './twoSheets'

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

  it('asks for a name on a sheet and on one of two pieces of one name, and on no piece that bears it', () => {
    const written = (name: string) => {
      const rough = { start: 10, low: 10, end: 10, high: 10 }
      const atHand = new Map([['s1', { names: [name, name], rough }]])
      return breakdownOf({ ...INPUT, atHand }).steps.flatMap(({ write }) => write)
    }
    expect(written('sheet 1')).toContain('sheet 1')
    expect(written('1c (2)')).toContain('1c (2)')
    expect(written('1c')).not.toContain('1c')
    expect(written('rest of sheet 1')).not.toContain('rest of sheet 1')
  })

  it('begins what it tells of a damaged rest with a capital, as of a sheet', () => {
    const first = breakdownOf(INPUT).steps.findIndex(({ leaves }) =>
      leaves.some(({ name }) => name.startsWith('rest of')),
    )
    const done = new Set(
      breakdownOf(INPUT)
        .steps.slice(0, first + 1)
        .map(({ id }) => id),
    )
    const hand = atHandNow(INPUT, { done })
    const on = hand.ok ? hand.value.find(({ name }) => name.startsWith('rest of'))!.name : ''
    const plan = replanAfter(
      INPUT,
      { done },
      { kind: 'damaged', on, rect: { left: 0, bottom: 0, width: 9, height: 9 } },
    )
    expect(plan.ok && plan.value.told[0]).toMatch(/^Rest of .* is damaged over 9 x 9 mm/)
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
    expect(wished({ job: { ...INPUT.job, isCountFirst: true } }).isCountFirst).toBe(true)
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

  it('still knows a kind of sheet that boards must come from when it is used up', () => {
    const used = { ...INPUT.job, stock: [{ ...INPUT.job.stock[0]!, quantity: 2 }] }
    const job = wished({ job: used, cutList: { rows: pinned } })
    expect(job.stock[0]).toMatchObject({ id: 's1', quantity: 0 })
    expect(checkJob(job).ok).toBe(true)
    expect(packSheets(job).unplaced.map(({ part, reason }) => [part, reason])).toEqual([
      ['B', 'there are 0 sheets of m1 of stock s1 on hand'],
    ])
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
