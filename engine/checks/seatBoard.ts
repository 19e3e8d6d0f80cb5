import { type CabinetId, valuesOf } from '../basics/id'
import { betweenOf } from '../between/betweenOf'
import type { BuiltRun } from '../between/run'
import { boxOf } from '../cabinets/boardBox'
import { methodOf } from '../cabinets/build'
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
}

/** Seat boards over benches, under somebody who sits in the middle between two uprights that bear them. */
export function seatBoardFindings(project: Project, runs: readonly BuiltRun[], boardsOf: BoardsOf): Finding[] {
  return countertops(runs).flatMap((run) => seatBoardFinding(project, run, boardsOf))
}

function seatBoardFinding(project: Project, run: BuiltRun, boardsOf: BoardsOf): Finding[] {
  const worst = worstOf(project, run, boardsOf)
  if (!worst || !doesGive(worst)) return []
  const { cabinet, span, ends, isAlone } = worst
  const say = sayIn(project.display)
  const [sag, limit] = say.apart(givesBy(worst), span / PART)
  const borne = isAlone ? ', borne by it alone' : ', with what of its bench lies under it'
  const goesOn = ends === 'housed' ? `, and going on past both ends, so judged ${HOUSED_RULE}` : ''
  // The sag grows with the third power of the span, and the limit with the span.
  const greatest = span * Math.sqrt(span / PART / givesBy(worst))
  const message =
    `its seat board ${run.mark}, ${say.length(span)} between what bears it, would give ${sag} under ` +
    `${say.weight(SEATED / NEWTON_PER_KG)} of somebody who sits in its middle${borne}${goesOn}; ${limit} (1/${PART} of the span) ` +
    `is the limit. ${say.length(greatest)} is the greatest span that holds: put a partition there, or take a thicker board.`
  const source = `${LIMIT_SOURCE}; ${SEATED_SOURCE}${ends === 'housed' ? `; ends that go on: ${PRACTICE}` : ''}`
  const told = { weight: 'mind', message, measure: sag, limit, source } as const
  return [
    withRemedy(about({ cabinet, mark: markOf(cabinet) }, told), () => {
      return parted(worst.cabinet, project, run, boardsOf) ?? thicker(project, run, boardsOf)
    }),
  ]
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
    .filter(({ wall, corner }) => wall === run.place.wall && !corner)
    .flatMap((cabinet) => uprightsOf(cabinet, run, boardsOf(cabinet.id)))
    .sort((a, b) => a.from - b.from)
  const [first, last] = [uprights[0], uprights.at(-1)]
  return uprights.slice(1).flatMap((right, at): Stretch[] => {
    const left = uprights[at]!
    const span = settle(right.from - left.to)
    const middle = (left.to + right.from) / 2
    const over = boards.find(({ box }) => box.min.x <= middle && box.max.x >= middle)
    if (span <= REACH || !over || left.cabinet !== right.cabinet) return []
    const { min, max } = over.box
    const goesOn = left !== first && right !== last && min.x < left.from - REACH && max.x > right.to + REACH
    const own = stiffnessOf(project, [over.board])
    const below = stiffnessOf(project, withRole(boardsOf(left.cabinet.id), 'top', 'frontStretcher', 'backStretcher'))
    return [
      {
        ...{ cabinet: left.cabinet, span, ends: goesOn ? 'housed' : 'resting' },
        ...{ boards: [...own, ...below], isAlone: below.length === 0 },
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

function stiffnessOf({ materials }: Project, parts: readonly Part[]): Stretch['boards'] {
  return parts.map((part) => ({
    stiffness: find(materials, part.material)?.stiffness ?? 0,
    inertia: inertiaOf(sectionOf(part)),
  }))
}

/** A partition in the middle of the bench where the board gives most, where there is none, and the board holds then. */
function parted(cabinet: Cabinet, project: Project, run: BuiltRun, boardsOf: BoardsOf): Remedy | null {
  const { id, interior, front } = cabinet
  if (baysOf(interior).length > 0 || front.kind === 'columns') return null
  const { materials, display } = project
  const rules = { method: methodOf(cabinet, project), materials, display, kick: project.between.kick }
  const inside = { ...interior, partition: { at: 0.5 } }
  const build = buildCabinet({ ...cabinet, interior: inside }, rules)
  if (build.problems.length > buildCabinet(cabinet, rules).problems.length) return null
  const parts = partsOf(build, rules)
  const worst = worstOf(project, run, (one) => (one === id ? parts : boardsOf(one)))
  if (!worst || doesGive(worst)) return null
  return {
    label: `Put a partition into ${markOf(cabinet)}`,
    edit: { kind: 'setInterior', ids: [id], interior: inside },
  }
}

/** Of each thicker board of the project, the thinnest with which the design itself holds. */
function thicker(project: Project, run: BuiltRun, boardsOf: BoardsOf): Remedy | null {
  const cabinets = run.cabinets.flatMap((id) => find(project.cabinets, id) ?? [])
  const before = Math.max(0, ...withRole(run.parts, 'seatBoard').map(({ thickness }) => thickness))
  const boards = valuesOf<Material>(project.materials)
    .filter(({ thickness }) => thickness > before)
    .sort((a, b) => a.thickness - b.thickness || (a.id < b.id ? -1 : 1))
  for (const { id, name } of boards) {
    const edit = ownTopEdit(cabinets, { material: id })
    const changed = applyEdit(project, edit)
    const after = countertops(betweenOf(changed)).find((one) => one.id === run.id)
    const worst = after && worstOf(changed, after, boardsOf)
    if (worst && !doesGive(worst)) return { label: `Make the seat board ${run.mark} of ${name}`, edit }
  }
  return null
}
