import type { Mm } from '../units/length'

/**
 * For batches of settings made one after another: with which setting each ends and the next begins, so that it is not
 * made twice; null where they share none that is free. One fewer than the batches, and as many as can be.
 *
 *     580 320 | 320 200 580 | 580 400        links 320, 580
 */
export function linksOf(batches: readonly ReadonlySet<Mm>[]): (Mm | null)[] {
  if (batches.length < 2) return []
  const ways = batches.slice(0, -1).map((batch, at) => {
    const shared = [...batch].filter((size) => batches[at + 1]!.has(size))
    return [...shared.sort((a, b) => a - b), null]
  })
  const best = ways.map(() => new Map<Mm | null, Way>())
  // From the last link back: what can still be saved when a batch begins with a setting.
  for (let at = ways.length - 1; at >= 0; at--) {
    const starts = [null, ...(at === 0 ? [] : ways[at - 1]!)]
    for (const start of starts) best[at]!.set(start, bestWay(start, ways[at]!, batches[at]!, best[at + 1]))
  }
  let start: Mm | null = null
  return best.map((way) => {
    start = way.get(start)!.link
    return start
  })
}

interface Way {
  readonly link: Mm | null
  readonly saved: number
}

/** A batch of more than one setting cannot end with the one that it began with. */
function bestWay(
  start: Mm | null,
  links: readonly (Mm | null)[],
  batch: ReadonlySet<Mm>,
  after: ReadonlyMap<Mm | null, Way> | undefined,
): Way {
  const free = links.filter((link) => link === null || link !== start || batch.size === 1)
  const ways = free.map((link) => ({ link, saved: (link === null ? 0 : 1) + (after?.get(link)?.saved ?? 0) }))
  return ways.reduce((a, b) => (b.saved > a.saved ? b : a))
}
