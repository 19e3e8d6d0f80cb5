/** What the engine takes, in milliseconds: medians, on this machine, of the forty-cabinet sample. */
import { derive } from '../../engine/pipeline'
import { applyEdit } from '../../engine/project/apply'
import type { Project } from '../../engine/project/document'
import { fortyCabinets } from '../../engine/samples/workshop'
import type { SheetAnswer } from '../../engine/sheets/layout'
import { packing } from '../../engine/sheets/pack'
import { sheetCount } from '../../engine/sheets/tally'

const MOVES = 300
const FROM_NOTHING = 40

export function benchEngine() {
  const project = fortyCabinets()
  const job = derive(project).sheetJob
  const first = times(11, () => firstAnswer(job))
  const settled = times(3, () => settledAnswer(job))
  const answer = settledAnswer(job)
  return {
    cabinets: Object.keys(project.cabinets).length,
    parts: derive(project).partOf.size,
    rows: derive(project).cutList.rows.length,
    deriveAfterMoveMs: median(movesOf(project)),
    deriveFromNothingMs: median(fromNothing(project)),
    firstPackingMs: median(first),
    settledPackingMs: median(settled),
    sheetsAtFirst: sheetCount(firstAnswer(job)),
    sheetsSettled: sheetCount(answer),
    sheetsBound: Object.values(answer.bounds).reduce((sum, bound) => sum + bound, 0),
    proved: answer.proved,
  }
}

/** With all that is worked out only when it is asked for. */
function inFull(project: Project) {
  const { cutList, sheetJob, problems } = derive(project)
  return { cutList, sheetJob, problems }
}

/** One cabinet pulled back and forth: each move is a project never seen before. */
function movesOf(project: Project): number[] {
  const cabinet = Object.values(project.cabinets)[17]!
  derive(project)
  return Array.from({ length: MOVES }, (_, at) => {
    const left = cabinet.left + (at + 1) / 32
    const moved = applyEdit(project, { kind: 'shapeCabinets', shapes: [{ id: cabinet.id, left }] })
    return timed(() => inFull(moved))
  })
}

/** The same project as a stranger: nothing is remembered of it. Making it is not counted. */
function fromNothing(project: Project): number[] {
  return Array.from({ length: FROM_NOTHING }, () => {
    const stranger = structuredClone(project)
    return timed(() => inFull(stranger))
  })
}

function firstAnswer(job: Parameters<typeof packing>[0]): SheetAnswer {
  for (const answer of packing(job)) if (answer) return answer
  throw new Error('the packer ended without an answer')
}

function settledAnswer(job: Parameters<typeof packing>[0]): SheetAnswer {
  const search = packing(job)
  for (;;) {
    const { done, value } = search.next()
    if (done) return value
  }
}

function times(count: number, task: () => unknown): number[] {
  return Array.from({ length: count }, () => timed(task))
}

function timed(task: () => unknown): number {
  const start = performance.now()
  task()
  return performance.now() - start
}

export function median(values: readonly number[]): number {
  return quantile(values, 0.5)
}

export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  return Number(sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]!.toFixed(3))
}
