import type { Lot, PartKind } from './lot'

const SAMPLES = 24

/**
 * The least number of sheets that any layout needs. A dual-feasible function f maps sizes in [0, 1] so that sizes which
 * fit in 1 together still do; so the sum of f(length) g(width) over all parts, rounded up, is a bound. Used here: the
 * size itself (the area bound), and u_e, which counts sizes above 1 - e as whole and drops those below e.
 * Source: Fekete and Schepers, 'New classes of fast lower bounds for bin packing problems', 2001 (from memory).
 */
export function boundOf(lot: Lot): number {
  const { kinds, stocks } = lot
  if (kinds.length === 0 || stocks.length === 0) return 0
  const length = Math.max(...stocks.map((stock) => stock.length))
  const width = Math.max(...stocks.map((stock) => stock.width))
  // Turned parts need thresholds of both their sizes in both directions.
  const lengths = thresholds(kinds.flatMap((kind) => sizes(kind, 'length').map((size) => size / length)))
  const widths = thresholds(kinds.flatMap((kind) => sizes(kind, 'width').map((size) => size / width)))
  let best = 0
  for (const e of lengths) {
    for (const f of widths) {
      let sum = 0
      for (const kind of kinds) sum += kind.quantity * weight(kind, length, width, e, f)
      if (sum > best) best = sum
    }
  }
  const area = Math.max(...stocks.map((stock) => stock.length * stock.width))
  const byArea = kinds.reduce((sum, kind) => sum + (kind.quantity * kind.area) / area, 0)
  return Math.ceil(Math.max(best, byArea) - 1e-9)
}

/** What a part counts at least, whichever way it lies. */
function weight(kind: PartKind, length: number, width: number, e: number, f: number): number {
  const lies = u(kind.length / length, e) * u(kind.width / width, f)
  if (!kind.turns) return lies
  const fitsLying = kind.length <= length && kind.width <= width
  const fitsTurned = kind.width <= length && kind.length <= width
  if (!fitsTurned) return lies
  const turned = u(kind.width / length, e) * u(kind.length / width, f)
  return fitsLying ? Math.min(lies, turned) : turned
}

function u(size: number, e: number): number {
  if (e === 0) return size
  if (size > 1 - e) return 1
  return size < e ? 0 : size
}

function sizes(kind: PartKind, along: 'length' | 'width'): number[] {
  return kind.turns ? [kind.length, kind.width] : [kind[along]]
}

/** Where u_e changes: at the sizes up to a half, and at what others leave; a sample when there are many. */
function thresholds(all: readonly number[]): number[] {
  const found = [...new Set(all.flatMap((size) => [size, 1 - size + 1e-12]).filter((e) => e > 0 && e <= 0.5))].sort()
  const step = Math.max(1, Math.ceil(found.length / SAMPLES))
  return [0, ...found.filter((_, at) => at % step === 0)]
}
