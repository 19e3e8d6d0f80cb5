import { boxOf, type Derived, explodedBy, type Part, type Project, type Vec3, type WallId } from '../../engine/index'
import { type Built, builtIn } from './built'
import { type Box, boxAround, boxOfBoxes, keptFor, plus, shifted, times } from './space'

/** Between walls that stand in a row before the viewer. */
const BETWEEN_WALLS = 1200
/** Left free between neighbours that are taken apart. */
const BETWEEN_CABINETS = 60

/** Where a cabinet stands, and how far it steps aside when everything is taken fully apart. In mm, wall frame. */
export interface Stand {
  readonly built: Built
  readonly rest: Vec3
  readonly aside: Vec3
}

/** The box of a board in its cabinet's frame. */
export const boxOfPart: (part: Part) => Box = keptFor(boxOf)

/** The box of a cabinet with all its boards, `apart` from 0 to 1; without boards, the box that was drawn. */
export function boxOfCabinet(built: Built, apart: number): Box {
  if (built.parts.length === 0) return drawnBox(built)
  return boxOfBoxes(built.parts.map((part) => shifted(boxOfPart(part), explodedBy(part.explode, apart))))
}

/** The left end of each wall in the scene: walls stand in a row, in their order. */
export function wallLefts(project: Project): ReadonlyMap<WallId, number> {
  const lefts = new Map<WallId, number>()
  let left = 0
  for (const wall of Object.values(project.walls).sort((a, b) => a.order - b.order)) {
    lefts.set(wall.id, left)
    left += wall.length + BETWEEN_WALLS
  }
  return lefts
}

/**
 * Every cabinet where it stands, with the step aside that keeps neighbours from crossing when taken apart: the run is
 * stretched about its middle, and what hangs is lifted off what stands, each by the least that clears the worst pair.
 * All of it comes off the wall and the floor as far as backs and bottoms need.
 */
export const arrange: (derived: Derived) => Stand[] = keptFor((derived) => {
  const lefts = wallLefts(derived.project)
  const spots = builtIn(derived).map((built) => spotOf(built, lefts.get(built.place.wall) ?? 0))
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
  return spots.map(({ built, rest }, at) => ({ built, rest, aside: plus(asides[at]!, lift) }))
})

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
  /** In the scene: the box that was drawn, and the box of all boards fully apart. */
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
