import type { Project } from '../project/document'
import { find } from '../project/references'
import { sharedBy } from '../runs/lane'
import { type Body, bodiesAcross } from '../runs/reach'
import { oppositesOf } from '../site/wall'
import { type Mm, settle } from '../units/length'
import type { Standing } from './beside'
import { appliancesIn, type Moving, movingIn } from './facing'
import { about, type Finding, GEOMETRY, PRACTICE } from './finding'
import { sayIn } from './say'

/** Between two runs, or a run and the wall it faces: one person works there; 1000 mm is better. Common practice, no source. */
const PASSAGE: Mm = 900

/** What a cabinet faces across the room, and how far its face is from it. */
interface Across {
  readonly gap: Mm
  readonly words: string
}

/** An opening that is in want of room, and what it would strike. */
interface Struck extends Across {
  readonly out: Mm
}

/** What opens against the fronts or the bare wall at the other side of the room, and passages that are too narrow to work in. */
export function acrossFindings(
  project: Project,
  standing: readonly Standing[],
  asked: readonly Standing[] = standing,
): Finding[] {
  return asked.flatMap((one) => {
    const wall = find(project.walls, one.cabinet.wall)
    if (!wall || one.cabinet.corner) return []
    return oppositesOf(project, wall).flatMap((opposite) => {
      const bodies = bodiesAcross(project, opposite)
      const room = { one, bodies, standing, end: opposite.between.length }
      const struck = struckIn(room)
      if (struck) return [struckFinding(one, struck, project)]
      const passage = passageIn(room, opposite.before.id === wall.id)
      return passage && passage.gap < PASSAGE ? [passageFinding(one, passage, project)] : []
    })
  })
}

interface Room {
  readonly one: Standing
  readonly bodies: readonly Body[]
  readonly standing: readonly Standing[]
  /** From this wall to the one that it faces. */
  readonly end: Mm
}

/** What lacks most, of what cannot be opened all the way. */
function struckIn({ one, bodies, standing, end }: Room): Struck | null {
  const face = settle(one.cabinet.depth + one.frontThickness)
  const all = [...movingIn(one), ...appliancesIn(one)].flatMap((moving) => [
    { gap: settle(end - face), out: moving.out, words: THE_WALL },
    ...bodies.flatMap((body) => {
      const { x, y } = sharedBy(moving.rect, body)
      if (x <= 0 || y <= 0) return []
      return [{ gap: settle(body.rear - face), out: outBefore(moving, body), words: wordsFor(body, standing) }]
    }),
  ])
  const struck = all.filter(({ gap, out }) => gap < out)
  return struck.length === 0 ? null : struck.reduce((a, b) => (b.out - b.gap > a.out - a.gap ? b : a))
}

/**
 * How far something comes out where a body stands across. A door swings in a circle about its hinge, so that it comes out
 * less where the body begins away from there.
 */
function outBefore({ rect, out, hinge }: Moving, body: Body): Mm {
  if (!hinge) return out
  const away = hinge === 'left' ? body.left - rect.left : rect.left + rect.width - body.left - body.width
  return settle(Math.sqrt(Math.max(0, out ** 2 - Math.max(0, away) ** 2)))
}

const THE_WALL = 'the wall opposite'

function wordsFor({ cabinet }: Body, standing: readonly Standing[]): string {
  return standing.find((other) => other.cabinet.id === cabinet.id)?.mark ?? THE_WALL
}

/** From the face of what stands on the floor to the nearest that does so across; between two cabinets told of the first. */
function passageIn({ one, bodies, standing, end }: Room, isFirst: boolean): Across | null {
  if (one.cabinet.kind === 'upper') return null
  const face = settle(one.cabinet.depth + one.frontThickness)
  const faced = bodies.filter((body) => body.cabinet.kind !== 'upper' && sharedBy(one.cabinet, body).x > 0)
  if (faced.length === 0) return { gap: settle(end - face), words: THE_WALL }
  if (!isFirst) return null
  const nearest = faced.reduce((a, b) => (b.rear < a.rear ? b : a))
  return { gap: settle(nearest.rear - face), words: wordsFor(nearest, standing) }
}

function struckFinding(one: Standing, { gap, out, words }: Struck, project: Project): Finding {
  const say = sayIn(project.display)
  const [measure, limit] = say.apart(gap, out)
  const message =
    `what opens comes out ${limit}, and ${words} across the room is ${measure} from its face, so it cannot be opened all the way. ` +
    `${say.length(PASSAGE)} at least is usual to work in.`
  return about(one, { weight: 'mind', message, measure, limit, source: GEOMETRY })
}

function passageFinding(one: Standing, { gap, words }: Across, project: Project): Finding {
  const [measure, limit] = sayIn(project.display).apart(gap, PASSAGE)
  const message = `it is ${measure} from its face to ${words} across the room; ${limit} at least is usual to work in.`
  return about(one, { weight: 'know', message, measure, limit, source: PRACTICE })
}
