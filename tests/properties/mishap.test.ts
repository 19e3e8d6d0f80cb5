import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../engine/basics/random'
import { isStillWood } from '../../engine/breakdown/atHand'
import { floorAfter, type Progress } from '../../engine/breakdown/floor'
import { goOnAfter } from '../../engine/breakdown/goOn'
import { type Replan, replanAfter } from '../../engine/breakdown/mishap'
import type { Mishap } from '../../engine/breakdown/mishapKinds'
import { type BreakdownInput, breakdownOf, worksOf } from '../../engine/breakdown/steps'
import { walksOf } from '../../engine/breakdown/walks'
import type { CutRow } from '../../engine/cutlist/row'
import { type Rect, rectsOverlap, rightOf, topOf } from '../../engine/geometry/rect'
import { checkJob } from '../../engine/sheets/check'
import { packSheets } from '../../engine/sheets/pack'
import { verify } from '../../engine/sheets/verify'
import { settle } from '../../engine/units/length'
import { SHOP, weigh } from '../engine/breakdown/sawyer'
import { randomTrees } from '../helpers/cut-trees'

const cases = fc.record({
  seed: fc.integer({ min: 0, max: 1e9 }),
  first: fc.constantFrom('rip' as const, 'crosscut' as const, 'either' as const),
  depth: fc.integer({ min: 1, max: 4 }),
  sheets: fc.integer({ min: 1, max: 3 }),
  kerf: fc.constantFrom(0, 2.2, 3),
  trim: fc.constantFrom(0, 10),
  /** The share of the steps that is done. */
  done: fc.double({ min: 0, max: 1, noNaN: true }),
  mishap: fc.constantFrom('spoiled' as const, 'damaged' as const, 'thickness' as const),
  damage: fc.record({
    left: fc.integer({ min: 0, max: 2400 }),
    bottom: fc.integer({ min: 0, max: 1180 }),
    width: fc.integer({ min: 1, max: 1200 }),
    height: fc.integer({ min: 1, max: 800 }),
  }),
})
type Case = typeof cases extends fc.Arbitrary<infer Drawn> ? Drawn : never

function inputOf({ seed, ...wish }: Case): BreakdownInput {
  const given = randomTrees(randomFrom(seed), wish)
  const job = { ...given.job, offcutLeast: SHOP.offcutLeast }
  return { ...given, job, shop: SHOP, marks: new Map(), materials: {} }
}

/** The first steps, and half of the pieces of the next. */
function firstSteps(input: BreakdownInput, share: number): Progress {
  const works = worksOf(input)
  const ids = [...works.keys()]
  const count = Math.floor(share * (ids.length + 1))
  const next = ids[count]
  const done = new Set(ids.slice(0, count))
  return next === undefined ? { done } : { done, begun: { step: next, pieces: works.get(next)!.length >> 1 } }
}

/** Half of the rows are a little shorter. */
function thinner(rows: readonly CutRow[]): CutRow[] {
  return rows.map((row, at) => {
    const length = at % 2 === 0 ? row.length : settle(row.length - 0.4)
    return { ...row, key: `${row.key} thin` as CutRow['key'], thickness: 17.6, length }
  })
}

function mishapOf(input: BreakdownInput, done: Progress, drawn: Case): Mishap {
  if (drawn.mishap === 'thickness') return { kind: 'thickness', material: 'm1', rows: thinner(input.cutList.rows) }
  const floor = floorAfter(input, done)
  const cut = floor.ok ? floor.value.flatMap(({ part }) => (part === null ? [] : [part])) : []
  if (drawn.mishap === 'spoiled') return { kind: 'spoiled', parts: cut.filter((_, at) => at % 3 === 0) }
  const { firstSheet = 1 } = input
  const lies = floor.ok ? floor.value : []
  const on = lies.find(({ sheet, x, y }) => sheet === firstSheet && x === 0 && y === 0)
  // The first sheet of a plan may be a piece that is still to be cut free of an earlier damage: that one is told of then.
  const isLaid = walksOf(input, 'rip').some(({ sheet }) => sheet === firstSheet)
  const isThere = isLaid && lies.some(({ sheet }) => sheet === firstSheet)
  const instead = isThere ? undefined : lies.find(isStillWood)
  // Somewhere on what lies at the first corner, so that it is on the sheet.
  const { left, bottom, ...size } = drawn.damage
  const { length, width } = instead ?? on ?? { length: 1, width: 1 }
  return {
    kind: 'damaged',
    on: instead?.name ?? firstSheet,
    rect: { left: left % length, bottom: bottom % width, ...size },
  }
}

