import type { PartId } from '../basics/id'
import type { CutPiece, PartPiece, Piece } from '../sheets/layout'
import { type Mm, settle } from '../units/length'
import { isClean, type Rough, sizeWith } from './factoryEdges'
import { type GrainPlace, type Run, runsIn } from './grainRuns'
import { nameOf } from './names'
import type { Future, Stage } from './stage'
import type { StepPiece } from './step'

/**
 * All the cuts that one piece gets in one direction: a sheet into its strips, a strip into its parts.
 *
 *     before               prepare             at 580             at 330            rest
 *     +-- factory edge -+  +-- factory ----+  +-- factory ---+  +-- factory --+
 *     |                 |  |               |  |              |  |    rest     |
 *     |                 |  |               |  |     rest     |  +-------------+
 *     |                 |  |               |  +==============+  |     330     |
 *     +-- factory edge -+  +=clean edge====+  |     580      |  +=============+
 *
 * Whatever is cut next is cut from the clean edge, so the settings may come in any order, and what is left over ends up
 * at the far edge, whichever place the drawing gives it. Only boards over which the grain runs on keep the order in which
 * they are drawn, with nothing between them.
 */
export interface Task {
  /** Of the piece: `sheet 3`, `3a`. No other piece of the breakdown has it. */
  readonly name: string
  readonly sheet: number
  readonly material: string
  readonly direction: 'rip' | 'crosscut'
  readonly kind: 'rip' | 'crosscut' | 'rerip'
  /** Whether the piece is a sheet, or still the whole length and nearly the whole width of one. */
  readonly isSheet: boolean
  /** Blades take turns: everything of phase 0 is cut before the first change of blade. */
  readonly phase: number
  /** Whether nothing but late parts comes of it, so that it stays whole until they are cut. */
  readonly isLate: boolean
  /** In the direction in which the pieces lie side by side, before anything is cut. */
  readonly span: Mm
  /** The other way. */
  readonly across: Mm
  /** Taken off the low edge or the start, before anything is measured from it. */
  readonly trim: Mm
  /** The factory edges that the piece has before anything is cut. */
  readonly rough: Rough
  /** The piece as the layout draws it, with all that it is cut into. */
  readonly drawn: CutPiece
  /** What its pieces are called in the breakdown, in the order in which they are drawn. */
  readonly called: readonly string[]
  readonly stage: Stage
  /** One setting each, in any order but for those that have a turn. */
  readonly groups: readonly Group[]
  readonly runOf: SheetWalk['runOf']
  /** Offcuts that are freed from waste, after all groups. */
  readonly tail: readonly Group[]
  /** What the last cut leaves, where it is more than waste. */
  readonly rest: Child | null
  readonly restSize: Mm
  /** Tasks of the pieces that this one leaves. */
  readonly next: readonly Task[]
}

/** Pieces of one size, all of them late or none. */
export interface Group {
  readonly size: Mm
  readonly isLate: boolean
  readonly children: readonly Child[]
  /** Of a board in a run of grain, the same for all of it: they are cut one after another; a run that is begun goes on at once. */
  readonly turn?: { readonly isBegun: boolean; readonly boards: readonly string[] }
  /** Which board of its run, from 0. */
  readonly place?: number
}

export interface Child extends Omit<StepPiece, 'count'> {
  /** Its own name in the breakdown, also when it is called by its mark. */
  readonly key: string
  /** What to write on it. */
  readonly mark: string | null
  readonly part: PartId | null
  /** Whether nothing but late parts comes of it. */
  readonly isLate: boolean
  readonly rough: Rough
  readonly future: Future
}

/** A piece with its name, as it is carried from one task to the next. */
interface Held {
  readonly piece: Piece
  readonly name: string
  readonly rough: Rough
  readonly stage: Stage
  readonly isTakenUp: boolean
  readonly isLate: boolean
}

/** What a walk through one sheet needs to know. */
export interface SheetWalk {
  readonly sheet: number
  /** `sheet 3`, or what is written on a piece that is cut like one. */
  readonly name: string
  readonly material: string
  readonly kerf: Mm
  readonly root: Piece
  readonly rough: Rough
  readonly firstBlade: 'rip' | 'crosscut'
  readonly stage: Stage
  /** What its first pieces are called; after the piece when left out. */
  readonly called?: readonly string[]
  /** Whether a part is cut when the carcasses stand. */
  readonly isLate: (piece: PartPiece) => boolean
  readonly dealt: (piece: PartPiece) => { readonly mark: string; readonly part: PartId | null }
  /** The run of grain that a part lies in, and its place there; null for one that is cut by itself. */
  readonly runOf: (piece: PartPiece) => GrainPlace | null
}

