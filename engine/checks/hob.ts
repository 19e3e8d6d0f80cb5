import { valuesOf } from '../basics/id'
import type { BuiltRun } from '../between/run'
import { ROLE_NAMES } from '../cabinets/role'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { fitOf } from '../runs/fit'
import { rightEdge, topEdge } from '../runs/lane'
import { inch, settle } from '../units/length'
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

/** A tall or the end of the wall beside the hob. */
function asideFindings(hob: Heat, project: Project): Finding[] {
  const say = sayIn(project.display)
  const length = find(project.walls, hob.cabinet.wall)?.length ?? Infinity
  const talls = valuesOf<Cabinet>(project.cabinets).filter(
    (one) =>
      one.kind === 'tall' && one.id !== hob.cabinet.id && one.wall === hob.cabinet.wall && topEdge(one) > hob.surface,
  )
  const risers = [
    { words: 'the left end of the wall', gap: hob.left },
    { words: 'the right end of the wall', gap: settle(length - hob.right) },
    ...talls.map((tall) => ({
      words: markOf(tall),
      gap: settle(tall.left >= hob.right ? tall.left - hob.right : hob.left - rightEdge(tall)),
    })),
  ]
  return risers
    .filter(({ gap }) => gap < ASIDE)
    .map(({ words, gap }) => {
      const [measure, limit] = say.apart(gap, ASIDE)
      const message = `its ${hob.what} is ${measure} from ${words}; ${limit} is the least to a side that rises above it. ${MAKER_FIRST}`
      return about(hob, { weight: 'mind', message, measure, limit, source: ASIDE_SOURCE })
    })
}

/** Uppers beside what is cooked on that stand out further than the makers of cooktops allow. */
function deepFindings(hob: Heat, project: Project): Finding[] {
  const say = sayIn(project.display)
  return valuesOf<Cabinet>(project.cabinets)
    .filter(({ kind, corner, wall, bottom }) => {
      return kind === 'upper' && !corner && wall === hob.cabinet.wall && bottom >= hob.surface
    })
    .filter((upper) => {
      const gap = Math.max(upper.left - hob.right, hob.left - rightEdge(upper))
      return gap >= 0 && gap < ASIDE && upper.depth > DEEPEST_BESIDE
    })
    .map((upper) => {
      const [measure, limit] = say.apart(upper.depth, DEEPEST_BESIDE)
      const message = `${markOf(upper)} beside its ${hob.what} is ${measure} deep; ${limit} is the most for a wall cabinet there. ${MAKER_FIRST}`
      return about(hob, { weight: 'know', message, measure, limit, source: DEEPEST_SOURCE })
    })
}
