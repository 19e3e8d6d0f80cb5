/** Maps a size to its share of the sheet, so that sizes which fit together have shares of at most 1 together. */
export type Measure = (size: number) => number

/** A size in one direction, and how many parts may have it there. */
export interface SizeCount {
  readonly size: number
  readonly count: number
}

/**
 * Dual-feasible functions for a sheet `whole` ticks long and parts of these sizes, at most `most` of them.
 * Source: Fekete and Schepers 2001; Carlier, Clautiaux and Moukrim, 'New reduction procedures and lower bounds for the
 * two-dimensional bin packing problem with fixed orientation', 2007 (both from memory; their promise is tested).
 */
export function measuresOf(whole: number, sizes: readonly SizeCount[], most: number): Measure[] {
  const small = steps(whole, sizes)
  const third = Math.max(4, Math.floor((most - 7) / 3))
  const kept = sample(small, third)
  return distinct(
    [
      (size: number) => size / whole,
      ...[1, 2, 3, 4, 5, 6].map((k) => rounding(whole, k)),
      ...kept.map((k) => dropping(whole, k)),
      ...kept.map((k) => stepping(whole, k)),
      ...kept.map((k) => counting(whole, k, sizes)),
    ],
    sizes,
    most,
  )
}

/** Where the functions change: at sizes up to a half, at what larger ones leave, and at even shares of the whole. */
function steps(whole: number, sizes: readonly SizeCount[]): number[] {
  const found = new Set<number>()
  for (const { size } of sizes) {
    found.add(size)
    found.add(whole - size)
    found.add(whole - size + 1)
    for (const share of [2, 3, 4]) {
      found.add(Math.floor(size / share))
      found.add(Math.floor((whole - size) / share) + 1)
    }
  }
  for (let share = 2; share <= 8; share++) {
    found.add(Math.floor(whole / share))
    found.add(Math.floor(whole / share) + 1)
  }
  return [...found].filter((k) => k > 0 && 2 * k <= whole).sort((a, b) => a - b)
}

function sample(all: readonly number[], most: number): number[] {
  if (all.length <= most) return [...all]
  return Array.from({ length: most }, (_, at) => all[Math.floor((at * all.length) / most)]!)
}

/** Sizes above whole - k count as the whole, those below k as nothing. */
function dropping(whole: number, k: number): Measure {
  return (size) => (size > whole - k ? 1 : size < k ? 0 : size / whole)
}

/** u(k): shares are rounded down to k-ths, unless they are whole (k + 1)-ths. */
function rounding(whole: number, k: number): Measure {
  return (size) => {
    const parts = (size * (k + 1)) / whole
    return Number.isInteger(parts) ? size / whole : Math.floor(parts) / k
  }
}

/** Counts how often k goes into a size; into what is more than a half, by what it leaves. */
function stepping(whole: number, k: number): Measure {
  const full = Math.floor(whole / k)
  return (size) => {
    if (2 * size > whole) return 1 - Math.floor((whole - size) / k) / full
    return 2 * size === whole ? 1 / 2 : Math.floor(size / k) / full
  }
}

/**
 * Counts parts: those from k up to a half are one each, a larger one as many as it shuts out; the whole is as many as
 * fit at most. Holds for these parts only.
 */
function counting(whole: number, k: number, sizes: readonly SizeCount[]): Measure {
  const middle = sizes.filter(({ size }) => size >= k && 2 * size <= whole)
  const most = (room: number) => {
    let count = 0
    for (const one of middle) {
      const some = Math.min(one.count, Math.floor(room / one.size))
      count += some
      room -= some * one.size
      if (some < one.count) break
    }
    return count
  }
  const full = most(whole)
  if (full === 0) return (size) => (2 * size > whole ? 1 : 0)
  return (size) => (2 * size > whole ? (full - most(whole - size)) / full : size >= k ? 1 / full : 0)
}

/** Functions that differ on these sizes, told apart by a hash of their values; one lost to chance only costs quality. */
function distinct(measures: readonly Measure[], sizes: readonly SizeCount[], most: number): Measure[] {
  const seen = new Map<number, Measure>()
  for (const measure of measures) {
    let key = 0
    for (const { size } of sizes) key = (key * 31 + Math.round(measure(size) * 1e6)) % 9_007_199_254_731
    if (!seen.has(key)) seen.set(key, measure)
    if (seen.size === most) break
  }
  return [...seen.values()]
}
