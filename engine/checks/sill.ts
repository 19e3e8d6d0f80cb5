import { valuesOf } from '../basics/id'
import type { BuiltRun } from '../between/run'
import { boxOf } from '../cabinets/boardBox'
import type { Opening, Project } from '../project/document'
import { find } from '../project/references'
import { rightEdge } from '../runs/lane'
import { type Mm, settle } from '../units/length'
import { type Finding, PRACTICE, withRemedy } from './finding'
import { sayIn } from './say'
import { countertopOf, countertops, surfaceOf, topChanged } from './worktop'

/** Countertops and splashes that stand before a pane. */
export function sillFindings(project: Project, runs: readonly BuiltRun[]): Finding[] {
  return countertops(runs).flatMap((top) => {
    const wall = find(project.walls, top.place.wall)
    const windows = wall ? valuesOf<Opening>(wall.openings).filter((one) => isBehind(one, top)) : []
    return windows.flatMap((pane) => sillFinding(top, pane, project))
  })
}

function isBehind({ kind, left, width }: Opening, { place }: BuiltRun): boolean {
  return kind === 'window' && left < rightEdge(place) && left + width > place.left
}

/** A splash may stop short of the window. */
function hasSplashBefore({ parts, place }: BuiltRun, { left, width }: Opening): boolean {
  return parts
    .filter(({ role }) => role === 'splash')
    .map((part) => boxOf(part))
    .some(({ min, max }) => place.left + min.x < left + width && place.left + max.x > left)
}

function sillFinding(top: BuiltRun, pane: Opening, project: Project): Finding[] {
  const surface = surfaceOf(top, project)
  const highest = settle(surface + (hasSplashBefore(top, pane) ? countertopOf(top, project).splash : 0))
  if (highest <= pane.bottom || top.place.bottom >= pane.bottom + pane.height) return []
  const say = sayIn(project.display)
  const room = settle(pane.bottom - surface)
  const words =
    room >= 0
      ? `its splash reaches up to ${say.length(highest)}; the window behind it begins at ${say.length(pane.bottom)}.`
      : `it lies at ${say.length(surface)}; the window behind it begins at ${say.length(pane.bottom)}.`
  const told: Finding = {
    weight: 'mind',
    about: { kind: 'cabinet', cabinet: top.cabinets[0]! },
    message: `${top.mark}: ${words}`,
    measure: say.length(room >= 0 ? highest : surface),
    limit: say.length(pane.bottom),
    source: PRACTICE,
  }
  return [withRemedy(told, () => lowered(room))]

  function lowered(splash: Mm) {
    if (splash < 0) return null
    const label = splash > 0 ? `Lower the splash to ${say.length(splash)}` : 'Leave out the splash'
    return { label, edit: topChanged(top, project, { splash }) }
  }
}
