import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../engine/basics/random'
import { type BreakdownInput, breakdownOf, worksOf } from '../../engine/breakdown/steps'
import { partsIn } from '../../engine/breakdown/task'
import { countsOf, replay, SHOP } from '../engine/breakdown/sawyer'
import { randomTrees } from '../helpers/cut-trees'

const wishes = fc.record({
  first: fc.constantFrom('rip' as const, 'crosscut' as const, 'either' as const),
  depth: fc.integer({ min: 1, max: 6 }),
  sheets: fc.integer({ min: 1, max: 4 }),
  kerf: fc.constantFrom(0, 1.8, 2.2, 3.175),
  trim: fc.constantFrom(0, 6, 10),
})

/** Every row is late or not by lot. */
function inputOf(seed: number, wish: Parameters<typeof randomTrees>[1], share: number) {
  const random = randomFrom(seed)
  const given = randomTrees(random, wish)
  const rows = given.cutList.rows.map((row) => ({ ...row, isLate: random() < share }))
  const input: BreakdownInput = { ...given, cutList: { rows }, shop: SHOP, marks: new Map(), materials: {} }
  return { given, input, late: new Set<string>(rows.flatMap(({ isLate, parts }) => (isLate ? parts : []))) }
}

describe('late parts of random sheets', () => {
  it('replay to the parts of the layout, none of the others after the pause, none of them before it unless it is told', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), wishes, fc.constantFrom(0.2, 0.5, 0.8), (seed, wish, share) => {
        const { given, input, late } = inputOf(seed, wish, share)
        for (const cutOrder of ['sheet by sheet', 'setting by setting'] as const) {
          const ordered = { ...input, shop: { ...SHOP, cutOrder } }
          const breakdown = breakdownOf(ordered)
          const floor = replay(breakdown, given.job, given.answer)
          const drawn = given.answer.sheets.flatMap(({ root, copies }) => Array(copies).fill(partsIn(root)).flat())
          expect(countsOf(floor.filter(({ kind }) => kind === 'part'))).toEqual(countsOf(drawn))
          expect(floor.filter(({ kind }) => kind === 'strip' || kind === 'piece')).toEqual([])
          const steps = new Map(breakdown.steps.map((step) => [step.id, step]))
          for (const [id, works] of worksOf(ordered)) {
            const step = steps.get(id)!
            const parts = works.flatMap(({ leaves }) =>
              leaves.flatMap((left) => (left.part === null ? [] : [left.part])),
            )
            if (step.isLate) expect(parts.filter((part) => !late.has(part))).toEqual([])
            else if (parts.some((part) => late.has(part)))
              expect(step.cautions.join()).toContain('meant to be cut late')
          }
          const pauses = breakdown.steps.filter(({ kind }) => kind === 'pause').length
          const times = new Set(breakdown.steps.map(({ isLate }) => isLate))
          expect(pauses).toBe(times.size === 2 ? 1 : 0)
        }
      }),
      { seed: 41, numRuns: 150 },
    )
  })
})
