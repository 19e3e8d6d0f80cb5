import type { Step } from './step'
import { type BreakdownInput, worksOf } from './steps'

/** The steps after one that cut further what it cuts or leaves, in their order: where it is not done, none of them is. */
export function stepsNeeding(input: BreakdownInput, id: Step['id']): readonly Step['id'][] {
  const needing: Step['id'][] = []
  const pieces = new Set<string>()
  for (const [step, works] of worksOf(input)) {
    const isNeeding = works.some(({ task }) => pieces.has(task.name))
    if (step !== id && !isNeeding) continue
    if (step !== id) needing.push(step)
    for (const { task, leaves } of works) {
      pieces.add(task.name)
      for (const { key } of leaves) pieces.add(key)
    }
  }
  return needing
}
