import type { WallId } from '../basics/id'
import { listed } from '../basics/listed'
import type { Project } from '../project/document'
import { sharedBy } from '../runs/lane'
import { type Body, bodiesAcross } from '../runs/reach'
import { type Opposite, oppositesOf, wallsOf } from '../site/wall'
import { inch, type Mm, settle } from '../units/length'
import type { Standing } from './beside'
import { about, type Finding } from './finding'
import { sayIn } from './say'

/** Between two runs, for one cook and for several. Source: NKBA kitchen planning guideline 6. */
const AISLE: Mm = inch(42)
const AISLE_OF_SEVERAL: Mm = inch(48)
const AISLE_SOURCE = 'NKBA guideline 6: work aisles'

/** Where somebody only passes, as along a bare wall. Source: NKBA kitchen planning guideline 7. */
const WALKWAY: Mm = inch(36)
const WALKWAY_SOURCE = 'NKBA guideline 7: walkways'

/** Who says how wide passages are to be, for a finding that says so beside something else. */
export function aisleWords(project: Project): { readonly words: string; readonly source: string } {
  return {
    words: `A work aisle of ${sayIn(project.display).length(AISLE)} at least is asked for.`,
    source: AISLE_SOURCE,
  }
}

/** From the face of a cabinet to what it faces: another cabinet, or the bare wall. */
interface Faced {
  readonly one: Standing
  readonly gap: Mm
  readonly other: Standing | null
}

/**
 * Passages between two walls that are too narrow to work or to walk in: each is told once, about the cabinet where it is
 * narrowest, with the marks of the others beside it. What `isTold` says lacks room already is left out.
 */
export function passageFindings(
  project: Project,
  standing: readonly Standing[],
  isTold: (one: Standing) => boolean,
): Finding[] {
  return wallsOf(project).flatMap((wall) =>
    oppositesOf(project, wall)
      .filter(({ before }) => before.id === wall.id)
      .flatMap((opposite) => {
        const back = oppositesOf(project, opposite.wall).find((one) => one.wall.id === wall.id)
        const there = back ? facedIn(project, standing, opposite.wall, back) : []
        const all = [...facedIn(project, standing, wall, opposite), ...there]
        return passageFinding(
          all.filter((faced) => faced.gap < limitOf(faced) && !isTold(faced.one)),
          project,
        )
      }),
  )
}

/** What each of those that stand on the floor of a wall faces; corners stand out of the way. */
function facedIn(project: Project, standing: readonly Standing[], { id }: { id: WallId }, opposite: Opposite): Faced[] {
  const there = standing.filter(({ cabinet }) => cabinet.wall === id && !cabinet.corner && cabinet.kind !== 'upper')
  if (there.length === 0) return []
  const bodies = bodiesAcross(project, opposite).filter(({ cabinet }) => cabinet.kind !== 'upper')
  return there.map((one): Faced => {
    const face = settle(one.cabinet.depth + one.frontThickness)
    const faced = bodies.filter((body) => sharedBy(one.cabinet, body).x > 0)
    if (faced.length === 0) return { one, gap: settle(opposite.between.length - face), other: null }
    const nearest = faced.reduce((a: Body, b) => (b.rear < a.rear ? b : a))
    const other = standing.find(({ cabinet }) => cabinet.id === nearest.cabinet.id) ?? null
    return { one, gap: settle(nearest.rear - face), other }
  })
}

function limitOf({ other }: Faced): Mm {
  return other ? AISLE : WALKWAY
}

function passageFinding(narrow: readonly Faced[], project: Project): Finding[] {
  const [first] = narrow
  if (!first) return []
  const narrowest = narrow.reduce((a, b) => (b.gap < a.gap ? b : a), first)
  const { one, gap, other } = narrowest
  const say = sayIn(project.display)
  const [measure, limit] = say.apart(gap, limitOf(narrowest))
  const named = new Set([one.mark, other?.mark])
  const others = [...new Set(narrow.flatMap((faced) => [faced.one.mark, faced.other?.mark ?? '']))]
  const rest = others.filter((mark) => mark !== '' && !named.has(mark))
  const asked = other
    ? `${limit} at least is asked for where one cook works, ${say.length(AISLE_OF_SEVERAL)} where several do`
    : `${limit} at least is asked for to walk there`
  const message =
    `it is ${measure} from its face to ${other?.mark ?? 'the bare wall'} across the room; ${asked}.` +
    (rest.length > 0 ? ` ${listed(rest)} stand${rest.length === 1 ? 's' : ''} in the same passage.` : '')
  const weight = gap < WALKWAY && other ? 'mind' : 'know'
  return [about(one, { weight, message, measure, limit, source: other ? AISLE_SOURCE : WALKWAY_SOURCE })]
}
