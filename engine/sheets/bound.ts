import { type Measure, measuresOf } from './dualFeasible'
import type { Lot, PartKind } from './lot'
import { sheetsAskedFor } from './pinned'

/** Products summed at most, so that the bound never takes more than some milliseconds. */
const MOST_PRODUCTS = 1_500_000
/** What rounding may have added to a sum of some thousand products of numbers up to one. */
const DUST = 1e-7

/**
 * The least number of sheets that any layout needs. A dual-feasible function f maps sizes so that sizes which fit into
 * the sheet together still fit into 1 together; so the sum of f(length) g(width) over all parts, rounded up, is a bound.
 * A part that may be turned counts the lesser of its two ways. With several sheet sizes the sheet is taken as long as
 * the longest and as wide as the widest, and the area bound fills the largest first, as many as there are.
 * Source: Fekete and Schepers, 'New classes of fast lower bounds for bin packing problems', 2001 (from memory).
 */
export function boundOf(lot: Lot): number {
  const { kinds, stocks } = lot
  if (kinds.length === 0 || stocks.length === 0) return 0
  const length = Math.max(...stocks.map((stock) => stock.length))
  const width = Math.max(...stocks.map((stock) => stock.width))
  const turning = kinds.filter((kind) => kind.turns)
  const lengths = sizesOf(kinds, turning, (kind) => kind.length)
  const widths = sizesOf(kinds, turning, (kind) => kind.width)
  const most = Math.max(8, Math.floor(Math.sqrt(MOST_PRODUCTS / kinds.length)))
  const along = measuresOf(length, lengths, most)
  const across = measuresOf(width, widths, most)
  return Math.max(areaBound(lot), Math.ceil(bestProduct(kinds, length, width, along, across) - DUST))
}

interface Sizes {
  readonly size: number
  readonly count: number
}

/** The sizes that parts may have in one direction, each with how many parts are sure to have it there. */
function sizesOf(kinds: readonly PartKind[], turning: readonly PartKind[], own: (kind: PartKind) => number): Sizes[] {
  const counts = new Map<number, number>()
  for (const kind of kinds) counts.set(own(kind), (counts.get(own(kind)) ?? 0) + kind.quantity)
  for (const { length, width, quantity } of turning) {
    for (const size of [length, width]) counts.set(size, (counts.get(size) ?? 0) + quantity)
  }
  return [...counts].map(([size, count]) => ({ size, count })).sort((a, b) => a.size - b.size)
}

function bestProduct(
  kinds: readonly PartKind[],
  length: number,
  width: number,
  along: readonly Measure[],
  across: readonly Measure[],
): number {
  const flat = (measures: readonly Measure[], size: (kind: PartKind) => number) =>
    measures.map((measure) => Float64Array.from(kinds, (kind) => measure(size(kind))))
  const count = Float64Array.from(kinds, ({ quantity }) => quantity)
  const [lying, lyingWidth] = [flat(along, (kind) => kind.length), flat(across, (kind) => kind.width)]
  const [turned, turnedWidth] = [flat(along, (kind) => kind.width), flat(across, (kind) => kind.length)]
  const ways = kinds.map((kind) => waysOf(kind, length, width))
  let best = 0
  for (let i = 0; i < along.length; i++) {
    for (let j = 0; j < across.length; j++) {
      const [f, g, h, k] = [lying[i]!, lyingWidth[j]!, turned[i]!, turnedWidth[j]!]
      let sum = 0
      for (let at = 0; at < count.length; at++) {
        const way = ways[at]!
        const lies = way === 2 ? Infinity : f[at]! * g[at]!
        sum += count[at]! * (way === 0 ? lies : Math.min(lies, h[at]! * k[at]!))
      }
      if (sum > best) best = sum
    }
  }
  return best
}

/** 0: lies as it is; 1: either way; 2: goes on the sheet only when turned. */
function waysOf(kind: PartKind, length: number, width: number): 0 | 1 | 2 {
  if (!kind.turns || kind.width > length || kind.length > width) return 0
  return kind.length <= length && kind.width <= width ? 1 : 2
}

/** The bound by area alone, the largest sheets first, and no fewer than parts ask for by their numbers: it takes no time. */
export function areaBound({ kinds, stocks }: Lot): number {
  let left = kinds.reduce((sum, kind) => sum + kind.quantity * kind.area, 0)
  let sheets = 0
  for (const stock of [...stocks].sort((a, b) => b.length * b.width - a.length * a.width)) {
    const area = stock.length * stock.width
    const some = Math.min(stock.quantity, Math.ceil(left / area - 1e-12))
    sheets += some
    left -= some * area
    if (left <= 0) break
  }
  return Math.max(sheets, sheetsAskedFor({ kinds }).length)
}
