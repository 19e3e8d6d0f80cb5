/** Knapsacks of a staged pattern: sections on one another, and pieces side by side. All sizes are grown ticks. */

/** More points than this are not worth their time. */
const MOST_POINTS = 14_000
/** More different heights of a section are not worth theirs. */
export const MOST_HEIGHTS = 3000

/** A kind of part as it may lie: `along` the strip, and `across` it. */
export interface Item {
  readonly kind: number
  readonly along: number
  readonly across: number
  readonly turned: boolean
}

/** Each size once, the smallest first. */
export function distinct(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b)
}

/** Sums of sizes up to a length, as far as they can matter at its end. Null where there are too many. */
export function rasterPoints(sizes: readonly number[], length: number): number[] | null {
  const sums = reachable(sizes, length, MOST_POINTS)
  if (!sums) return null
  const raster = new Set([0, length])
  let at = sums.length - 1
  for (const sum of sums) {
    while (sums[at]! > length - sum) at--
    raster.add(sums[at]!)
  }
  return [...raster].sort((a, b) => a - b)
}

function reachable(sizes: readonly number[], length: number, most: number): number[] | null {
  const seen = new Set([0])
  for (const sum of seen) {
    for (const size of sizes) if (sum + size <= length) seen.add(sum + size)
    if (seen.size > most) return null
  }
  return [...seen].sort((a, b) => a - b)
}

/**
 * All heights that items can have on one another; where they must be as high as their strip, their own. Null where there
 * are too many: with some left out the best sheet would seem to be worth less than it is, and the bound would be too high.
 */
export function heightsOf(items: readonly Item[], across: number, isExact: boolean): number[] | null {
  const heights = distinct(items.map((item) => item.across))
  return isExact ? [0, ...heights] : reachable(heights, across, MOST_HEIGHTS)
}

/** Items of one length on one another: what the best of them are worth up to each height that they can have together. */
export class Stack {
  readonly worth: Float64Array
  /** What all parts that there are of its items are worth together: no number of such stacks is worth more. */
  all = 0
  /** How many parts there are of its items. */
  parts = 0
  /** For each item in turn and each height: how many of it the best of the items up to it take. */
  private readonly counts: Int32Array
  /** The same: the highest that is left for the others under one of it; -1 where it is too high itself. */
  private readonly below: Int32Array
  constructor(
    readonly items: readonly Item[],
    /** All heights that the items can have together, as `heightsOf` gives them. */
    readonly sums: readonly number[],
    /** Whether there is one item only, as high as the stack. */
    isExact: boolean,
  ) {
    this.worth = new Float64Array(sums.length)
    this.counts = new Int32Array(sums.length * items.length)
    this.below = Int32Array.from(items.flatMap((item) => (isExact ? alone(item, sums) : under(item, sums))))
  }

  /** Works out the worth of every height at these prices, with no more of a kind than there is. */
  reprice(prices: Float64Array, demand: readonly number[]): void {
    const { items, worth, counts, below } = this
    this.all = 0
    this.parts = 0
    worth.fill(0)
    for (const [item, { kind }] of items.entries()) {
      const price = prices[kind]!
      const most = demand[kind]!
      this.all += most * price
      this.parts += most
      const row = item * worth.length
      // From the highest down, so that what lies below is still without this item.
      for (let at = worth.length - 1; at >= 0; at--) {
        let best = worth[at]!
        counts[row + at] = 0
        let rest = below[row + at]!
        for (let count = 1; count <= most && rest >= 0; count++) {
          const sum = worth[rest]! + count * price
          if (sum > best) {
            best = sum
            counts[row + at] = count
          }
          rest = below[row + rest]!
        }
        worth[at] = best
      }
    }
  }

  kindsAt(height: number): readonly Item[] {
    const { items, counts, below, worth } = this
    const kinds: Item[] = []
    let at = height
    for (let item = items.length - 1; item >= 0; item--) {
      const row = item * worth.length
      for (let left = counts[row + at]!; left > 0; left--) {
        kinds.push(items[item]!)
        at = below[row + at]!
      }
    }
    return kinds
  }
}

