import { bad, good, type Result } from '../basics/result'
import type { Rect } from '../geometry/rect'
import { topOf } from '../geometry/rect'
import type { Cabinet, Front, Project } from '../project/document'
import { childrenOf, type FrontPath } from '../project/frontTree'
import { markOf } from '../project/mark'
import { formatWithUnit } from '../units/format'
import type { Mm } from '../units/length'
import { withOverrides } from './build'
import { type Carcass, carcassOf } from './carcass'
import { rectsWithin } from './frontRects'
import { frontArea } from './openings'
import { inCabinet } from './past'
import { SILENT } from './report'

/** A part of a front, divided or not, and its room seen from the room: in the cabinet's frame, x and y. */
export interface FrontPlace {
  readonly path: FrontPath
  readonly front: Front
  readonly rect: Rect
}

/** The whole front and all that it is divided into, each before what is in it; none where the cabinet cannot be built. */
export function frontPlaces(project: Project, cabinet: Cabinet): FrontPlace[] {
  const carcass = carcassIn(project, cabinet)
  if (!carcass) return []
  const places = placesIn({ path: [], front: cabinet.front, rect: frontArea(carcass) }, carcass)
  return places.map((place) => ({ ...place, rect: inCabinet(place.rect, carcass) }))
}

function carcassIn({ methods, method, materials }: Project, cabinet: Cabinet): Carcass | null {
  const usual = methods[cabinet.method ?? method]
  return usual ? carcassOf(cabinet, { method: withOverrides(usual, cabinet), materials }, SILENT) : null
}

function placesIn(place: FrontPlace, carcass: Carcass): FrontPlace[] {
  const rects = rectsWithin(place.front, place.rect, place.path.length === 0, carcass)
  const inner = childrenOf(place.front).flatMap(({ front }, at) =>
    placesIn({ path: [...place.path, at], front, rect: rects[at]! }, carcass),
  )
  return [place, ...inner]
}

/**
 * The front of a cabinet with its rows at the heights of a neighbour's, the lowest taking what is left. Refused where
 * the tops of the two fronts or the numbers of their rows differ.
 */
export function linedUpWith(project: Project, cabinet: Cabinet, neighbour: Cabinet): Result<Front> {
  const [own, theirs] = [frontPlaces(project, cabinet)[0], frontPlaces(project, neighbour)]
  const whole = theirs[0]
  if (!own || !whole || own.front.kind !== 'rows' || whole.front.kind !== 'rows') {
    const one = own?.front.kind === 'rows' ? neighbour : cabinet
    return bad(`${markOf(one)} has no rows to line up.`)
  }
  const { rows } = own.front
  if (rows.length !== whole.front.rows.length) {
    return bad(`${markOf(cabinet)} has ${rows.length} rows; ${markOf(neighbour)} has ${whole.front.rows.length}.`)
  }
  const [top, other] = [cabinet.bottom + topOf(own.rect), neighbour.bottom + topOf(whole.rect)]
  if (Math.abs(top - other) > 0.01) {
    const say = (length: Mm) => formatWithUnit(length, project.display)
    return bad(`The fronts of ${markOf(cabinet)} end at ${say(top)}; those of ${markOf(neighbour)} at ${say(other)}.`)
  }
  const heights = theirs.filter(({ path }) => path.length === 1).map(({ rect }) => rect.height)
  const isLast = (at: number) => at === rows.length - 1
  return good({
    kind: 'rows',
    rows: rows.map((row, at) => ({
      ...row,
      size: isLast(at) ? { kind: 'share', share: 1 } : { kind: 'fixed', height: heights[at]! },
    })),
  })
}
