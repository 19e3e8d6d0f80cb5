import { largestSheet, lengthFirst, productsOf, type SidesOf, sizesIn, type Ways, waysOf, widthFirst } from './bound'
import type { Measure, SizeCount } from './dualFeasible'
import type { Lot } from './lot'
import { knapsackWork, Scale } from './scale'

/** So many products are set out from. */
const STARTS = 2
/** From each so often the function of one direction is made the best for that of the other, by turns. */
const TURNS = 6
/** Where parts may lie either way, their ways are weighed so often for each (found by trial). */
const PLAYS = 8
/** It is not begun where so many knapsacks of either direction would take more than there is time for. */
const KNAPSACKS = 10
const DUST = 1e-6

/** One direction of the sheet: where among its sizes each kind is as it lies, and turned; -1 where it does not lie so. */
interface Direction {
  readonly scale: Scale
  readonly sizes: readonly number[]
  readonly lying: Int32Array
  readonly turned: Int32Array
}

/**
 * A bound that holds for any layout, however it is cut, as that of `boundOf`, which it takes further: the two
 * dual-feasible functions whose product it is are the best for each other. Sizes in one direction are counted by one
 * function, in the other by the function that is worth most then, of all that there are for these parts; then the other way
 * round, until that gives no more. Yields null between steps; ends when it meets `enough` sheets, or when so much work
 * (rests looked at) is done; 0 where that is too little to begin. Source: functions of both directions may hang on the parts: Fekete and Schepers, 'A general framework for bounds for
 * higher-dimensional orthogonal packing problems', 2004 (from memory).
 */
export function* scaledBound(lot: Lot, enough: number, work: number): Generator<null, number> {
  const { length, width } = largestSheet(lot)
  const ways = lot.kinds.map((kind) => waysOf(kind, length, width))
  const lengths = { sidesOf: lengthFirst, sizes: sizesIn(lot, ways, lengthFirst) }
  const widths = { sidesOf: widthFirst, sizes: sizesIn(lot, ways, widthFirst) }
  if (KNAPSACKS * (knapsackWork(length, lengths.sizes) + knapsackWork(width, widths.sizes)) > work) return 0
  const products = productsOf(lot)
  let best = products[0]!.value
  const directions = [directionOf(lot, length, lengths), directionOf(lot, width, widths)] as const
  const isOver = () => Math.ceil(best - DUST) >= enough || directions[0].scale.work + directions[1].scale.work >= work
  for (const { value, along, across } of products.slice(0, STARTS)) {
    for (const first of [0, 1] as const) {
      const shares = [sharesBy(along, directions[0]), sharesBy(across, directions[1])]
      let last = value
      for (let turn = 0; turn < TURNS && !isOver(); turn++) {
        const own = (first + turn) % 2 === 0 ? 1 : 0
        const found = yield* bestBeside(lot, ways, directions, shares, own, last, work / TURNS)
        if (found.value <= last + DUST) break
        last = found.value
        shares[own] = found.shares
        best = Math.max(best, last)
      }
    }
  }
  return Math.ceil(best - DUST)
}

/** The shares of one direction that are worth most beside those of the other. */
function* bestBeside(
  { kinds }: Lot,
  ways: readonly Ways[],
  directions: readonly [Direction, Direction],
  shares: readonly Float64Array[],
  own: 0 | 1,
  least: number,
  work: number,
): Generator<null, { value: number; shares: Float64Array }> {
  const [direction, other] = [directions[own], directions[own === 0 ? 1 : 0]]
  const given = shares[own === 0 ? 1 : 0]!
  /** What a part of a kind counts for, as it lies and turned. */
  const counts = (kind: number, by: Float64Array): readonly [number, number] => [
    ways[kind] === 2 ? Infinity : by[direction.lying[kind]!]! * given[other.lying[kind]!]!,
    ways[kind] === 0 ? Infinity : by[direction.turned[kind]!]! * given[other.turned[kind]!]!,
  ]
  const total = (by: Float64Array) =>
    kinds.reduce((sum, { quantity }, kind) => sum + quantity * Math.min(...counts(kind, by)), 0)
  // How often each kind lies as it does: at the end it counts as little as it can.
  const lies = new Float64Array(kinds.length)
  let now = shares[own]!
  let best = { value: 0, shares: now }
  const plays = ways.includes(1) ? PLAYS : 1
  for (let play = 0; play < plays; play++) {
    const weights = new Float64Array(direction.sizes.length)
    for (const [kind, { quantity }] of kinds.entries()) {
      const [lying, turned] = counts(kind, now)
      const isLying = lying === turned ? 0.5 : lying < turned ? 1 : 0
      lies[kind]! += (isLying - lies[kind]!) / (play + 1)
      const share = lies[kind]!
      if (share > 0) weights[direction.lying[kind]!]! += quantity * share * given[other.lying[kind]!]!
      if (share < 1) weights[direction.turned[kind]!]! += quantity * (1 - share) * given[other.turned[kind]!]!
    }
    const found = yield* direction.scale.best(weights, work / plays)
    now = found.shares
    const value = total(now)
    if (value > best.value) best = { value, shares: now }
    // Beside what is given nothing is worth more than these weights.
    if (found.value <= Math.max(best.value, least) + DUST) break
  }
  return best
}

interface Sides {
  readonly sidesOf: SidesOf
  readonly sizes: readonly SizeCount[]
}

function directionOf({ kinds }: Lot, whole: number, { sidesOf, sizes }: Sides): Direction {
  const place = new Map(sizes.map(({ size }, at) => [size, at]))
  const placesOf = (isTurned: 0 | 1) => Int32Array.from(kinds, (kind) => place.get(sidesOf(kind)[isTurned]) ?? -1)
  const own = sizes.map(({ size }) => size)
  return { scale: new Scale(whole, sizes), sizes: own, lying: placesOf(0), turned: placesOf(1) }
}

function sharesBy(measure: Measure, { sizes }: Direction): Float64Array {
  return Float64Array.from(sizes, measure)
}