/** The tasks of one sheet. A sheet that is crosscut first is straightened along its length all the same. */
export function tasksOfSheet(walk: SheetWalk): Task[] {
  const { root, rough, name } = walk
  const isLate = isAllLate(root, false, walk)
  const held = { piece: root, name, rough, stage: walk.stage, isTakenUp: true, isLate }
  if (root.kind !== 'cut' || root.direction === 'rip' || rough.low === 0) return tasksOf(held, walk)
  const straightened = { ...held, rough: { ...rough, low: 0 } }
  return [straighten(held, root, walk, tasksOf(straightened, walk))]
}

function straighten(held: Held, drawn: CutPiece, walk: SheetWalk, next: Task[]): Task {
  const { sheet, material } = walk
  const { name, rough, isLate, stage } = held
  const { length, width } = sizeOf(held)
  const called = drawn.pieces.map((_, at) => calledIn(held, at, walk))
  const restSize = settle(width - rough.low)
  return {
    ...{ name, sheet, material, direction: 'rip', kind: 'rip', isSheet: true, phase: stage.phase, called, stage },
    ...{ isLate, span: width, across: length, trim: rough.low, rough, drawn, groups: [], tail: [], runOf: walk.runOf },
    rest: {
      ...{ kind: 'piece', name, key: name, length, width: restSize, mark: name, part: null, isLate },
      rough: { ...rough, low: 0 },
      future: { drawn, called, stage },
    },
    ...{ restSize, next },
  }
}

function tasksOf(held: Held, walk: SheetWalk): Task[] {
  const { piece, rough } = held
  switch (piece.kind) {
    case 'offcut':
    case 'waste':
      return []
    case 'cut':
      return [taskOf(held, piece, walk)]
    case 'part':
      if (rough.low > 0 || rough.high > 0) return [taskOf(held, alone(piece, 'rip'), walk)]
      if (rough.start > 0 || rough.end > 0) return [taskOf(held, alone(piece, 'crosscut'), walk)]
      return []
  }
}

/** A part that fills a sheet or a strip still has factory edges to lose. */
function alone(part: PartPiece, direction: 'rip' | 'crosscut'): CutPiece {
  const { x, y, length, width } = part
  return { kind: 'cut', direction, pieces: [part], x, y, length, width }
}

function taskOf(held: Held, cut: CutPiece, walk: SheetWalk): Task {
  const { direction } = cut
  const size = sizeOf(held)
  const isRip = direction === 'rip'
  const span = isRip ? size.width : size.length
  const trim = isRip ? held.rough.low : held.rough.start
  const phase = phaseOf(direction, held.stage.phase, walk.firstBlade)
  const runs = runsIn(cut.pieces, walk.runOf)
  const { cutOff, rest, restSize } = cutsOf(cut, settle(span - trim), held, walk, runs)
  const stage = { ...held.stage, phase, isSheet: false, hasBeenRipped: held.stage.hasBeenRipped || isRip }
  const carry = (at: number, roughEnd: Mm): Held => {
    const rough = isRip ? { ...held.rough, low: 0, high: roughEnd } : { ...held.rough, start: 0, end: roughEnd }
    const name = calledIn(held, at, walk)
    const piece = cut.pieces[at]!
    const isLate = isAllLate(piece, held.isLate, walk)
    return { piece, name, rough, stage, isTakenUp: false, isLate }
  }
  const helds = cutOff.map((at) => carry(at, 0))
  const turns = new Map<Run, NonNullable<Group['turn']>>()
  for (const run of runs) {
    if (run) turns.set(run, { isBegun: run.isBegun, boards: run.pieces.map((piece) => walk.dealt(piece).mark) })
  }
  const last = rest === null ? null : carry(rest, settle(restSize - extent(cut.pieces[rest]!, direction)))
  const groups = new Map<string, Omit<Group, 'children'> & { readonly children: Child[] }>()
  const tail: Group[] = []
  for (const [at, each] of helds.entries()) {
    const run = runs[cutOff[at]!]
    const wide = settle(extent(each.piece, direction))
    const child = childOf(each, direction, walk)
    const { isLate } = child
    const key = `${wide} ${isLate}`
    if (isLeft(each.piece)) tail.push({ size: wide, isLate, children: [child] })
    else if (run) {
      const place = run.pieces.indexOf(cut.pieces[cutOff[at]!] as PartPiece)
      groups.set(`${key} ${at}`, { size: wide, isLate, children: [child], turn: turns.get(run)!, place })
    } else if (groups.has(key)) groups.get(key)!.children.push(child)
    else groups.set(key, { size: wide, isLate, children: [child] })
  }
  return {
    ...{ name: held.name, sheet: walk.sheet, material: walk.material, direction, phase, span, trim, tail, restSize },
    ...{ rough: held.rough, drawn: cut, called: cut.pieces.map((_, at) => calledIn(held, at, walk)) },
    kind: isRip ? (held.stage.hasBeenRipped ? 'rerip' : 'rip') : 'crosscut',
    stage: { ...held.stage, phase },
    isSheet: held.stage.isSheet,
    isLate: held.isLate,
    across: isRip ? size.length : size.width,
    groups: [...groups.values()],
    runOf: walk.runOf,
    rest: last && childOf(last, direction, walk),
    next: [...helds, ...(last ? [last] : [])].flatMap((each) => tasksOf(each, walk)),
  }
}

