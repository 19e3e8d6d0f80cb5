import type { BuiltRun } from '../between/run'
import type { HoleRow } from '../cabinets/operation'
import { isTopBoard } from '../cabinets/role'
import type { Part } from '../parts/part'
import type { Project } from '../project/document'
import type { HardwareRow } from './row'

/**
 * The bolts of the seams of a countertop: those at the end of each board, and at the beginning of the first. What is routed
 * in its front edge is for the bolts of the top that stops there.
 */
export function boltsOfRun({ parts }: Pick<BuiltRun, 'parts'>, { between: { countertop } }: Project): HardwareRow[] {
  const bolts = countertop?.seamBolts
  if (!bolts) return []
  const tops = parts.filter(({ role }) => isTopBoard(role))
  const quantity = tops.reduce(
    (sum, part, at) => sum + countAt(part, 'end') + (at === 0 ? countAt(part, 'start') : 0),
    0,
  )
  return quantity > 0 ? [{ name: 'countertop bolt', quantity, length: bolts.length }] : []
}

function countAt({ operations, length }: Part, end: 'start' | 'end'): number {
  return operations
    .filter((one): one is HoleRow => one.kind === 'holeRow' && one.purpose === 'seamBolt' && one.along === 'width')
    .filter(({ x }) => x < length / 2 === (end === 'start'))
    .reduce((sum, { count }) => sum + count, 0)
}

/** What is bought for runs, each by its mark. */
export function boughtFor(runs: readonly BuiltRun[], project: Project) {
  return runs.map((run) => ({ mark: run.mark, hardware: boltsOfRun(run, project) }))
}
