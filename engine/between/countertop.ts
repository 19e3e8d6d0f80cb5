import type { CabinetId } from '../basics/id'
import { STAYS } from '../cabinets/apart'
import type { Board } from '../cabinets/board'
import { inBoard, notchOf } from '../cabinets/frame'
import { boardOf, type Piece, room, UNBANDED } from '../cabinets/piece'
import type { Box } from '../geometry/box'
import type { Interval } from '../geometry/interval'
import type { Countertop } from '../project/between'
import { middleOfCutout } from '../project/cutout'
import type { Cabinet, Cutout, Project } from '../project/document'
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
}

/** Bases lie under the countertop, and so do appliances that it goes on over. */
export function carriesTop({ kind, space }: Pick<Cabinet, 'kind' | 'space'>): boolean {
  return kind === 'base' && space?.isTopOver !== false
}

export function topStepOf(cabinet: Cabinet, project: Project): TopStep | null {
  if (!carriesTop(cabinet)) return null
  const footprint = footprintOf(cabinet, project)
  return {
    cabinet: cabinet.id,
    from: footprint.left,
    to: rightEdge(footprint),
    level: topEdge(cabinet),
    face: faceFrom(cabinet, project),
    middle: middleOfCutout(cabinet, cabinet.cutout),
    cutout: cabinet.cutout,
  }
}

export function isOneTop(a: TopStep, b: TopStep): boolean {
  return a.to === b.from && a.level === b.level
}

/** A run of bases with what it is covered by, in plain measures. */
export interface TopRun {
  readonly steps: readonly TopStep[]
  /** How far the top stands out past the run's ends, as much as there is room for; less than 0 where the top of another wall lies over an end. */
  readonly left: Mm
  readonly right: Mm
  /** Whether it ends at a wall, where it is not banded. */
  readonly atWall: { readonly left: boolean; readonly right: boolean }
  /** How far the splash goes on past the top's ends, over the top of another wall. */
  readonly splashPast: { readonly left: Mm; readonly right: Mm }
  /** Whether it stops at the front edge of another top at an end. */
  readonly stopped: { readonly left: boolean; readonly right: boolean }
  /** Where the bolts of tops that stop at its front edge are along it. */
  readonly joined: readonly Mm[]
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

/** The boards of the top and of its splash, spliced at the same places unless it goes on past it, with the cut-outs that lie wholly in the top. */
export function topBoards(run: TopRun): Board[] {
  const length = topLength(run)
  const start = run.steps[0]!.from - run.left
  const inner = run.steps.slice(1).map(({ from }) => settle(from - start))
  const edges = [0, ...inner.filter((at) => at > 0 && at < length), length]
  const cutouts = run.steps.flatMap((step) => {
    const box = step.cutout && cutoutBox(step, step.cutout, run)
    return box && isInTop(box, run) ? [box] : []
  })
  const lengths = spliced(edges, run.longest, cutouts.map(keptWhole))
  const depth = topDepth(run)
  const { thickness, countertop } = run
  const tops = lengths.map(({ from, to }, at) =>
    banded(
      withCutouts(boardOf(piece(run, 'countertop', at, room([from, to], [0, thickness], [0, depth]))), cutouts),
      run,
      { isFirst: from === 0, isLast: to === length },
    ),
  )
  if (!(countertop.splash > 0)) return tops
  const y = [thickness, thickness + countertop.splash] as const
  const past = [settle(0 - run.splashPast.left), ...edges.slice(1, -1), settle(length + run.splashPast.right)]
  const isPast = run.splashPast.left > 0 || run.splashPast.right > 0
  const splashes = (isPast ? spliced(past, run.longest) : lengths).map(({ from, to }, at) =>
    banded(boardOf(piece(run, 'splash', at, room([from, to], y, [0, thickness]))), run, {
      isFirst: from === 0,
      isLast: to === length,
    }),
  )
  return [...tops, ...splashes]
}

/** Wood must stay all round a cut-out, and the splash stands on wood. */
export function isInTop({ min, max }: Box, run: TopRun): boolean {
  const rear = run.countertop.splash > 0 ? run.thickness : 0
  return min.x > 0 && max.x < topLength(run) && min.z > rear && max.z < topDepth(run) && max.x > min.x && max.z > min.z
}

function keptWhole({ min, max }: Box): Interval {
  return { from: settle(min.x - BESIDE_CUTOUT), to: settle(max.x + BESIDE_CUTOUT) }
}

function piece({ countertop }: TopRun, role: 'countertop' | 'splash', at: number, box: Box): Piece {
  const lie = role === 'countertop' ? 'levelLookingDown' : 'onEdgeLookingOut'
  return { role, number: at + 1, material: countertop.material, box, lie, banded: UNBANDED, explode: STAYS }
}

/** The front edge, of a splash the upper one, is banded all along, an end where it stands free; seams and ends at a wall are not. */
function banded(board: Board, run: TopRun, { isFirst, isLast }: { isFirst: boolean; isLast: boolean }): Board {
  const { banding } = run.countertop
  if (!(banding > 0)) return board
  const start = isFirst && run.left > 0 && !run.atWall.left ? banding : 0
  const end = isLast && run.right > 0 && !run.atWall.right ? banding : 0
  return { ...board, banding: { low: 0, high: banding, start, end } }
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
