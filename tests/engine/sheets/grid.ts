import { randomFrom } from '../../../engine/basics/random'
import type { SheetJob } from '../../../engine/sheets/job'

/** A small job of whole millimetres without kerf or trim, so that it can be looked at on a grid. */
export function smallJob(seed: number): SheetJob {
  const random = randomFrom(seed)
  const upTo = (most: number) => 1 + Math.floor(random() * most)
  const [length, width] = [10 + upTo(20), 8 + upTo(14)]
  const parts = Array.from({ length: 2 + upTo(6) }, (_, at) => ({
    ...{ id: `p${at}`, material: 'ply', length: upTo(length), width: upTo(width) },
    ...{ quantity: upTo(6), rotate: random() < 0.4 },
  }))
  const stages = random() < 0.3 ? 2 : 3
  const firstCut = random() < 0.3 ? 'crosscut' : 'rip'
  return { kerf: 0, stages, firstCut, stock: [{ id: 's', material: 'ply', length, width }], parts }
}

/** The worth of the best sheet by plain tables over every millimetre. */
export function bestOnGrid(job: SheetJob, prices: readonly number[]): number {
  const isRipFirst = job.firstCut !== 'crosscut'
  const { length, width } = job.stock[0]!
  const [along, across] = isRipFirst ? [length, width] : [width, length]
  const items = job.parts.flatMap((part, at) => {
    const own = isRipFirst ? [part.length, part.width] : [part.width, part.length]
    const ways = part.rotate ? [own, [own[1]!, own[0]!]] : [own]
    return ways.map(([a, b]) => ({ along: a!, across: b!, price: prices[at]! }))
  })
  const strips = Array.from({ length: across + 1 }, (_, height) => {
    const sections = Array.from({ length: along + 1 }, (_, long) => stackOnGrid(items, long, height, job.stages === 2))
    return fullRow(sections)
  })
  return fullRow(strips)
}

type GridItem = { readonly along: number; readonly across: number; readonly price: number }

function stackOnGrid(items: readonly GridItem[], along: number, height: number, isExact: boolean): number {
  const here = items.filter((item) => item.along === along)
  if (isExact) return Math.max(0, ...here.filter(({ across }) => across === height).map(({ price }) => price))
  const best = new Array<number>(height + 1).fill(0)
  for (let at = 1; at <= height; at++) {
    best[at] = Math.max(
      best[at - 1]!,
      ...here.filter(({ across }) => across <= at).map((item) => best[at - item.across]! + item.price),
    )
  }
  return best[height]!
}

/** Pieces of every size 1, 2... with these worths, side by side up to the last size. */
function fullRow(worths: readonly number[]): number {
  const best = new Array<number>(worths.length).fill(0)
  for (let at = 1; at < worths.length; at++) {
    best[at] = best[at - 1]!
    for (let size = 1; size <= at; size++) best[at] = Math.max(best[at]!, best[at - size]! + worths[size]!)
  }
  return best[worths.length - 1]!
}
