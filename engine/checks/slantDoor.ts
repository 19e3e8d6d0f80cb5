import type { Corner } from '../project/corner'
import type { Cabinet, Project, Side } from '../project/document'
import { find } from '../project/references'
import { rightEdge, sharedBy } from '../runs/lane'
import { meetingsOf } from '../runs/reach'
import { type Mm, settle } from '../units/length'
import { roomRemedy, type Standing } from './beside'
import { about, type Finding, GEOMETRY, withRemedy } from './finding'
import { sayIn } from './say'

/** One end of the slanting front of a diagonal, as it is along the wall of that end. */
interface End {
  /** How far it is from its wall, and how far the line to the other end goes along and out. */
  readonly depth: Mm
  readonly along: Mm
  readonly out: Mm
  readonly isHinged: boolean
}

/** What stands beside an end, from it and out from the wall; `side` is that which looks at the corner. */
interface Neighbour {
  readonly other: Standing
  readonly gap: Mm
  readonly side: Side
}

/**
 * The door of a diagonal corner that meets what stands out further than it beside one of its ends.
 *
 *      +-----------+------+
 *      |           | tall |    the door swings over the end of its cabinet, whichever side it hangs on
 *      |          /|      |
 *      |        /  +------+
 *      +------/
 */
export function slantDoorFindings(one: Standing, project: Project, standing: readonly Standing[]): Finding[] {
  const { corner, front } = one.cabinet
  if (corner?.kind !== 'diagonal' || front.kind !== 'door') return []
  const isHingedAtOwn = front.hinge !== corner.hand
  return [
    ...alongOwn(one.cabinet, corner, standing).flatMap((neighbour) =>
      doorFinding(one, ownEnd(one.cabinet, corner, isHingedAtOwn), neighbour, project),
    ),
    ...alongOther(one.cabinet, corner, standing, project).flatMap((neighbour) =>
      doorFinding(one, otherEnd(one.cabinet, corner, !isHingedAtOwn), neighbour, project),
    ),
  ]
}

function ownEnd({ width, depth }: Cabinet, { other, otherDepth }: Corner, isHinged: boolean): End {
  return { depth, along: settle(width - otherDepth), out: settle(other - depth), isHinged }
}

function otherEnd({ width, depth }: Cabinet, { other, otherDepth }: Corner, isHinged: boolean): End {
  return { depth: otherDepth, along: settle(other - depth), out: settle(width - otherDepth), isHinged }
}

/** What stands nearest beside the free end of the own leg, and as high as its door somewhere. */
export function alongOwn(cabinet: Cabinet, { hand }: Corner, standing: readonly Standing[]): Neighbour[] {
  const there = standing.filter(({ cabinet: other }) => other.wall === cabinet.wall && other.id !== cabinet.id)
  return nearest(
    there.map((other) => {
      const gap = hand === 'left' ? other.cabinet.left - rightEdge(cabinet) : cabinet.left - rightEdge(other.cabinet)
      return { other, gap: settle(gap), side: hand }
    }),
    cabinet,
  )
}

function alongOther(
  cabinet: Cabinet,
  { hand, other: reach }: Corner,
  standing: readonly Standing[],
  project: Project,
): Neighbour[] {
  const wall = find(project.walls, cabinet.wall)
  const meeting = wall && meetingsOf(project, wall).find(({ side }) => side === hand)
  if (!meeting) return []
  const there = standing.filter((other) => other.cabinet.wall === meeting.wall.id)
  return nearest(
    there.map((other) => {
      const fromCorner = hand === 'left' ? meeting.wall.length - rightEdge(other.cabinet) : other.cabinet.left
      return { other, gap: settle(fromCorner - reach), side: hand === 'left' ? 'right' : 'left' }
    }),
    cabinet,
  )
}

/** The nearest of those that are beside the end and as high as its door somewhere. */
function nearest(all: readonly Neighbour[], cabinet: Cabinet): Neighbour[] {
  const beside = all.filter(
    ({ gap, other }) => gap >= 0 && !other.cabinet.corner && sharedBy(cabinet, other.cabinet).y > 0,
  )
  return beside.length === 0 ? [] : [beside.reduce((a, b) => (b.gap < a.gap ? b : a))]
}

function doorFinding(one: Standing, end: End, { other, gap, side }: Neighbour, project: Project): Finding[] {
  const wanted = wantedBeside(end, one.frontThickness, settle(other.cabinet.depth + other.frontThickness))
  if (gap >= wanted) return []
  const [measure, limit] = sayIn(project.display).apart(gap, wanted)
  const how = end.isHinged ? 'can be opened square' : 'can swing past it'
  const message = `its door meets ${other.mark}, which stands out further beside it: ${limit} beside it are wanted so that it ${how}, and there are ${measure}.`
  const finding = about(one, { weight: 'mind', message, measure, limit, source: GEOMETRY })
  return [withRemedy(finding, () => roomRemedy(other, side, settle(wanted - gap), project))]
}

/**
 * How far from an end something must stand that comes out to `face`, for a door so thick. A door that is hinged at the end
 * stands square to the slanting line when it is open; one that is hinged at the far end swings round that. 0 where it does
 * not come out past the corner of the door.
 */
function wantedBeside({ depth, along, out, isHinged }: End, thickness: Mm, face: Mm): Mm {
  if (along <= 0 || out <= 0) return 0
  const line = Math.hypot(along, out)
  const proud = settle(face - depth - (thickness * line) / along)
  if (proud <= 0) return 0
  if (isHinged) return settle((Math.min(proud, along) * out) / along)
  const before = Math.max(0, settle(depth + out - face))
  return Math.max(0, settle(Math.sqrt(Math.max(0, line ** 2 - before ** 2)) - along))
}
