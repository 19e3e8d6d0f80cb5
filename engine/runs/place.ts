import { type CabinetId, freeId, type WallId } from '../basics/id'
import type { Interval } from '../geometry/interval'
import type { Rect } from '../geometry/rect'
import { CORNER_FILLER } from '../project/blind'
import { LEAST_LEAF } from '../project/corner'
import { type Cabinet, NOTHING_BESIDE, type OwnTop, type Project, type Wall } from '../project/document'
import { freeNumber } from '../project/mark'
import { type Start, startOf, thicknessOf } from '../project/ready'
import type { NewKind } from '../project/readyKinds'
import { wallAt } from '../site/wall'
import { type Mm, settle } from '../units/length'
import { fitOf } from './fit'
import { footprintOf } from './footprint'
import { rightEdge, topEdge } from './lane'
import { freeStretches, inLanesOf } from './neighbours'
import { inTheWay } from './reach'

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
    return usual.corner ? placesFor(project, what, wanted, wall.id)[0] : firstPlace(project, wall, usual, wanted)
  }
  const place = left === null ? first() : { left, width: wanted }
  if (!place) return null
  const isAtRight = place.left + place.width / 2 > wall.length / 2
  const { kind, bottom, height, depth, front, interior, overrides, corner, space } = startOf(project, what, {
    width: place.width,
    isAtRight,
  })
  const made: Cabinet = {
    id: freeId<CabinetId>('k', project.cabinets),
    kind,
    number: freeNumber(project, { kind, ...(space && { space }) }),
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
    ...(space && { space }),
  }
  const own = ownTopBeside(project, made)
  return own ? { ...made, top: { own } } : made
}

/** What the countertop of a base that it touches has of its own, so that it goes on over both. */
function ownTopBeside(project: Project, made: Cabinet): OwnTop | undefined {
  if (made.kind !== 'base') return undefined
  const { left, width } = footprintOf(made, project)
  const touching = inLanesOf(project, made).filter((other) => {
    const there = footprintOf(other, project)
    return topEdge(other) === topEdge(made) && (rightEdge(there) === left || there.left === settle(left + width))
  })
  return touching.flatMap(({ top }) => top?.own ?? [])[0]
}

/**
 * The free stretches of a wall, as far as what opens is clear of a run that comes round an inside corner: a filler from its
 * face. Where that leaves no room, the whole stretch.
 */
function clearStretches(project: Project, wall: Wall, { kind, front, depth }: Start): Interval[] {
  const free = freeStretches(project, wall, kind)
  if (front.kind === 'open' || front.kind === 'falseFront') return free
  const round = inTheWay(project, wall, depth).filter(({ isLeg }) => !isLeg)
  return free.map((stretch) => {
    const isAtLeft = round.some((body) => rightEdge(body) === stretch.from)
    const isAtRight = round.some((body) => body.left === stretch.to)
    const from = settle(stretch.from + (isAtLeft ? CORNER_FILLER : 0))
    const to = settle(stretch.to - (isAtRight ? CORNER_FILLER : 0))
    return to - from >= NARROWEST ? { from, to } : stretch
  })
}

/** The free places that a new cabinet of a width could be put in: both ends of each stretch that is long enough. */
export function placesFor(project: Project, what: NewKind, width: Mm, on: WallId | null = null): Rect[] {
  const wall = wallAt(project, on)
  if (!wall) return []
  const start = startOf(project, what)
  const { bottom, height, corner } = start
  const stretches = corner ? freeStretches(project, wall, start.kind) : clearStretches(project, wall, start)
  const places = stretches.flatMap(({ from, to }): Rect[] => {
    const room = settle(to - from)
    if (room < Math.min(width, NARROWEST)) return []
    // A corner cabinet belongs to the end of the stretch that is in its corner.
    if (room < (corner ? width : 2 * width)) return [{ left: from, bottom, width: Math.min(width, room), height }]
    return [from, settle(to - width)].map((left) => ({ left, bottom, width, height }))
  })
  // A leg of a corner goes on past the one across it, and the other leg wants its room along the other wall too.
  if (!corner) return places
  const least = settle(corner.otherDepth + LEAST_LEAF + thicknessOf(project, 'carcassMaterial'))
  const fitting = places.filter((place) => {
    if (place.width < least) return false
    const there = newCabinetAt(project, what, place.left, place.width, wall.id)
    return there && fitOf(project, there).fits
  })
  const inCorners = fitting.filter((place) => place.left === 0 || rightEdge(place) === wall.length)
  return inCorners.length > 0 ? inCorners : fitting
}

function firstPlace(project: Project, wall: Wall, start: Start, width: Mm): { left: Mm; width: Mm } | null {
  const stretches = clearStretches(project, wall, start)
  const roomy = stretches.find(({ from, to }) => to - from >= width)
  if (roomy) return { left: roomy.from, width }
  const narrow = stretches.find(({ from, to }) => to - from >= NARROWEST)
  return narrow ? { left: narrow.from, width: settle(narrow.to - narrow.from) } : null
}
