import type { WallId } from '../basics/id'
import type { Project, Side, Wall } from '../project/document'
import { footprintOf } from '../runs/footprint'
import { rightEdge } from '../runs/lane'
import { faceFrom } from '../runs/reach'
import { cornersOf } from '../site/wall'
import { type Mm, settle } from '../units/length'
import type { KickStep } from './kick'

/** The kicks along a wall, from left to right. */
type Runs = readonly (readonly KickStep[])[]

/** The kick of a wall that ends at an inside corner, as it is seen from there. */
interface EndOfKick {
  readonly step: KickStep
  /** From the other wall of the corner to the end of the kick. */
  readonly away: Mm
  /** From its own wall to what stands out furthest of the cabinet over its end. */
  readonly front: Mm
  /** Whether a panel that stands on the floor ends it. */
  readonly isStopped: boolean
}

/**
 * The kicks of all walls, from left to right along each, with those that meet in an inside corner run on until they do: the
 * one that ends nearer to the corner, of two as near that of the wall before, as far as the rear of the other; the other
 * butted against its face, under the cabinets there. Where more than their fillers is open between them, neither runs on.
 *
 *     wall before  ----------+
 *      ______________________|  wall after
 *      ____ through _________|
 *                      | |   |
 *              butted  | |   |
 */
export function kicksMet(project: Project, kicks: ReadonlyMap<WallId, Runs>): ReadonlyMap<WallId, Runs> {
  const met = new Map(kicks)
  for (const { before, after } of cornersOf(project)) {
    const ends = { before: kickAt(project, before, 'right', kicks), after: kickAt(project, after, 'left', kicks) }
    if (!ends.before || !ends.after) continue
    const isBeforeThrough = ends.before.away <= ends.after.away
    const [through, butted] = isBeforeThrough ? [ends.before, ends.after] : [ends.after, ends.before]
    if (!doMeet(through, butted)) continue
    const onTo = {
      through: Math.min(through.away, settle(butted.step.face - butted.step.thickness)),
      butted: Math.min(butted.away, through.step.face),
    }
    const [first, second] = isBeforeThrough ? [onTo.through, onTo.butted] : [onTo.butted, onTo.through]
    met.set(before.id, withLast(met.get(before.id)!, { to: settle(before.length - first) }))
    met.set(after.id, withFirst(met.get(after.id)!, { from: second }))
  }
  return met
}

/** A kick under cabinets that overlap ends inside the other; that is told of the cabinets, and it stays as it is. */
function doMeet(through: EndOfKick, butted: EndOfKick): boolean {
  if (through.isStopped || butted.isStopped || butted.away < through.step.face) return false
  return through.away <= butted.front && butted.away <= through.front
}

function kickAt(project: Project, wall: Wall, side: Side, kicks: ReadonlyMap<WallId, Runs>): EndOfKick | null {
  const runs = kicks.get(wall.id) ?? []
  const step = side === 'left' ? runs[0]?.[0] : runs.at(-1)?.at(-1)
  const cabinet = step && project.cabinets[step.cabinet]
  if (!step || !cabinet) return null
  const there = footprintOf(cabinet, project)
  const isStopped = side === 'left' ? step.from !== settle(there.left) : step.to !== settle(rightEdge(there))
  const away = side === 'left' ? step.from : settle(wall.length - step.to)
  return { step, away, front: faceFrom(cabinet, project), isStopped }
}

function withFirst(runs: Runs, change: Pick<KickStep, 'from'>): Runs {
  const [run, ...others] = runs
  const [step, ...rest] = run!
  return [[{ ...step!, ...change }, ...rest], ...others]
}

function withLast(runs: Runs, change: Pick<KickStep, 'to'>): Runs {
  const run = runs.at(-1)!
  return [...runs.slice(0, -1), [...run.slice(0, -1), { ...run.at(-1)!, ...change }]]
}
