import { type CabinetId, valuesOf } from '../basics/id'
import { betweenOf } from '../between/betweenOf'
import type { BuiltRun } from '../between/run'
import { boxOf } from '../cabinets/boardBox'
import { rulesOf } from '../cabinets/build'
import { buildCabinet } from '../cabinets/buildCabinet'
import type { Interval } from '../geometry/interval'
import type { Part } from '../parts/part'
import { partsOf } from '../parts/partsOf'
import { applyEdit } from '../project/apply'
import type { Cabinet, Material, Project } from '../project/document'
import { baysOf } from '../project/interior'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { ownTopEdit } from '../project/topOver'
import { type Mm, settle } from '../units/length'
import { NEWTON_PER_KG } from '../units/weight'
import { withRole } from './boards'
import { type LegOfSeat, legsOfSeat, stiffnessIn } from './cornerSeat'
import { about, type Finding, PRACTICE, type Remedy, withRemedy } from './finding'
import { HOUSED_RULE, inertiaOf, type PointEnds, pointSagOf } from './sag'
import { sayIn } from './say'
import { LIMIT_SOURCE, PART, REACH, SEATED, SEATED_SOURCE, sectionOf } from './seat'
import { countertops } from './worktop'

type BoardsOf = (id: CabinetId) => readonly Part[]

/** A stretch of a seat board from one upright that bears it to the next, with what goes down together with it. */
interface Stretch {
  readonly cabinet: Cabinet
  readonly span: Mm
  readonly ends: PointEnds
  readonly boards: readonly { readonly stiffness: number; readonly inertia: number }[]
  readonly isAlone: boolean
  /** Which leg of a bench through a corner it is over; the seat board of one may begin on it, at the front edge of the other's. */
  readonly leg: 'whole' | 'seam' | null
}

/** Seat boards over benches, under somebody who sits in the middle between two uprights that bear them. */
export function seatBoardFindings(project: Project, runs: readonly BuiltRun[], boardsOf: BoardsOf): Finding[] {
  return countertops(runs).flatMap((run) => seatBoardFinding(project, run, boardsOf))
}

function seatBoardFinding(project: Project, run: BuiltRun, boardsOf: BoardsOf): Finding[] {
  const worst = worstOf(project, run, boardsOf)
  if (!worst || !doesGive(worst)) return []
  const { cabinet, span, ends, leg } = worst
  const say = sayIn(project.display)
  const [sag, limit] = say.apart(givesBy(worst), span / PART)
  const name = leg === 'seam' ? 'top, under the seam of its seat board' : 'seat board'
  const borne = borneBy(worst)
  const goesOn = ends === 'housed' ? `, and going on past both ends, so judged ${HOUSED_RULE}` : ''
  // The sag grows with the third power of the span, and the limit with the span.
  const greatest = span * Math.sqrt(span / PART / givesBy(worst))
  const message =
    `its ${name} ${run.mark}, ${say.length(span)} between what bears it, would give ${sag} under ` +
    `${say.weight(SEATED / NEWTON_PER_KG)} of somebody who sits in its middle${borne}${goesOn}; ${limit} (1/${PART} of the span) ` +
    `is the limit. ${say.length(greatest)} is the greatest span that holds: ${leg ? '' : 'put a partition there, or '}take a thicker board.`
  const judged = [...(ends === 'housed' ? ['ends that go on'] : []), ...(leg ? ['what bears a leg'] : [])]
  const source = `${LIMIT_SOURCE}; ${SEATED_SOURCE}${judged.map((what) => `; ${what}: ${PRACTICE}`).join('')}`
  const told = { weight: 'mind', message, measure: sag, limit, source } as const
  return [
    withRemedy(about({ cabinet, mark: markOf(cabinet) }, told), () => {
      return (
        parted(worst.cabinet, project, run, boardsOf) ??
        thicker(project, run, boardsOf) ??
        thickerTop(worst, project, run, boardsOf)
      )
    }),
  ]
}

function borneBy({ leg, isAlone }: Stretch): string {
  const between = ', taken to be borne by the side and the corner post and by nothing between'
  if (leg === 'seam') return `${between}, and by nothing of the seat board, which begins on it`
  if (leg === 'whole') return `, with the leg of the top under it${between}`
  return isAlone ? ', borne by it alone' : ', with what of its bench lies under it'
}

function givesBy({ span, boards, ends }: Stretch): Mm {
  return pointSagOf(span, boards, SEATED, ends)
}

function doesGive(stretch: Stretch): boolean {
  return givesBy(stretch) > stretch.span / PART
}

