import { valuesOf } from '../basics/id'
import type { Rect } from '../geometry/rect'
import { areFrontsInset, methodOf } from '../project/builtBy'
import type { Cabinet, Project, Wall } from '../project/document'
import { find } from '../project/references'
import { cornersOf, type InsideCorner, type Opposite } from '../site/wall'
import { type Mm, settle } from '../units/length'
import { footprintOf } from './footprint'
import { rightEdge, sharedBy } from './lane'

/**
 * What a cabinet takes of the room, in the frame of a wall: along the wall and up it, and out from it. Seen from the wall
 * that it meets, what stands at a wall goes along by its depth and out by its place:
 *
 *     before  ---------------+ corner
 *             |  B1  |  B2   |
 *             +------+-------|
 *                            |  after: B2 goes along it from 0 to its depth
 */
export interface Body extends Rect {
  readonly cabinet: Cabinet
  /** Where it begins and ends, from the wall. */
  readonly rear: Mm
  readonly front: Mm
  /** Whether it is the leg of a corner cabinet along the other wall. */
  readonly isLeg: boolean
}

/** From the wall to what stands out furthest: the face of the fronts, or the front edge where they are inset or none. */
export function faceFrom(cabinet: Cabinet, project: Project): Mm {
  return settle(cabinet.depth + proudOf(cabinet, project))
}

/** How far the fronts of a cabinet stand out from its front edge; the door of an appliance as far as the fronts beside it. */
export function proudOf(cabinet: Cabinet, project: Project): Mm {
  const method = methodOf(cabinet, project)
  if (areFrontsInset(method) || (cabinet.front.kind === 'open' && !cabinet.space)) return 0
  return find(project.materials, method.frontMaterial)?.thickness ?? 0
}

/** A cabinet at its own wall: one body, or the two legs of a corner, whose doors stand inside the corner. */
export function bodiesOf(cabinet: Cabinet, project: Project): Body[] {
  const { corner, left, width, depth } = cabinet
  const own = { ...footprintOf(cabinet, project), cabinet, rear: 0, isLeg: false }
  if (!corner) return [{ ...own, front: faceFrom(cabinet, project) }]
  const { hand, other, otherDepth } = corner
  const leg = { ...own, left: hand === 'left' ? left : settle(left + width - otherDepth), width: otherDepth }
  return [
    { ...own, front: depth },
    { ...leg, front: other, isLeg: true },
  ]
}

/** The wall that meets a wall at one of its ends. */
export interface Meeting {
  readonly side: 'left' | 'right'
  readonly wall: Wall
  readonly corner: InsideCorner
}

/** The walls that meet a wall: one at either end at most. */
export function meetingsOf(project: Project, wall: Wall): Meeting[] {
  return cornersOf(project).flatMap((corner): Meeting[] => {
    if (corner.after.id === wall.id) return [{ side: 'left', wall: corner.before, corner }]
    return corner.before.id === wall.id ? [{ side: 'right', wall: corner.after, corner }] : []
  })
}

/** A body at the meeting wall, as it is from the wall that is met. */
export function turnedIn(body: Body, { side, corner }: Meeting): Body {
  const { length } = corner.before
  if (side === 'left') {
    const rear = settle(length - rightEdge(body))
    return { ...body, left: body.rear, width: settle(body.front - body.rear), rear, front: settle(length - body.left) }
  }
  const left = settle(length - body.front)
  return { ...body, left, width: settle(body.front - body.rear), rear: body.left, front: rightEdge(body) }
}

/** All bodies at the walls that meet a wall, in its frame. */
export function reachingIn(project: Project, wall: Wall): Body[] {
  return meetingsOf(project, wall).flatMap((meeting) => reachingFrom(project, meeting))
}

/** Those at one of them. */
export function reachingFrom(project: Project, meeting: Meeting): Body[] {
  const there = valuesOf<Cabinet>(project.cabinets).filter(({ wall }) => wall === meeting.wall.id)
  return there.flatMap((cabinet) => bodiesOf(cabinet, project).map((body) => turnedIn(body, meeting)))
}

/** What stands at a wall that faces this one, in the frame of this one. */
export function bodiesAcross(project: Project, opposite: Opposite): Body[] {
  const own = valuesOf<Cabinet>(project.cabinets).filter((cabinet) => cabinet.wall === opposite.wall.id)
  const legs = reachingIn(project, opposite.wall).filter(({ isLeg, rear }) => isLeg && rear <= 0)
  return [...own.flatMap((cabinet) => bodiesOf(cabinet, project)), ...legs].map((body) => turnedAcross(body, opposite))
}

/** A body at a facing wall, as it is from the wall that it faces: along it as it is across, out from it up to its rear. */
export function turnedAcross(body: Body, { between, before }: Opposite): Body {
  return {
    ...body,
    left: settle(before.length - rightEdge(body)),
    rear: settle(between.length - body.front),
    front: settle(between.length - body.rear),
  }
}

/** Those of them that stand in the way of something so deep at this wall. */
export function inTheWay(project: Project, wall: Wall, depth: Mm): Body[] {
  return reachingIn(project, wall).filter(({ rear }) => rear < depth)
}

/** How much of each other two bodies take, by the shortest way to part them; 0 or less where they are clear. */
export function sharedRoom(a: Body, b: Body): Mm {
  const { x, y } = sharedBy(a, b)
  return Math.min(x, y, settle(Math.min(a.front, b.front) - Math.max(a.rear, b.rear)))
}
