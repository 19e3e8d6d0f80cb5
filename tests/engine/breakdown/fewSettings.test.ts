import { expect, it } from 'vitest'
import { breakdownOf } from '../../../engine/breakdown/steps'
import { derive } from '../../../engine/pipeline'
import { fortyCabinets } from '../../../engine/samples/workshop'
import type { JobGoal } from '../../../engine/sheets/job'
import { packSheets } from '../../../engine/sheets/pack'

/** What the steps of the forty cabinets take in both orders when layouts are made for these goals. */
function takes(goals: readonly JobGoal[]) {
  const { sheetJob, project, cutList, partOf } = derive(fortyCabinets())
  const job = { ...sheetJob, goals }
  const marks = new Map([...partOf].map(([id, { mark }]) => [id, mark]))
  const { shop, materials, display } = project
  return breakdownOf({ job, answer: packSheets(job), shop, cutList, marks, materials, display }).compared
}

it('the goal of few settings makes do with fewer of them, each made once, and saves minutes in both orders of cutting', () => {
  const plain = takes([])
  const few = takes(['settings'])
  expect(few['setting by setting'].settings).toBeLessThan(plain['setting by setting'].settings)
  for (const order of ['sheet by sheet', 'setting by setting'] as const) {
    expect(few[order].minutes, order).toBeLessThan(plain[order].minutes)
  }
})
