import type { CabinetId } from '../basics/id'
import type { Rect } from '../geometry/rect'
import type { Countertop } from '../project/between'
import type { Cabinet, Project, Side, Wall } from '../project/document'
import { hasTopOver, topThickness } from '../project/topOver'
import { footprintOf } from '../runs/footprint'
import { rightEdge, sharedBy, topEdge } from '../runs/lane'
import { inTheWay, meetingsOf } from '../runs/reach'
import { type Mm, settle } from '../units/length'
import { isTopFree, type TopStep, topDepth } from './countertop'
import { cabinetsAt } from './runsAlong'

/** Where a top runs along its wall, before it is known what the other wall of a corner has. */
export interface Along {
  readonly wall: Wall
  readonly steps: readonly TopStep[]
  /** What it is made by and of, the same over all its steps. */
  readonly countertop: Countertop
  readonly thickness: Mm
}

/** Whether tops at two levels would lie in one another, each with its thickness. */
export function areTopsLevel(a: { level: Mm; thickness: Mm }, b: { level: Mm; thickness: Mm }): boolean {
  const higher = settle(a.level - b.level)
  return higher < b.thickness && -higher < a.thickness
}

/** How far a top goes on past its run to the wall of a corner, where the top of the other wall is butted against it. */
export type GoesOn = { readonly [side in 'left' | 'right']?: Mm }

/** How far a top stands out past an end, and whether something that touches it there closes it. */
interface TopEnd {
  readonly by: Mm
  readonly isClosed: boolean
}

/**
 * How far a top stands out past its ends: by what is wanted, but not into the end of the wall or what stands beside it. That
 * of an island has no wall at its ends. Two tops of one level share the gap between them. An end is closed where what stands there touches it, and is no appliance.
 */
export function endsOf(
  project: Project,
  along: Along,
  goesOn: GoesOn,
): { readonly left: TopEnd; readonly right: TopEnd } {
  const { wall, steps, thickness } = along
  const wanted = along.countertop.ends
  const { from, level } = steps[0]!
  const { to } = steps.at(-1)!
  const inRun = new Set<CabinetId>(steps.map(({ cabinet }) => cabinet))
  const band = { left: from, width: settle(to - from), bottom: level, height: thickness }
  const most = (side: Side, room: Mm) =>
    hasNoEnd(side, along, project) ? wanted : Math.min(goesOn[side] ?? wanted, room)
  let left: TopEnd = { by: most('left', from), isClosed: false }
  let right: TopEnd = { by: most('right', settle(wall.length - to)), isClosed: false }
  for (const { cabinet: other, there } of besidesAt(project, along)) {
    if (inRun.has(other.id)) continue
    const hasTop = hasTopOver(other, project)
    // What interrupts the top stands in it, however low it is said to be.
    const upTo = other.space && !hasTop ? Math.max(there.height, level - there.bottom) : there.height
    // Another's top lies over what was said to have none.
    const isOthers = other.kind === 'base' && other.top?.isOver === false
    const covered =
      hasTop || other.space || isOthers
        ? { ...there, height: settle(upTo + (topThickness(other, project) || thickness)) }
        : there
    if (sharedBy(band, covered).y <= 0) continue
    const share = hasTop ? 2 : 1
    const isLeft = there.left + there.width / 2 < from + band.width / 2
    const gap = settle(Math.max(0, isLeft ? from - rightEdge(there) : there.left - to))
    const stops = {
      by: settle(gap / share),
      isClosed: gap === 0 && doesClose(other, hasTop, isLeft ? 'right' : 'left'),
    }
    if (isLeft) left = nearer(left, stops)
    else right = nearer(right, stops)
  }
  return { left, right }
}

/** Whether there is no end of a wall for it: it lies on what stands away from the walls, and no wall meets its own there. */
export function hasNoEnd(side: Side, along: Along, project: Project): boolean {
  return isTopFree(along) && !meetingsOf(project, along.wall).some((one) => one.side === side)
}

/** An appliance that interrupts a top is not joined to it; beside a high one a panel may be. */
function doesClose(other: Cabinet, hasTop: boolean, side: Side): boolean {
  if (!other.space || hasTop) return true
  return other.kind === 'tall' && other.beside[side].kind !== 'none'
}

function nearer(a: TopEnd, b: TopEnd): TopEnd {
  if (a.by !== b.by) return a.by < b.by ? a : b
  return { by: a.by, isClosed: a.isClosed || b.isClosed }
}

/**
 * What stands at a wall, and what reaches in from the one that it meets: legs with their tops, and what is no base. The
 * tops of bases there at the same level are stopped at one another elsewhere.
 */
function besidesAt(project: Project, along: Along): { readonly cabinet: Cabinet; readonly there: Rect }[] {
  const { wall, steps, thickness } = along
  const { level } = steps[0]!
  const own = cabinetsAt(project, wall).map((cabinet) => ({ cabinet, there: footprintOf(cabinet, project) }))
  const round = inTheWay(project, wall, topDepth(along)).filter((body) => {
    const there = { level: topEdge(body), thickness: topThickness(body.cabinet, project) || thickness }
    const isLevel = areTopsLevel({ level, thickness }, there)
    return body.isLeg || body.cabinet.kind !== 'base' || !isLevel
  })
  return [...own, ...round.map((body) => ({ cabinet: body.cabinet, there: body }))]
}
