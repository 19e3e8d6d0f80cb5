import type { Project, Side, Wall } from '../project/document'
import { areTopsMade, countertopOver, isSameTop, ownTopNames, topThickness } from '../project/topOver'
import { isSeatHigh, isUnderTop } from '../project/underTop'
import { rightEdge, topEdge } from '../runs/lane'
import { proudOf, reachingIn } from '../runs/reach'
import { cornersOf } from '../site/wall'
import { type Mm, settle } from '../units/length'
import {
  isOneTop,
  splashStretches,
  type TopRun,
  type TopStep,
  topBoards,
  topDepth,
  topLength,
  topStepOf,
  type Unbolted,
} from './countertop'
import { type BuiltRun, bandingRules, partsOfRun, type RunName, runNamed } from './run'
import { cabinetsAt, parted, remembered } from './runsAlong'
import { bolted, boltsAcross } from './seam'
import { longestBoard } from './splice'
import { type Along, areTopsLevel, endsOf, type GoesOn, hasNoEnd } from './topEnds'
import { topProblems } from './topProblems'

/** What the top of the other wall leaves to one: how far it may go, and how far its splash goes on over that top. */
interface Stop {
  readonly at: Mm
  readonly splash: Mm
  readonly over: Along
}

type Stops = { readonly [side in 'left' | 'right']?: Stop }

/** What a top has in its corners: where it stops, how far it goes on, and where others are joined to it. */
interface Corners {
  readonly stops: Stops
  readonly goesOn: GoesOn
  readonly joined: readonly Mm[]
}

/** The countertops of all walls. Where two meet in a corner, one runs into it and the other stops at its front edge. */
export function topsOf(project: Project, walls: readonly Wall[]): BuiltRun[] {
  if (!areTopsMade(project)) return []
  const all = walls.flatMap((wall) => topsAlong(project, wall))
  const met = all.map((along) => all.flatMap((other) => meetingOf(project, along, other)))
  const stops = all.map((along, at) => stopsOf(project, along, met[at]!))
  return all.flatMap((along, at) => {
    const joined = all.flatMap((other, of) => joinedAt(along, other, stops[of]!))
    const corners = { stops: stops[at]!, goesOn: goesOnOf(met[at]!), joined }
    return topOf(project, along, corners)
  })
}

/** The tops along a wall, parted where one of another board, edge or splash begins too. */
function topsAlong(project: Project, wall: Wall): Along[] {
  const { cabinets } = project
  const isOne = (a: TopStep, b: TopStep) =>
    isOneTop(a, b) && isSameTop(cabinets[a.cabinet]!, cabinets[b.cabinet]!, project)
  return parted(stepsAt(project, wall), isOne).flatMap((steps): Along[] => {
    const first = cabinets[steps[0]!.cabinet]!
    const countertop = countertopOver(first, project)
    const thickness = topThickness(first, project)
    return countertop && thickness > 0 ? [{ wall, steps, countertop, thickness }] : []
  })
}

/** The bases of a wall, and the legs of corner bases that come along it from the wall that it meets. */
function stepsAt(project: Project, wall: Wall): TopStep[] {
  const own = cabinetsAt(project, wall).flatMap((cabinet) => topStepOf(cabinet, project) ?? [])
  const legs = reachingIn(project, wall).flatMap((body): TopStep[] => {
    const { cabinet, left, width, front } = body
    if (!body.isLeg || !isUnderTop(cabinet, project)) return []
    const face = settle(front + proudOf(cabinet, project))
    const [from, to] = [left, rightEdge(body)]
    return [
      {
        ...{
          cabinet: cabinet.id,
          from,
          to,
          level: topEdge(cabinet),
          face,
          middle: settle(left + width / 2),
          cutout: null,
        },
        ...{ isFree: false, rear: 0, hasSplash: cabinet.top?.hasSplash ?? null },
      },
    ]
  })
  return legs.length === 0 ? own : [...own, ...legs].sort((a, b) => a.from - b.from)
}

/** One top at another. */
interface TopMeeting {
  readonly side: 'left' | 'right'
  readonly isThrough: boolean
  readonly other: Along
  /** From the corner to the end of its own run, and to that of the other one. */
  readonly away: Mm
  readonly otherAway: Mm
}