/** The stretch that gives most for its span. */
function worstOf(project: Project, run: BuiltRun, boardsOf: BoardsOf): Stretch | null {
  const share = (one: Stretch) => givesBy(one) / one.span
  return stretchesOf(project, run, boardsOf).reduce<Stretch | null>((a, b) => (a && share(a) >= share(b) ? a : b), null)
}

/** Along the run, from its left end. */
interface Upright extends Interval {
  readonly cabinet: Cabinet
  readonly leg?: LegOfSeat
}

/**
 * What is free between the uprights of all benches, with the boards over it. Where a board goes on past both ends of a
 * stretch, over others, it cannot tilt there as it likes.
 *
 *      ===========================|==============     seat board, spliced over a side
 *      |        |  |       |  |       |  |      |
 */
function stretchesOf(project: Project, run: BuiltRun, boardsOf: BoardsOf): Stretch[] {
  const boards = withRole(run.parts, 'seatBoard').map((board) => ({ board, box: boxOf(board) }))
  if (boards.length === 0) return []
  const uprights = run.cabinets
    .flatMap((id) => find(project.cabinets, id) ?? [])
    .flatMap((cabinet) => {
      const parts = boardsOf(cabinet.id)
      return cabinet.corner ? legUprights(cabinet, run, parts, project) : uprightsOf(cabinet, run, parts)
    })
    .sort((a, b) => a.from - b.from)
  const [first, last] = [uprights[0], uprights.at(-1)]
  return uprights.slice(1).flatMap((right, at): Stretch[] => {
    const left = uprights[at]!
    const span = settle(right.from - left.to)
    const middle = (left.to + right.from) / 2
    const over = boards.find(({ box }) => box.min.x <= middle && box.max.x >= middle)
    if (span <= REACH || left.cabinet !== right.cabinet) return []
    if (left.leg) {
      const whole = boards.find(({ box }) => box.min.x < left.to && box.max.x > right.from)
      return legStretch(left, whole?.board, boardsOf(left.cabinet.id), project)
    }
    if (!over) return []
    const { min, max } = over.box
    const goesOn = left !== first && right !== last && min.x < left.from - REACH && max.x > right.to + REACH
    const own = stiffnessOf(project, [over.board])
    const below = stiffnessOf(project, withRole(boardsOf(left.cabinet.id), 'top', 'frontStretcher', 'backStretcher'))
    return [
      {
        ...{ cabinet: left.cabinet, span, ends: goesOn ? 'housed' : 'resting' },
        ...{ boards: [...own, ...below], isAlone: below.length === 0, leg: null },
      },
    ]
  })
}

/** The sides of a bench, and what of partitions reaches up to what lies under the seat board, along the run. */
function uprightsOf(cabinet: Cabinet, run: BuiltRun, parts: readonly Part[]): Upright[] {
  const origin = settle(cabinet.left - run.place.left)
  const lying = Math.max(0, ...withRole(parts, 'top', 'frontStretcher').map((part) => sectionOf(part).thickness))
  const under = settle(run.place.bottom - cabinet.bottom - lying)
  return withRole(parts, 'leftSide', 'rightSide', 'partition')
    .map(boxOf)
    .filter(({ max }) => max.y >= under - REACH)
    .map(({ min, max }) => ({ cabinet, from: settle(origin + min.x), to: settle(origin + max.x) }))
}

/** The corner post and the side that bear the leg along a run, from the left end of the run. */
function legUprights(cabinet: Cabinet, { place }: BuiltRun, parts: readonly Part[], project: Project): Upright[] {
  const [top] = withRole(parts, 'top')
  const along = cabinet.wall === place.wall ? 'x' : 'z'
  const leg = top && legsOfSeat(top, parts).find((one) => one.along === along)
  if (!leg) return []
  // Along the other wall the corner is where that begins or ends.
  const isBackwards = along === 'z' && cabinet.corner?.hand === 'left'
  const length = find(project.walls, place.wall)?.length ?? 0
  const origin = settle((along === 'x' ? cabinet.left : isBackwards ? length : 0) - place.left)
  return [leg.post, leg.side].map(({ from, to }) =>
    isBackwards
      ? { cabinet, leg, from: settle(origin - to), to: settle(origin - from) }
      : { cabinet, leg, from: settle(origin + from), to: settle(origin + to) },
  )
}

