import type { Project } from '../project/document'
import { find } from '../project/references'
import { sharedBy } from '../runs/lane'
import { type Body, bodiesAcross } from '../runs/reach'
import { oppositesOf } from '../site/wall'
import { type Mm, settle } from '../units/length'
import { HANDLE_OUT, type Standing } from './beside'
import { cornerAcrossFindings } from './cornerAcross'
import { appliancesIn, facedAcross, type Moving, movingIn, THE_WALL } from './facing'
import { about, type Finding, GEOMETRY, PRACTICE } from './finding'
import { aisleWords, passageFindings } from './passage'
import { sayIn } from './say'

/** What a cabinet faces across the room: how far its face is from it, and what the pulls there take of that. */
interface Across {
  readonly gap: Mm
  readonly pulls: Mm
  readonly words: string
}

/** An opening that is in want of room, and what it would strike. */
interface Struck extends Across {
  readonly out: Mm
  /** What its own pull stands out further, once it is open. */
  readonly pull: Mm
}

/** What opens against the fronts or the bare wall at the other side of the room, and passages that are too narrow to work in. */
export function acrossFindings(
  project: Project,
  standing: readonly Standing[],
  asked: readonly Standing[] = standing,
): Finding[] {
  return [
    ...asked.flatMap((one) => {
      const struck = struckIn(one, project, standing)
      return struck ? [struckFinding(one, struck, project)] : []
    }),
    ...cornerAcrossFindings(project, standing, asked),
    ...passageFindings(project, standing, (one) => struckIn(one, project, standing) !== null),
  ]
}

/** What lacks most, of what cannot be opened all the way. */
function struckIn(one: Standing, project: Project, standing: readonly Standing[]): Struck | null {
  const wall = find(project.walls, one.cabinet.wall)
  if (!wall || one.cabinet.corner) return null
  const face = settle(one.cabinet.depth + one.frontThickness)
  const all = oppositesOf(project, wall).flatMap((opposite) => {
    const bodies = bodiesAcross(project, opposite)
    return [...movingIn(one), ...appliancesIn(one)].flatMap((moving): Struck[] => {
      const pull = moving.isDrawn ? HANDLE_OUT : 0
      const bare = { gap: settle(opposite.between.length - face), out: moving.out, pull, pulls: 0, words: THE_WALL }
      const met = bodies.flatMap((body): Struck[] => {
        const { x, y } = sharedBy(moving.rect, body)
        if (x <= 0 || y <= 0) return []
        const out = outBefore(moving, body)
        return [{ gap: settle(body.rear - face), out, pull, ...facedAcross(body, standing) }]
      })
      return [bare, ...met]
    })
  })
  const struck = all.filter((met) => lacking(met) > 0)
  return struck.length === 0 ? null : struck.reduce((a, b) => (lacking(b) > lacking(a) ? b : a))
}

function lacking({ gap, out, pull, pulls }: Struck): Mm {
  return settle(out + pull + pulls - gap)
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

function struckFinding(one: Standing, { gap, out, pull, pulls, words }: Struck, project: Project): Finding {
  const say = sayIn(project.display)
  const aisle = aisleWords(project)
  const [measure, limit] = say.apart(gap, settle(out + pull + pulls))
  const taken = [
    ...(pull > 0 ? [`its own pull ${say.length(pull)} of it`] : []),
    ...(pulls > 0 ? [`the pulls of ${words} ${say.length(pulls)}`] : []),
  ].join(', ')
  const message =
    `what opens wants ${limit}${taken && ` (${taken})`}, and ${words} across the room is ${measure} from its face, so it ` +
    `cannot be opened all the way. ${aisle.words}`
  // Pulls may be slighter, or sit where they pass each other.
  const weight = gap < out ? 'mind' : 'know'
  const source = `${GEOMETRY}; ${pull + pulls > 0 ? `what pulls stand out: ${PRACTICE}; ` : ''}${aisle.source}`
  return about(one, { weight, message, measure, limit, source })
}
