import type { CabinetId } from '../basics/id'
import { STAYS } from '../cabinets/apart'
import type { Board } from '../cabinets/board'
import { methodOf } from '../cabinets/build'
import { inBoard, notchOf } from '../cabinets/frame'
import { boardOf, type Piece, room, UNBANDED } from '../cabinets/piece'
import type { Box } from '../geometry/box'
import type { Interval } from '../geometry/interval'
import type { Countertop } from '../project/between'
import { standsFree } from '../project/builtBy'
import { middleOfCutout } from '../project/cutout'
import type { Cabinet, Cutout, Project } from '../project/document'
import { isUnderTop } from '../project/underTop'
import { footprintOf } from '../runs/footprint'
import { rightEdge, topEdge } from '../runs/lane'
import { faceFrom } from '../runs/reach'
import { type Mm, settle } from '../units/length'
import { spliced } from './splice'

/** What one base gives the countertop over it to lie on. */
export interface TopStep {
  readonly cabinet: CabinetId
  /** Along the wall, with what stands beside the carcass. */
  readonly from: Mm
  readonly to: Mm
  /** The underside of the countertop, from the floor. */
  readonly level: Mm
  /** From the wall to the face of the fronts. */
  readonly face: Mm
  /** Of what is let into it. */
  readonly middle: Mm
  readonly cutout: Cutout | null
  /** Whether it stands away from the walls, and how far the top then stands out behind it. */
  readonly isFree: boolean
  readonly rear: Mm
  /** Whether a splash stands there; null where nobody said so. */
  readonly hasSplash: boolean | null
}

export function topStepOf(cabinet: Cabinet, project: Project): TopStep | null {
  if (!isUnderTop(cabinet, project)) return null
  const footprint = footprintOf(cabinet, project)
  return {
    cabinet: cabinet.id,
    from: footprint.left,
    to: rightEdge(footprint),
    level: topEdge(cabinet),
    face: faceFrom(cabinet, project),
    middle: middleOfCutout(cabinet, cabinet.cutout),
    cutout: cabinet.cutout,
    ...hereOf(cabinet, project),
  }
}

function hereOf(cabinet: Cabinet, project: Project): Pick<TopStep, 'isFree' | 'rear' | 'hasSplash'> {
  const { top, space } = cabinet
  const isFree = !space && standsFree(methodOf(cabinet, project))
  return { isFree, rear: top?.rear ?? 0, hasSplash: top?.hasSplash ?? null }
}

/** Whether all that it lies on stands away from the walls, so that it has a rear edge that is seen. */
export function isTopFree({ steps }: Pick<TopRun, 'steps'>): boolean {
  return steps.every(({ isFree }) => isFree)
}

/** From the backs of what stands away from the walls to the rear edge of its top. */
export function topRear(run: Pick<TopRun, 'steps'>): Mm {
  return isTopFree(run) ? Math.max(...run.steps.map(({ rear }) => rear)) : 0
}

export function isOneTop(a: TopStep, b: TopStep): boolean {
  return a.to === b.from && a.level === b.level
}

/** A top in a corner that another one cannot be bolted to. */
export interface Unbolted {
  readonly mark: string
  readonly thickness: Mm
  /** Of its underside, from the floor. */
  readonly level: Mm
}

/** A run of bases with what it is covered by, in plain measures. */
export interface TopRun {
  readonly steps: readonly TopStep[]
  /** Whether it is low enough to be sat on: a seat board. */
  readonly isSeat: boolean
  /** How far the top stands out past the run's ends, as much as there is room for; less than 0 where the top of another wall lies over an end. */
  readonly left: Mm
  readonly right: Mm
  /** Whether it ends at a wall, another top or what stands higher, where it is not banded; an appliance that it stops at closes nothing. */
  readonly closed: { readonly left: boolean; readonly right: boolean }
  /** How far the splash goes on past the top's ends, over the top of another wall. */
  readonly splashPast: { readonly left: Mm; readonly right: Mm }
  /** Whether it is joined to the front edge of another top at an end, at which it stops. */
  readonly stopped: { readonly left: boolean; readonly right: boolean }
  /** Where the bolts of tops that stop at its front edge are along it. */
  readonly joined: readonly Mm[]
  /** At whose front edges it stops without the bolts that are wanted: they lie at one height, and these tops do not. */
  readonly unbolted: readonly Unbolted[]
  readonly countertop: Countertop
  readonly thickness: Mm
  readonly longest: Mm
}

type TopFront = Pick<TopRun, 'steps'> & { readonly countertop: Pick<Countertop, 'overhang'> }

/** From the wall to the front edge: past the face that stands out furthest by the overhang. */
export function topDepth({ steps, countertop }: TopFront): Mm {
  return settle(Math.max(...steps.map(({ face }) => face)) + countertop.overhang)
}

/** As long as the run, and past each end by the overhang there. */
export function topLength({ steps, left, right }: Pick<TopRun, 'steps' | 'left' | 'right'>): Mm {
  return settle(left + steps.at(-1)!.to - steps[0]!.from + right)
}

/** A cut-out in the frame of the run: in the middle of its cabinet or so far aside, as far from the front edge as it is typed. */
export function cutoutBox(step: TopStep, cutout: Cutout, run: TopRun): Box {
  const middle = settle(step.middle - run.steps[0]!.from + run.left)
  const front = settle(topDepth(run) - cutout.fromFront)
  return room([middle - cutout.width / 2, middle + cutout.width / 2], [0, run.thickness], [front - cutout.depth, front])
}

/** So much wood stays beside a cut-out before a seam. Common practice, no source. */
const BESIDE_CUTOUT: Mm = 50

