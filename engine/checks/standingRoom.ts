import { valuesOf } from '../basics/id'
import type { Cabinet, Project, Side } from '../project/document'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { rightEdge, sharedBy } from '../runs/lane'
import { type Body, bodiesOf, proudOf, reachingIn } from '../runs/reach'
import { inch, type Mm, settle } from '../units/length'
import { roomRemedy, type Standing } from './beside'
import { about, type Finding, withRemedy } from './finding'
import { sayIn } from './say'

/** Beside an open dishwasher somebody stands: from its side to what stands at a right angle to it. */
const STANDING = inch(21)
const SOURCE = 'LSU AgCenter, Kitchen Design and Space Guidelines: standing room at a dishwasher'

/** What stands at a right angle to a dishwasher, and how far from its side along its wall. */
interface Beside {
  readonly side: Side
  readonly gap: Mm
  readonly mark: string
}

/**
 * Standing room beside an open dishwasher, up to the run round the corner.
 *
 *      B1 | dishwasher | B2 |      |
 *      ---+============+----+  B3  |     gap: from the dishwasher to the face of B3
 *         |   door     | gap|      |
 *         +------------+    |      |
 */
export function standingRoomFindings(one: Standing, project: Project): Finding[] {
  if (one.cabinet.space?.of !== 'dishwasher') return []
  const [nearest] = besidesOf(one, project).sort((a, b) => a.gap - b.gap)
  if (!nearest || nearest.gap >= STANDING) return []
  const { gap, mark, side } = nearest
  const say = sayIn(project.display)
  const [measure, limit] = say.apart(gap, STANDING)
  const message =
    `beside its dishwasher ${measure} are free to stand in before ${mark} at a right angle to it; ${limit} are asked for ` +
    'between its open door and what stands there.'
  return [
    withRemedy(about(one, { weight: 'know', message, measure, limit, source: SOURCE }), () =>
      roomRemedy(one, side, settle(STANDING - gap), project),
    ),
  ]
}

function besidesOf({ cabinet, frontThickness }: Standing, project: Project): Beside[] {
  const wall = find(project.walls, cabinet.wall)
  if (!wall) return []
  const own = valuesOf<Cabinet>(project.cabinets).filter((other) => other.wall === wall.id && other.corner)
  const legs = own.flatMap((other) => bodiesOf(other, project).filter(({ isLeg }) => isLeg))
  const face = settle(cabinet.depth + frontThickness)
  const out = settle(face + cabinet.height)
  return [...legs, ...reachingIn(project, wall).filter(({ isLeg }) => !isLeg)]
    .filter((body) => body.front > face && body.rear < out && sharedBy(cabinet, { ...body, left: cabinet.left }).y > 0)
    .map((body) => besideOf(cabinet, body, project))
    .filter(({ gap }) => gap >= 0)
}

/** Up to the doors of a corner too, which stand inside it. */
function besideOf(cabinet: Cabinet, body: Body, project: Project): Beside {
  const proud = body.cabinet.corner ? proudOf(body.cabinet, project) : 0
  const isLeft = body.left + body.width / 2 < cabinet.left + cabinet.width / 2
  const gap = isLeft ? cabinet.left - rightEdge(body) : body.left - rightEdge(cabinet)
  return { side: isLeft ? 'left' : 'right', gap: settle(gap - proud), mark: markOf(body.cabinet) }
}
