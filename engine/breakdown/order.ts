import type { CutOrder, Shop } from '../project/document'
import type { Mm } from '../units/length'
import { batchOrder } from './batchOrder'
import { Bench } from './bench'
import { linksOf } from './links'
import type { Group, Task } from './task'
import { gripFor } from './tool'
import type { Work } from './work'

export interface Saw {
  /** The blade of the phases with an even number. */
  readonly firstBlade: 'rip' | 'crosscut'
  /** Whether a turn may begin with the other blade where that saves a change. */
  readonly isTurnedAtWill: boolean
  /** The blade that is in before the first work, where that is known. */
  readonly bladeIn: 'rip' | 'crosscut' | undefined
}

/**
 * Puts the tasks of all sheets in order: phase after phase, so that blades are changed as seldom as can be. In a phase
 * each setting is made once for all pieces of all materials, or full sheets are cut one after another. A setting that
 * stands is used before it is changed. What is late comes in a second turn, when all others are cut; and in either turn
 * what had to be bought comes in a round of its own, when all that was there is cut.
 */
export function orderWorks(sheets: readonly Task[], shop: Shop, saw: Saw, order: CutOrder): Work[] {
  const bench = new Bench(shop, saw.firstBlade)
  const rounds = [...new Set(sheets.map(roundOf))].sort((a, b) => a - b)
  for (const isLate of [false, true]) {
    for (const round of rounds) {
      const turn = { sheets: sheets.filter((task) => roundOf(task) === round), order, shop, isLate }
      const batches = turnedFor(turn, saw, bench.works.at(-1)?.blade ?? saw.bladeIn)
      const sizes = sizesInOrder(batches, shop, isLate)
      for (const [at, batch] of batches.entries()) bench.cutAlike(batch, sizes[at]!, isLate)
    }
  }
  return bench.works
}

function roundOf({ stage }: Task): number {
  return stage.round ?? 0
}

interface Turn {
  readonly sheets: readonly Task[]
  readonly order: CutOrder
  readonly shop: Shop
  readonly isLate: boolean
}

/** The batches of a turn, begun with the blade with which it is changed less often. */
function turnedFor(turn: Turn, { firstBlade, isTurnedAtWill }: Saw, bladeIn: Saw['bladeIn']): Task[][] {
  const batches = batchesOf(turn, 0)
  if (!isTurnedAtWill || bladeIn === undefined) return batches
  const isIn = bladeIn === firstBlade ? 0 : 1
  const changes = (all: Task[][]) => {
    const blades = [isIn, ...all.map((batch) => batch[0]!.phase % 2)]
    return blades.filter((blade, at) => at > 0 && blade !== blades[at - 1]).length
  }
  const [inPlace, other] = isIn === 0 ? [batches, batchesOf(turn, 1)] : [batchesOf(turn, 1), batches]
  return changes(other) < changes(inPlace) ? other : inPlace
}

/** Whether anything is done to a piece in one of the two turns; a piece without late parts is done with after the first. */
function isCutIn(task: Task, isLate: boolean): boolean {
  if (task.isLate || !isLate) return task.isLate === isLate
  return task.groups.some((group) => group.isLate)
}

/**
 * What is cut together: pieces of one phase, or each of its full sheets by itself and then the pieces. The phases are
 * counted from `start`: what could be cut before with the same blade is cut in the first that has it.
 */
function batchesOf({ sheets, order, shop, isLate }: Turn, start: number): Task[][] {
  const batches: Task[][] = []
  const waits = (from: number) => (task: Task) => ({ task, phase: phaseFrom(from, task) })
  let waiting = sheets.map(waits(start))
  for (let phase = start; waiting.length > 0; phase++) {
    let ready = waiting.filter((each) => each.phase === phase)
    waiting = waiting.filter((each) => each.phase !== phase)
    while (ready.length > 0) {
      const now = ready.flatMap(({ task }) => (isCutIn(task, isLate) ? [task] : []))
      batches.push(...(order === 'sheet by sheet' ? sheetBySheet(now, shop, isLate) : [now]))
      const next = ready.flatMap(({ task }) => task.next).map(waits(phase))
      ready = next.filter((each) => each.phase === phase)
      waiting.push(...next.filter((each) => each.phase !== phase))
    }
  }
  return batches.filter((batch) => batch.length > 0)
}

/** The first phase, from one on, with the blade of a task. */
function phaseFrom(from: number, { phase }: Task): number {
  return phase >= from ? phase : from + ((from - phase) % 2)
}

function sheetBySheet(ready: readonly Task[], shop: Shop, isLate: boolean): Task[][] {
  const full = ready.filter(({ isSheet }) => isSheet)
  return [...besideAlike(full, shop, isLate).map((task) => [task]), ready.filter(({ isSheet }) => !isSheet)]
}

/** Sheets in an order in which many begin with the setting that the one before ended with. */
function besideAlike(sheets: readonly Task[], shop: Shop, isLate: boolean): Task[] {
  return batchOrder(sheets.map((task) => settingsOf([task], 'guides', shop, isLate))).map((at) => sheets[at]!)
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

/** Those that may come in any order. */
function groupsIn({ groups }: Task, isLate: boolean): readonly Group[] {
  return groups.filter((group) => group.isLate === isLate && !group.turn)
}

function settingsOf(batch: readonly Task[], tool: 'guides' | 'bench', shop: Shop, isLate: boolean): Set<Mm> {
  const set = new Set<Mm>()
  for (const task of batch) {
    const { kind, across } = task
    for (const { size } of groupsIn(task, isLate)) if (gripFor(kind, size, across, shop).tool === tool) set.add(size)
  }
  return set
}
