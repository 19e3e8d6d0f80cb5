/** A search that has not ended after so many steps down and up is left as it is. */
const MOST_TURNS = 2000

/** How many there may be of each piece, and what all of one piece may be worth together. */
export interface Limits {
  readonly count: Int32Array
  readonly worth: Float64Array
}

/** What adding up may have lost of a worth. */
const DUST = 1e-9

/**
 * Pieces side by side up to a length, within their limits, so that they are worth the most: by branch and bound, the
 * densest first. Few pieces of most boards go into a strip, and then this takes a small part of the time of a knapsack
 * over all its points. Sizes and lengths are grown ticks. Source: Gilmore and Gomory, 'A linear programming approach to
 * the cutting stock problem II', Operations Research 11 (1963); Martello and Toth, Knapsack Problems (1990), both from
 * memory.
 */
export class Filling {
  /** What makes up the best filling of the last search, each as often as it is in it; null where none beat the least. */
  pieces: readonly number[] | null = null
  /** Taken in all fillings. */
  steps = 0
  /** As many of each piece as may be worth something. */
  private readonly most: Int32Array
  private readonly order: Int32Array
  private readonly density: Float64Array
  private readonly counts: Int32Array
  private readonly bestCounts: Int32Array
  constructor(
    /** The shortest first. */
    private readonly sizes: readonly number[],
    private readonly length: number,
  ) {
    this.most = new Int32Array(sizes.length)
    this.order = new Int32Array(sizes.length)
    this.density = new Float64Array(sizes.length + 1)
    this.counts = new Int32Array(sizes.length)
    this.bestCounts = new Int32Array(sizes.length)
  }

  /**
   * The most that pieces of such worth can be together, or `least` where that is no less. Where the search is left before
   * its end, what they can be at most, and the best filling that was found.
   */
  fill(worth: Float64Array, least: number, limits: Limits): number {
    const count = this.choose(worth, limits)
    const { sizes, order, density, counts, bestCounts, most: mostOf } = this
    let best = least
    let isFound = false
    let [rest, sum] = [this.length, 0]
    let at = 0
    let turns = 0
    let most = 0
    let isOn = true
    while (isOn) {
      // Down, with as many of each as there is room for.
      while (at < count && sum + rest * density[at]! > best) {
        const piece = order[at]!
        const some = Math.min(mostOf[piece]!, Math.floor(rest / sizes[piece]!))
        counts[at++] = some
        rest -= some * sizes[piece]!
        sum += Math.min(some * worth[piece]!, limits.worth[piece]!)
      }
      if (sum > best) {
        best = sum
        isFound = true
        bestCounts.set(counts)
        bestCounts.fill(0, at)
      }
      turns++
      // Up, to the last piece that there may be one fewer of.
      isOn = false
      while (at > 0 && !isOn) {
        const piece = order[at - 1]!
        const some = counts[at - 1]!
        if (some > 0) {
          const own = Math.min(some * worth[piece]!, limits.worth[piece]!)
          const fewer = (some - 1) * worth[piece]!
          counts[at - 1] = some - 1
          rest += sizes[piece]!
          sum -= own - fewer
          const hope = sum + rest * density[at]!
          isOn = hope > best && turns < MOST_TURNS
          if (turns >= MOST_TURNS) most = Math.max(most, hope)
        }
        if (isOn) continue
        at--
        rest += counts[at]! * sizes[piece]!
        sum -= counts[at]! * worth[piece]!
        counts[at] = 0
      }
    }
    this.steps += turns * count
    this.pieces = isFound ? this.listed(count) : null
    return Math.max(best, most)
  }

  /** The pieces that are worth more than any shorter one that there are enough of, the densest first; how many there are. */
  private choose(worth: Float64Array, limits: Limits): number {
    const { sizes, order, density, most } = this
    let count = 0
    let shorter = 0
    for (let piece = 0; piece < sizes.length; piece++) {
      const alone = worth[piece]!
      if (alone <= shorter || sizes[piece]! > this.length) continue
      const room = Math.floor(this.length / sizes[piece]!)
      most[piece] = Math.min(room, limits.count[piece]!, Math.ceil(limits.worth[piece]! / alone - DUST))
      if (room * alone <= limits.worth[piece]! && room <= limits.count[piece]!) shorter = alone
      const own = alone / sizes[piece]!
      let at = count++
      for (; at > 0 && density[at - 1]! < own; at--) {
        order[at] = order[at - 1]!
        density[at] = density[at - 1]!
      }
      order[at] = piece
      density[at] = own
    }
    density[count] = 0
    return count
  }

  private listed(count: number): number[] {
    const pieces: number[] = []
    for (let at = 0; at < count; at++) {
      for (let one = 0; one < this.bestCounts[at]!; one++) pieces.push(this.order[at]!)
    }
    return pieces
  }
}
