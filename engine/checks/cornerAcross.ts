import type { Cabinet, Project, Wall } from '../project/document'
import { find } from '../project/references'
import { rightEdge, sharedBy } from '../runs/lane'
import { type Body, bodiesAcross, meetingsOf } from '../runs/reach'
import { oppositesOf } from '../site/wall'
import { type Mm, settle } from '../units/length'
import type { Standing } from './beside'
import { facedAcross, THE_WALL } from './facing'
import { about, type Finding, GEOMETRY, PRACTICE, type Remedy, withRemedy } from './finding'
import { aisleWords } from './passage'
import { sayIn } from './say'
import { outWithin, type Swing, swingsOf } from './swing'

/** One of the walls of a corner, and where the corner is in its frame. */
interface Seen {
  readonly wall: Wall
  readonly as: 'own' | 'other'
  /** Where the corner of the cabinet is along it, the way that its legs go from there, and how far from the wall it begins. */
  readonly at: Mm
  readonly way: 1 | -1
  readonly from: Mm
}

/** What the door of a corner would strike across the room: both measured out from the wall that is faced from. */
interface Struck {
  readonly out: Mm
  readonly rear: Mm
  readonly words: string
  readonly pulls: Mm
}

/** Doors of corner cabinets that cannot be opened square for what stands at the walls across, or for these walls. */
export function cornerAcrossFindings(
  project: Project,
  standing: readonly Standing[],
  asked: readonly Standing[] = standing,
): Finding[] {
  return asked.flatMap((one) => {
    const struck = struckBy(one, one.cabinet, project, standing)
    if (!struck) return []
    return [withRemedy(struckFinding(one, struck, project), () => turnedRemedy(one, project, standing))]
  })
}

function struckBy(one: Standing, cabinet: Cabinet, project: Project, standing: readonly Standing[]): Struck | null {
  const swings = swingsOf(cabinet, one.frontThickness)
  if (swings.length === 0) return null
  const all = seenFrom(cabinet, project).flatMap((seen) =>
    oppositesOf(project, seen.wall).flatMap((opposite): Struck[] => {
      const whole = { left: 0, width: seen.wall.length }
      const bare = { out: reachOf(swings, seen, whole), rear: opposite.between.length, words: THE_WALL, pulls: 0 }
      const bodies = bodiesAcross(project, opposite).filter((body) => sharedBy(cabinet, body).y > 0)
      const met = bodies.map((body) => ({
        out: reachOf(swings, seen, body),
        rear: body.rear,
        ...facedAcross(body, standing),
      }))
      return [bare, ...met]
    }),
  )
  const struck = all.filter((met) => lacking(met) > 0)
  return struck.length === 0 ? null : struck.reduce((a, b) => (lacking(b) > lacking(a) ? b : a))
}

/** Only where the door comes out before it can it strike something. */
function lacking({ out, rear, pulls }: Struck): Mm {
  return out > 0 ? settle(out + pulls - rear) : 0
}

function reachOf(swings: readonly Swing[], { as, at, way, from }: Seen, body: Pick<Body, 'left' | 'width'>): Mm {
  const [a, b] = [settle(way * (body.left - at)), settle(way * (body.left + body.width - at))]
  const stretch = { from: Math.min(a, b), to: Math.max(a, b) }
  const reached = Math.max(...swings.map((swing) => outWithin(swing, as, stretch)))
  return reached > 0 ? settle(from + reached) : 0
}

/** Its own wall and that of its other leg, where the walls meet. */
function seenFrom(cabinet: Cabinet, project: Project): Seen[] {
  const wall = find(project.walls, cabinet.wall)
  const { corner, left } = cabinet
  if (!wall || !corner) return []
  const right = rightEdge(cabinet)
  const own: Seen =
    corner.hand === 'left'
      ? { wall, as: 'own', at: left, way: 1, from: 0 }
      : { wall, as: 'own', at: right, way: -1, from: 0 }
  const meeting = meetingsOf(project, wall).find(({ side }) => side === corner.hand)
  if (!meeting) return [own]
  const other: Seen =
    corner.hand === 'left'
      ? { wall: meeting.wall, as: 'other', at: meeting.wall.length, way: -1, from: left }
      : { wall: meeting.wall, as: 'other', at: 0, way: 1, from: settle(wall.length - right) }
  return [own, other]
}

function struckFinding(one: Standing, { out, rear, words, pulls }: Struck, project: Project): Finding {
  const say = sayIn(project.display)
  const aisle = aisleWords(project)
  const [measure, limit] = say.apart(rear, settle(out + pulls))
  const taken = pulls > 0 ? ` with the pulls of ${words}, which take ${say.length(pulls)}` : ''
  const message =
    `its door swings ${say.length(out)} out from the wall; that wants ${limit}${taken}, and ${words} across the room is ` +
    `${measure} from that wall, so it cannot be opened square. ${aisle.words}`
  const weight = rear < out ? 'mind' : 'know'
  const source = `${GEOMETRY}; ${pulls > 0 ? `what pulls stand out: ${PRACTICE}; ` : ''}${aisle.source}`
  return about(one, { weight, message, measure, limit, source })
}

/** The door of a diagonal hung on its other end, where it then strikes nothing. */
function turnedRemedy(one: Standing, project: Project, standing: readonly Standing[]): Remedy | null {
  const { cabinet, mark } = one
  if (cabinet.corner?.kind !== 'diagonal' || cabinet.front.kind !== 'door') return null
  const front = { kind: 'door', hinge: cabinet.front.hinge === 'left' ? 'right' : 'left' } as const
  if (struckBy(one, { ...cabinet, front }, project, standing)) return null
  return { label: `Hinge ${mark} at the other side`, edit: { kind: 'setFront', ids: [cabinet.id], front } }
}
