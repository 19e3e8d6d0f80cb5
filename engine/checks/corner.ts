import type { Cabinet, Project, Side } from '../project/document'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { hasTopOver } from '../project/topOver'
import { fitOf } from '../runs/fit'
import { footprintOf } from '../runs/footprint'
import { meetingsOf } from '../runs/reach'
import { type Mm, settle } from '../units/length'
import { about, type Finding, GEOMETRY, PRACTICE, type Remedy, withRemedy } from './finding'
import { sayIn } from './say'

/** Nearer than this it stands in its corner. Walls are out of square by as much. Common practice, no source. */
const IN_CORNER: Mm = 30

/** Corner cabinets that do not stand in their corner, and what they take of the other wall. */
export function cornerFindings(project: Project, cabinets: readonly Cabinet[]): Finding[] {
  return cabinets.flatMap((cabinet) => [...awayFinding(cabinet, project), ...otherWall(cabinet, project)])
}

function awayFinding(cabinet: Cabinet, project: Project): Finding[] {
  const { corner } = cabinet
  const ends = endsOf(cabinet, project)
  if (!corner || !ends || ends[corner.hand] <= IN_CORNER) return []
  const say = sayIn(project.display)
  const [measure, limit] = [say.length(ends[corner.hand]), say.length(IN_CORNER)]
  const mark = markOf(cabinet)
  const message = () => {
    const inWay = whatIsInTheWay(cabinet, project)
    return (
      `its corner is ${measure} from the ${corner.hand} end of the wall, so its other leg would stand in the room.` +
      (inWay ? ` In its corner ${inWay}.` : '')
    )
  }
  const finding = about({ cabinet, mark }, { weight: 'mind', message, measure, limit, source: PRACTICE })
  return [withRemedy(finding, () => mirroring(cabinet, project) ?? intoCorner(cabinet, project))]
}

/** How far it is from either end of its wall. */
function endsOf(cabinet: Cabinet, project: Project): { readonly left: Mm; readonly right: Mm } | null {
  const wall = find(project.walls, cabinet.wall)
  if (!wall) return null
  const { left, width } = footprintOf(cabinet, project)
  return { left, right: settle(wall.length - left - width) }
}

/** It stands in the corner at the other end already. */
function mirroring(cabinet: Cabinet, project: Project): Remedy | null {
  const { corner, id } = cabinet
  const hand = corner?.hand === 'left' ? 'right' : 'left'
  if (!corner || (endsOf(cabinet, project)?.[hand] ?? IN_CORNER + 1) > IN_CORNER) return null
  const edit = { kind: 'setCorner', ids: [id], corner: { ...corner, hand } } as const
  return { label: `Turn ${markOf(cabinet)} to the ${hand} corner`, edit }
}

/** Moved along its wall into its corner, whether that is free or not. */
function inCorner(cabinet: Cabinet, hand: Side, project: Project): Cabinet | null {
  const { corner } = cabinet
  if (!corner) return null
  const turned = { ...cabinet, corner: { ...corner, hand } }
  const ends = endsOf(turned, project)
  return ends && { ...turned, left: settle(hand === 'left' ? cabinet.left - ends.left : cabinet.left + ends.right) }
}

/** Why it cannot stand in its corner, in the words of what it meets there: `B1 would overlap B2 by 35 mm`; null where it can. */
function whatIsInTheWay(cabinet: Cabinet, project: Project): string | null {
  const moved = cabinet.corner && inCorner(cabinet, cabinet.corner.hand, project)
  const fit = moved && fitOf(project, moved)
  return fit && !fit.fits ? fit.why : null
}

/** Into its own corner, else turned round and into the one at the other end of its wall, where that is free. */
export function intoCorner(cabinet: Cabinet, project: Project): Remedy | null {
  const { corner, id } = cabinet
  if (!corner) return null
  const free = (hand: Side) => {
    const moved = inCorner(cabinet, hand, project)
    return moved && fitOf(project, moved).fits ? moved.left : null
  }
  const own = free(corner.hand)
  if (own !== null) {
    const edit = { kind: 'shapeCabinets', shapes: [{ id, left: own }] } as const
    return own === cabinet.left ? null : { label: `Move ${markOf(cabinet)} into its corner`, edit }
  }
  const hand = corner.hand === 'left' ? 'right' : 'left'
  const left = free(hand)
  if (left === null) return null
  const turn = { kind: 'setCorner', ids: [id], corner: { ...corner, hand } } as const
  const move = { kind: 'shapeCabinets', shapes: [{ id, left }] } as const
  return {
    label: `Turn ${markOf(cabinet)} and move it into the ${hand} corner`,
    edit: { kind: 'several', edits: [turn, move] },
  }
}

function otherWall(cabinet: Cabinet, project: Project): Finding[] {
  const { corner } = cabinet
  if (!corner) return []
  const wall = find(project.walls, cabinet.wall)
  // At walls that meet the other leg stands there, and is kept clear and covered like all else.
  if (wall && meetingsOf(project, wall).some(({ side }) => side === corner.hand)) return slantFinding(cabinet, project)
  const say = sayIn(project.display)
  const [along, deep] = [say.length(corner.other), say.length(corner.otherDepth)]
  const message =
    `in its ${corner.hand} corner it takes ${along} of the other wall, ${deep} deep: what stands there begins ${along} from the corner.` +
    (hasTopOver(cabinet, project)
      ? ` The countertop is made along its own wall; the ${say.length(settle(corner.other - cabinet.depth))} before it belong to that of the other wall.`
      : '')
  const mark = markOf(cabinet)
  return [about({ cabinet, mark }, { weight: 'know', message, measure: along, limit: 'kept free', source: GEOMETRY })]
}

/** Tops are straight boards: the triangle before the slanting door of a diagonal is none of them. */
function slantFinding(cabinet: Cabinet, project: Project): Finding[] {
  const { corner, width, depth } = cabinet
  if (corner?.kind !== 'diagonal' || !hasTopOver(cabinet, project)) return []
  const say = sayIn(project.display)
  const sides = `${say.length(settle(width - corner.otherDepth))} by ${say.length(settle(corner.other - depth))}`
  const message = `its countertops are two straight boards along the walls; the triangle before its door, ${sides}, is made on site.`
  return [
    about(
      { cabinet, mark: markOf(cabinet) },
      { weight: 'know', message, measure: sides, limit: 'made on site', source: PRACTICE },
    ),
  ]
}
