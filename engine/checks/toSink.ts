import type { BuiltRun } from '../between/run'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { meetingsOf, turnedAcross, turnedIn } from '../runs/reach'
import { oppositesOf } from '../site/wall'
import { inch, type Mm, settle } from '../units/length'
import { about, type Finding } from './finding'
import { sayIn } from './say'
import { type LetIn, letInto } from './worktop'

const TO_SINK = inch(36)
const SOURCE = 'LSU AgCenter, Kitchen Design and Space Guidelines'

/** Seen from above, in the frame of a wall: along it, and out from it. */
interface Plan {
  readonly left: Mm
  readonly width: Mm
  readonly rear: Mm
  readonly front: Mm
}

/** A dishwasher is filled from the sink: at its own wall, round a corner, or across the room. */
export function toSinkFindings(one: Cabinet, project: Project, runs: readonly BuiltRun[]): Finding[] {
  if (one.space?.of !== 'dishwasher') return []
  const { left, width, depth } = one
  const washer = { left, width, rear: 0, front: depth }
  const sinks = letInto(project, runs).filter(({ of }) => of === 'sink')
  const all = sinks.flatMap((sink) => {
    const there = seenFrom(sink, one, project)
    return there ? [{ away: awayFrom(washer, there.plan), where: WORDS[there.at] }] : []
  })
  const [first] = all.sort((a, b) => a.away - b.away)
  if (!first || first.away <= TO_SINK) return []
  const [measure, limit] = sayIn(project.display).apart(first.away, TO_SINK)
  const message = `its dishwasher is ${measure} from the edge of the sink${first.where}; ${limit} at most is asked for.`
  return [about({ cabinet: one, mark: markOf(one) }, { weight: 'know', message, measure, limit, source: SOURCE })]
}

/** At the wall of a cabinet, at one that meets it, or at one that faces it. */
type Where = 'ownWall' | 'corner' | 'across'

const WORDS: Readonly<Record<Where, string>> = {
  ownWall: '',
  corner: ' round the corner, straight across',
  across: ' across the room, straight from edge to edge',
}

/** A sink from the wall of a cabinet; null where no row of walls that meet goes from one to the other. */
function seenFrom(
  { cabinet, left, right, top }: LetIn,
  from: Cabinet,
  project: Project,
): { readonly plan: Plan; readonly at: Where } | null {
  const { fromFront, depth } = cabinet.cutout!
  const front = settle(top.place.depth - fromFront)
  const own = { left, width: settle(right - left), rear: settle(front - depth), front }
  if (cabinet.wall === from.wall) return { plan: own, at: 'ownWall' }
  const wall = find(project.walls, from.wall)
  const { bottom, height } = cabinet
  const body = { ...own, bottom, height, cabinet, isLeg: false }
  const meeting = wall && meetingsOf(project, wall).find((one) => one.wall.id === cabinet.wall)
  if (meeting) return { plan: turnedIn(body, meeting), at: 'corner' }
  const opposite = wall && oppositesOf(project, wall).find((one) => one.wall.id === cabinet.wall)
  return opposite ? { plan: turnedAcross(body, opposite), at: 'across' } : null
}

/** The shortest way from edge to edge, seen from above. */
function awayFrom(a: Plan, b: Plan): Mm {
  const along = Math.max(b.left - a.left - a.width, a.left - b.left - b.width, 0)
  const out = Math.max(b.rear - a.front, a.rear - b.front, 0)
  return settle(Math.hypot(along, out))
}