function replanned(input: BreakdownInput, drawn: Case) {
  const done = firstSteps(input, drawn.done)
  const mishap = mishapOf(input, done, drawn)
  const plan = replanAfter(input, done, mishap)
  if (!plan.ok) throw new Error(plan.message)
  const floor = floorAfter(input, done)
  if (!floor.ok) throw new Error(floor.message)
  return { mishap, plan: plan.value, floor: floor.value }
}

function partsOf(rows: readonly CutRow[]): string[] {
  return rows.flatMap(({ parts }) => parts).sort()
}

/** The new job packed, as the next thing to break down. */
function packed(
  input: BreakdownInput,
  { job, cutList, atHand, firstSheet, cutAways, cutBefore, kinds }: Replan,
): BreakdownInput {
  let looks = 0
  const answer = packSheets({ ...job, effort: 'quick' }, () => ++looks > 2)
  return { ...input, job, answer, cutList, atHand, firstSheet, cutAways, cutBefore, kinds }
}

describe('a plan made again after a mishap', () => {
  it('has every part either cut and sound or still to be cut, never both', () => {
    fc.assert(
      fc.property(cases, (drawn) => {
        const input = inputOf(drawn)
        const { mishap, plan } = replanned(input, drawn)
        const wanted = mishap.kind === 'thickness' ? mishap.rows : input.cutList.rows
        expect([...plan.cut, ...partsOf(plan.cutList.rows)].sort()).toEqual(partsOf(wanted))
        const needed = new Set(partsOf(plan.cutList.rows))
        expect(plan.lost.filter((part) => !needed.has(part))).toEqual([])
        expect(plan.job.parts.map(({ quantity }) => quantity)).toEqual(plan.cutList.rows.map((row) => row.parts.length))
      }),
      { seed: 41, numRuns: 150 },
    )
  })

  it('cuts from pieces that overlap neither each other nor what is cut nor what is damaged', () => {
    fc.assert(
      fc.property(cases, (drawn) => {
        const { mishap, plan, floor } = replanned(inputOf(drawn), drawn)
        const taken = floor
          .filter(({ kind }) => kind === 'part')
          .map(({ sheet, x, y, length, width }) => ({
            sheet,
            place: { left: x, bottom: y, width: length, height: width },
          }))
        const damage = mishap.kind === 'damaged' ? [{ sheet: mishap.on, place: mishap.rect }] : []
        const others = [...taken, ...damage]
        for (const [at, piece] of plan.pieces.entries()) {
          const meets = [...others, ...plan.pieces.slice(at + 1)].filter((other) => {
            return other.sheet === piece.sheet && rectsOverlap(shrunk(piece.place), shrunk(other.place))
          })
          expect(meets, piece.name).toEqual([])
          expect(piece.place.left).toBeGreaterThanOrEqual(0)
          expect(piece.place.bottom).toBeGreaterThanOrEqual(0)
          expect(rightOf(piece.place)).toBeLessThanOrEqual(2440)
          expect(topOf(piece.place)).toBeLessThanOrEqual(1220)
        }
      }),
      { seed: 42, numRuns: 150 },
    )
  })

  it('is a job that packs, and whose steps free what is missing from the pieces at hand', () => {
    fc.assert(
      fc.property(cases, (drawn) => {
        const input = inputOf(drawn)
        const { plan } = replanned(input, drawn)
        expect(checkJob(plan.job)).toEqual({ ok: true, value: plan.job })
        const there = plan.job.stock.filter(({ id }) => id !== 's1').reduce((sum, { quantity }) => sum + quantity!, 0)
        expect(there).toBe(plan.pieces.length)
        const next = packed(input, plan)
        expect(verify(next.job, next.answer)).toEqual([])
        const { steps } = breakdownOf(next)
        for (const step of steps) weigh(step, next.job.kerf)
        const all = floorAfter(next, { done: new Set(steps.map(({ id }) => id)) })
        expect(all.ok ? '' : all.message).toBe('')
        const works = [...worksOf(next).values()].flat()
        const whole = floorAfter(next, { done: new Set() })
        const ready = whole.ok ? whole.value.flatMap(({ part }) => (part === null ? [] : [part])) : []
        const freed = works.flatMap(({ leaves }) => leaves.flatMap(({ part }) => (part === null ? [] : [part])))
        expect([...freed, ...ready].sort()).toEqual(partsOf(plan.cutList.rows))
        for (const { name, place, isWhole } of plan.pieces) {
          const first = works.find(({ takes }) => takes.name === name)
          if (!first || isWhole) continue
          expect([first.takes.length, first.takes.width], name).toEqual([place.width, place.height])
        }
      }),
      { seed: 43, numRuns: 80 },
    )
  })

  it('may keep what is laid out, and is as sound then, time after time', async () => {
    const goOn = async (input: BreakdownInput, drawn: Case) => {
      const { plan } = replanned(input, drawn)
      const { input: next } = await goOnAfter(input, plan, async (job) => packed(input, { ...plan, job }).answer)
      expect(verify(next.job, next.answer)).toEqual([])
      const { steps } = breakdownOf(next)
      for (const step of steps) weigh(step, next.job.kerf)
      const end = floorAfter(next, { done: new Set(steps.map(({ id }) => id)) })
      const parts = end.ok ? end.value.flatMap(({ part }) => (part === null ? [] : [part])) : [end.message]
      const unplaced = next.answer.unplaced.reduce((sum, { quantity }) => sum + quantity, 0)
      expect(parts.length + unplaced).toBe(partsOf(plan.cutList.rows).length)
      expect(partsOf(plan.cutList.rows)).toEqual(expect.arrayContaining(parts))
      for (const [id, { names }] of next.atHand!) {
        expect(names.length, id).toBe(next.job.stock.find((each) => each.id === id)?.quantity ?? 0)
      }
      return next
    }
    await fc.assert(
      fc.asyncProperty(cases, async (drawn) => {
        const next = await goOn(inputOf(drawn), drawn)
        await goOn(next, { ...drawn, mishap: next.answer.sheets.length > 0 ? 'damaged' : 'spoiled' })
      }),
      { seed: 45, numRuns: 60 },
    )
  })

  it('can be made again after the next mishap', () => {
    fc.assert(
      fc.property(cases, (drawn) => {
        const input = inputOf(drawn)
        const next = packed(input, replanned(input, drawn).plan)
        const mishap = next.answer.sheets.length > 0 ? 'damaged' : 'spoiled'
        const { plan } = replanned(next, { ...drawn, mishap })
        const wanted = partsOf([...next.cutList.rows, ...next.cutBefore!])
        expect([...plan.cut, ...partsOf(plan.cutList.rows)].sort()).toEqual(wanted)
        const last = packed(next, plan)
        expect(verify(last.job, last.answer)).toEqual([])
        const first = plan.firstSheet - plan.cutAways.length
        expect([...worksOf(last).values()].flat().every(({ task }) => task.sheet >= first)).toBe(true)
        for (const [id, { names: called }] of last.atHand!) {
          const stock = last.job.stock.find((each) => each.id === id)
          expect(called.length, id).toBe(stock?.quantity ?? 0)
        }
      }),
      { seed: 44, numRuns: 60 },
    )
  })
})

function shrunk({ left, bottom, width, height }: Rect): Rect {
  return { left: left + 0.001, bottom: bottom + 0.001, width: width - 0.002, height: height - 0.002 }
}
