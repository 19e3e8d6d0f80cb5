import { type Measure, measuresOf, type SizeCount } from './dualFeasible'
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
  if (lot.kinds.length === 0 || lot.stocks.length === 0) return 0
  return Math.max(areaBound(lot), Math.ceil(productsOf(lot)[0]!.value - DUST))
}

/** What a pair of functions comes to, one of each direction. */
export interface Product {
  readonly value: number
  readonly along: Measure
  readonly across: Measure
}

/** A sheet that is as large either way as any of a lot that has some. */
export function largestSheet({ stocks }: Lot): { readonly length: number; readonly width: number } {
  return {
    length: Math.max(...stocks.map((stock) => stock.length)),
    width: Math.max(...stocks.map((stock) => stock.width)),
  }
}

/** Of a lot with parts and sheets, the best first: for each function along the sheet the best that it comes to. */
export function productsOf(lot: Lot): Product[] {
  const { kinds } = lot
  const { length, width } = largestSheet(lot)
  const ways = kinds.map((kind) => waysOf(kind, length, width))
  const lengths = sizesIn(lot, ways, lengthFirst)
  const widths = sizesIn(lot, ways, widthFirst)
  const most = Math.max(8, Math.floor(Math.sqrt(MOST_PRODUCTS / kinds.length)))
  const along = measuresOf(length, lengths, most)
  const across = measuresOf(width, widths, most)
  return bestProducts(kinds, ways, along, across)
}

/** The sides of a part in one direction of the sheet, as it lies and turned. */
export type SidesOf = (kind: PartKind) => readonly [lying: number, turned: number]
export const lengthFirst: SidesOf = ({ length, width }) => [length, width]
export const widthFirst: SidesOf = ({ length, width }) => [width, length]

/** The sizes that parts may have in one direction, each with how many parts may have it there. */
export function sizesIn({ kinds }: Pick<Lot, 'kinds'>, ways: readonly Ways[], sidesOf: SidesOf): SizeCount[] {
  const counts = new Map<number, number>()
  for (const [at, kind] of kinds.entries()) {
    const [lying, turned] = sidesOf(kind)
    const own = new Set([...(ways[at] === 2 ? [] : [lying]), ...(ways[at] === 0 ? [] : [turned])])
    for (const size of own) counts.set(size, (counts.get(size) ?? 0) + kind.quantity)
  }
  return [...counts].map(([size, count]) => ({ size, count })).sort((a, b) => a.size - b.size)
}

function bestProducts(
  kinds: readonly PartKind[],
  ways: readonly Ways[],
  along: readonly Measure[],
  across: readonly Measure[],
): Product[] {
  const flat = (measures: readonly Measure[], size: (kind: PartKind) => number) =>
    measures.map((measure) => Float64Array.from(kinds, (kind) => measure(size(kind))))
  const count = Float64Array.from(kinds, ({ quantity }) => quantity)
  const [lying, lyingWidth] = [flat(along, (kind) => kind.length), flat(across, (kind) => kind.width)]
  const [turned, turnedWidth] = [flat(along, (kind) => kind.width), flat(across, (kind) => kind.length)]
  const products = along.map((measure, i): Product => {
    let best = { value: 0, along: measure, across: across[0]! }
    for (let j = 0; j < across.length; j++) {
      const [f, g, h, k] = [lying[i]!, lyingWidth[j]!, turned[i]!, turnedWidth[j]!]
      let sum = 0
      for (let at = 0; at < count.length; at++) {
        const way = ways[at]!
        const lies = way === 2 ? Infinity : f[at]! * g[at]!
        sum += count[at]! * (way === 0 ? lies : Math.min(lies, h[at]! * k[at]!))
      }
      if (sum > best.value) best = { value: sum, along: measure, across: across[j]! }
    }
    return best
  })
  return products.sort((a, b) => b.value - a.value)
}

/** 0: lies as it is; 1: either way; 2: goes on the sheet only when turned. */
export type Ways = 0 | 1 | 2

export function waysOf(kind: PartKind, length: number, width: number): Ways {
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
