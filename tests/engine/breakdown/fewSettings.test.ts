import { expect, it } from 'vitest'
import { breakdownOf } from '../../../engine/breakdown/steps'
import { derive } from '../../../engine/pipeline'
import { fortyCabinets } from '../../../engine/samples/workshop'
import type { JobGoal } from '../../../engine/sheets/job'
import { packSheets } from '../../../engine/sheets/pack'

/** What the steps of the forty cabinets take in both orders when layouts are made for these goals. */
function takes(goals: readonly JobGoal[], seed: number) {
  const { sheetJob, project, cutList, partOf } = derive(fortyCabinets())
  const job = { ...sheetJob, goals, seed }
  const marks = new Map([...partOf].map(([id, { mark }]) => [id, mark]))
  const { shop, materials, display } = project
  return breakdownOf({ job, answer: packSheets(job), shop, cutList, marks, materials, display }).compared
}

it.each([1, 4])(
  'the goal of few settings saves settings and minutes at the saw, in both orders of cutting, with seed %i',
  (seed) => {
    const plain = takes([], seed)
    const few = takes(['settings'], seed)
    for (const order of ['sheet by sheet', 'setting by setting'] as const) {
      expect(few[order].settings, order).toBeLessThan(plain[order].settings)
      expect(few[order].minutes, order).toBeLessThan(plain[order].minutes)
    }
  },
)
