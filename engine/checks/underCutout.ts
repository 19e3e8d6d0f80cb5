import { type CabinetId, valuesOf } from '../basics/id'
import { listed } from '../basics/listed'
import type { BuiltRun } from '../between/run'
import type { Board, BoardRole } from '../cabinets/board'
import { boxOf } from '../cabinets/boardBox'
import { methodOf, rulesOf } from '../cabinets/build'
import { buildCabinet } from '../cabinets/buildCabinet'
import { ROLE_NAMES } from '../cabinets/role'
import { type Box, boxOver } from '../geometry/box'
import type { Cabinet, Cutout, Project } from '../project/document'
import type { Edit } from '../project/edit'
import { type FrontPath, frontAt, withFrontAt } from '../project/frontTree'
import type { BaseTop, BuildMethod } from '../project/method'
import { inch, type Mm, settle } from '../units/length'
import { about, type Finding, PRACTICE, type Remedy, withRemedy } from './finding'
import { sayIn } from './say'
import { type LetIn, letInto } from './worktop'

/** What hangs below the countertop of a sink and of a hob. Common practice, no source. */
const HANGS: Readonly<Record<Cutout['of'], Mm>> = { sink: 200, hob: 50 }

/** That a cut-out is wider than its cabinet inside is told with the countertop. */
const UPRIGHT: readonly BoardRole[] = ['leftSide', 'rightSide']
/** A drawer box reaches as far as these of its boards. */
const DRAWER_ENDS: readonly BoardRole[] = ['drawerBottom', 'drawerBoxFront', 'drawerBoxBack']
const IN_BOX: readonly BoardRole[] = [...DRAWER_ENDS, 'drawerSide']

/** The boards of a cabinet that lie where its sink or hob hangs down through the countertop. */
export function underCutoutFindings(
  project: Project,
  runs: readonly BuiltRun[],
  boardsOf: (cabinet: CabinetId) => readonly Board[],
): Finding[] {
  return letInto(project, runs).flatMap((one) => {
    const room = roomUnder(one)
    return room ? underFinding(one, room, inTheWay(boardsOf(one.cabinet.id), room), project) : []
  })
}

/** What hangs below the countertop, in the frame of the cabinet; null where the cut-out itself is left out. */
function roomUnder({ cabinet, of, left, right, top }: LetIn): Box | null {
  const cutout = cabinet.cutout!
  const front = settle(top.place.depth - cutout.fromFront)
  const rear = settle(front - cutout.depth)
  if (rear <= 0 || front >= top.place.depth) return null
  return {
    min: { x: settle(left - cabinet.left), y: settle(cabinet.height - HANGS[of]), z: rear },
    max: { x: settle(right - cabinet.left), y: cabinet.height, z: front },
  }
}

const DRAWER_BOX = 'drawer box'

interface Solid {
  readonly name: string
  readonly box: Box
}

/** Boards by themselves, but a drawer box as a whole: what hangs into it keeps it from being drawn out. */
function solidsOf(boards: readonly Board[]): Solid[] {
  const single = boards.filter(({ role }) => !UPRIGHT.includes(role) && !IN_BOX.includes(role))
  const drawers = boards
    .filter(({ role }) => role === 'drawerBottom')
    .map(({ number }): Solid => {
      const ends = boards.filter((board) => board.number === number && DRAWER_ENDS.includes(board.role))
      return { name: DRAWER_BOX, box: ends.map(boxOf).reduce(boxOver) }
    })
  return [...single.map((board) => ({ name: ROLE_NAMES[board.role], box: boxOf(board) })), ...drawers]
}

function inTheWay(boards: readonly Board[], { min, max }: Box): Solid[] {
  return solidsOf(boards).filter(({ box }) => {
    const isAcross = box.min.x < max.x && box.max.x > min.x && box.min.z < max.z && box.max.z > min.z
    return isAcross && box.max.y > min.y
  })
}

