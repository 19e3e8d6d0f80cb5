import type { Interval } from '../geometry/interval'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import { LEAST_WOOD } from './hinge'
import type { HoleRow } from './operation'

/** How often something is along a joint. */
export interface Spacing {
  readonly fromEdge: Mm
  readonly spacing: Mm
}

export interface FixedBoards {
  readonly boards: readonly Board[]
  /** What the rule asks for and what finds no place. */
  readonly missing: number
}

/**
 * Where the fixings of a joint are, the same from both of its ends: the first as far in as it may be, the others no farther
 * apart than they may be, two at least. Of a joint that is too short for that they are a quarter of it from its ends.
 */
export function placesAlong({ from, to }: Interval, { fromEdge, spacing }: Spacing): Mm[] {
  const length = to - from
  const end = Math.min(fromEdge, length / 4)
  const count = spacing > 0 ? Math.max(2, Math.ceil((length - 2 * end) / spacing - 1e-6) + 1) : 2
  const step = settle((length - 2 * end) / (count - 1))
  const first = settle(from + (length - (count - 1) * step) / 2)
  return Array.from({ length: Math.min(count, MOST) }, (_, at) => settle(first + at * step))
}

/** Nobody sets more in one joint; what is asked for in nonsense must end too. */
const MOST = 60

/** The same for fixings so long along the joint: where two find no room beside one another, one in the middle. */
export function wishesAlong(stretch: Interval, spacing: Spacing, along: Mm): Mm[] {
  const isForTwo = 2 * along + 3 * LEAST_WOOD <= stretch.to - stretch.from
  return isForTwo ? placesAlong(stretch, spacing) : [settle((stretch.from + stretch.to) / 2)]
}

type Point = Pick<HoleRow, 'x' | 'y'>

/** Holes at points of one line, which runs across the board or along it: one row where they are equally far apart, else each by itself. */
export function rowsOfPoints(
  points: readonly Point[],
  runsAcross: boolean,
  bore: Omit<HoleRow, 'kind' | 'along' | 'x' | 'y' | 'step' | 'count'>,
): HoleRow[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y)
  const [first] = sorted
  if (!first) return []
  const along = runsAcross ? ({ along: 'width' } as const) : {}
  const row = ({ x, y }: Point, step: Mm, count: number): HoleRow => {
    return { kind: 'holeRow', ...along, x, y, step, count, ...bore }
  }
  const steps = sorted.slice(1).map((point, at) => settle(point.x - sorted[at]!.x + point.y - sorted[at]!.y))
  const isEven = steps.every((step) => step === steps[0])
  return isEven ? [row(first, steps[0] ?? 0, sorted.length)] : sorted.map((point) => row(point, 0, 1))
}
