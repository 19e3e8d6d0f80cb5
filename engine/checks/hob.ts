import { valuesOf } from '../basics/id'
import { once } from '../basics/remember'
import type { BuiltRun } from '../between/run'
import { ROLE_NAMES } from '../cabinets/role'
import type { Cabinet, Project, Side } from '../project/document'
import type { CabinetShape } from '../project/edit'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { fitOf } from '../runs/fit'
import { rightEdge, topEdge } from '../runs/lane'
import { roomMade } from '../runs/push'
import { bodiesOf, reachingIn } from '../runs/reach'
import { inch, type Mm, settle } from '../units/length'
import { about, type Finding, type Remedy, withRemedy } from './finding'
import { sayIn } from './say'
import { rangesIn } from './space'
import { type LetIn, letInto } from './worktop'

/** From the top of a hob up to what burns, unprotected and with listed protection. */
const ABOVE = inch(30)
const ABOVE_PROTECTED = inch(24)
const ABOVE_SOURCE = 'IRC M1901.1, as inspectors quote it; with protection: an appliance manual'
/** From a hob to a side that rises above the countertop. */
const ASIDE = inch(10)
const ASIDE_SOURCE = 'older US federal minimum property text, as reprinted online'
/** The deepest wall cabinet beside what is cooked on. */
const DEEPEST_BESIDE = inch(13)
const DEEPEST_SOURCE = 'what many appliance manuals print, as a building-code forum has it'
const MAKER_FIRST = "The appliance's own paper and local codes come first."

/** What hangs too low over a hob or a range, or rises too near beside it. */
export function hobFindings(project: Project, runs: readonly BuiltRun[]): Finding[] {
  const hobs = letInto(project, runs).flatMap((one): Heat[] => (one.of === 'hob' ? [{ ...one, what: 'hob' }] : []))
  return [...hobs, ...rangesIn(project)].flatMap((hob) => [
    ...aboveFindings(hob, project, runs),
    ...asideFindings(hob, project),
    ...deepFindings(hob, project),
  ])
}

/** What is cooked on: a hob that is let into the countertop, or a range that stands in it. */
interface Heat extends Pick<LetIn, 'cabinet' | 'mark' | 'left' | 'right' | 'surface'> {
  readonly what: 'hob' | 'range'
}

/** Something over a hob, along the wall and up it: a cabinet, or a trim of one. */
interface Overhead {
  readonly words: string
  readonly cabinet: Cabinet | null
  readonly place: Pick<Cabinet, 'left' | 'width' | 'bottom'>
}

function aboveFindings(hob: Heat, project: Project, runs: readonly BuiltRun[]): Finding[] {
  const say = sayIn(project.display)
  return overheads(hob, project, runs).map((one) => {
    const gap = settle(one.place.bottom - hob.surface)
    const [measure, limit] = say.apart(gap, ABOVE)
    const message =
      `${one.words} hangs ${measure} over its ${hob.what}; ${limit} is the least to anything that burns, and ` +
      `${say.length(ABOVE_PROTECTED)} under protection listed for it. ${MAKER_FIRST}`
    const weight = gap < ABOVE_PROTECTED ? 'stop' : 'mind'
    const told = about(hob, { weight, message, measure, limit, source: ABOVE_SOURCE })
    return withRemedy(told, () => raised(one, hob, project))
  })
}

/** What hangs over a hob nearer than it may. */
function overheads(hob: Heat, { cabinets }: Project, runs: readonly BuiltRun[]): Overhead[] {
  const boxes = valuesOf<Cabinet>(cabinets).map((cabinet) => ({ words: markOf(cabinet), cabinet, place: cabinet }))
  const trims = runs.flatMap(({ kind, mark, place }) =>
    kind === 'kick' ? [] : [{ words: `the ${ROLE_NAMES[kind]} ${mark}`, cabinet: null, place }],
  )
  return [...boxes, ...trims].filter(
    ({ place }) =>
      place.wall === hob.cabinet.wall &&
      place.bottom >= hob.surface &&
      settle(place.bottom - hob.surface) < ABOVE &&
      place.left < hob.right &&
      place.left + place.width > hob.left,
  )
}

/** The cabinet hung as high as it must, where it then fits. */
function raised({ cabinet }: Overhead, hob: Heat, project: Project): Remedy | null {
  if (!cabinet) return null
  const bottom = settle(hob.surface + ABOVE)
  if (!fitOf(project, [{ ...cabinet, bottom }]).fits) return null
  return {
    label: `Hang ${markOf(cabinet)} higher over the ${hob.what}`,
    edit: { kind: 'shapeCabinets', shapes: [{ id: cabinet.id, bottom }] },
  }
}

/** What stands or hangs beside what is cooked on, at its wall or round a corner from it. */
interface Beside {
  readonly words: string
  readonly cabinet: Cabinet
  /** How far it is from what is cooked on, along the wall; less than 0 before or behind it. */
  readonly gap: Mm
  /** At which side of what is cooked on. */
  readonly side: Side
  /** How deep it is; round a corner, how far it stands out from this wall. */
  readonly out: Mm
}

