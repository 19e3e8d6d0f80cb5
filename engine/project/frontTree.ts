import { type Mm, settle } from '../units/length'
import type { Front, FrontColumn, FrontRow } from './document'

/** Which row or column of which: `[1, 0]` is the first of the second. The whole front is `[]`. */
export type FrontPath = readonly number[]

/** What a front is divided into; nothing where it is not. */
export function childrenOf(front: Front): readonly (FrontRow | FrontColumn)[] {
  if (front.kind === 'rows') return front.rows
  return front.kind === 'columns' ? front.columns : []
}

/** The front at a path, or null where there is none. */
export function frontAt(front: Front, path: FrontPath): Front | null {
  return path.reduce<Front | null>((node, at) => (node && childrenOf(node)[at]?.front) ?? null, front)
}

/** The front with another one at a path. */
export function withFrontAt(front: Front, path: FrontPath, node: Front): Front {
  const [at, ...rest] = path
  if (at === undefined) return node
  return withChild(front, at, (child) => ({ ...child, front: withFrontAt(child.front, rest, node) }))
}

/** The front with the row or column at a path at a fixed size, or, with null, at one share of what is left. */
export function withSizeAt(front: Front, path: FrontPath, length: Mm | null): Front {
  const [at, ...rest] = path
  if (at === undefined) return front
  if (rest.length > 0)
    return withChild(front, at, (child) => ({ ...child, front: withSizeAt(child.front, rest, length) }))
  const share = { kind: 'share', share: 1 } as const
  if (front.kind === 'rows') {
    const size = length === null ? share : ({ kind: 'fixed', height: length } as const)
    return { ...front, rows: front.rows.map((row, index) => (index === at ? { ...row, size } : row)) }
  }
  if (front.kind !== 'columns') return front
  const size = length === null ? share : ({ kind: 'fixed', width: length } as const)
  return { ...front, columns: front.columns.map((one, index) => (index === at ? { ...one, size } : one)) }
}

function withChild(
  front: Front,
  at: number,
  change: <Child extends FrontRow | FrontColumn>(child: Child) => Child,
): Front {
  if (front.kind === 'rows')
    return { ...front, rows: front.rows.map((row, index) => (index === at ? change(row) : row)) }
  if (front.kind !== 'columns') return front
  return { ...front, columns: front.columns.map((one, index) => (index === at ? change(one) : one)) }
}

/** A front side by side or on one another with others like it: a leaf so many times. */
export function dividedInto(kind: 'rows' | 'columns', fronts: readonly Front[]): Front {
  const size = { kind: 'share', share: 1 } as const
  if (kind === 'rows') return { kind, rows: fronts.map((front) => ({ size, front })) }
  return { kind, columns: fronts.map((front) => ({ size, front, shelves: null })) }
}

/** A bank of drawers, from the top down each a step taller than the one above it, however high the front is. */
export function bankOf(count: number, step: Mm = 0): Front {
  const rows = Array.from({ length: count }, (_, at): FrontRow => {
    const more = settle(at * step)
    return { size: { kind: 'share', share: 1, ...(more > 0 ? { more } : {}) }, front: { kind: 'drawer' } }
  })
  return { kind: 'rows', rows }
}

/** Sums of settled heights are off by less than this. */
const EVEN: Mm = 0.01

/** By how much each height, from the top down, is more than the one above it; null where they do not grow evenly. */
export function stepOf(heights: readonly Mm[]): Mm | null {
  const steps = heights.slice(1).map((height, at) => height - heights[at]!)
  const [first = 0] = steps
  if (first < -EVEN || steps.some((step) => Math.abs(step - first) > EVEN)) return null
  return Math.max(0, Math.round(first * 100) / 100)
}

/** `column 2, row 1`: rows are counted from the top, columns from the left. */
export function placeWords(front: Front, path: FrontPath): string {
  const words: string[] = []
  let node = front
  for (const at of path) {
    words.push(`${node.kind === 'rows' ? 'row' : 'column'} ${at + 1}`)
    node = childrenOf(node)[at]!.front
  }
  return words.join(', ')
}
