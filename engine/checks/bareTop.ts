import { valuesOf } from '../basics/id'
import type { BuiltRun } from '../between/run'
import type { Beside, Cabinet, Project, Side } from '../project/document'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { applianceName } from '../project/space'
import { fitOf } from '../runs/fit'
import { rightEdge } from '../runs/lane'
import { gapsBeside } from '../runs/neighbours'
import { type Mm, settle } from '../units/length'
import { NEWTON_PER_KG } from '../units/weight'
import { about, type Finding, PRACTICE, type Remedy, withRemedy } from './finding'
import { CASEWORK_LOADS, MOST_ON_A_SHELF } from './load'
import { sayIn } from './say'
import { countertopOf, countertops } from './worktop'

/** What stands nearer than this can carry the end of a top on a cleat. Common practice, no source. */
const NEAR: Mm = 5
/** How much of its span a board may give. */
const SHARE = 144
const LOAD_SOURCE = `${CASEWORK_LOADS}: the most on any one shelf, here in one place; limit: 1.2.21.3`

/** A stretch of countertop over appliances, which carry nothing, from what holds it up to what holds it up again. */
export interface BareStretch {
  readonly from: Mm
  readonly to: Mm
  readonly held: { readonly left: boolean; readonly right: boolean }
  readonly spaces: readonly Cabinet[]
}

/** Where a countertop goes over appliances: the sides of cabinets and the panels beside a space hold it. */
export function bareStretches(top: Pick<BuiltRun, 'cabinets' | 'place'>, { cabinets }: Project): BareStretch[] {
  const stretches: BareStretch[] = []
  let open: BareStretch | null = null
  let isAfterSide = false
  const close = (to: Mm, isHeld: boolean) => {
    if (open) stretches.push({ ...open, to, held: { ...open.held, right: isHeld } })
    open = null
  }
  const steps = top.cabinets.flatMap((id) => find(cabinets, id) ?? [])
  for (const one of steps) {
    const [left, right] = (['left', 'right'] as const).map((side) => isPanel(one.beside[side])) as [boolean, boolean]
    if (!one.space || one.wall !== top.place.wall) {
      close(one.left, true)
      isAfterSide = true
      continue
    }
    if (left) close(one.left, true)
    const before: BareStretch = open ?? {
      ...{ from: one.left, to: one.left, spaces: [] },
      held: { left: left || isAfterSide, right: false },
    }
    open = { ...before, spaces: [...before.spaces, one] }
    isAfterSide = right
    if (right) close(rightEdge(one), true)
  }
  const last = steps.at(-1)
  if (last) close(rightEdge(last), false)
  return stretches
}

function isPanel({ kind }: Beside): boolean {
  return kind === 'panel'
}

/** Countertops that go over appliances too far, or that nothing holds at the end of their run. */
export function bareTopFindings(project: Project, runs: readonly BuiltRun[]): Finding[] {
  return countertops(runs).flatMap((top) =>
    bareStretches(top, project).flatMap((stretch) => [
      ...(['left', 'right'] as const).flatMap((side) => endFinding(stretch, side, project)),
      ...spanFinding(stretch, top, project),
    ]),
  )
}

/** At the end of a run the top wants a panel to lie on, or a cleat on what rises there. */
function endFinding(stretch: BareStretch, side: Side, project: Project): Finding[] {
  const cabinet = side === 'left' ? stretch.spaces[0]! : stretch.spaces.at(-1)!
  if (stretch.held[side] || !cabinet.space) return []
  const one = { cabinet, mark: markOf(cabinet) }
  const { gap, to } = gapsBeside(project, cabinet)[side]
  const name = applianceName(cabinet.space.of)
  const told = { measure: 'nothing', limit: 'a panel or a cleat', source: PRACTICE }
  if (gap <= NEAR && !isAppliance(to, project)) {
    const message = `the countertop over its ${name} ends at ${to}: screw a cleat on there, and one on the wall behind, for it to lie on. An appliance carries nothing.`
    return [about(one, { ...told, weight: 'know', message, measure: 'a cleat' })]
  }
  const message = `nothing holds the ${side} end of the countertop over its ${name}, and an appliance carries nothing: put a panel to the floor there.`
  return [withRemedy(about(one, { ...told, weight: 'mind', message }), () => panelled(cabinet, side, project))]
}

