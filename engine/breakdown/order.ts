import type { CutOrder, Shop } from '../project/document'
import type { Mm } from '../units/length'
import { Bench } from './bench'
import { linksOf } from './links'
import type { Task } from './task'
import { gripFor } from './tool'
import type { Work } from './work'

/**
 * Puts the tasks of all sheets in order: phase after phase, so that blades are changed as seldom as can be. In a phase
 * each setting is made once for all pieces of all materials, or full sheets are cut one after another. A setting that
 * stands is used before it is changed.
 */
export function orderWorks(
  sheets: readonly Task[],
  shop: Shop,
  firstBlade: 'rip' | 'crosscut',
  order: CutOrder,
): Work[] {
  const bench = new Bench(shop, firstBlade)
  const batches = batchesOf(sheets, order, shop)
  const sizes = sizesInOrder(batches, shop)
  for (const [at, batch] of batches.entries()) bench.cutAlike(batch, sizes[at]!)
  return bench.works
}

/** What is cut together: pieces of one phase, full sheets before what comes of them. */
function batchesOf(sheets: readonly Task[], order: CutOrder, shop: Shop): Task[][] {
  const batches: Task[][] = []
  let waiting = [...sheets]
  for (let phase = 0; waiting.length > 0; phase++) {
    let ready = waiting.filter((task) => task.phase === phase)
    waiting = waiting.filter((task) => task.phase !== phase)
    while (ready.length > 0) {
      const full = ready.filter(({ isSheet }) => isSheet)
      const cut = ready.filter(({ isSheet }) => !isSheet)
      batches.push(...(order === 'sheet by sheet' ? besideAlike(full, shop).map((task) => [task]) : [full]), cut)
      const next = ready.flatMap((task) => task.next)
      ready = next.filter((task) => task.phase === phase)
      waiting.push(...next.filter((task) => task.phase !== phase))
    }
  }
  return batches.filter((batch) => batch.length > 0)
}

/** Sheets in their own order, save that one which needs a setting of the sheet before it comes first. */
function besideAlike(sheets: readonly Task[], shop: Shop): Task[] {
  const waiting = [...sheets]
  const ordered: Task[] = []
  let before = new Set<Mm>()
  while (waiting.length > 0) {
    const shares = (task: Task) => [...settingsOf([task], 'guides', shop)].some((size) => before.has(size))
    const [next] = waiting.splice(Math.max(0, waiting.findIndex(shares)), 1)
    before = settingsOf([next!], 'guides', shop)
    ordered.push(next!)
  }
  return ordered
}

/** The sizes of every batch: the one that is set already, then from the greatest down, then the one that the next begins with. */
function sizesInOrder(batches: readonly Task[][], shop: Shop): Mm[][] {
  const first = batches.map((): Mm | null => null)
  const last = batches.map((): Mm | null => null)
  for (const tool of ['guides', 'bench'] as const) {
    const set = batches.map((batch) => settingsOf(batch, tool, shop))
    const users = batches.map((_, at) => at).filter((at) => set[at]!.size > 0)
    for (const [step, link] of linksOf(users.map((at) => set[at]!)).entries()) {
      last[users[step]!] = link
      first[users[step + 1]!] = link
    }
  }
  return batches.map((batch, at) => {
    const all = new Set(batch.flatMap(({ groups }) => groups.map(({ size }) => size)))
    const rank = (size: Mm) => (size === first[at] ? 0 : size === last[at] ? 2 : 1)
    return [...all].sort((a, b) => rank(a) - rank(b) || b - a)
  })
}

function settingsOf(batch: readonly Task[], tool: 'guides' | 'bench', shop: Shop): Set<Mm> {
  const set = batch.flatMap(({ groups, kind, across }) => {
    return groups.map(({ size }) => size).filter((size) => gripFor(kind, size, across, shop).tool === tool)
  })
  return new Set(set)
}
