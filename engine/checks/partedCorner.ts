import { betweenOf } from '../between/betweenOf'
import type { BuiltRun } from '../between/run'
import { areTopsLevel } from '../between/topEnds'
import { applyEdit } from '../project/apply'
import type { Cabinet, Project, Side, Wall } from '../project/document'
import type { Edit } from '../project/edit'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { topThickness } from '../project/topOver'
import { footprintOf } from '../runs/footprint'
import { rightEdge } from '../runs/lane'
import { gapsBeside } from '../runs/neighbours'
import { cornersOf } from '../site/wall'
import { type Mm, settle } from '../units/length'
import { about, type Finding, GEOMETRY, type Remedy, withRemedy } from './finding'
import { filler, LEAST_FILLER, MOST_SLIP, namesOf, ownOf, runMoved, widenedAt } from './partedTop'
import { sayIn } from './say'
import { countertopOf, countertops } from './worktop'

/**
 * A top that ends just before the front edge of one that runs into the corner. Seen from above, with the corner at the right
 * of its wall:
 *
 *     -----------------------+ corner
 *      top     | |           |
 *      --------+ |   through |
 *             gap
 */
interface CornerParting {
  readonly top: BuiltRun
  readonly through: BuiltRun
  /** The last that it lies on, at the corner, and at which side of that the corner is. */
  readonly cabinet: Cabinet
  readonly side: Side
  /** From that to the front edge of the other. */
  readonly gap: Mm
  /** How far tops stand out past what they lie on. */
  readonly ends: Mm
}

/** Narrow gaps that part the countertops of two walls in the corner where they meet. */
export function partedCornerFindings(project: Project, runs: readonly BuiltRun[]): Finding[] {
  const say = sayIn(project.display)
  return cornerPartings(project, runs).map((one) => {
    const { top, through, cabinet, gap, ends } = one
    const [measure, limit] = say.apart(gap, ends)
    const what = top.parts.some(({ role }) => role === 'seatBoard') ? 'seat board' : 'countertop'
    const message =
      `it ends ${measure} before the front edge of ${through.mark} round the corner, and its ${what} ${top.mark} stands out only ` +
      `${limit} past it: the two are parted there. Nearer than that, or with the gap closed, they meet.`
    const told = { weight: 'mind', message, measure, limit, source: GEOMETRY } as const
    return withRemedy(about({ cabinet, mark: markOf(cabinet) }, told), () => wayOut(one, project))
  })
}

function cornerPartings(project: Project, runs: readonly BuiltRun[]): CornerParting[] {
  const tops = countertops(runs)
  return cornersOf(project).flatMap(({ before, after }) => {
    const [first, second] = [before, after].map((wall) => tops.filter(({ place }) => place.wall === wall.id))
    return first!.flatMap((a) =>
      second!.flatMap((b) => {
        const aways = awaysOf(a, b, before, project)
        return [...partingAt(project, a, b, aways), ...partingAt(project, b, a, aways?.toReversed())]
      }),
    )
  })
}

/** How far what two tops lie on ends from the corner; the first at the wall before. */
function awaysOf(a: BuiltRun, b: BuiltRun, before: Wall, project: Project): At[] | null {
  const [last, next] = [ownOf(a, project).at(-1), ownOf(b, project)[0]]
  if (!last || !next || a.cabinets.some((id) => b.cabinets.includes(id))) return null
  return [
    { cabinet: last, side: 'right', away: settle(before.length - rightEdge(footprintOf(last, project))) },
    { cabinet: next, side: 'left', away: footprintOf(next, project).left },
  ]
}

interface At {
  readonly cabinet: Cabinet
  readonly side: Side
  readonly away: Mm
}

/** Whether the first is parted from the second, which then runs into the corner past it. */
function partingAt(
  project: Project,
  top: BuiltRun,
  through: BuiltRun,
  aways: readonly At[] | null | undefined,
): CornerParting[] {
  const [own, other] = aways ?? []
  if (!own || !other) return []
  const lies = ({ place }: BuiltRun, cabinet: Cabinet) => {
    return { level: place.bottom, thickness: topThickness(cabinet, project) }
  }
  const { ends } = countertopOf(top, project)
  const gap = settle(own.away - through.place.depth)
  if (gap < ends || gap > MOST_SLIP) return []
  if (!areTopsLevel(lies(top, own.cabinet), lies(through, other.cabinet))) return []
  // The other reaches into the corner before it; what stands or reaches in between parts them for good.
  const { to } = gapsBeside(project, own.cabinet)[own.side]
  const isFree = through.cabinets.some((id) => markOf(find(project.cabinets, id)!) === to)
  return isFree ? [{ top, through, cabinet: own.cabinet, side: own.side, gap, ends }] : []
}

/** A filler where one can be cut, since what opens then goes no nearer to the corner; else all of the run moved up, or the last made wider. */
function wayOut(one: CornerParting, project: Project): Remedy | null {
  const { top, through, cabinet, side, gap } = one
  const edit = runMoved(ownOf(top, project), side === 'right' ? gap : -gap, project)
  const ways = [
    gapsBeside(project, cabinet)[side].gap < LEAST_FILLER ? null : filler(cabinet, side, project),
    edit && { label: `Move ${namesOf(top, project)} to the ${side}, to the front edge of ${through.mark}`, edit },
    widenedAt(cabinet, side, gap, project),
  ]
  return ways.find((way) => way && doesMeet(way.edit, project)) ?? null
}

/** Whether one corner less is parted then. */
function doesMeet(edit: Edit, project: Project): boolean {
  const after = applyEdit(project, edit)
  return cornerPartings(after, betweenOf(after)).length < cornerPartings(project, betweenOf(project)).length
}
