import type { CutOrder, Shop } from '../project/document'
import { type Mm, settle } from '../units/length'
import type { Step, StepPiece } from './step'
import type { Child, Group, Task } from './task'

/** What is done to one piece at one setting. Equal works one after another become one step. */
export interface Work {
  readonly task: Task
  readonly kind: Step['kind']
  readonly tool: Step['tool']
  readonly blade: 'rip' | 'crosscut'
  readonly setting: Mm | null
  /** What is cut off, with or without a setting. */
  readonly size: Mm
  readonly takes: Step['takes']
  readonly cuts: number
  readonly leaves: readonly (Omit<StepPiece, 'count'> & { readonly mark: string | null })[]
  /** Works of one run may be gathered into steps; works of different runs are apart. */
  readonly run: number
}

/** A task as it stands: how much of it is left, and which groups are still to come. */
interface Bench {
  readonly task: Task
  left: Mm
  isPrepared: boolean
  groups: Group[]
}

/**
 * Puts the tasks of all sheets in order: phase after phase, so that blades are changed as seldom as can be. In a phase
 * each setting is made once for all pieces of all materials, or full sheets are cut one after another.
 */
export function orderWorks(
  sheets: readonly Task[],
  shop: Shop,
  firstBlade: 'rip' | 'crosscut',
  order: CutOrder,
): Work[] {
  const run = new Run(shop, firstBlade)
  let waiting = [...sheets]
  for (let phase = 0; waiting.length > 0; phase++) {
    let ready = waiting.filter((task) => task.phase === phase)
    waiting = waiting.filter((task) => task.phase !== phase)
    while (ready.length > 0) {
      const full = ready.filter(({ isSheet }) => isSheet)
      if (order === 'sheet by sheet') for (const task of full) run.cutAlike([task])
      else run.cutAlike(full)
      run.cutAlike(ready.filter(({ isSheet }) => !isSheet))
      const next = ready.flatMap((task) => task.next)
      ready = next.filter((task) => task.phase === phase)
      waiting.push(...next.filter((task) => task.phase !== phase))
    }
  }
  return run.works
}

class Run {
  readonly works: Work[] = []
  private run = 0
  private size: Mm | null = null

  constructor(
    private readonly shop: Shop,
    private readonly firstBlade: 'rip' | 'crosscut',
  ) {}

  /** Setting by setting, beginning with the one that is set already, or else from the greatest down. */
  cutAlike(tasks: readonly Task[]): void {
    let open = tasks.map((task): Bench => {
      return { task, left: task.span, isPrepared: task.trim === 0, groups: [...task.groups] }
    })
    this.run++
    for (const bench of open) {
      const hasNoSetting = bench.groups.length === 0
      if (hasNoSetting && bench.isPrepared) this.freeTail(bench)
      if (hasNoSetting || !bench.task.isSheet) this.prepare(bench)
    }
    while (open.some(({ groups }) => groups.length > 0)) {
      const size = this.nextSize(open)
      const here = open.filter(({ groups }) => groups.some((group) => group.size === size))
      this.run++
      for (const bench of here) this.prepare(bench)
      this.run++
      for (const bench of here) this.cutGroup(bench, size)
      this.size = size
      open = open.filter(({ groups }) => groups.length > 0)
    }
  }

  private nextSize(open: readonly Bench[]): Mm {
    const sizes = open.flatMap(({ groups }) => groups.map(({ size }) => size))
    return this.size !== null && sizes.includes(this.size) ? this.size : Math.max(...sizes)
  }

  private prepare(bench: Bench): void {
    const { task } = bench
    if (bench.isPrepared) return
    bench.isPrepared = true
    const takes = this.takesOf(bench)
    bench.left = settle(bench.left - task.trim)
    const dust = Math.min(task.trim, this.shop.kerf)
    const isRip = task.direction === 'rip'
    this.add(task, isRip ? 'trim' : 'square', null, task.trim, takes, 1, [
      ...this.remaining(bench),
      ...this.waste(task, settle(task.trim - dust)),
    ])
    if (task.groups.length === 0) this.freeTail(bench)
  }

  private cutGroup(bench: Bench, size: Mm): void {
    const { task } = bench
    const takes = this.takesOf(bench)
    const group = bench.groups.find((each) => each.size === size)!
    bench.groups = bench.groups.filter((each) => each !== group)
    const count = group.children.length
    bench.left = Math.max(0, settle(bench.left - count * (size + this.shop.kerf)))
    this.add(task, task.kind, size, size, takes, count, [...group.children, ...this.remaining(bench)])
    if (bench.groups.length === 0) this.freeTail(bench)
  }

  /** Offcuts are freed from the waste beside them along a line, when all else is cut. */
  private freeTail(bench: Bench): void {
    const tail = bench.task.tail
    for (const [at, { size, children }] of tail.entries()) {
      const takes = this.takesOf(bench)
      bench.left = Math.max(0, settle(bench.left - size - this.shop.kerf))
      const isLast = at === tail.length - 1
      this.add(bench.task, bench.task.kind, null, size, takes, 1, [...children, ...this.remaining(bench, isLast)])
    }
  }

  private takesOf({ task, left }: Bench): Step['takes'] {
    const isWhole = left >= settle(task.span - task.trim)
    return { name: isWhole ? task.name : `rest of ${task.name}`, ...along(task, left) }
  }

  /** What is still to be cut, or, when everything is cut, what is left over. */
  private remaining(bench: Bench, isDone = bench.groups.length === 0 && bench.task.tail.length === 0): Child[] {
    const { task, left, groups } = bench
    if (isDone) return task.rest ? [task.rest] : this.waste(task, left)
    const isUncut = groups.length === task.groups.length
    return [{ kind: 'piece', name: isUncut ? task.name : `rest of ${task.name}`, ...along(task, left), mark: null }]
  }

  private waste(task: Task, size: Mm): Child[] {
    return size > 0 ? [{ kind: 'waste', name: 'waste', ...along(task, size), mark: null }] : []
  }

  private add(
    task: Task,
    kind: Step['kind'],
    wanted: Mm | null,
    size: Mm,
    takes: Step['takes'],
    cuts: number,
    leaves: readonly Child[],
  ): void {
    const tool = toolFor(kind, wanted, task, this.shop)
    const setting = tool === 'rail' || kind === 'square' ? null : wanted
    const isFirst = task.phase % 2 === 0
    const blade = isFirst === (this.firstBlade === 'rip') ? 'rip' : 'crosscut'
    this.works.push({ task, kind, tool, blade, setting, size, takes, cuts, leaves, run: this.run })
  }
}

function along(task: Task, size: Mm): { readonly length: Mm; readonly width: Mm } {
  return task.direction === 'rip' ? { length: task.across, width: size } : { length: size, width: task.across }
}

/** The guides set a rip, the bench and its stop set a crosscut; beyond their reach the rail follows a line. */
function toolFor(kind: Step['kind'], size: Mm | null, task: Task, shop: Shop): Step['tool'] {
  switch (kind) {
    case 'trim':
      return 'rail'
    case 'rip':
    case 'rerip':
      return size !== null && size >= shop.guides.least && size <= shop.guides.greatest ? 'guides' : 'rail'
    case 'square':
    case 'crosscut':
      return task.across <= shop.benchCrosscut ? 'bench' : 'rail'
  }
}