/**
 * How two tops of a corner meet, as the first of them sees it; none where they do not. One of them goes on into the corner,
 * to the wall, also where no cabinet stands there: the one that is nearer to it, or the one at the wall before. Seen from
 * above, with the corner at the right of the first wall:
 *
 *     +---------------------------+
 *     |  runs into the corner     |
 *     +------------------+--------+   front edge, where the other stops
 *                        | stops  |
 */
function meetingOf(project: Project, along: Along, other: Along): readonly TopMeeting[] {
  return cornersOf(project).flatMap(({ before, after }): TopMeeting[] => {
    const isBefore = along.wall.id === before.id && other.wall.id === after.id
    if (!isBefore && !(along.wall.id === after.id && other.wall.id === before.id)) return []
    const [first, second] = isBefore ? [along, other] : [other, along]
    if (!doTopsMeet(first, second, before)) return []
    const [awayFirst, awaySecond] = [awayAtRight(first, before), second.steps[0]!.from]
    const isFirstThrough = awayFirst <= awaySecond
    const [away, otherAway] = isBefore ? [awayFirst, awaySecond] : [awaySecond, awayFirst]
    return [{ side: isBefore ? 'right' : 'left', isThrough: isFirstThrough === isBefore, other, away, otherAway }]
  })
}

function goesOnOf(meets: readonly TopMeeting[]): GoesOn {
  return Object.fromEntries(meets.flatMap(({ side, isThrough, away }) => (isThrough ? [[side, away]] : [])))
}

function stopsOf(project: Project, along: Along, meets: readonly TopMeeting[]): Stops {
  const { wall } = along
  let stops: Stops = {}
  for (const { side, isThrough, other, otherAway } of meets) {
    if (isThrough) continue
    const edge = topDepth(other)
    // The other wall has its corner at its other end.
    const there = side === 'left' ? 'right' : 'left'
    const ends = endsOf(project, other, { [there]: otherAway })
    const isToTheCorner = ends[there].by === otherAway
    // It goes on over the other top up to the splash there, where it can stand on both.
    const canGoOn = isToTheCorner && surfaceOf(other) === surfaceOf(along)
    const splash = canGoOn ? settle(edge - (other.countertop.splash > 0 ? other.thickness : 0)) : 0
    stops = { ...stops, [side]: { at: side === 'right' ? settle(wall.length - edge) : edge, splash, over: other } }
  }
  return stops
}

/**
 * Where along its wall a top has the bolts of another that stops at its front edge: as far from the corner as they are from
 * the wall of the other.
 */
function joinedAt(along: Along, other: Along, { left, right }: Stops): Mm[] {
  const { seamBolts } = along.countertop
  if (!seamBolts || (left?.over !== along && right?.over !== along) || !canBeBolted(along, other)) return []
  const places = boltsAcross(topDepth(other), seamBolts)
  // One that stops at its own left end stands at the wall after this, which is met at the right.
  return left?.over === along ? places.map((place) => settle(along.wall.length - place)) : places
}

/** Bolts lie at one height in both boards: under tops of one thickness that lie at one level. */
function canBeBolted(a: Along, b: Along): boolean {
  return a.thickness === b.thickness && a.steps[0]!.level === b.steps[0]!.level
}

/** What is told of a top that stops at the front edge of another without bolts, where bolts are wanted. */
function unboltedTo(over: Along, along: Along, project: Project): Unbolted[] {
  if (!along.countertop.seamBolts || canBeBolted(along, over)) return []
  return [{ mark: nameOf(over, project).mark, thickness: over.thickness, level: over.steps[0]!.level }]
}

/** The upper face of a top, from the floor. */
function surfaceOf({ steps, thickness }: Along): Mm {
  return settle(steps[0]!.level + thickness)
}

/** How far a run at the wall before ends from the corner. */
function awayAtRight({ steps }: Along, wall: Wall): Mm {
  return settle(wall.length - steps.at(-1)!.to)
}

