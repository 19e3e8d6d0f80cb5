import type { Shop } from '../project/document'
import { type Mm, settle } from '../units/length'
import { bareName } from './cutAway'
import { bearsItsName } from './names'
import type { Future } from './stage'
import type { Child, Group, Task } from './task'
import { gripFor } from './tool'
import type { Left, Spot, Taken, Work } from './work'

/** A task as it stands: how much of it is left, from where on, and which groups are still to come. */
interface Standing {
  readonly task: Task
  /** Of the piece before anything was cut from it. */
  readonly spot: Spot
  /** Cut off so far, kerfs counted, in the direction in which the pieces lie side by side. */
  done: Mm
  left: Mm
  isPrepared: boolean
  /** Whether its name is written on it yet. */
  isNamed: boolean
  groups: Group[]
  tail: readonly Group[]
}

/** What a work is, whatever it is done with. */
type Done = Pick<Work, 'kind' | 'size' | 'takes' | 'cuts' | 'leaves' | 'turn' | 'place'>

/** Cuts tasks and writes down the works, knowing where on its sheet every piece lies. */
export class Bench {
  readonly works: Work[] = []
  private run = 0
  private isLate = false
  private readonly begun = new Map<Task, Standing>()
  private readonly spots = new Map<string, Spot>()

  constructor(
    private readonly shop: Shop,
    private readonly firstBlade: 'rip' | 'crosscut',
  ) {}

  /**
   * Cuts pieces together, setting after setting in the order of `sizes`: first what is not late, and in a second turn
   * what is. Runs of grain that are begun go before that. A run of one size is cut when that is set, one of several after
   * all others, board after board.
   */
  cutAlike(tasks: readonly Task[], sizes: readonly Mm[], isLate: boolean): void {
    this.isLate = isLate
    const open = tasks.map((task) => this.layDown(task))
    this.run++
    for (const standing of open) {
      const hasNoSetting = standing.groups.length === 0
      if (hasNoSetting && standing.isPrepared) this.freeTail(standing)
      if (hasNoSetting || !standing.task.isSheet) this.prepare(standing)
    }
    this.cutInTurn(open, true)
    for (const size of sizes) {
      this.cutAt(size, open)
      this.cutRunsOf(size, open)
    }
    this.cutInTurn(open, false)
  }

  private cutAt(size: Mm, open: readonly Standing[]): void {
    const groupOf = ({ groups }: Standing) =>
      groups.find((group) => group.size === size && group.isLate === this.isLate && group.turn === undefined)
    const here = open.filter(groupOf)
    this.run++
    for (const standing of here) this.prepare(standing)
    this.run++
    for (const standing of here) this.cutGroup(standing, groupOf(standing)!)
  }

  /** The boards of the next run of a piece; none where it has none left. */
  private nextRun({ groups }: Standing, isBegun: boolean): Group[] {
    const own = groups.filter(({ turn, isLate }) => turn?.isBegun === isBegun && isLate === this.isLate)
    return own.filter(({ turn }) => turn === own[0]!.turn)
  }

  /**
   * Runs whose boards are all of one size, each to its end; not of a piece that parts fill to its end, where what all cuts
   * leave may be the last board of a run.
   */
  private cutRunsOf(size: Mm, open: readonly Standing[]): void {
    for (const standing of open) {
      const { rest } = standing.task
      if (rest && rest.kind !== 'offcut' && rest.kind !== 'waste') continue
      let run = this.nextRun(standing, false)
      while (run.length > 0 && run.every((group) => group.size === size)) {
        this.cutBoards(standing, run)
        run = this.nextRun(standing, false)
      }
    }
  }

  /** At the setting that most pieces need next, of every piece the boards of its run that have it, until all runs are cut. */
  private cutInTurn(open: readonly Standing[], isBegun: boolean): void {
    for (;;) {
      const sizes = open.flatMap((standing) => this.nextRun(standing, isBegun)[0]?.size ?? [])
      if (sizes.length === 0) return
      const count = (size: Mm) => sizes.filter((other) => other === size).length
      const size = sizes.reduce((a, b) => ((count(b) - count(a) || b - a) > 0 ? b : a))
      for (const standing of open) {
        const run = this.nextRun(standing, isBegun)
        const other = run.findIndex((group) => group.size !== size)
        this.cutBoards(standing, other < 0 ? run : run.slice(0, other))
      }
    }
  }

  /** One after the other, with nothing cut from the piece between them. */
  private cutBoards(standing: Standing, boards: readonly Group[]): void {
    for (const group of boards) {
      this.run++
      this.prepare(standing)
      this.cutGroup(standing, group)
    }
  }

  /** What was begun before the others were built lies there as it was left. */
  private layDown(task: Task): Standing {
    const begun = this.begun.get(task)
    if (begun) return begun
    const standing = this.fresh(task)
    this.begun.set(task, standing)
    return standing
  }

  private fresh(task: Task): Standing {
    const before = this.spots.get(task.name)
    const spot = before ?? { x: 0, y: 0 }
    const isPrepared = task.trim === 0
    const isNamed = before !== undefined || bearsItsName(task.name, task.sheet)
    const standing = {
      task,
      spot,
      done: 0,
      left: task.span,
      isPrepared,
      isNamed,
      groups: [...task.groups],
      tail: task.tail,
    }
    const isUncut = isPrepared && task.groups.length === 0 && task.tail.length === 0
    if (isUncut && task.rest) this.spots.set(task.rest.key, spot)
    return standing
  }

