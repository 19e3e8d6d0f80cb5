import type { Mm } from '../units/length'
import { linksOf } from './links'

/** So many beginnings are tried; more would save little where there are more sheets than that. */
const STARTS = 40

/**
 * In which order batches of settings are made so that as many as can be found begin with the setting that the one before
 * ended with: indices into `batches`. From every start the next is one that shares a setting, first the one that the
 * fewest others can follow (Warnsdorff's rule); where none does, the first that is left.
 *
 *     580 | 400 | 580 400        is made as 580, 580 400, 400
 */
export function batchOrder(batches: readonly ReadonlySet<Mm>[]): number[] {
  const beside = batches.map((one, at) =>
    [...batches.keys()].filter((other) => other !== at && shares(one, batches[other]!)),
  )
  let best = { order: [...batches.keys()], links: -1 }
  for (let start = 0; start < Math.min(STARTS, batches.length); start++) {
    const order = walkFrom(start, beside)
    const links = linksOf(order.map((at) => batches[at]!)).filter((link) => link !== null).length
    if (links > best.links) best = { order, links }
  }
  return best.order
}

function walkFrom(start: number, beside: readonly (readonly number[])[]): number[] {
  const open = new Set(beside.keys())
  const order: number[] = []
  for (let at: number | undefined = start; at !== undefined; at = nextAfter(at, beside, open)) {
    order.push(at)
    open.delete(at)
  }
  return order
}

function nextAfter(at: number, beside: readonly (readonly number[])[], open: ReadonlySet<number>): number | undefined {
  let next: number | undefined
  let fewest = Infinity
  for (const other of beside[at]!) {
    if (!open.has(other)) continue
    const ways = beside[other]!.filter((one) => open.has(one)).length
    if (ways < fewest) [next, fewest] = [other, ways]
  }
  return next ?? [...open][0]
}

function shares(one: ReadonlySet<Mm>, other: ReadonlySet<Mm>): boolean {
  for (const size of one) if (other.has(size)) return true
  return false
}
