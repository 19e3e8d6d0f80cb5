import { STEP_WORK } from './columns'
import type { SizeCount } from './dualFeasible'
import { Simplex } from './simplex'

export interface Scaled {
  /** What the weights come to. */
  readonly value: number
  /** For each size its share of the whole: sizes of parts that there are, and fit together, have shares of at most 1. */
  readonly shares: Float64Array
}

/** So many sets of sizes are added for a set of weights at most. */
const MOST_ROUNDS = 200
const DUST = 1e-9

/**
 * The best dual-feasible function for some sizes in one direction of a sheet, all in ticks: of all functions that give
 * sizes which fit together, no more of each than there are, at most 1 together, the one that is worth most for given
 * weights. It is the dual of the linear programme that covers the weights with sets of sizes that fit together, which are
 * found by a knapsack. Source: Carlier, Clautiaux and Moukrim 2007 for functions of the parts at hand; Gilmore and Gomory,
 * Operations Research 9 (1961) for the programme (both from memory).
 */
export class Scale {
  /** In the unit of a search: rests looked at. */
  work = 0
  private readonly room: number
  private readonly sizes: readonly number[]
  private readonly most: readonly number[]
  private readonly worth: Float64Array
  private readonly taken: Uint16Array
  private readonly sets: { readonly rows: number[]; readonly counts: number[] }[] = []

  constructor(whole: number, sizes: readonly SizeCount[]) {
    const unit = unitOf(sizes)
    this.room = Math.floor(whole / unit)
    this.sizes = sizes.map(({ size }) => size / unit)
    this.most = mostOf(whole, sizes)
    this.worth = new Float64Array(this.room + 1)
    this.taken = new Uint16Array((this.room + 1) * sizes.length)
    for (const [row, count] of this.most.entries()) if (count > 1) this.sets.push({ rows: [row], counts: [count] })
  }

  /** Ends early when so much work is done; what it gives then is a function all the same. Yields between rounds. */
  *best(weights: Float64Array, work: number): Generator<null, Scaled> {
    const programme = new Simplex([...weights].map((weight) => Math.max(weight, DUST)))
    for (const { rows, counts } of this.sets) programme.add(rows, counts)
    const until = this.work + work
    let best: Scaled = { value: 0, shares: new Float64Array(this.sizes.length) }
    for (let round = 0; round < MOST_ROUNDS && this.work < until; round++) {
      const before = programme.steps
      const solved = programme.solve()
      this.work += (programme.steps - before) * STEP_WORK
      if (!solved) break
      const prices = Float64Array.from(this.sizes, (_, row) => Math.max(0, solved.duals[row]!))
      const set = this.fill(prices)
      const value = weights.reduce((sum, weight, row) => sum + weight * prices[row]!, 0) / set.worth
      if (value > best.value) best = { value, shares: prices.map((price) => price / set.worth) }
      if (set.worth <= 1 + DUST) break
      this.sets.push(set)
      programme.add(set.rows, set.counts)
      yield null
    }
    return best
  }

  /** The sizes that fit together and are worth most. */
  private fill(prices: Float64Array): { worth: number; rows: number[]; counts: number[] } {
    const { room, sizes, most, worth, taken } = this
    worth.fill(0)
    for (const [row, size] of sizes.entries()) {
      const price = prices[row]!
      const from = row * (room + 1)
      taken.fill(0, from, from + room + 1)
      if (price <= 0) continue
      // From the top, so that what is below is as it was before this size.
      for (let at = room; at >= size; at--) {
        const count = Math.min(most[row]!, Math.floor(at / size))
        for (let times = 1; times <= count; times++) {
          const now = worth[at - times * size]! + times * price
          if (now <= worth[at]! + DUST * DUST) continue
          worth[at] = now
          taken[from + at] = times
        }
        this.work += count * STEP_WORK
      }
    }
    const rows: number[] = []
    const counts: number[] = []
    let at = room
    for (let row = sizes.length - 1; row >= 0; row--) {
      const times = taken[row * (room + 1) + at]!
      if (times === 0) continue
      rows.push(row)
      counts.push(times)
      at -= times * sizes[row]!
    }
    return { worth: Math.max(worth[room]!, DUST), rows, counts }
  }
}

/** What one knapsack takes, in rests looked at: in fine units a sheet has too many places for it. */
export function knapsackWork(whole: number, sizes: readonly SizeCount[]): number {
  const counts = mostOf(whole, sizes).reduce((sum, count) => sum + count, 0)
  return (whole / unitOf(sizes)) * counts * STEP_WORK
}

function mostOf(whole: number, sizes: readonly SizeCount[]): number[] {
  return sizes.map(({ size, count }) => Math.min(count, Math.floor(whole / size)))
}

function unitOf(sizes: readonly SizeCount[]): number {
  return sizes.reduce((common, { size }) => commonUnit(common, size), 0)
}

function commonUnit(a: number, b: number): number {
  return b === 0 ? a : commonUnit(b, a % b)
}
