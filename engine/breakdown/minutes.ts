import type { Shop } from '../project/document'
import type { Work } from './order'
import type { Task } from './task'

export interface Effort {
  /** How often a guide or a stop is set anew. */
  readonly settings: number
  readonly bladeChanges: number
  readonly minutes: number
}

/**
 * Minutes from the shop's own three figures (the sum is common practice, no source): one for every cut, one for every
 * time the guides or the stop are set or a line is marked, and one for every time a sheet is laid down to be cut. The rest of a
 * sheet counts by its share of the sheet. A blade change takes as long as a setting.
 */
export function effortOf(works: readonly Work[], shop: Shop): Effort {
  const { perCut, perSetting, perSheet } = shop.minutes
  let [settings, bladeChanges, lines, cuts, sheets] = [0, 0, 0, 0, 0]
  const set: { guides: number | null; bench: number | null } = { guides: null, bench: null }
  let before: Work | null = null
  const prepared = new Set<Task>()
  for (const work of works) {
    cuts += work.cuts
    if (before && before.blade !== work.blade) bladeChanges++
    if (work.setting !== null && work.tool !== 'rail') {
      if (set[work.tool] !== work.setting) settings++
      set[work.tool] = work.setting
    } else if (isMarked(work) && !(before && isSameLine(before, work))) lines++
    if (work.task.isSheet) sheets += handling(work, before, prepared)
    before = work
  }
  const minutes = cuts * perCut + (settings + bladeChanges + lines) * perSetting + sheets * perSheet
  return { settings, bladeChanges, minutes }
}

/** The share of a sheet that is laid down anew; none when it lies there already, straightened or partly cut. */
function handling(work: Work, before: Work | null, prepared: Set<Task>): number {
  const { task } = work
  if (work.kind === 'trim' || work.kind === 'square') prepared.add(task)
  else if (prepared.delete(task)) return 0
  if (before?.task === task) return 0
  return (work.takes.length * work.takes.width) / (task.span * task.across)
}

function isMarked(work: Work): boolean {
  return work.kind !== 'trim' && work.kind !== 'square'
}

function isSameLine(a: Work, b: Work): boolean {
  return a.kind === b.kind && a.size === b.size && a.run === b.run
}