function calledIn(held: Held, at: number, walk: SheetWalk): string {
  return (held.isTakenUp ? walk.called?.[at] : undefined) ?? nameOf(held, at, walk.sheet)
}

/** Whether late parts come of a piece, and no others; where none comes of it, it waits with what it is cut from. */
function isAllLate(piece: Piece, isParentLate: boolean, walk: SheetWalk): boolean {
  const parts = partsIn(piece)
  return parts.length > 0 ? parts.every(walk.isLate) : isParentLate
}

/** The parts of a piece, in the order of its tree. */
export function partsIn(piece: Piece): PartPiece[] {
  if (piece.kind === 'cut') return piece.pieces.flatMap(partsIn)
  return piece.kind === 'part' ? [piece] : []
}

/**
 * Which pieces are cut off, and which one is simply what is left: what is left over if there is such, or the last piece
 * when it needs no cut, a late one before any other. The numbers are places in the tree.
 */
function cutsOf(
  cut: CutPiece,
  clean: Mm,
  { isLate }: Held,
  walk: SheetWalk,
  runs: readonly (Run | null)[],
): { readonly cutOff: readonly number[]; readonly rest: number | null; readonly restSize: Mm } {
  const wide = (at: number) => extent(cut.pieces[at]!, cut.direction)
  const rank = (at: number) => ['cut', 'part', 'offcut', 'waste'].indexOf(cut.pieces[at]!.kind)
  const all = cut.pieces.map((_, at) => at)
  const { kerf } = walk
  const late = cut.pieces.map((piece) => Number(isAllLate(piece, isLate, walk)))
  /** A run that is begun, then whatever is in no run, then the other runs. */
  const turn = runs.map((run) => (run === null ? 1 : run.isBegun ? 0 : 2))
  const size = (at: number) => (runs[at] ? 0 : wide(at))
  const used = all
    .filter((at) => !isLeft(cut.pieces[at]!))
    .sort((a, b) => late[a]! - late[b]! || turn[a]! - turn[b]! || size(b) - size(a) || a - b)
  const order = [...used, ...all.filter((at) => isLeft(cut.pieces[at]!)).sort((a, b) => rank(a) - rank(b) || a - b)]
  const leftAfter = (count: number) => settle(order.slice(0, count).reduce((sum, at) => sum - wide(at) - kerf, clean))
  const before = leftAfter(order.length - 1)
  const last = order.at(-1)!
  if (isLeft(cut.pieces[last]!) || settle(before - wide(last)) <= 0) {
    return { cutOff: order.slice(0, -1), rest: last, restSize: before }
  }
  return { cutOff: order, rest: null, restSize: Math.max(0, leftAfter(order.length)) }
}

function phaseOf(direction: 'rip' | 'crosscut', from: number, firstBlade: 'rip' | 'crosscut'): number {
  const isFirst = from % 2 === 0
  return isFirst === (direction === firstBlade) ? from : from + 1
}

function childOf(held: Held, direction: 'rip' | 'crosscut', walk: SheetWalk): Child {
  const { piece, rough } = held
  const size = sizeOf(held)
  const called = piece.kind === 'cut' ? piece.pieces.map((_, at) => calledIn(held, at, walk)) : []
  const future = { drawn: piece, called, stage: held.stage }
  const common = { key: held.name, ...size, rough, part: null, isLate: held.isLate, future }
  if (piece.kind === 'waste') return { ...common, kind: 'waste', name: 'waste', mark: null }
  // What is kept is called by its own name from now on.
  if (piece.kind === 'offcut') return { ...common, kind: 'offcut', name: held.name, mark: held.name }
  const isFinished = piece.kind === 'part' && isClean(rough)
  if (isFinished) {
    const { mark, part } = walk.dealt(piece)
    return { ...common, kind: 'part', name: mark, mark, part }
  }
  return { ...common, kind: direction === 'rip' ? 'strip' : 'piece', name: held.name, mark: held.name }
}

function isLeft(piece: Piece): boolean {
  return piece.kind === 'offcut' || piece.kind === 'waste'
}

function extent(piece: Piece, direction: 'rip' | 'crosscut'): Mm {
  return direction === 'rip' ? piece.width : piece.length
}

function sizeOf({ piece, rough }: Held): { readonly length: Mm; readonly width: Mm } {
  return sizeWith(piece, rough)
}