/** Whether two tops would lie in one another, or their ends that stand out would. */
function doTopsMeet(first: Along, second: Along, before: Wall): boolean {
  const lies = ({ steps, thickness }: Along) => ({ level: steps[0]!.level, thickness })
  const nearest = ({ countertop }: Along, away: Mm) => Math.max(0, away - countertop.ends)
  return (
    areTopsLevel(lies(first), lies(second)) &&
    nearest(first, awayAtRight(first, before)) < topDepth(second) &&
    nearest(second, second.steps[0]!.from) < topDepth(first)
  )
}

/** A seat board is `BS1`. A top that lies over nothing but the leg of a corner is called after it: `BR1`, the return over B1. */
function nameOf({ steps, wall }: Along, project: Project): RunName {
  const own = steps.find(({ cabinet }) => project.cabinets[cabinet]!.wall === wall.id)
  const letter = isSeatHigh(project.cabinets[steps[0]!.cabinet]!) ? 'S' : 'T'
  return own ? runNamed('Top', letter, own.cabinet, project) : runNamed('Return', 'R', steps[0]!.cabinet, project)
}

function topOf(project: Project, along: Along, { stops, goesOn, joined: joints }: Corners): BuiltRun[] {
  const { wall, steps, countertop, thickness } = along
  const name = nameOf(along, project)
  const ends = endsOf(project, along, goesOn)
  const atWall = (side: Side) => !hasNoEnd(side, along, project)
  const stopAt = {
    left: stops.left ? settle(steps[0]!.from - stops.left.at) : Infinity,
    right: stops.right ? settle(stops.right.at - steps.at(-1)!.to) : Infinity,
  }
  const [left, right] = [Math.min(ends.left.by, stopAt.left), Math.min(ends.right.by, stopAt.right)]
  const longest = longestBoard(project, countertop.material)
  const splashPast = { left: stops.left?.splash ?? 0, right: stops.right?.splash ?? 0 }
  const closed = {
    left: ends.left.isClosed || (atWall('left') && steps[0]!.from <= left) || left === stopAt.left,
    right:
      ends.right.isClosed || (atWall('right') && wall.length - steps.at(-1)!.to <= right) || right === stopAt.right,
  }
  const isBolted = (stop: Stop | undefined) => stop !== undefined && canBeBolted(along, stop.over)
  const stopped = { left: isBolted(stops.left), right: isBolted(stops.right) }
  const unbolted = Object.values(stops).flatMap(({ over }) => unboltedTo(over, along, project))
  const start = settle(steps[0]!.from - left)
  const joined = joints.map((place) => settle(place - start)).sort((a, b) => a - b)
  const isSeat = isSeatHigh(project.cabinets[steps[0]!.cabinet]!)
  const run: TopRun = {
    steps,
    isSeat,
    left,
    right,
    closed,
    splashPast,
    stopped,
    joined,
    unbolted,
    countertop,
    thickness,
    longest,
  }
  if (!(topLength(run) > 0)) return []
  const first = steps[0]!
  const hasGrain = project.materials[countertop.material]?.hasGrain
  const own = { ...run, steps: steps.map((step) => shifted(step, first.from)) }
  const marks = steps.map(({ cabinet }) => project.cabinets[cabinet]!.number)
  const made = remembered(
    project,
    [name, own, marks, hasGrain, project.display, bandingRules(project).isInFinishedSize],
    () => {
      const { boards, missing } = bolted(topBoards(run), run)
      return { parts: partsOfRun(name, boards, project), problems: topProblems(run, missing, project) }
    },
  )
  const place = {
    wall: wall.id,
    left: settle(first.from - left),
    bottom: first.level,
    width: topLength(run),
    height: settle(thickness + (splashStretches(run).length > 0 ? countertop.splash : 0)),
    depth: topDepth(run),
  }
  const cabinets = steps.map(({ cabinet }) => cabinet)
  const isOwn = cabinets.some((id) => ownTopNames(project.cabinets[id]!).length > 0)
  return [{ ...name, kind: 'countertop', place, cabinets, ...(isOwn && { isOwn }), ...made }]
}

/** A step measured from the left end of its run. */
function shifted(step: TopStep, by: Mm): TopStep {
  return { ...step, middle: settle(step.middle - by), from: settle(step.from - by), to: settle(step.to - by) }
}
