import { expect } from 'vitest'
import type { PartId } from '../../../engine/basics/id'
import { type FloorPiece, floorAfter } from '../../../engine/breakdown/floor'
import { goOnAfter } from '../../../engine/breakdown/goOn'
import { type Replan, replanAfter } from '../../../engine/breakdown/mishap'
import type { Mishap } from '../../../engine/breakdown/mishapKinds'
import type { Step } from '../../../engine/breakdown/step'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import { derive } from '../../../engine/pipeline'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import type { SheetJob } from '../../../engine/sheets/job'
import { packSheets } from '../../../engine/sheets/pack'
import { verify } from '../../../engine/sheets/verify'
import { settle } from '../../../engine/units/length'
import { weigh } from './sawyer'

function packed(job: SheetJob) {
  let looks = 0
  return packSheets(job, () => ++looks > 10)
}

/** The demonstration as it is taken to the saw. */
export const KITCHEN = derive(demonstrationKitchen())
const { project, sheetJob, cutList, partOf } = KITCHEN
export const INPUT: BreakdownInput = {
  ...{ job: sheetJob, answer: packed(sheetJob), cutList, shop: project.shop, materials: project.materials },
  ...{ marks: new Map([...partOf].map(([id, { mark }]) => [id, mark])), display: project.display },
}
export const STEPS = breakdownOf(INPUT).steps

export interface After {
  readonly left: readonly Step[]
  readonly plan: Replan
  readonly input: BreakdownInput
  readonly steps: readonly Step[]
  readonly told: readonly string[]
}

/** What is left and what comes of it when a mishap happens after so many steps. */
export async function after(
  before: BreakdownInput,
  count: number,
  mishapOf: (cut: FloorPiece[]) => Mishap,
): Promise<After> {
  const { steps } = breakdownOf(before)
  const done = new Set(steps.slice(0, count).map(({ id }) => id))
  const floor = floorAfter(before, { done })
  if (!floor.ok) throw new Error(floor.message)
  const plan = replanAfter(before, { done }, mishapOf(floor.value.filter(({ part }) => part !== null)))
  if (!plan.ok) throw new Error(plan.message)
  const { input, told } = await goOnAfter(before, plan.value, async (job) => packed(job))
  return { left: steps.slice(count), plan: plan.value, input, told, steps: breakdownOf(input).steps }
}

export const spoiled = (...parts: (PartId | null)[]): Mishap => ({
  kind: 'spoiled',
  parts: parts.flatMap((id) => id ?? []),
})

/** Every step loses nothing but kerfs, and when all are done each part is there once and nothing lies over another. */
export function expectCuttable({ input, plan, steps }: Pick<After, 'input' | 'plan' | 'steps'>) {
  expect(verify(input.job, input.answer)).toEqual([])
  for (const step of steps) weigh(step, input.job.kerf)
  const end = floorAfter(input, { done: new Set(steps.map(({ id }) => id)) })
  if (!end.ok) throw new Error(end.message)
  const parts = end.value.flatMap((piece) => (piece.part === null ? [] : [piece.part]))
  expect(parts.sort()).toEqual(plan.cutList.rows.flatMap((row) => row.parts).sort())
  for (const [at, one] of end.value.entries()) {
    for (const other of end.value.slice(at + 1)) {
      const isApart =
        one.sheet !== other.sheet ||
        settle(one.x + one.length) <= other.x ||
        settle(other.x + other.length) <= one.x ||
        settle(one.y + one.width) <= other.y ||
        settle(other.y + other.width) <= one.y
      expect(isApart, `${one.name} and ${other.name}`).toBe(true)
    }
  }
}
