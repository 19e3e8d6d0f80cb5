import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { misfits } from '../runs/fit'
import { narrowedInPlace, nearestPlace } from '../runs/free'
import { formatWithUnit } from '../units/format'
import { intoCorner } from './corner'
import { type Finding, type Remedy, withRemedy } from './finding'

const WALLS = 'worked out from the walls and what stands at them'

/**
 * What stands where it cannot stand: over another cabinet or an opening, past the wall, in what reaches in from the wall that
 * meets its own. A drag never lands there, but a file or a changed wall may ask for it.
 */
export function misfitFindings(project: Project): Finding[] {
  return misfits(project).map(({ cabinet, why, is, limit }) => {
    const about = { kind: 'cabinet', cabinet: cabinet.id } as const
    const finding: Finding = { weight: 'stop', about, message: why, measure: is, limit, source: WALLS }
    return withRemedy(finding, () => wayOut(project, cabinet))
  })
}

/** To a place no farther away than it is wide, else narrower where it stands, else to any place. A corner goes into a corner of its wall. */
function wayOut(project: Project, cabinet: Cabinet): Remedy | null {
  if (cabinet.corner) return intoCorner(cabinet, project)
  const moved = nearestPlace(project, cabinet)
  if (moved && Math.abs(moved.left - cabinet.left) <= cabinet.width) return moveTo(moved, project)
  const narrowed = narrowedInPlace(project, cabinet)
  if (narrowed) {
    const { id, left, width } = narrowed
    const label = `Narrow ${markOf(cabinet)} to ${formatWithUnit(width, project.display)}`
    return { label, edit: { kind: 'shapeCabinets', shapes: [{ id, left, width }] } }
  }
  return moved && moveTo(moved, project)
}

function moveTo(cabinet: Cabinet, { display }: Project): Remedy {
  const { id, left } = cabinet
  const label = `Move ${markOf(cabinet)} to ${formatWithUnit(left, display)} from the left`
  return { label, edit: { kind: 'shapeCabinets', shapes: [{ id, left }] } }
}
