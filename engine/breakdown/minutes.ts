import type { Shop } from '../project/document'
import type { Effort } from './step'
import type { Task } from './task'
import type { Work } from './work'

/**
 * Minutes from the shop's own three figures (the sum is common practice, no source): one for every cut, one for every
 * time the guides or the stop are set or a line is marked, and one for every time a sheet is laid down to be cut. The rest of a
 * sheet counts by its share of the sheet. A blade change takes as long as a setting, and so does the attachment of the
 * guides, which is put on and taken off with one. What was set before the carcasses were built is set again for late parts.
 */
export function effortOf(works: readonly Work[], shop: Shop): Effort {
  const { perCut, perSetting, perSheet } = shop.minutes
  let [bladeChanges, lines, cuts, sheets] = [0, 0, 0, 0]
  let before: Work | null = null
  const prepared = new Set<Task>()
  for (const work of works) {
    cuts += work.cuts
    if (before && isPausedBetween(before, work)) prepared.clear()
    if (before && before.blade !== work.blade) bladeChanges++
    if (settingOf(work) === null && isMarked(work) && !(before && isSameLine(before, work))) lines++
    const last = before && isPausedBetween(before, work) ? null : before
    if (work.task.isSheet) sheets += handling(work, last, prepared)
    before = work
  }
  const settings = settingsOf(works).filter((isNew) => isNew).length
  const minutes = cuts * perCut + (settings + bladeChanges + lines) * perSetting + sheets * perSheet
  return { settings, bladeChanges, minutes }
}

/** For each of some cuts in their order, whether the guides or the stop are set for it; not where they stand already. */
export function settingsOf(cuts: readonly Pick<Work, 'tool' | 'setting' | 'hasAttachment' | 'isLate'>[]): boolean[] {
  let set: Partial<Record<Work['tool'], string>> = {}
  return cuts.map((cut, at) => {
    if (at > 0 && isPausedBetween(cuts[at - 1]!, cut)) set = {}
    const setting = settingOf(cut)
    if (setting === null || set[cut.tool] === setting) return false
    set[cut.tool] = setting
    return true
  })
}

/** Between the parts that are cut first and the late ones the carcasses are built, and nothing stands as it was. */
export function isPausedBetween(before: Pick<Work, 'isLate'>, after: Pick<Work, 'isLate'>): boolean {
  return after.isLate && !before.isLate
}

/** What tells one setting of a tool from another; null where a line is followed. */
export function settingOf({ setting, hasAttachment }: Pick<Work, 'setting' | 'hasAttachment'>): string | null {
  return setting === null ? null : `${setting}${hasAttachment ? ' with the attachment' : ''}`
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