function under({ across }: Item, sums: readonly number[]): number[] {
  let below = -1
  return sums.map((sum) => {
    while (below + 1 < sums.length && sums[below + 1]! <= sum - across) below++
    return below
  })
}

function alone({ across }: Item, sums: readonly number[]): number[] {
  return sums.map((sum) => (sum === across ? 0 : -1))
}

/** Pieces side by side up to a length, each as often as wished: a knapsack over raster points. */
export class Row {
  readonly best: Float64Array
  /** Taken in all fillings. */
  steps = 0
  private readonly taken: Int32Array
  private readonly before: Int32Array
  private readonly chosen: Int32Array
  constructor(
    readonly sizes: readonly number[],
    readonly points: readonly number[],
  ) {
    this.best = new Float64Array(points.length)
    this.taken = new Int32Array(points.length)
    this.chosen = new Int32Array(sizes.length)
    this.before = new Int32Array(points.length * sizes.length).fill(-1)
    for (const [piece, size] of sizes.entries()) {
      let under = 0
      for (let at = 0; at < points.length; at++) {
        if (points[at]! < size) continue
        while (under + 1 < points.length && points[under + 1]! <= points[at]! - size) under++
        this.before[at * sizes.length + piece] = under
      }
    }
  }

  /**
   * A piece comes into choice at the first point that it reaches, and only when it is worth more than all that the
   * smaller ones can be on its length: else these can lie wherever it could.
   */
  fill(worth: Float64Array): number {
    const { best, taken, before, sizes, points, chosen } = this
    const all = sizes.length
    let count = 0
    let next = 0
    for (let at = 1; at < best.length; at++) {
      let most = best[at - 1]!
      let from = -1
      const row = at * all
      for (let choice = 0; choice < count; choice++) {
        const piece = chosen[choice]!
        const sum = best[before[row + piece]!]! + worth[piece]!
        if (sum > most) {
          most = sum
          from = piece
        }
      }
      this.steps += count
      for (; next < all && sizes[next]! <= points[at]!; next++) {
        const alone = worth[next]!
        if (alone <= (sizes[next] === points[at] ? most : best[at - 1]!)) continue
        chosen[count++] = next
        if (alone > most) {
          most = alone
          from = next
        }
      }
      best[at] = most
      taken[at] = from
    }
    return best[best.length - 1]!
  }

  /** Of the last filling: the pieces that make up its best up to a point. */
  piecesAt(point: number): number[] {
    const pieces: number[] = []
    for (let at = point; at > 0; ) {
      const piece = this.taken[at]!
      if (piece < 0) at--
      else {
        pieces.push(piece)
        at = this.before[at * this.sizes.length + piece]!
      }
    }
    return pieces
  }

  /** For each piece in turn, the best up to each point with pieces no larger than it. */
  upTo(worth: Float64Array): Float64Array[] {
    const { points, sizes, before } = this
    let best = new Float64Array(points.length)
    let next = 0
    return sizes.map((size, piece) => {
      while (next < points.length && points[next]! < size) next++
      const own = points[next] === size ? next : next - 1
      if (worth[piece]! <= best[own]!) return best
      best = best.slice()
      for (let at = next; at < points.length; at++) {
        const sum = best[before[at * sizes.length + piece]!]! + worth[piece]!
        best[at] = Math.max(best[at]!, best[at - 1]!, sum)
      }
      this.steps += points.length
      return best
    })
  }

  /** The last point that leaves room for a piece under a point; less than nothing where there is none. */
  under(point: number, piece: number): number {
    return this.before[point * this.sizes.length + piece]!
  }

  /** The last point that leaves room for a piece, and the worth up to there. */
  beside(piece: number): number {
    return this.before[(this.points.length - 1) * this.sizes.length + piece]!
  }
}
