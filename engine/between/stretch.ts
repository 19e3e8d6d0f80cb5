import type { CabinetId } from '../basics/id'
import { valuesOf } from '../basics/id'
import type { Opening, Project, Side, Trim, Wall } from '../project/document'
import { footprintOf } from '../runs/footprint'
import { rightEdge, sharedBy, topEdge } from '../runs/lane'
import { meetingsOf } from '../runs/reach'
import { type Mm, settle } from '../units/length'
import { cabinetsAt, runsAlong } from './runsAlong'
import { isOneTrim, mitreBehind, NEITHER, type TrimRun, type TrimStep, trimFace, trimStepOf } from './trim'
import { cornerEndsAt, endsInCorner, isEndOf, type PutUp, returnAt } from './trimEnds'

/** Where a stretch of trim is, and the run of it that its boards are made from. */
export interface Stretch {
  readonly cabinets: readonly CabinetId[]
  readonly left: Mm
  readonly bottom: Mm
  readonly run: Pick<TrimRun, 'edges' | 'front' | 'returns' | 'mitres'>
}

/** The stretches of light rail or crown along a wall. */
export function trimmedRuns({ project, kind, trim }: PutUp, wall: Wall, thickness: Mm): Stretch[] {
  const runs = runsAlong(project, wall, (cabinet) => trimStepOf(cabinet, kind, project), isOneTrim)
  return runs.flatMap((steps): Stretch[] => {
    const { from, front, level } = steps[0]!
    const along: Along = { project, wall, kind, trim, steps }
    const ends = { left: endOf(along, 'left'), right: endOf(along, 'right') }
    const face = { from: settle(from + ends.left.cut), to: settle(steps.at(-1)!.to - ends.right.cut) }
    if (!(face.to > face.from)) return []
    const mitres = {
      left: mitreBehind(thickness, ends.left.tangent),
      right: mitreBehind(thickness, ends.right.tangent),
    }
    const left = settle(face.from - (mitres.left?.by ?? 0))
    const length = settle(face.to + (mitres.right?.by ?? 0) - left)
    const isBehindFace = (at: Mm) => at > face.from && at < face.to
    const inner = steps.flatMap(({ to }) => (isBehindFace(to) ? [settle(to - left)] : []))
    return [
      {
        cabinets: steps.map(({ cabinet }) => cabinet),
        left,
        bottom: kind === 'crown' ? level : settle(level - trim.height),
        run: {
          front,
          edges: [0, ...inner, length],
          returns: { left: ends.left.rear, right: ends.right.rear },
          mitres,
        },
      },
    ]
  })
}

/** The run that a trim goes along, and the trim. */
interface Along extends PutUp {
  readonly wall: Wall
  readonly steps: readonly TrimStep[]
}

/** How a run ends: how much of its face is left out, less than 0 where it goes on past the last cabinet. */
interface End {
  readonly cut: Mm
  /** How far back the return there goes. */
  readonly rear: Mm | null
  /** Of the angle that it is mitred at; 0 for square. */
  readonly tangent: number
}

function endOf(along: Along, side: Side): End {
  const { project, wall, steps } = along
  const step = side === 'left' ? steps[0]! : steps.at(-1)!
  const at = side === 'left' ? step.from : step.to
  if (endsInCorner(project.cabinets[step.cabinet]!, at, side)) return { cut: 0, rear: null, tangent: 0 }
  const corner = cornerEndsAt(along, wall).find((one) => one.side === side && isEndOf(one, { ...step, at }))
  if (corner) return { cut: corner.shift, rear: null, tangent: corner.tangent }
  const cut = cutAt(along, side)
  if (cut > 0) return { cut, rear: null, tangent: 0 }
  const own = new Set(steps.map(({ cabinet }) => cabinet))
  return { cut, rear: returnAt({ ...along, own }, { at, side, level: step.level }), tangent: 0 }
}

/** How much of a run is left out at an end, where the trim of the wall that it meets runs into the corner before it. */
function cutAt({ project, wall, kind, trim, steps }: Along, side: Side): Mm {
  const meeting = meetingsOf(project, wall).find((one) => one.side === side)
  if (!meeting) return 0
  const { before, after } = meeting.corner
  const awayBefore = (run: readonly TrimStep[]) => settle(before.length - run.at(-1)!.to)
  const isBefore = side === 'right'
  const own = isBefore ? awayBefore(steps) : steps[0]!.from
  const { front, level } = steps[0]!
  const others = runsAlong(project, isBefore ? after : before, (one) => trimStepOf(one, kind, project), isOneTrim)
  const cuts = others.map((run) => {
    const other = isBefore ? run[0]!.from : awayBefore(run)
    const face = trimFace({ front: run[0]!.front, trim })
    const isLevel = Math.abs(settle(run[0]!.level - level)) < trim.height
    const doMeet = own < face && other < trimFace({ front, trim })
    const isThrough = isBefore ? own <= other : own < other
    return isLevel && doMeet && !isThrough ? settle(face - own) : 0
  })
  return Math.max(0, ...cuts)
}

/** From each upper to the next over a window: at the front of the shallower, with its upper edge at the lower top. */
export function valancesAt(project: Project, wall: Wall, trim: Trim): Stretch[] {
  const hanging = cabinetsAt(project, wall).filter(({ kind }) => kind !== 'base')
  return hanging.slice(1).flatMap((right, at): Stretch[] => {
    const left = hanging[at]!
    const from = rightEdge(footprintOf(left, project))
    const width = settle(footprintOf(right, project).left - from)
    if (!(width > 0) || left.kind !== 'upper' || right.kind !== 'upper' || !isOverWindow(wall, from, width)) return []
    const top = Math.min(topEdge(left), topEdge(right))
    return [
      {
        cabinets: [left.id, right.id],
        left: from,
        bottom: settle(top - trim.height),
        run: { edges: [0, width], front: Math.min(left.depth, right.depth), returns: NEITHER, mitres: NEITHER },
      },
    ]
  })
}

function isOverWindow(wall: Wall, from: Mm, width: Mm): boolean {
  const gap = { left: from, width, bottom: 0, height: wall.height }
  return valuesOf<Opening>(wall.openings).some((one) => one.kind === 'window' && sharedBy(gap, one).x > 0)
}
