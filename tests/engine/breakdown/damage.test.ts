import { describe, expect, it } from 'vitest'
import { refusedExtent } from '../../../engine/breakdown/damage'
import { floorAfter } from '../../../engine/breakdown/floor'
import { replanAfter } from '../../../engine/breakdown/mishap'
import { breakdownOf } from '../../../engine/breakdown/steps'
import { walksOf } from '../../../engine/breakdown/walks'
import { showStep, weigh } from './sawyer'
import { ALL, laidOut, refused, replan, shownStock } from './twoSheets'

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

  it('is ripped away with a crosscut blade that is in, and with the rip blade where none is', () => {
    const rect = { left: 0, bottom: 590, width: 2440, height: 100 }
    const plan = replan(new Set(), { kind: 'damaged', on: 2, rect })
    const away = (bladeIn?: 'rip' | 'crosscut') =>
      breakdownOf({ ...laidOut(plan), ...(bladeIn ? { bladeIn } : {}) }).steps.filter(({ kind }) => kind === 'away')
    expect(away().map(({ blade }) => blade)).toEqual(['rip', 'rip'])
    expect(away('rip').map(({ blade }) => blade)).toEqual(['rip', 'rip'])
    expect(away('crosscut').map(({ blade }) => blade)).toEqual(['crosscut', 'crosscut'])
    expect(away('crosscut')[0]!.cautions.join(' ')).toContain('with the crosscut blade that is in: feed slowly')
    expect(away()[0]!.cautions.join(' ')).not.toContain('feed slowly')
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