  private prepare(standing: Standing): void {
    const { task } = standing
    if (standing.isPrepared) return
    const takes = this.takesOf(standing)
    const dust = Math.min(task.trim, this.shop.kerf)
    const waste = this.waste(standing, settle(task.trim - dust))
    standing.isPrepared = true
    standing.done = task.trim
    standing.left = settle(standing.left - task.trim)
    const kind = task.direction === 'rip' ? 'trim' : 'square'
    const leaves = [...this.remaining(standing), ...waste]
    this.add(task, null, { kind, size: task.trim, takes, cuts: 1, leaves })
    if (task.groups.length === 0) this.freeTail(standing)
  }

  private cutGroup(standing: Standing, group: Group): void {
    const { task } = standing
    const { size } = group
    const takes = this.takesOf(standing)
    standing.groups = standing.groups.filter((each) => each !== group)
    const children = this.cutOff(standing, group)
    const leaves = [...children, ...this.remaining(standing)]
    const turn = group.turn ? { turn: group.turn, place: group.place } : {}
    this.add(task, size, { kind: task.kind, size, takes, cuts: children.length, leaves, ...turn })
    if (standing.groups.length === 0) this.freeTail(standing)
  }

  /** Offcuts are freed from the waste beside them along a line, when all else is cut. */
  private freeTail(standing: Standing): void {
    const { tail, kind } = standing.task
    for (const [at, group] of tail.entries()) {
      const takes = this.takesOf(standing)
      const children = this.cutOff(standing, group)
      standing.tail = tail.slice(at + 1)
      const isLast = at === tail.length - 1
      const leaves = [...children, ...this.remaining(standing, isLast)]
      this.add(standing.task, null, { kind, size: group.size, takes, cuts: 1, leaves })
    }
  }

  private cutOff(standing: Standing, { size, children }: Group): Left[] {
    return children.map((child) => {
      const cut = this.lay(child, standing)
      standing.done = settle(standing.done + size + this.shop.kerf)
      standing.left = Math.max(0, settle(standing.left - size - this.shop.kerf))
      return cut
    })
  }

  private takesOf(standing: Standing): Taken {
    const { task, left } = standing
    const isWhole = left >= settle(task.span - task.trim)
    const name = isWhole ? task.name : restOf(task)
    return { name, ...along(task, left), ...spotOf(standing), rough: this.roughOf(standing) }
  }

  /** What is still to be cut, or, when everything is cut, what is left over. */
  private remaining(
    standing: Standing,
    isDone = standing.groups.length === 0 && standing.task.tail.length === 0,
  ): Left[] {
    const { task, left, groups } = standing
    if (isDone) return task.rest ? [this.lay(task.rest, standing)] : this.waste(standing, left)
    const isUncut = groups.length === task.groups.length
    const name = isUncut ? task.name : restOf(task)
    const mark = standing.isNamed ? null : task.name
    standing.isNamed = true
    const future = this.futureOf(standing)
    const piece = { kind: 'piece', name, key: task.name, mark, part: null, isLate: false, future } as const
    return [{ ...piece, ...along(task, left), ...spotOf(standing), rough: this.roughOf(standing) }]
  }

  /** What is drawn of it and not cut off yet. */
  private futureOf({ task, groups, tail }: Standing): Future {
    const { drawn, called, stage, rest } = task
    const open = new Set([...groups, ...tail].flatMap(({ children }) => children.map(({ key }) => key)))
    if (rest) open.add(rest.key)
    const isOpen = (at: number) => open.has(called[at]!)
    return {
      drawn: { ...drawn, pieces: drawn.pieces.filter((_, at) => isOpen(at)) },
      called: called.filter((_, at) => isOpen(at)),
      stage,
    }
  }

  private waste(standing: Standing, size: Mm): Left[] {
    if (size <= 0) return []
    const { task } = standing
    const piece = {
      kind: 'waste',
      name: 'waste',
      key: `waste of ${task.name}`,
      mark: null,
      part: null,
      isLate: false,
      future: { drawn: { kind: 'waste', ...spotOf(standing), ...along(task, size) }, called: [], stage: task.stage },
    } as const
    return [{ ...piece, ...along(task, size), ...spotOf(standing), rough: this.roughOf(standing) }]
  }

  private lay(child: Child, standing: Standing): Left {
    const spot = spotOf(standing)
    this.spots.set(child.key, spot)
    return { ...child, ...spot }
  }

  private roughOf({ task, isPrepared }: Standing): Task['rough'] {
    if (!isPrepared) return task.rough
    return task.direction === 'rip' ? { ...task.rough, low: 0 } : { ...task.rough, start: 0 }
  }

  /** `wanted` is what a tool is to be set to, null where a line is followed. */
  private add(task: Task, wanted: Mm | null, done: Done): void {
    const { kind } = done
    const { tool, hasAttachment } = gripFor(kind, wanted, task.across, this.shop)
    const setting = tool === 'rail' || kind === 'square' ? null : wanted
    const isFirst = task.phase % 2 === 0
    const blade = isFirst === (this.firstBlade === 'rip') ? 'rip' : 'crosscut'
    this.works.push({ ...done, task, tool, hasAttachment, blade, setting, run: this.run, isLate: this.isLate })
  }
}

/** The rest of a rest is a rest. */
function restOf({ name }: Task): string {
  return `rest of ${bareName(name)}`
}

function along(task: Task, size: Mm): { readonly length: Mm; readonly width: Mm } {
  return task.direction === 'rip' ? { length: task.across, width: size } : { length: size, width: task.across }
}

function spotOf({ task, spot, done }: Standing): Spot {
  return task.direction === 'rip' ? { x: spot.x, y: settle(spot.y + done) } : { x: settle(spot.x + done), y: spot.y }
}