/** A leg of the top with the board that lies over all of it; one that begins on it bears nothing where it begins. */
function legStretch(
  { cabinet, leg }: Upright,
  over: Part | undefined,
  parts: readonly Part[],
  project: Project,
): Stretch[] {
  const [top] = withRole(parts, 'top')
  if (!top || !leg) return []
  const board = find(project.materials, top.material)
  const stiffness = board ? stiffnessIn(leg, board) : 0
  const below = { stiffness, inertia: inertiaOf({ depth: leg.depth, thickness: top.thickness }) }
  return [
    {
      // In the corner a board ends, so that it may tilt there.
      ...{ cabinet, span: leg.span, ends: 'resting' },
      ...{ boards: [...stiffnessOf(project, over ? [over] : []), below], isAlone: false },
      leg: over ? 'whole' : 'seam',
    },
  ]
}

function stiffnessOf({ materials }: Project, parts: readonly Part[]): Stretch['boards'] {
  return parts.map((part) => ({
    stiffness: find(materials, part.material)?.stiffness ?? 0,
    inertia: inertiaOf(sectionOf(part)),
  }))
}

/** The boards of a bench after a change of it; null where it cannot be built as well as before. */
function rebuilt(before: Cabinet, after: Cabinet, project: Project): readonly Part[] | null {
  const rules = rulesOf(after, project)
  const build = buildCabinet(after, rules)
  if (build.problems.length > buildCabinet(before, rulesOf(before, project)).problems.length) return null
  return partsOf(build, rules)
}

/** A partition in the middle of the bench where the board gives most, where there is none, and the board holds then. */
function parted(cabinet: Cabinet, project: Project, run: BuiltRun, boardsOf: BoardsOf): Remedy | null {
  const { id, interior, front, corner } = cabinet
  if (corner || baysOf(interior).length > 0 || front.kind === 'columns') return null
  const inside = { ...interior, partition: { at: 0.5 } }
  const parts = rebuilt(cabinet, { ...cabinet, interior: inside }, project)
  if (!parts) return null
  const worst = worstOf(project, run, (one) => (one === id ? parts : boardsOf(one)))
  if (!worst || doesGive(worst)) return null
  return {
    label: `Put a partition into ${markOf(cabinet)}`,
    edit: { kind: 'setInterior', ids: [id], interior: inside },
  }
}

/** Of each thicker board of the project, the thinnest with which the design itself holds. */
function thicker(project: Project, run: BuiltRun, boardsOf: BoardsOf): Remedy | null {
  // What goes round a corner with it stays of one board with it.
  const touching = countertops(betweenOf(project)).filter(({ cabinets }) =>
    cabinets.some((id) => run.cabinets.includes(id)),
  )
  const ids = new Set(touching.flatMap((one) => one.cabinets))
  const cabinets = [...ids].flatMap((id) => find(project.cabinets, id) ?? [])
  const before = Math.max(0, ...withRole(run.parts, 'seatBoard').map(({ thickness }) => thickness))
  for (const { id, name } of boardsOver(before, project)) {
    const edit = ownTopEdit(cabinets, { material: id })
    const changed = applyEdit(project, edit)
    const after = countertops(betweenOf(changed)).find((one) => one.id === run.id)
    const worst = after && worstOf(changed, after, boardsOf)
    if (worst && !doesGive(worst)) return { label: `Make the seat board ${run.mark} of ${name}`, edit }
  }
  return null
}

/** Of each thicker board of the project, the thinnest of which the carcass of a bench in a corner holds with its leg. */
function thickerTop({ cabinet, leg }: Stretch, project: Project, run: BuiltRun, boardsOf: BoardsOf): Remedy | null {
  const [top] = withRole(boardsOf(cabinet.id), 'top')
  if (!leg || !top) return null
  for (const { id, name } of boardsOver(top.thickness, project)) {
    const choices = { carcassMaterial: id }
    const parts = rebuilt(cabinet, { ...cabinet, overrides: { ...cabinet.overrides, ...choices } }, project)
    const worst = parts && worstOf(project, run, (one) => (one === cabinet.id ? parts : boardsOf(one)))
    if (worst && !doesGive(worst)) {
      const edit = { kind: 'override', ids: [cabinet.id], choices } as const
      return { label: `Make the carcass of ${markOf(cabinet)} of ${name}`, edit }
    }
  }
  return null
}

/** Boards that are thicker than so much, the thinnest first. */
function boardsOver(least: Mm, { materials }: Project): Material[] {
  return valuesOf<Material>(materials)
    .filter(({ thickness }) => thickness > least)
    .sort((a, b) => a.thickness - b.thickness || (a.id < b.id ? -1 : 1))
}