/** Whether what stands there is an appliance too, which holds no cleat. */
function isAppliance(mark: string, { cabinets }: Project): boolean {
  return valuesOf<Cabinet>(cabinets).some((one) => one.space !== undefined && markOf(one) === mark)
}

/** A panel of front board beside a space, where there is room for it, or where the appliance leaves its play to it. */
function panelled(cabinet: Cabinet, side: Side, project: Project): Remedy | null {
  const { id, overrides, method, left, width, space } = cabinet
  const material = overrides.frontMaterial ?? project.methods[method ?? project.method]!.frontMaterial
  const beside: Beside = { kind: 'panel', material, foot: 'floor' }
  const ended = { ...cabinet, beside: { ...cabinet.beside, [side]: beside } }
  const label = `Put a panel at the ${side} of ${markOf(cabinet)}`
  const put = { kind: 'setBeside', ids: [id], side, beside } as const
  if (fitOf(project, ended).fits) return { label, edit: put }
  const thickness = find(project.materials, material)?.thickness ?? 0
  const less = { left: side === 'left' ? settle(left + thickness) : left, width: settle(width - thickness) }
  if (!space || less.width < space.width || !fitOf(project, { ...ended, ...less }).fits) return null
  return { label, edit: { kind: 'several', edits: [{ kind: 'shapeCabinets', shapes: [{ id, ...less }] }, put] } }
}

/**
 * How far a board over a clear span, in mm, gives in its middle under a force there, in newtons: P L^3 / (48 E I) with
 * I = b t^3 / 12. General mechanics, and a published sheet of formulas. Stiffness in newtons per square millimetre.
 */
export function giveInMiddle(
  span: Mm,
  board: { readonly depth: Mm; readonly thickness: Mm; readonly stiffness: number },
  force: number,
): Mm {
  return (force * span ** 3) / (48 * board.stiffness * ((board.depth * board.thickness ** 3) / 12))
}

/** Held at both ends, under one who leans on its middle; what holds it behind is left out of the sum. */
function spanFinding({ from, to, held, spaces }: BareStretch, top: BuiltRun, project: Project): Finding[] {
  const board = find(project.materials, countertopOf(top, project).material)
  if (!board || !held.left || !held.right) return []
  const span = settle(to - from)
  const { thickness, stiffness } = board
  const bearing = { depth: top.place.depth, thickness, stiffness }
  const most = span / SHARE
  const gives = giveInMiddle(span, bearing, MOST_ON_A_SHELF)
  if (gives <= most) return []
  // The give grows with the third power of the span, what is allowed with the first.
  const holds = span * Math.sqrt(most / gives)
  const say = sayIn(project.display)
  const [measure, limit] = say.apart(gives, most)
  const [first] = spaces as readonly [Cabinet]
  const message =
    `the countertop goes ${say.length(span)} over ${spaces.map(markOf).join(' and ')} with nothing under it and would give ${measure} under ` +
    `${say.weight(MOST_ON_A_SHELF / NEWTON_PER_KG)} in one place; ${limit} (1/${SHARE} of the span) is the limit, which ${say.length(holds)} would keep. ` +
    'A cleat on the wall holds it behind only; put a panel between, a rail on edge under its front, or a thicker board.'
  const finding = about(
    { cabinet: first, mark: markOf(first) },
    { weight: 'mind', message, measure, limit, source: LOAD_SOURCE },
  )
  return [withRemedy(finding, () => (spaces.length > 1 ? panelled(first, 'right', project) : null))]
}
