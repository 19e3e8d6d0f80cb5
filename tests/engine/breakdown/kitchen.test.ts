import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { floorAfter } from '../../../engine/breakdown/floor'
import { labelsOf } from '../../../engine/breakdown/labels'
import { settingsOf } from '../../../engine/breakdown/minutes'
import { replanAfter } from '../../../engine/breakdown/mishap'
import { type BreakdownInput, breakdownOf, worksOf } from '../../../engine/breakdown/steps'
import { type Derived, derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import type { SheetJob } from '../../../engine/sheets/job'
import { packSheets } from '../../../engine/sheets/pack'
import { verify } from '../../../engine/sheets/verify'

const CARCASS = 'carcass' as MaterialId
const KITCHEN = derive(demonstrationKitchen())

function packed(job: SheetJob) {
  let looks = 0
  return packSheets(job, () => ++looks > 10)
}

function inputOf({ project, sheetJob: job, cutList, partOf }: Derived): BreakdownInput {
  const marks = new Map([...partOf].map(([id, { mark }]) => [id, mark]))
  const { shop, materials, display } = project
  return { job, answer: packed(job), cutList, marks, shop, materials, display }
}

const INPUT = inputOf(KITCHEN)
const STEPS = breakdownOf(INPUT).steps

function marksOf(rows: BreakdownInput['cutList']['rows']) {
  return rows.flatMap(({ parts }) => parts.map((part) => INPUT.marks.get(part) ?? part)).sort()
}

describe('the breakdown of the demonstration kitchen', () => {
  it('writes every mark once, on the step that frees the part', () => {
    const freed = STEPS.flatMap(({ write }) => write).filter((mark) => /^[BUT]\d+-/.test(mark))
    expect(freed.sort()).toEqual(marksOf(INPUT.cutList.rows))
  })

  it('has a label for every part, with its size, in the order in which the steps free them', () => {
    const labels = labelsOf({ steps: STEPS }, INPUT)
    expect(labels.map(({ mark }) => mark).sort()).toEqual(marksOf(INPUT.cutList.rows))
    expect(labels.map(({ step }) => step)).toEqual(labels.map(({ step }) => step).sort((a, b) => a - b))
    for (const { mark, row, step } of labels) {
      const { write, leaves } = STEPS[step - 1]!
      expect(write).toContain(mark)
      const part = leaves.find(({ kind, name }) => kind === 'part' && name.split(/, | and /).includes(mark))!
      expect([part.length, part.width].sort(), mark).toEqual([row.length, row.width].sort())
    }
  })

  it('counts settings alike for the plan and for its steps', () => {
    const { settings } = breakdownOf(INPUT)
    expect(settingsOf(STEPS).filter((isNew) => isNew).length).toBe(settings)
    expect(STEPS.filter(({ isNewSetting }) => isNewSetting).length).toBe(settings)
  })

  it('cuts one setting for several cabinets in one step', () => {
    const cabinets = STEPS.map(({ write }) => new Set(write.map((mark) => mark.split('-')[0])).size)
    expect(Math.max(...cabinets)).toBeGreaterThan(2)
  })
})

describe('the demonstration kitchen when a batch turns out thinner', () => {
  const done = new Set(STEPS.slice(0, Math.floor(STEPS.length * 0.8)).map(({ id }) => id))
  const measured = applyEdit(KITCHEN.project, { kind: 'editMaterial', id: CARCASS, change: { thickness: 17.6 } })
  const { cutList } = derive(measured)
  const plan = replanAfter(INPUT, { done }, { kind: 'thickness', material: CARCASS, rows: cutList.rows })

  it('keeps sides that are cut, cuts bottoms again that no longer fit, and misses nothing', () => {
    if (!plan.ok) throw new Error(plan.message)
    const { cut, lost } = plan.value
    const role = (marks: readonly string[]) => new Set(marks.map((mark) => mark.replace(/^[BUT]\d+-/, '')))
    const [kept, again] = [cut, lost].map((parts) => role(parts.map((part) => INPUT.marks.get(part)!)))
    expect(kept).toContain('LS')
    expect(again).not.toContain('LS')
    expect(again!.size).toBeGreaterThan(0)
    const missing = marksOf(plan.value.cutList.rows)
    expect([...missing, ...cut.map((part) => INPUT.marks.get(part)!)].sort()).toEqual(marksOf(cutList.rows))
  })

  it('goes on from what lies in the shop, with sheets numbered on', () => {
    if (!plan.ok) throw new Error(plan.message)
    const { job, atHand, firstSheet } = plan.value
    const answer = packed(job)
    expect(verify(job, answer)).toEqual([])
    const next = { ...INPUT, job, answer, cutList: plan.value.cutList, atHand, firstSheet }
    const steps = breakdownOf(next).steps
    expect(Math.min(...steps.flatMap(({ sheets }) => sheets))).toBe(
      Math.max(...STEPS.flatMap(({ sheets }) => sheets)) + 1,
    )
    const names = new Set([...atHand.values()].flatMap((hand) => hand.names))
    expect(steps.some(({ takes }) => names.has(takes.name))).toBe(true)
    const end = floorAfter(next, { done: new Set(worksOf(next).keys()) })
    expect(
      end.ok &&
        end.value
          .filter(({ part }) => part !== null)
          .map(({ name }) => name)
          .sort(),
    ).toEqual(marksOf(plan.value.cutList.rows))
  })
})
