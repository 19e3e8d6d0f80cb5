import { type CabinetId, valuesOf } from '../basics/id'
import type { About } from '../basics/problem'
import { betweenOf } from '../between/betweenOf'
import type { BuiltRun } from '../between/run'
import type { Board, BoardRole } from '../cabinets/board'
import { boxOf } from '../cabinets/boardBox'
import { ROLE_NAMES } from '../cabinets/role'
import { type Box, boxesOverlap } from '../geometry/box'
import { plus } from '../geometry/vector'
import { applyEdit } from '../project/apply'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { countertopOver, topEdit } from '../project/topOver'
import { fitOf } from '../runs/fit'
import { footprintOf } from '../runs/footprint'
import { rightEdge, topEdge } from '../runs/lane'
import { interferences } from '../solids/interference'
import { isSlanted } from '../solids/slant'
import { type Mm, settle } from '../units/length'
import { type Finding, GEOMETRY, type Remedy, withRemedy } from './finding'
import { type Say, sayIn } from './say'

/** Lengths are settled on a grid; sums of them that only touch do not overlap. */
const TOUCH: Mm = 0.01

/** A box in the frame of its wall: x from its left corner, y from the floor, z from the wall. */
interface Solid {
  readonly words: string
  readonly role: BoardRole | 'cabinet'
  /** The cabinet itself, or those that the run goes over. */
  readonly cabinets: readonly CabinetId[]
  readonly box: Box
  /** The board where it stands at the wall, where it is one. */
  readonly board?: Board
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
      (other) => {
        const pair = worst(own, other)
        return pair ? [withRemedy(told(pair, about, say), () => wayOut(pair, project))] : []
      },
    )
  })
}

/**
 * Apart by as much as they share of the height: what hangs higher goes up, with all that hangs at its height on that wall;
 * where there is no room for that, the splash is made lower.
 */
function wayOut(pair: Pair, project: Project): Remedy | null {
  const [low, high] = inOrder(pair)
  const by = sharedHeight(pair)
  const ways = [raised(high, by, project), low.role === 'splash' ? lowerSplash(low, by, project) : null]
  const before = overlapsIn(project)
  return ways.find((way) => way && overlapsIn(applyEdit(project, way.edit)) < before) ?? null
}

function overlapsIn(project: Project): number {
  return overlapFindings(project, betweenOf(project)).length
}

/** What hangs: the cabinet itself, or those over the trim. */
function raised({ cabinets }: Solid, by: Mm, project: Project): Remedy | null {
  const hung = cabinets.flatMap((id) => find(project.cabinets, id) ?? []).filter(({ bottom }) => bottom > 0)
  const [first] = hung
  if (!first) return null
  const all = valuesOf<Cabinet>(project.cabinets).filter(
    ({ kind, wall, bottom }) => kind === first.kind && wall === first.wall && bottom === first.bottom,
  )
  const moved = all.map((one) => ({ ...one, bottom: settle(one.bottom + by) }))
  if (!fitOf(project, moved).fits) return null
  const label = `Hang ${moved.map(markOf).join(', ')} ${sayIn(project.display).length(by)} higher`
  return { label, edit: { kind: 'shapeCabinets', shapes: moved.map(({ id, bottom }) => ({ id, bottom })) } }
}

function lowerSplash({ cabinets }: Solid, by: Mm, project: Project): Remedy | null {
  const over = cabinets.flatMap((id) => find(project.cabinets, id) ?? [])
  const countertop = over[0] ? countertopOver(over[0], project) : null
  if (!countertop || countertop.splash <= by) return null
  const splash = settle(countertop.splash - by)
  return {
    label: `Make the splash ${sayIn(project.display).length(splash)} high`,
    edit: topEdit(project, over, { splash }),
  }
}

/** The boards of a run where they stand at their wall. */
function boardsOf({ mark, place, parts, cabinets }: BuiltRun): Solid[] {
  return parts.map((part) => {
    const origin = plus(part.placement.origin, { x: place.left, y: place.bottom, z: 0 })
    const board = { ...part, placement: { ...part.placement, origin } }
    return { words: `the ${ROLE_NAMES[part.role]} ${mark}`, role: part.role, cabinets, box: boxOf(board), board }
  })
}

/** A cabinet with what stands beside it, without its fronts. */
function solidOf(cabinet: Cabinet, project: Project): Solid {
  const face = footprintOf(cabinet, project)
  return {
    words: markOf(cabinet),
    role: 'cabinet',
    cabinets: [cabinet.id],
    box: {
      min: { x: face.left, y: face.bottom, z: 0 },
      max: { x: rightEdge(face), y: topEdge(face), z: cabinet.depth },
    },
  }
}

type Pair = readonly [Solid, Solid]

/** The pair that shares most of the height, of all that stand in one another. */
function worst(own: readonly Solid[], others: readonly Solid[]): Pair | null {
  const pairs = own.flatMap((one) => others.filter((other) => doOverlap(one, other)).map((other): Pair => [one, other]))
  const shared = ([a, b]: Pair) => Math.min(a.box.max.y, b.box.max.y) - Math.max(a.box.min.y, b.box.min.y)
  return pairs.reduce<Pair | null>((a, b) => (a && shared(a) >= shared(b) ? a : b), null)
}

/** The boxes around two boards that are mitred against one another overlap though they do not. */
function doOverlap(one: Solid, other: Solid): boolean {
  if (!boxesOverlap(one.box, other.box, TOUCH)) return false
  const isSquare = !one.board || !other.board || !(isSlanted(one.board) || isSlanted(other.board))
  return isSquare || interferences([one.board, other.board]).length > 0
}

function inOrder(pair: Pair): Pair {
  return [...pair].sort((a, b) => a.box.min.y - b.box.min.y) as unknown as Pair
}

/** How far the higher one must go up to stand clear. */
function sharedHeight(pair: Pair): Mm {
  const [low, high] = inOrder(pair)
  return settle(low.box.max.y - high.box.min.y)
}

/** Said of the one that begins lower: it reaches up to so much, and the other begins below that. */
function told(pair: Pair, about: About, { length, apart }: Say): Finding {
  const [low, high] = inOrder(pair)
  const [measure, limit] = apart(low.box.max.y, high.box.min.y)
  const by = settle(Math.min(low.box.max.y, high.box.max.y) - high.box.min.y)
  const [first, ...rest] = low.words
  const message =
    `${first!.toUpperCase()}${rest.join('')} reaches up to ${measure} from the floor, and ${high.words} begins at ${limit}: ` +
    `they would stand in one another over ${length(by)} of the height.`
  return { weight: 'stop', about, message, measure, limit, source: GEOMETRY }
}
