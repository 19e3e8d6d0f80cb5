import type { Cabinet, Project, Side } from '../project/document'
import type { CabinetShape } from '../project/edit'
import { find } from '../project/references'
import { type Mm, settle } from '../units/length'
import { fitOf } from './fit'
import { footprintOf, roomBeside } from './footprint'
import { rightEdge, sharedBy } from './lane'
import { othersBeside } from './neighbours'

/**
 * Makes room for a cabinet as proposed: neighbours that it would overlap are pushed along, and push their own; a tall
 * that a base pushes pushes uppers. The places of those that must move, none when nothing must, or null when there is no room.
 *
 *     | B1 | B2 |   | B3 |       B1 wider:      | B1     | B2 | B3 |
 */
export function pushNeighbours(project: Project, proposed: Cabinet): CabinetShape[] | null {
  if (fitOf(project, proposed).fits) return []
  const middle = middleOf(project, proposed)
  const others = othersBeside(project, proposed)
  const toTheRight = others.filter(({ left, width }) => left + width / 2 >= middle)
  const toTheLeft = others.filter(({ left, width }) => left + width / 2 < middle)
  const moved = [
    ...pushedRight(project, proposed, toTheRight),
    ...pushedLeft(project, proposed, toTheLeft.sort(fromTheRight)),
  ]
  if (moved.length === 0 || !fitOf(project, [proposed, ...moved]).fits) return null
  return moved.map(({ id, left }) => ({ id, left }))
}

/**
 * More room at one side of a cabinet: it moves away from there by so much and pushes its neighbours along. The places of all
 * that move, its own first; null where not everything fits then.
 */
export function roomMade(project: Project, cabinet: Cabinet, side: Side, by: Mm): CabinetShape[] | null {
  const moved = { ...cabinet, left: settle(cabinet.left + (side === 'left' ? by : -by)) }
  const pushed = pushNeighbours(project, moved)
  if (pushed === null) return null
  const others = pushed.flatMap(({ id, left }) => {
    const other = find(project.cabinets, id)
    return other && left !== undefined ? [{ ...other, left }] : []
  })
  return fitOf(project, [moved, ...others]).fits ? [{ id: cabinet.id, left: moved.left }, ...pushed] : null
}

/** Who is stretched keeps its neighbours on their side; who is moved past the middle of another changes places with it. */
function middleOf(project: Project, proposed: Cabinet): Mm {
  const before = find(project.cabinets, proposed.id)
  const { left, width } = before && before.width !== proposed.width ? before : proposed
  return left + width / 2
}

/** Of two that end at one place the first by id stays first, as everywhere. */
function fromTheRight(a: Cabinet, b: Cabinet): number {
  return rightEdge(b) - rightEdge(a) || (a.id < b.id ? -1 : 1)
}

/** From left to right, each as far as those before it, at its height, make it go. */
function pushedRight(project: Project, proposed: Cabinet, others: readonly Cabinet[]): Cabinet[] {
  const placed = [proposed]
  for (const other of others) {
    const before = roomBeside(other, 'left', project)
    const edges = placed
      .filter((one) => sharedBy(one, other).y > 0)
      .map((one) => settle(rightEdge(footprintOf(one, project)) + before))
    placed.push({ ...other, left: Math.max(other.left, ...edges) })
  }
  return onlyMoved(placed, others)
}

/** The mirror image, from right to left. */
function pushedLeft(project: Project, proposed: Cabinet, others: readonly Cabinet[]): Cabinet[] {
  const placed = [proposed]
  for (const other of others) {
    const taken = other.width + roomBeside(other, 'right', project)
    const edges = placed
      .filter((one) => sharedBy(one, other).y > 0)
      .map((one) => settle(footprintOf(one, project).left - taken))
    placed.push({ ...other, left: Math.min(other.left, ...edges) })
  }
  return onlyMoved(placed, others)
}

function onlyMoved([, ...placed]: readonly Cabinet[], before: readonly Cabinet[]): Cabinet[] {
  return placed.filter(({ left }, at) => left !== before[at]!.left)
}
