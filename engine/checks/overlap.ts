import { valuesOf } from '../basics/id'
import type { About } from '../basics/problem'
import type { BuiltRun } from '../between/run'
import { boxOf } from '../cabinets/boardBox'
import { ROLE_NAMES } from '../cabinets/role'
import { type Box, boxesOverlap } from '../geometry/box'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { footprintOf } from '../runs/footprint'
import { rightEdge, topEdge } from '../runs/lane'
import { type Mm, settle } from '../units/length'
import type { Finding } from './finding'
import { type Say, sayIn } from './say'

/** Lengths are settled on a grid; sums of them that only touch do not overlap. */
const TOUCH: Mm = 0.01

/** A box in the frame of its wall: x from its left corner, y from the floor, z from the wall. */
interface Solid {
  readonly words: string
  readonly box: Box
}

/**
 * Countertops, splashes and trims that stand in a cabinet or in one another, each pair once. A kick board stands in the
 * recess of its cabinets and is no part of this.
 */
export function overlapFindings(project: Project, runs: readonly BuiltRun[]): Finding[] {
  const say = sayIn(project.display)
  const seen = runs.filter(({ kind }) => kind !== 'kick')
  const boards = new Map(seen.map((run) => [run, boardsOf(run)]))
  return seen.flatMap((run, at) => {
    const own = boards.get(run)!
    const about: About = { kind: 'cabinet', cabinet: run.cabinets[0]! }
    const near = valuesOf<Cabinet>(project.cabinets).filter(({ wall }) => wall === run.place.wall)
    const others = seen.slice(at + 1).filter(({ place }) => place.wall === run.place.wall)
    return [...near.map((one) => [solidOf(one, project)]), ...others.map((other) => boards.get(other)!)].flatMap(
      (other) => told(worst(own, other), about, say),
    )
  })
}

/** The boards of a run where they stand at their wall. */
function boardsOf({ mark, place, parts }: BuiltRun): Solid[] {
  return parts.map((part) => {
    const { min, max } = boxOf(part)
    const [x, y] = [place.left, place.bottom]
    return {
      words: `the ${ROLE_NAMES[part.role]} ${mark}`,
      box: {
        min: { x: settle(min.x + x), y: settle(min.y + y), z: min.z },
        max: { x: settle(max.x + x), y: settle(max.y + y), z: max.z },
      },
    }
  })
}

/** A cabinet with what stands beside it, without its fronts. */
function solidOf(cabinet: Cabinet, project: Project): Solid {
  const face = footprintOf(cabinet, project)
  return {
    words: markOf(cabinet),
    box: {
      min: { x: face.left, y: face.bottom, z: 0 },
      max: { x: rightEdge(face), y: topEdge(face), z: cabinet.depth },
    },
  }
}

type Pair = readonly [Solid, Solid]

/** The pair that shares most of the height, of all that stand in one another. */
function worst(own: readonly Solid[], others: readonly Solid[]): Pair | null {
  const pairs = own.flatMap((one) =>
    others.filter((other) => boxesOverlap(one.box, other.box, TOUCH)).map((other): Pair => [one, other]),
  )
  const shared = ([a, b]: Pair) => Math.min(a.box.max.y, b.box.max.y) - Math.max(a.box.min.y, b.box.min.y)
  return pairs.reduce<Pair | null>((a, b) => (a && shared(a) >= shared(b) ? a : b), null)
}

/** Said of the one that begins lower: it reaches up to so much, and the other begins below that. */
function told(pair: Pair | null, about: About, { length, apart }: Say): Finding[] {
  if (!pair) return []
  const [low, high] = [...pair].sort((a, b) => a.box.min.y - b.box.min.y) as [Solid, Solid]
  const [measure, limit] = apart(low.box.max.y, high.box.min.y)
  const by = settle(Math.min(low.box.max.y, high.box.max.y) - high.box.min.y)
  const [first, ...rest] = low.words
  const message =
    `${first!.toUpperCase()}${rest.join('')} reaches up to ${measure} from the floor, and ${high.words} begins at ${limit}: ` +
    `they would stand in one another over ${length(by)} of the height.`
  return [{ weight: 'stop', about, message, measure, limit, source: 'worked out from the boards' }]
}
