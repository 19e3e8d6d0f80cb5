import type { BuiltRun } from '../between/run'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { meetingsOf, turnedIn } from '../runs/reach'
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

/** A dishwasher is filled from the sink, at its own wall or round a corner. One across the room is not measured. */
export function toSinkFindings(one: Cabinet, project: Project, runs: readonly BuiltRun[]): Finding[] {
  if (one.space?.of !== 'dishwasher') return []
  const { left, width, depth } = one
  const washer = { left, width, rear: 0, front: depth }
  const sinks = letInto(project, runs).filter(({ of }) => of === 'sink')
  const all = sinks.flatMap((sink) => {
    const there = seenFrom(sink, one, project)
    return there ? [{ away: awayFrom(washer, there), isRound: sink.cabinet.wall !== one.wall }] : []
  })
  const [first] = all.sort((a, b) => a.away - b.away)
  if (!first || first.away <= TO_SINK) return []
  const [measure, limit] = sayIn(project.display).apart(first.away, TO_SINK)
  const where = first.isRound ? ' round the corner, straight across' : ''
  const message = `its dishwasher is ${measure} from the edge of the sink${where}; ${limit} at most is asked for.`
  return [about({ cabinet: one, mark: markOf(one) }, { weight: 'know', message, measure, limit, source: SOURCE })]
}

/** A sink from the wall of a cabinet; null where it is at neither this one nor one that meets it. */
function seenFrom({ cabinet, left, right, top }: LetIn, from: Cabinet, project: Project): Plan | null {
  const { fromFront, depth } = cabinet.cutout!
  const front = settle(top.place.depth - fromFront)
  const own = { left, width: settle(right - left), rear: settle(front - depth), front }
  if (cabinet.wall === from.wall) return own
  const wall = find(project.walls, from.wall)
  const meeting = wall && meetingsOf(project, wall).find((one) => one.wall.id === cabinet.wall)
  if (!meeting) return null
  const { bottom, height } = cabinet
  return turnedIn({ ...own, bottom, height, cabinet, isLeg: false }, meeting)
}

/** The shortest way from edge to edge, seen from above. */
function awayFrom(a: Plan, b: Plan): Mm {
  const along = Math.max(b.left - a.left - a.width, a.left - b.left - b.width, 0)
  const out = Math.max(b.rear - a.front, a.rear - b.front, 0)
  return settle(Math.hypot(along, out))
}
