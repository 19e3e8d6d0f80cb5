import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import type { Step } from '../../../engine/breakdown/step'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { after, expectCuttable, INPUT, KITCHEN, STEPS, spoiled } from './mishaps'

/** The carcass sheets are all ripped, and the crosscut blade is in. */
const AT_THE_STOP = STEPS.findIndex(({ blade }) => blade === 'crosscut') + 40

/** The three largest of what is cut: no piece at hand is large enough for all. */
const threeLargest = (cut: Parameters<Parameters<typeof after>[2]>[0]) =>
  spoiled(
    ...[...cut]
      .sort((a, b) => b.length * b.width - a.length * a.width)
      .slice(0, 3)
      .map(({ part }) => part),
  )

const thinner = () => {
  const { rows } = derive(
    applyEdit(KITCHEN.project, { kind: 'editMaterial', id: 'carcass' as MaterialId, change: { thickness: 17.6 } }),
  ).cutList
  return { kind: 'thickness', material: 'carcass', rows } as const
}

/** Whether a step cuts what is still to be bought, step by step. */
const areBought = ({ toBuy }: BreakdownInput, steps: readonly Step[]) =>
  steps.map(({ sheets }) => sheets.some((sheet) => toBuy!.has(sheet)))

/** `crosscut, rip`: the blades in their turn. */
const bladesOf = (steps: readonly Step[]) =>
  steps.flatMap(({ blade }, at) => (blade === steps[at - 1]?.blade ? [] : [blade])).join(', ')

const setting = ({ kind, setting }: Step) => `${kind} ${setting}`

const MUST_BE_HERE = /^Sheets? .* still to be bought: (it|they) must be here for this step\.$/

describe('a sheet that is to be bought after a mishap', () => {
  it.each([
    ['parts are spoiled', threeLargest],
    ['the batch measures otherwise', thinner],
  ])('is cut when all that is at hand is, where %s', async (_, mishap) => {
    const { input, steps, plan } = await after(INPUT, AT_THE_STOP, mishap)
    const bought = areBought(input, steps)
    expect(bought).toContain(true)
    expect(bought).toEqual([...bought].sort((a, b) => Number(a) - Number(b)))
    expect(steps[0]!.blade).toBe(STEPS[AT_THE_STOP - 1]!.blade)
    // The step that begins it says so, and no other does.
    const [first, ...others] = steps.filter((_, at) => bought[at])
    expect(first!.cautions[0]).toMatch(MUST_BE_HERE)
    const begins = [first!, ...others].filter(({ cautions }) => cautions.some((words) => MUST_BE_HERE.test(words)))
    expect(begins.map(({ takes }) => takes.name)).toEqual([...input.toBuy!].map((sheet) => `sheet ${sheet}`))
    expectCuttable({ input, steps, plan })
  })

  it('is named with its price, and why the pieces at hand do not do is told, where the batch measures otherwise', async () => {
    const { told, input, plan } = await after(INPUT, AT_THE_STOP, thinner)
    const numbers = [...input.toBuy!]
    expect(told.at(-1)).toMatch(new RegExp(`: sheets? ${numbers.join(' and ')}, cut last\\.$`))
    // What is let into a thinner carcass is wider, and its strips are ripped already.
    const wider = plan.resized.filter(({ from, to }) => to.length > from.length || to.width > from.width)
    const [words, , outgrown] =
      told.map((line) => /^(\d+) parts still to be cut get other sizes; (.*) no longer fit/.exec(line)).find(Boolean) ??
      []
    expect(words).toBeDefined()
    const count = [...outgrown!.matchAll(/(\d+) of/g)].reduce((sum, [, each]) => sum + Number(each), 0)
    expect(count).toBeGreaterThan(0)
    expect(count).toBeLessThanOrEqual(wider.length)
    // Every part that is laid out anew is named or counted.
    const lines = told.filter((line) => / (are|is) cut from /.test(line))
    const [, others] = told.map((line) => /^(\d+) others are laid out anew, \d+ of them on /.exec(line)).find(Boolean)!
    expect(lines.length).toBeGreaterThan(0)
    expect(Number(others)).toBe(plan.kept!.anew.length - plan.lost.length)
  })

  it('takes no change of blade but its own', async () => {
    const { steps, input } = await after(INPUT, AT_THE_STOP, threeLargest)
    const bought = areBought(input, steps)
    const first = bladesOf(steps.filter((_, at) => !bought[at]))
    expect(first).toMatch(/^crosscut, rip(, crosscut)?$/)
    // It is ripped, crosscut, and ripped again only where a part of it is trimmed; the blade that is in begins it.
    const own = bladesOf(steps.filter((_, at) => bought[at]))
    expect(own).toMatch(/^rip, crosscut(, rip)?$/)
    expect(bladesOf(steps)).toBe(`${first}, ${own}`.replace('rip, rip', 'rip'))
  })

  it('keeps its turn when it has come, and says no more', async () => {
    const { steps, input } = await after(INPUT, AT_THE_STOP, threeLargest)
    const now = breakdownOf({ ...input, toBuy: new Set() }).steps
    expect(now.map(({ text }) => text)).toEqual(steps.map(({ text }) => text))
    expect(now.flatMap(({ cautions }) => cautions).filter((words) => MUST_BE_HERE.test(words))).toEqual([])
  })

  it('keeps its turn after the next mishap, and one more to be bought is cut with it, behind what was begun of it', async () => {
    const first = await after(INPUT, AT_THE_STOP, threeLargest)
    const same = await after(first.input, 10, () => spoiled())
    expect(same.steps.map(setting)).toEqual(first.steps.slice(10).map(setting))
    const [number] = first.input.toBuy!
    const begun = first.steps.findIndex(({ takes }) => takes.name === `sheet ${number}`) + 2
    const second = await after(first.input, begun, threeLargest)
    expect([...second.input.toBuy!].length).toBeGreaterThan(0)
    expect(second.input.toBuy).not.toContain(number)
    const bought = areBought(second.input, second.steps)
    expect(bought).toEqual([...bought].sort((a, b) => Number(a) - Number(b)))
    expectCuttable(second)
  })
})