/** The boards of the top and of its splash, with the cut-outs that lie wholly in the top. */
export function topBoards(run: TopRun): Board[] {
  const edges = edgesIn(run)
  const length = topLength(run)
  const cutouts = run.steps.flatMap((step) => {
    const box = step.cutout && cutoutBox(step, step.cutout, run)
    return box && isInTop(box, run) ? [box] : []
  })
  const lengths = spliced(edges, run.longest, cutouts.map(keptWhole))
  const z = [settle(0 - topRear(run)), topDepth(run)] as const
  const tops = lengths.map(({ from, to }, at) =>
    banded(withCutouts(boardOf(piece(run, topRole(run), at, room([from, to], [0, run.thickness], z))), cutouts), run, {
      start: from === 0 && isSeen(run, 'left'),
      end: to === length && isSeen(run, 'right'),
    }),
  )
  return [...tops, ...splashBoards(run, lengths)]
}

/** Where a top may be spliced, from its left end: its ends, and where a carcass begins. */
function edgesIn(run: TopRun): readonly Mm[] {
  const length = topLength(run)
  const start = run.steps[0]!.from - run.left
  const inner = run.steps.slice(1).map(({ from }) => settle(from - start))
  return [0, ...inner.filter((at) => at > 0 && at < length), length]
}

/** Where splashes stand along a top, from its left end: on all of it, or as far as cabinets have one over them. */
export function splashStretches(run: TopRun): Interval[] {
  if (!(run.countertop.splash > 0)) return []
  const isUsual = !isTopFree(run)
  const has = ({ hasSplash }: TopStep) => hasSplash ?? isUsual
  const start = run.steps[0]!.from - run.left
  const stretches: Interval[] = []
  for (const [at, step] of run.steps.entries()) {
    if (!has(step)) continue
    const from = at === 0 ? 0 : settle(step.from - start)
    const to = at === run.steps.length - 1 ? topLength(run) : settle(step.to - start)
    const last = stretches.at(-1)
    if (last?.to === from) stretches.splice(-1, 1, { from: last.from, to })
    else stretches.push({ from, to })
  }
  return stretches
}

/** Spliced where the top is unless it goes on past it or stops before; an end that stops on the top is seen. */
function splashBoards(run: TopRun, lengths: readonly Interval[]): Board[] {
  const length = topLength(run)
  const edges = edgesIn(run)
  const { left, right } = run.splashPast
  const y = [run.thickness, settle(run.thickness + run.countertop.splash)] as const
  const all = splashStretches(run).flatMap((stretch) => {
    const from = stretch.from === 0 ? settle(0 - left) : stretch.from
    const to = stretch.to === length ? settle(length + right) : stretch.to
    if (from === 0 && to === length) return lengths
    const inner = edges.filter((at) => at > stretch.from && at < stretch.to)
    return spliced([from, ...inner, to], run.longest)
  })
  return all.map(({ from, to }, at) => {
    const isSeam = { start: all[at - 1]?.to === from, end: all[at + 1]?.from === to }
    return banded(boardOf(piece(run, 'splash', at, room([from, to], y, [0, run.thickness]))), run, {
      start: from === 0 ? isSeen(run, 'left') : from > 0 && !isSeam.start,
      end: to === length ? isSeen(run, 'right') : to < length && !isSeam.end,
    })
  })
}

/** Whether an end of a top stands free. */
function isSeen(run: TopRun, side: 'left' | 'right'): boolean {
  return run[side] >= 0 && !run.closed[side]
}

/** Wood must stay all round a cut-out, and the splash stands on wood. */
export function isInTop({ min, max }: Box, run: TopRun): boolean {
  const rear = splashStretches(run).length > 0 ? run.thickness : settle(0 - topRear(run))
  return min.x > 0 && max.x < topLength(run) && min.z > rear && max.z < topDepth(run) && max.x > min.x && max.z > min.z
}

function keptWhole({ min, max }: Box): Interval {
  return { from: settle(min.x - BESIDE_CUTOUT), to: settle(max.x + BESIDE_CUTOUT) }
}

function topRole({ isSeat }: TopRun): 'countertop' | 'seatBoard' {
  return isSeat ? 'seatBoard' : 'countertop'
}

function piece({ countertop }: TopRun, role: 'countertop' | 'seatBoard' | 'splash', at: number, box: Box): Piece {
  const lie = role !== 'splash' ? 'levelLookingDown' : 'onEdgeLookingOut'
  return { role, number: at + 1, material: countertop.material, box, lie, banded: UNBANDED, explode: STAYS }
}

/**
 * The front edge, of a splash the upper one, is banded all along, an end where it stands free, and the rear edge of a top
 * that stands away from the walls; seams and what is at a wall are not.
 */
function banded(board: Board, run: TopRun, isSeenAt: { readonly start: boolean; readonly end: boolean }): Board {
  const { banding } = run.countertop
  if (!(banding > 0)) return board
  const low = board.role !== 'splash' && isTopFree(run) ? banding : 0
  return {
    ...board,
    banding: { low, high: banding, start: isSeenAt.start ? banding : 0, end: isSeenAt.end ? banding : 0 },
  }
}

/** What of the cut-outs lies in this board is cut out of it. */
function withCutouts(board: Board, cutouts: readonly Box[]): Board {
  const operations = cutouts.flatMap((box) => {
    const { min, max } = inBoard(board, box)
    const from = Math.max(0, min.x)
    const to = Math.min(board.length, max.x)
    return to > from ? [notchOf({ min: { ...min, x: from }, max: { ...max, x: to } })] : []
  })
  return operations.length > 0 ? { ...board, operations } : board
}
