import { betweenOf } from '../between/betweenOf'
import type { BuiltRun } from '../between/run'
import { applyEdit } from '../project/apply'
import type { Cabinet, Project, Side } from '../project/document'
import type { CabinetShape, Edit } from '../project/edit'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { isSameTop } from '../project/topOver'
import { gapFilled } from '../runs/fill'
import { fitOf } from '../runs/fit'
import { footprintOf } from '../runs/footprint'
import { rightEdge } from '../runs/lane'
import { gapsBeside } from '../runs/neighbours'
import { type Mm, settle } from '../units/length'
import { about, type Finding, GEOMETRY, type Remedy, withRemedy } from './finding'
import { sayIn } from './say'
import { countertops } from './worktop'

/** What is wider was left free for something; what is narrower is a slip of the hand. Common practice, no source. */
export const MOST_SLIP: Mm = 100
/** A filler that is narrower cannot be held at the saw. Common practice, no source. */
export const LEAST_FILLER: Mm = 40

/** Two tops at a wall that would be one but for a narrow gap between the cabinets under them. */
interface Parting {
  readonly tops: readonly [BuiltRun, BuiltRun]
  readonly left: Cabinet
  readonly right: Cabinet
  readonly gap: Mm
}

/** Narrow gaps between bases that part the countertop over them. */
export function partedTopFindings(project: Project, runs: readonly BuiltRun[]): Finding[] {
  const say = sayIn(project.display)
  return partingsIn(project, runs).map((one) => {
    const { tops, left, right, gap } = one
    const what = tops[0].parts.some(({ role }) => role === 'seatBoard') ? 'seat board' : 'countertop'
    const message =
      `${say.length(gap)} lie free between it and ${markOf(right)}, and part the ${what}: ${tops[0].mark} ends at the one ` +
      `and ${tops[1].mark} begins at the other. With the gap closed they are one.`
    const told = { weight: 'mind', message, measure: say.length(gap), limit: say.length(0), source: GEOMETRY } as const
    return withRemedy(about({ cabinet: left, mark: markOf(left) }, told), () => wayOut(one, project))
  })
}

function partingsIn(project: Project, runs: readonly BuiltRun[]): Parting[] {
  const tops = countertops(runs)
  return tops.flatMap((top) =>
    tops.flatMap((next): Parting[] => {
      const isBeside = next.place.wall === top.place.wall && next.place.bottom === top.place.bottom
      const [left, right] = [lastOf(top, project), firstOf(next, project)]
      if (next === top || !isBeside || !left || !right || !isSameTop(left, right, project)) return []
      const gap = settle(footprintOf(right, project).left - rightEdge(footprintOf(left, project)))
      // What stands or reaches in between parts them for good.
      const isFree = gapsBeside(project, left).right.to === markOf(right)
      return gap > 0 && gap <= MOST_SLIP && isFree ? [{ tops: [top, next], left, right, gap }] : []
    }),
  )
}

/** What of a run stands at its own wall, from left to right. */
export function ownOf({ cabinets, place }: BuiltRun, project: Project): Cabinet[] {
  return cabinets.flatMap((id) => find(project.cabinets, id) ?? []).filter(({ wall }) => wall === place.wall)
}

function firstOf(top: BuiltRun, project: Project): Cabinet | undefined {
  return ownOf(top, project)[0]
}

function lastOf(top: BuiltRun, project: Project): Cabinet | undefined {
  return ownOf(top, project).at(-1)
}

/** All of either run moved up to the other where it ends free; else one made wider, or a filler where one can be cut. */
function wayOut(one: Parting, project: Project): Remedy | null {
  const filled = [filler(one.left, 'right', project), filler(one.right, 'left', project)]
  const ways = [
    moved(one, 'right', project),
    moved(one, 'left', project),
    ...(one.gap < LEAST_FILLER ? [] : filled),
    widenedAt(one.left, 'right', one.gap, project),
    widenedAt(one.right, 'left', one.gap, project),
  ]
  return ways.find((way) => way && doesJoin(way.edit, one, project)) ?? null
}

/** Whether both are under one top then, and no other gap parts one instead. */
function doesJoin(edit: Edit, { left, right }: Parting, project: Project): boolean {
  const after = applyEdit(project, edit)
  const runs = betweenOf(after)
  const isOne = countertops(runs).some(({ cabinets }) => cabinets.includes(left.id) && cabinets.includes(right.id))
  return isOne && partingsIn(after, runs).length < partingsIn(project, betweenOf(project)).length
}

function moved({ tops, gap }: Parting, which: 'left' | 'right', project: Project): Remedy | null {
  const [top, to, way, by] =
    which === 'left' ? ([tops[0], tops[1], 'right', gap] as const) : ([tops[1], tops[0], 'left', -gap] as const)
  const edit = runMoved(ownOf(top, project), by, project)
  return edit && { label: `Move ${namesOf(top, project)} to the ${way}, to what ${to.mark} lies on`, edit }
}

export function namesOf(top: BuiltRun, project: Project): string {
  return ownOf(top, project).map(markOf).join(', ')
}

/** All of a run moved along its wall. What touches something at its other end stays: a gap would only go there. */
export function runMoved(cabinets: readonly Cabinet[], by: Mm, project: Project): Edit | null {
  const outer = by > 0 ? cabinets[0]! : cabinets.at(-1)!
  const side = by > 0 ? 'left' : 'right'
  if (cabinets.some(({ corner }) => corner) || gapsBeside(project, outer)[side].gap === 0) return null
  const there = cabinets.map((cabinet) => ({ ...cabinet, left: settle(cabinet.left + by) }))
  if (!fitOf(project, there).fits) return null
  return { kind: 'shapeCabinets', shapes: there.map(({ id, left }): CabinetShape => ({ id, left })) }
}

export function filler(cabinet: Cabinet, side: Side, project: Project): Remedy | null {
  const edit = gapFilled(project, cabinet, side)
  return edit && { label: `Put a filler at the ${side} of ${markOf(cabinet)}`, edit }
}

/** A cabinet made wider at one side, as far as there is room. */
export function widenedAt(cabinet: Cabinet, side: Side, by: Mm, project: Project): Remedy | null {
  if (cabinet.corner) return null
  const width = settle(cabinet.width + by)
  const shape = { id: cabinet.id, width, ...(side === 'left' && { left: settle(cabinet.left - by) }) }
  if (!fitOf(project, { ...cabinet, ...shape }).fits) return null
  return {
    label: `Widen ${markOf(cabinet)} to ${sayIn(project.display).length(width)}`,
    edit: { kind: 'shapeCabinets', shapes: [shape] },
  }
}
