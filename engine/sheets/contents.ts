import type { Stack } from './knapsack'

/** What a section may hold: parts of one stack. */
export interface Content {
  readonly height: number
  readonly items: readonly number[]
  readonly counts: readonly number[]
  readonly worth: number
}

/** All that a section of a stack may hold, worth the most first. */
export function contentsOf(stack: Stack, prices: Float64Array, demand: readonly number[], isExact: boolean): Content[] {
  const { items, sums } = stack
  const across = sums[sums.length - 1]!
  const list: Content[] = []
  const kinds: number[] = []
  const counts: number[] = []
  const add = (from: number, height: number, worth: number) => {
    if (height > 0) list.push({ height, items: [...kinds], counts: [...counts], worth })
    if (isExact && height > 0) return
    for (let at = from; at < items.length; at++) {
      const { kind, across: size } = items[at]!
      kinds.push(kind)
      for (let count = 1; count <= (isExact ? 1 : demand[kind]!) && height + count * size <= across; count++) {
        counts.push(count)
        if (demand[kind]! > 0) add(at + 1, height + count * size, worth + count * prices[kind]!)
        counts.pop()
      }
      kinds.pop()
    }
  }
  add(0, 0, 0)
  return list.sort((a, b) => b.worth - a.worth || a.height - b.height)
}
