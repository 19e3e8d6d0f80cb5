import type { PartId } from '../../../engine/basics/id'
import { replanAfter } from '../../../engine/breakdown/mishap'
import type { Mishap } from '../../../engine/breakdown/mishapKinds'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import { packSheets } from '../../../engine/sheets/pack'
import { crosscut, OFFCUT, PLY, part, rip, SHOP, sheets, WASTE } from './sawyer'

/** Two sheets alike: two A of 768 x 580 in one strip, B of 1000 x 320 in the other, and an offcut. */
export const GIVEN = sheets({ A: [768, 580], B: [1000, 320] }, [
  [2, rip(crosscut(part('A'), part('A'), OFFCUT), crosscut(part('B'), WASTE), OFFCUT)],
])
const MARKS = new Map([
  ['A-1', 'B1-LS'],
  ['A-2', 'B1-RS'],
] as [PartId, string][])
export const INPUT: BreakdownInput = {
  ...GIVEN,
  job: { ...GIVEN.job, stock: [{ ...GIVEN.job.stock[0]!, quantity: 5 }], offcutLeast: SHOP.offcutLeast },
  shop: { ...SHOP, cutOrder: 'sheet by sheet' },
  marks: MARKS,
  materials: { m1: PLY } as unknown as BreakdownInput['materials'],
}
export const STEPS = breakdownOf(INPUT).steps

/** Steps up to the first of a kind, without or with it. */
export function before(kind: string) {
  const at = STEPS.findIndex((step) => step.kind === kind)
  return new Set(STEPS.slice(0, at).map(({ id }) => id))
}
export const ALL = new Set(STEPS.map(({ id }) => id))

export function replan(done: ReadonlySet<string>, mishap: Mishap) {
  const plan = replanAfter(INPUT, { done }, mishap)
  if (!plan.ok) throw new Error(plan.message)
  return plan.value
}

/** The plan made again, laid out, as the next thing to cut. */
export function laidOut(plan: ReturnType<typeof replan>): BreakdownInput {
  const { job, cutList, atHand, firstSheet, cutAways, cutBefore, kinds } = plan
  return { ...INPUT, job, answer: packSheets(job), cutList, atHand, firstSheet, cutAways, cutBefore, kinds }
}

export function refused(done: ReadonlySet<string>, mishap: Mishap) {
  const plan = replanAfter(INPUT, { done }, mishap)
  return plan.ok ? 'planned' : plan.message
}

export function shownStock({ job }: ReturnType<typeof replan>) {
  return job.stock.map(({ id, quantity, length, width, trim }) => {
    return `${id}: ${quantity} of ${length} x ${width}, trim ${trim?.length} and ${trim?.width}`
  })
}

export const ids = (...names: string[]) => names as unknown as PartId[]
