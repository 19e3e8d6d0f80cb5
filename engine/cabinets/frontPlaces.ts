import { bad, good, type Result } from '../basics/result'
import type { Rect } from '../geometry/rect'
import { topOf } from '../geometry/rect'
import type { Cabinet, Front, FrontRow, Project } from '../project/document'
import { childrenOf, type FrontPath } from '../project/frontTree'
import { markOf } from '../project/mark'
import { formatWithUnit } from '../units/format'
import type { Mm } from '../units/length'
import { type Rules, withOverrides } from './build'
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

/** The carcass of a cabinet of a project; null where it cannot be built. */
export function carcassIn(project: Project, cabinet: Cabinet): Carcass | null {
  const rules = rulesIn(project, cabinet)
  return rules && carcassOf(cabinet, rules, SILENT)
}

/** What a cabinet of a project is built by; null where its method is not there. */
export function rulesIn({ methods, method, materials }: Project, cabinet: Cabinet): Rules | null {
  const usual = methods[cabinet.method ?? method]
  return usual ? { method: withOverrides(usual, cabinet), materials } : null
}

function placesIn(place: FrontPlace, carcass: Carcass): FrontPlace[] {
  const rects = rectsWithin(place.front, place.rect, place.path.length === 0, carcass)
  const inner = childrenOf(place.front).flatMap(({ front }, at) =>
    placesIn({ path: [...place.path, at], front, rect: rects[at]! }, carcass),
  )
  return [place, ...inner]
}

/**
 * The front of a cabinet with its rows at the heights of a neighbour's, the lowest taking what is left. Where the numbers of
 * their rows differ, the topmost row alone is lined up and the others keep their sizes, as far as they leave room. Fronts that
 * begin at one height and end at two are lined up from below, where they have as many rows: the topmost takes what is left.
 * Refused where they neither begin nor end at one height, or where nothing would be left for a row.
 */
export function linedUpWith(project: Project, cabinet: Cabinet, neighbour: Cabinet): Result<Front> {
  const [own, whole] = [cabinet, neighbour].map((one) => frontPlaces(project, one)[0])
  if (!own || !whole || own.front.kind !== 'rows' || whole.front.kind !== 'rows') {
    const one = own?.front.kind === 'rows' ? neighbour : cabinet
    return bad(`${markOf(one)} has no rows to line up.`)
  }
  const say = (length: Mm) => formatWithUnit(length, project.display)
  const [top, other] = [cabinet.bottom + topOf(own.rect), neighbour.bottom + topOf(whole.rect)]
  if (Math.abs(top - other) > 0.01) {
    const fromBelow = linedUpFromBelow(project, cabinet, neighbour)
    if (fromBelow) return good(fromBelow)
    return bad(`The fronts of ${markOf(cabinet)} end at ${say(top)}; those of ${markOf(neighbour)} at ${say(other)}.`)
  }
  const heights = rectsOf(project, neighbour).map(({ height }) => height)
  const { rows } = own.front
  const lined = withHeights(rows, rows.length === heights.length ? heights.slice(0, -1) : heights.slice(0, 1))
  const lowest = Math.min(...rectsOf(project, { ...cabinet, front: lined }).map(({ height }) => height))
  if (lowest > 0) return good(lined)
  return bad(
    `The topmost row of ${markOf(neighbour)} is ${say(heights[0]!)} high; in ${markOf(cabinet)}, whose front is ` +
      `${say(own.rect.height)} high, nothing would be left for another row.`,
  )
}

/** All rows but the topmost as high as the neighbour's; null where they are not as many, do not begin at one height, or leave nothing. */
function linedUpFromBelow(project: Project, cabinet: Cabinet, neighbour: Cabinet): Front | null {
  const [own, other] = [cabinet, neighbour].map((one) => rectsOf(project, one))
  const { front } = cabinet
  if (front.kind !== 'rows' || !own || !other || own.length < 2 || own.length !== other.length) return null
  const [foot, beside] = [cabinet.bottom + own.at(-1)!.bottom, neighbour.bottom + other.at(-1)!.bottom]
  if (Math.abs(foot - beside) > 0.01) return null
  const sizes = other.map(({ height }): FrontRow['size'] => ({ kind: 'fixed', height }))
  const top = front.rows[0]!.size
  const lined: Front = {
    kind: 'rows',
    rows: front.rows.map((row, at) => {
      return { ...row, size: at > 0 ? sizes[at]! : top.kind === 'share' ? top : { kind: 'share', share: 1 } }
    }),
  }
  return rectsOf(project, { ...cabinet, front: lined }).every(({ height }) => height > 0) ? lined : null
}

/** Rows with the topmost at given heights; one of the others takes what is left. */
function withHeights(rows: readonly FrontRow[], heights: readonly Mm[]): Front {
  const isLeft = rows.slice(heights.length).some(({ size }) => size.kind === 'share')
  const sizes = rows.map(({ size }, at): FrontRow['size'] => {
    if (at < heights.length) return { kind: 'fixed', height: heights[at]! }
    return at === rows.length - 1 && !isLeft ? { kind: 'share', share: 1 } : size
  })
  return { kind: 'rows', rows: rows.map((row, at) => ({ ...row, size: sizes[at]! })) }
}

function rectsOf(project: Project, cabinet: Cabinet): Rect[] {
  return frontPlaces(project, cabinet)
    .filter(({ path }) => path.length === 1)
    .map(({ rect }) => rect)
}
