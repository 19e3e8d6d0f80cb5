import { boundOf } from './bound'
import { folded, layoutOf } from './draw'
import type { SheetJob } from './job'
import type { SheetAnswer } from './layout'
import { type Lot, lotsOf } from './lot'
import { firstPlan, improve, type Plan } from './plan'
import { unfitting, unplacedOf } from './unplaced'

/** Rests looked at in all, over the materials of a job: about a second and a half's worth, and a quarter of it. */
const WORK = { thorough: 45_000_000, quick: 11_000_000 }

/**
 * Packs a job: a first answer at once, then null every few milliseconds, so that the caller can look up, and every
 * better answer as it comes; the last and best is returned. Each material is packed by itself. The answer depends on the
 * job and its seed only.
 */
export function* packing(job: SheetJob): Generator<SheetAnswer | null, SheetAnswer, void> {
  const lots = lotsOf(job)
  const bounds = lots.map(boundOf)
  const plans = lots.map(firstPlan)
  let answer = answerOf(job, lots, bounds, plans)
  yield answer
  const open = lots.filter((_, at) => isOpen(plans[at]!, bounds[at]!)).length
  for (const [at, lot] of lots.entries()) {
    if (!isOpen(plans[at]!, bounds[at]!)) continue
    const budget = WORK[job.effort ?? 'thorough'] / open
    for (const plan of improve(lot, plans[at]!, bounds[at]!, (job.seed ?? 1) + at, budget)) {
      if (plan) {
        plans[at] = plan
        answer = answerOf(job, lots, bounds, plans)
      }
      yield plan && answer
    }
  }
  return answer
}

/** The settled answer, or the best there is when the caller has waited long enough. */
export function packSheets(job: SheetJob, until: () => boolean = () => false): SheetAnswer {
  const search = packing(job)
  let best: SheetAnswer | null = null
  for (;;) {
    const { done, value } = search.next()
    if (value) best = value
    if (done || (best && until())) return best!
  }
}

function isOpen({ boards, left }: Plan, bound: number): boolean {
  return left.length === 0 && boards.length > bound
}

function answerOf(job: SheetJob, lots: readonly Lot[], bounds: readonly number[], plans: readonly Plan[]): SheetAnswer {
  const sheets = plans.flatMap(({ boards }, at) => folded(boards.map((board) => layoutOf(board, lots[at]!, job))))
  const unplaced = [...unfitting(job), ...plans.flatMap(({ left }, at) => unplacedOf(lots[at]!, left))]
  const isMet = plans.every(({ boards, left }, at) => left.length === 0 && boards.length === bounds[at])
  return {
    sheets,
    unplaced,
    bounds: Object.fromEntries(lots.map(({ material }, at) => [material, bounds[at]!])),
    proved: isMet && unplaced.length === 0,
  }
}
