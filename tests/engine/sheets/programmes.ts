import { boundOf } from '../../../engine/sheets/bound'
import { improvedBriefly } from '../../../engine/sheets/improve'
import type { SheetJob } from '../../../engine/sheets/job'
import type { SheetAnswer } from '../../../engine/sheets/layout'
import type { Lot } from '../../../engine/sheets/lot'
import { packing } from '../../../engine/sheets/pack'
import { firstPlan } from '../../../engine/sheets/plan'
import { type Programme, programmeOf } from '../../../engine/sheets/programme'
import { patternsOf } from '../../../engine/sheets/staged'

export function demandOf({ kinds }: Lot): number[] {
  return kinds.map(({ quantity }) => quantity)
}

export function programmeFor(lot: Lot): Programme {
  const plan = improvedBriefly(lot, firstPlan(lot), boundOf(lot), 1, 200_000)
  return endOf(programmeOf(lot, patternsOf(lot)!, { plan, bound: 0 }, 1e9))
}

/** What a search comes to when it is left to its end. */
export function endOf<Outcome>(search: Generator<unknown, Outcome>): Outcome {
  for (;;) {
    const step = search.next()
    if (step.done) return step.value
  }
}

/** The first answer that is proved. */
export function provedAnswer(job: SheetJob): SheetAnswer {
  for (const answer of packing(job)) if (answer?.proved) return answer
  throw new Error('nothing is proved')
}
