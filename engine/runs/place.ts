import { type CabinetId, freeId, type WallId } from '../basics/id'
import type { Rect } from '../geometry/rect'
import { type Cabinet, type CabinetKind, NOTHING_BESIDE, type Project, type Wall } from '../project/document'
import { freeNumber } from '../project/mark'
import { type NewKind, startOf } from '../project/ready'
import { wallAt } from '../site/wall'
import { type Mm, settle } from '../units/length'
import { fitOf } from './fit'
import { freeStretches } from './neighbours'

/** A gap narrower than this is left for a filler (common practice, no source). */
const NARROWEST: Mm = 150

/**
 * A new cabinet of the usual size for its kind with its left side at a place; at null, in the first free place, narrowed
 * to it when it is a little small. On the wall that is named, or the first. Null when there is no free place.
 */
export function newCabinetAt(
  project: Project,
  what: NewKind,
  left: Mm | null,
  width?: Mm,
  on: WallId | null = null,
): Cabinet | null {
  const wall = wallAt(project, on)
  if (!wall) return null
  const usual = startOf(project, what)
  const wanted = width ?? usual.width
  const first = () => {
    return usual.corner ? placesFor(project, what, wanted, wall.id)[0] : firstPlace(project, wall, usual.kind, wanted)
  }
  const place = left === null ? first() : { left, width: wanted }
  if (!place) return null
  const isAtRight = place.left + place.width / 2 > wall.length / 2
  const { kind, bottom, height, depth, front, interior, overrides, corner } = startOf(project, what, {
    width: place.width,
    isAtRight,
  })
  return {
    id: freeId<CabinetId>('k', project.cabinets),
    kind,
    number: freeNumber(project, kind),
    wall: wall.id,
    left: settle(place.left),
    bottom,
    width: settle(place.width),
    height,
    depth,
    front,
    interior,
    method: null,
    overrides,
    isGrainRunning: false,
    pins: {},
    beside: NOTHING_BESIDE,
    cutout: null,
    corner,
  }
}

/** The free places that a new cabinet of a width could be put in: both ends of each stretch that is long enough. */
export function placesFor(project: Project, what: NewKind, width: Mm, on: WallId | null = null): Rect[] {
  const wall = wallAt(project, on)
  if (!wall) return []
  const { kind, bottom, height, corner } = startOf(project, what)
  const places = freeStretches(project, wall, kind).flatMap(({ from, to }): Rect[] => {
    const room = settle(to - from)
    if (room < Math.min(width, NARROWEST)) return []
    if (room < 2 * width) return [{ left: from, bottom, width: Math.min(width, room), height }]
    return [from, settle(to - width)].map((left) => ({ left, bottom, width, height }))
  })
  // The other leg of a corner wants its room along the other wall too.
  if (!corner) return places
  return places.filter((place) => {
    const there = newCabinetAt(project, what, place.left, place.width, wall.id)
    return there && fitOf(project, there).fits
  })
}

function firstPlace(project: Project, wall: Wall, kind: CabinetKind, width: Mm): { left: Mm; width: Mm } | null {
  const stretches = freeStretches(project, wall, kind)
  const roomy = stretches.find(({ from, to }) => to - from >= width)
  if (roomy) return { left: roomy.from, width }
  const narrow = stretches.find(({ from, to }) => to - from >= NARROWEST)
  return narrow ? { left: narrow.from, width: settle(narrow.to - narrow.from) } : null
}