function underFinding(one: LetIn, room: Box, solids: readonly Solid[], project: Project): Finding[] {
  const [first] = [...solids].sort((a, b) => b.box.max.y - a.box.max.y)
  if (!first) return []
  const say = sayIn(project.display)
  const { min, max } = first.box
  const measure = say.length(Math.max(0, settle(one.cabinet.height - max.y)))
  const limit = say.length(HANGS[one.of])
  const names = [...new Set(solids.map(({ name }) => name))]
  const isDrawer = names.includes(DRAWER_BOX)
  const way = isDrawer && isLetInElsewhere(one, project) ? takenAway(one) : null
  const message =
    `${isDrawer ? `its cut-out for a ${one.of} meets its drawers. Under it lies` : `under the cut-out for its ${one.of} lies`} the ${listed(names)}; ${limit} below the countertop is usual to keep free. ` +
    `From the wall, the cut-out goes from ${say.length(room.min.z)} to ${say.length(room.max.z)}, the ${first.name}, ${measure} below the countertop, from ${say.length(min.z)} to ${say.length(max.z)}.` +
    (isDrawer
      ? ` Take the cut-out away where no ${one.of} is let in here, or put a false front before what hangs down.`
      : '')
  return [
    withRemedy(
      about(one, { weight: 'mind', message, measure, limit, source: PRACTICE }),
      () => way ?? withFrontRail(one, room, project) ?? (isDrawer ? withFalseFront(one, room, project) : null),
    ),
  ]
}

/** A copy of a sink base brings its cut-out along: there is another cabinet that the sink is let in over. */
function isLetInElsewhere({ cabinet, of }: LetIn, { cabinets }: Project): boolean {
  return valuesOf<Cabinet>(cabinets).some(({ id, cutout }) => id !== cabinet.id && cutout?.of === of)
}

function takenAway({ cabinet: { id }, mark }: LetIn): Remedy {
  return { label: `Take the cut-out from ${mark}`, edit: { kind: 'setCutout', ids: [id], cutout: null } }
}

/** No drawer box in the top row, and a front rail where that is wanted too. */
function withFalseFront({ cabinet, mark, of }: LetIn, room: Box, project: Project): Remedy | null {
  if (frontAt(cabinet.front, TOP_ROW)?.kind !== 'drawer') return null
  const front = withFrontAt(cabinet.front, TOP_ROW, { kind: 'falseFront' })
  const label = `Make the top drawer of ${mark} a false front`
  const edit: Edit = { kind: 'setFront', ids: [cabinet.id], front }
  if (isFree({ ...cabinet, front }, methodOf(cabinet, project), room, project)) return { label, edit }
  const rail = withFrontRail({ cabinet: { ...cabinet, front }, mark, of }, room, project)
  return rail && { label, edit: { kind: 'several', edits: [edit, rail.edit] } }
}

const TOP_ROW: FrontPath = [0]

/** Over a sink there is often no top but a rail on edge at the front, where that leaves the room free. */
function withFrontRail(
  { cabinet, mark, of }: Pick<LetIn, 'cabinet' | 'mark' | 'of'>,
  room: Box,
  project: Project,
): Remedy | null {
  const method = methodOf(cabinet, project)
  if (of !== 'sink' || method.baseTop.kind === 'frontRail') return null
  const baseTop: BaseTop = { kind: 'frontRail', width: railWidth(method.baseTop, project) }
  if (!isFree(cabinet, { ...method, baseTop }, room, project)) return null
  const edit: Edit = { kind: 'override', ids: [cabinet.id], choices: { baseTop } }
  return { label: `Make the top of ${mark} a front rail`, edit }
}

function isFree(cabinet: Cabinet, method: BuildMethod, room: Box, project: Project): boolean {
  return inTheWay(buildCabinet(cabinet, { ...rulesOf(cabinet, project), method }).boards, room).length === 0
}

function railWidth(top: BaseTop, { display }: Project): Mm {
  return top.kind === 'full' ? (display.unit === 'mm' ? 75 : inch(3)) : top.width
}
