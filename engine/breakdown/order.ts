import type { CutOrder, Shop } from '../project/document'
import type { Mm } from '../units/length'
import { Bench } from './bench'
import { linksOf } from './links'
import { sequenceOf } from './sequence'
import type { Group, Task } from './task'
import { gripFor } from './tool'
import type { Work } from './work'

/**
 * Puts the tasks of all sheets in order: phase after phase, so that blades are changed as seldom as can be. In a phase
 * each setting is made once for all pieces of all materials, or full sheets are cut one after another. A setting that
 * stands is used before it is changed. What is late comes in a second turn, when all others are cut.
 */
export function orderWorks(
  sheets: readonly Task[],
  shop: Shop,
  firstBlade: 'rip' | 'crosscut',
  order: CutOrder,
): Work[] {
  const bench = new Bench(shop, firstBlade)
  for (const isLate of [false, true]) {
    const batches = batchesOf(sheets, order, shop, isLate)
    const sizes = sizesInOrder(batches, shop, isLate)
    for (const [at, batch] of batches.entries()) bench.cutAlike(batch, sizes[at]!, isLate)
  }
  return bench.works
}

/** Whether anything is done to a piece in one of the two turns; a piece without late parts is done with after the first. */
function isCutIn(task: Task, isLate: boolean): boolean {
  if (task.isLate || !isLate) return task.isLate === isLate
  return task.groups.some((group) => group.isLate)
}

/** What is cut together: pieces of one phase, or each of its full sheets by itself and then the pieces. */
function batchesOf(sheets: readonly Task[], order: CutOrder, shop: Shop, isLate: boolean): Task[][] {
  const batches: Task[][] = []
  let waiting = [...sheets]
  for (let phase = 0; waiting.length > 0; phase++) {
    let ready = waiting.filter((task) => task.phase === phase)
    waiting = waiting.filter((task) => task.phase !== phase)
    while (ready.length > 0) {
      const now = ready.filter((task) => isCutIn(task, isLate))
      batches.push(...(order === 'sheet by sheet' ? sheetBySheet(now, shop, isLate) : [now]))
      const next = ready.flatMap((task) => task.next)
      ready = next.filter((task) => task.phase === phase)
      waiting.push(...next.filter((task) => task.phase !== phase))
    }
  }
  return batches.filter((batch) => batch.length > 0)
}

function sheetBySheet(ready: readonly Task[], shop: Shop, isLate: boolean): Task[][] {
  const full = ready.filter(({ isSheet }) => isSheet)
  return [...besideAlike(full, shop, isLate).map((task) => [task]), ready.filter(({ isSheet }) => !isSheet)]
}

/** Sheets in an order in which many begin with the setting that the one before ended with. */
function besideAlike(sheets: readonly Task[], shop: Shop, isLate: boolean): Task[] {
  return sequenceOf(sheets.map((task) => settingsOf([task], 'guides', shop, isLate))).map((at) => sheets[at]!)
}

/** The sizes of every batch: the one that is set already, then from the greatest down, then the one that the next begins with. */
function sizesInOrder(batches: readonly Task[][], shop: Shop, isLate: boolean): Mm[][] {
  const first = batches.map((): Mm | null => null)
  const last = batches.map((): Mm | null => null)
  for (const tool of ['guides', 'bench'] as const) {
    const set = batches.map((batch) => settingsOf(batch, tool, shop, isLate))
    const users = [...batches.keys()].filter((at) => set[at]!.size > 0)
    for (const [step, link] of linksOf(users.map((at) => set[at]!)).entries()) {
      last[users[step]!] = link
      first[users[step + 1]!] = link
    }
  }
  return batches.map((batch, at) => {
    const all = new Set(batch.flatMap((task) => groupsIn(task, isLate).map(({ size }) => size)))
    const rank = (size: Mm) => (size === first[at] ? 0 : size === last[at] ? 2 : 1)
    return [...all].sort((a, b) => rank(a) - rank(b) || b - a)
  })
}

function groupsIn({ groups }: Task, isLate: boolean): readonly Group[] {
  return groups.filter((group) => group.isLate === isLate)
}

function settingsOf(batch: readonly Task[], tool: 'guides' | 'bench', shop: Shop, isLate: boolean): Set<Mm> {
  const set = new Set<Mm>()
  for (const task of batch) {
    const { kind, across } = task
    for (const { size } of groupsIn(task, isLate)) if (gripFor(kind, size, across, shop).tool === tool) set.add(size)
  }
  return set
}
