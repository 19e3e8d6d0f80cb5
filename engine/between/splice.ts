import type { MaterialId } from '../basics/id'
import { valuesOf } from '../basics/id'
import type { Interval } from '../geometry/interval'
import type { Project, Stock } from '../project/document'
import { type Mm, settle } from '../units/length'

/** The longest board that the sheets of a material give once their factory ends are off; without any sheets, no limit. */
export function longestBoard({ stock, shop }: Pick<Project, 'stock' | 'shop'>, material: MaterialId): Mm {
  const lengths = valuesOf<Stock>(stock)
    .filter((one) => one.material === material && !one.isExcluded && one.quantity !== 0)
    .map((one) => settle(one.length - 2 * shop.trim))
  return lengths.length > 0 ? Math.max(...lengths) : Infinity
}

/**
 * Where a run is parted into boards no longer than the longest: as far along as it can be at an edge of a carcass, which
 * a splice is fixed to, and never inside what is kept whole. With no such edge in reach, as far as the board goes.
 *
 *     |  B1  |   B2   |  B3  |  B4  |
 *     |===============|=============|      the longest would end within B3
 */
export function spliced(edges: readonly Mm[], longest: Mm, whole: readonly Interval[] = []): Interval[] {
  const first = edges[0]
  const end = edges.at(-1)
  if (first === undefined || end === undefined || !(longest > 0)) return []
  const boards: Interval[] = []
  let from = first
  while (settle(end - from) > longest) {
    const to = spliceAfter(from, edges, longest, whole)
    boards.push({ from, to })
    from = to
  }
  return [...boards, { from, to: end }]
}

function spliceAfter(from: Mm, edges: readonly Mm[], longest: Mm, whole: readonly Interval[]): Mm {
  const reach = settle(from + longest)
  const isFree = (at: Mm) => !whole.some((one) => at > one.from && at < one.to)
  const best = edges.filter((at) => at > from && at <= reach && isFree(at)).at(-1)
  if (best !== undefined) return best
  const before = whole.find((one) => reach > one.from && reach < one.to && one.from > from)
  return before ? before.from : reach
}
