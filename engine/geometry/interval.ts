import type { Mm } from '../units/length'

/** A stretch of a line, from its low end to its high end. */
export interface Interval {
  readonly from: Mm
  readonly to: Mm
}

export function intervalsOverlap(a: Interval, b: Interval): boolean {
  return a.from < b.to && b.from < a.to
}

/** What is left of `whole` when all of `taken` is gone, low end first. Touching stretches leave nothing between. */
export function gapsIn(whole: Interval, taken: readonly Interval[]): Interval[] {
  const gaps: Interval[] = []
  let from = whole.from
  for (const next of [...taken].sort((a, b) => a.from - b.from)) {
    if (next.from > from) gaps.push({ from, to: Math.min(next.from, whole.to) })
    from = Math.max(from, next.to)
    if (from >= whole.to) return gaps
  }
  if (from < whole.to) gaps.push({ from, to: whole.to })
  return gaps
}
