import {
  boxOf,
  cornersOf,
  type Derived,
  explodedBy,
  type Part,
  type Vec3,
  type WallId,
  wallsOf,
} from '../../engine/index'
import { type Built, builtIn } from './built'
import { type Box, boxAround, boxOfBoxes, keptFor, plus, shifted, times } from './space'
import { turned, turnedBox, type WallFrame, wallFrames } from './walls'

/** Left free between neighbours that are taken apart. */
const BETWEEN_CABINETS = 60

/** Where a cabinet stands, and how far it steps aside when everything is taken fully apart. In mm, in the scene. */
export interface Stand {
  readonly built: Built
  /** By how many quarters it is turned with its wall. */
  readonly turns: number
  readonly rest: Vec3
  readonly aside: Vec3
}

/** The box of a board in its cabinet's frame. */
export const boxOfPart: (part: Part) => Box = keptFor(boxOf)

/** The box of a cabinet with all its boards, `apart` from 0 to 1; without boards, the box that was drawn. */
export function boxOfCabinet(built: Built, apart: number): Box {
  if (built.parts.length === 0) return drawnBox(built)
  const boards = built.parts.map((part) => shifted(boxOfPart(part), explodedBy(part.explode, apart)))
  return boxOfBoxes([...boards, ...(built.bodies ?? [])])
}

/**
 * Every cabinet where it stands, with the step aside that keeps neighbours from crossing when taken apart: each line of
 * walls is stretched about its middle, and what hangs is lifted off what stands, each by the least that clears the worst
 * pair. All of it comes off the wall and the floor as far as backs and bottoms need, and a wall that is turned is moved
 * off those before it that it meets.
 */
export const arrange: (derived: Derived) => Stand[] = keptFor((derived) => {
  const { project } = derived
  const frames = wallFrames(project)
  const all = builtIn(derived)
  const standing = (wall: WallId) => all.filter(({ place }) => place.wall === wall)
  const isTurned = (wall: WallId) => frames.get(wall)!.turns > 0
  const inSight = all.filter(({ place }) => !isTurned(place.wall))
  const row = inALine(inSight.map((built) => spotOf(built, frames.get(built.place.wall)!.origin.x)))
  const stands = new Map(row.map((stand) => [stand.built.id, stand]))
  const corners = cornersOf(project)
  for (const { id } of wallsOf(project).filter((wall) => isTurned(wall.id))) {
    const met = corners.flatMap(({ before, after }) => (after.id === id ? before.id : before.id === id ? after.id : []))
    const there = met.flatMap((wall) => standing(wall).flatMap((built) => stands.get(built.id) ?? []))
    const own = inALine(standing(id).map((built) => spotOf(built, 0))).map((stand) => inRoom(stand, frames.get(id)!))
    for (const stand of movedOff(own, there)) stands.set(stand.built.id, stand)
  }
  return all.map(({ id }) => stands.get(id)!)
})

/** Cabinets along one line, in its frame. */
function inALine(spots: readonly Spot[]): Stand[] {
  if (spots.length === 0) return []
  const stretch = { x: stretchAlong('x', 'y', spots), y: stretchAlong('y', 'x', spots) }
  const whole = boxOfBoxes(spots.map((spot) => spot.closed))
  const middle = (whole.min.x + whole.max.x) / 2
  const lowest = Math.min(...spots.map((spot) => centre(spot.closed, 'y')))
  const asides = spots.map(({ closed }) => ({
    x: stretch.x * (centre(closed, 'x') - middle),
    y: stretch.y * (centre(closed, 'y') - lowest),
    z: 0,
  }))
  const opened = boxOfBoxes(spots.map((spot, at) => shifted(spot.opened, asides[at]!)))
  const lift = { x: 0, y: Math.max(0, -opened.min.y), z: Math.max(0, -opened.min.z) }
  return spots.map(({ built, rest }, at) => ({ built, rest, turns: 0, aside: plus(asides[at]!, lift) }))
}

/** What was arranged along its own wall, where that wall stands. */
function inRoom({ built, rest, aside }: Stand, { origin, turns }: WallFrame): Stand {
  return { built, turns, rest: plus(origin, turned(rest, turns)), aside: turned(aside, turns) }
}

/** Taken apart, a turned wall goes back from the room until it is clear of the walls that it meets. */
function movedOff(stands: readonly Stand[], before: readonly Stand[]): Stand[] {
  const first = stands[0]
  if (!first || before.length === 0) return [...stands]
  const back = turned({ x: 0, y: 0, z: -1 }, first.turns)
  const [own, other] = [openedAll(stands), openedAll(before)]
  const reach = ({ min, max }: Box, way: Vec3) =>
    Math.max(min.x * way.x, max.x * way.x) + Math.max(min.z * way.z, max.z * way.z)
  const crossing = reach(other, back) + reach(own, times(back, -1)) + BETWEEN_CABINETS
  const by = times(back, Math.max(0, crossing))
  return stands.map((stand) => ({ ...stand, aside: plus(stand.aside, by) }))
}

function openedAll(stands: readonly Stand[]): Box {
  return boxOfBoxes(stands.map((stand) => boxInScene(stand, 1)))
}

/** The box of a cabinet with all its boards where it stands in the scene. */
export function boxInScene(stand: Stand, apart: number): Box {
  return shifted(turnedBox(boxOfCabinet(stand.built, apart), stand.turns), standAt(stand, apart))
}

/**
 * Where a cabinet's frame is when everything is `apart` from 0 to 1. Cabinets make room first and boards come out into
 * it, so the step aside runs ahead of the slider: seven eighths of it are done at half.
 */
export function standAt(stand: Stand, apart: number): Vec3 {
  return plus(stand.rest, times(stand.aside, 1 - (1 - apart) ** 3))
}

interface Spot {
  readonly built: Built
  readonly rest: Vec3
  /** Along its line: the box that was drawn, and the box of all boards fully apart. */
  readonly closed: Box
  readonly opened: Box
}

const openedBox = keptFor((parts: Built['parts']) =>
  boxOfBoxes(parts.map((part) => shifted(boxOfPart(part), explodedBy(part.explode, 1)))),
)

function spotOf(built: Built, wallLeft: number): Spot {
  const rest = { x: wallLeft + built.place.left, y: built.place.bottom, z: 0 }
  const drawn = drawnBox(built)
  const opened = built.parts.length === 0 ? drawn : openedBox(built.parts)
  return { built, rest, closed: shifted(drawn, rest), opened: shifted(opened, rest) }
}

function drawnBox({ place }: Built): Box {
  return boxAround({ x: 0, y: 0, z: 0 }, { x: place.width, y: place.height, z: place.depth })
}

/** The least stretch along one axis that clears every pair standing side by side on it, level with each other. */
function stretchAlong(axis: 'x' | 'y', across: 'x' | 'y', spots: readonly Spot[]): number {
  let stretch = 0
  for (const low of spots) {
    for (const high of spots) {
      if (low.closed.max[axis] > high.closed.min[axis] + 0.5 || low === high) continue
      const isLevel =
        low.closed.min[across] < high.closed.max[across] - 0.5 && high.closed.min[across] < low.closed.max[across] - 0.5
      if (!isLevel) continue
      const crossing = low.opened.max[axis] + BETWEEN_CABINETS - high.opened.min[axis]
      stretch = Math.max(stretch, crossing / (centre(high.closed, axis) - centre(low.closed, axis)))
    }
  }
  return stretch
}

function centre(box: Box, axis: 'x' | 'y'): number {
  return (box.min[axis] + box.max[axis]) / 2
}