/** The others whose bodies begin no further out from the wall than what is cooked on reaches. */
function besideOf(hob: Heat, project: Project): Beside[] {
  const wall = find(project.walls, hob.cabinet.wall)
  if (!wall) return []
  const own = valuesOf<Cabinet>(project.cabinets).filter((one) => one.wall === wall.id && one.id !== hob.cabinet.id)
  const bodies = [
    ...own.flatMap((one) => bodiesOf(one, project).map((body) => ({ body, isRound: false }))),
    ...reachingIn(project, wall).map((body) => ({ body, isRound: !body.isLeg })),
  ]
  return bodies
    .filter(({ body }) => body.rear < hob.cabinet.depth && body.cabinet.id !== hob.cabinet.id)
    .map(({ body, isRound }) => ({
      words: `${markOf(body.cabinet)}${isRound ? ' round the corner' : ''}`,
      cabinet: body.cabinet,
      gap: settle(Math.max(body.left - hob.right, hob.left - rightEdge(body))),
      side: body.left - hob.right > hob.left - rightEdge(body) ? 'right' : 'left',
      out: isRound || body.cabinet.corner ? body.front : body.cabinet.depth,
    }))
}

/** A tall, an upper that hangs down to it, or the end of the wall beside the hob. */
function asideFindings(hob: Heat, project: Project): Finding[] {
  const say = sayIn(project.display)
  const length = find(project.walls, hob.cabinet.wall)?.length ?? Infinity
  const risers = besideOf(hob, project).filter(({ cabinet, gap }) => {
    if (topEdge(cabinet) <= hob.surface) return false
    // What hangs higher is told as what it is over.
    return cabinet.kind === 'tall' || (cabinet.kind === 'upper' && gap >= 0 && cabinet.bottom < hob.surface + ASIDE)
  })
  const sides: readonly Aside[] = [
    { words: 'the left end of the wall', gap: hob.left, side: 'left', cabinet: null },
    { words: 'the right end of the wall', gap: settle(length - hob.right), side: 'right', cabinet: null },
    ...risers,
  ]
  return sides
    .filter(({ gap }) => gap < ASIDE)
    .map((one) => {
      const [measure, limit] = say.apart(one.gap, ASIDE)
      const made = once(() => movedApart(hob, one, project))
      const message = () =>
        `its ${hob.what} is ${measure} from ${one.words}; ${limit} is the least to a side that rises above it. ` +
        `${made() ? '' : `There is no room to move it or what rises beside it: what stands along this wall would have to be ${say.between(ASIDE, one.gap)} narrower in all. `}${MAKER_FIRST}`
      return withRemedy(about(hob, { weight: 'mind', message, measure, limit, source: ASIDE_SOURCE }), made)
    })
}

/** What rises beside what is cooked on, at one side of it: a cabinet, or the end of the wall. */
type Aside = Pick<Beside, 'words' | 'gap' | 'side'> & { readonly cabinet: Cabinet | null }

/** What is cooked on moved away from what rises beside it, or that moved away; what stands there is pushed along. */
function movedApart({ cabinet, mark, what }: Heat, aside: Aside, project: Project): Remedy | null {
  const { gap, side, cabinet: riser } = aside
  if (gap < 0 || cabinet.corner) return null
  const by = settle(ASIDE - gap)
  const words = sayIn(project.display).between(ASIDE, gap)
  const away = roomMade(project, cabinet, side, by)
  const put = (shapes: readonly CabinetShape[]) => ({ kind: 'shapeCabinets', shapes }) as const
  if (away) return { label: `Move ${mark} with its ${what} ${words} away from ${aside.words}`, edit: put(away) }
  if (!riser || riser.corner || riser.wall !== cabinet.wall) return null
  const cleared = roomMade(project, riser, side === 'left' ? 'right' : 'left', by)
  return cleared && { label: `Move ${markOf(riser)} ${words} away from the ${what} of ${mark}`, edit: put(cleared) }
}

/** Uppers beside what is cooked on that stand out further than the makers of cooktops allow. */
function deepFindings(hob: Heat, project: Project): Finding[] {
  const say = sayIn(project.display)
  return besideOf(hob, project)
    .filter(({ cabinet, gap, out }) => {
      return (
        cabinet.kind === 'upper' && cabinet.bottom >= hob.surface && gap >= 0 && gap < ASIDE && out > DEEPEST_BESIDE
      )
    })
    .map(({ words, cabinet, out }) => {
      const [measure, limit] = say.apart(out, DEEPEST_BESIDE)
      const is = out === cabinet.depth ? `is ${measure} deep` : `stands out ${measure} from its wall`
      const message = `${words} beside its ${hob.what} ${is}; ${limit} is the most for a wall cabinet there. ${MAKER_FIRST}`
      return about(hob, { weight: 'know', message, measure, limit, source: DEEPEST_SOURCE })
    })
}
