import type { Problem } from '../basics/problem'
import { GEOMETRY, PRACTICE } from '../basics/source'
import { methodOf } from '../cabinets/build'
import { fromLeftOf } from '../project/cutout'
import type { Project } from '../project/document'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { formatWithUnit } from '../units/format'
import { type Mm, settle } from '../units/length'
import {
  cutoutBox,
  isInTop,
  isTopFree,
  type TopRun,
  type TopStep,
  topDepth,
  topLength,
  type Unbolted,
} from './countertop'
import { missingWords } from './seam'

/**
 * Cut-outs that cannot be made, or that the cabinet below is too narrow for, bolts that find no place at a seam, corners
 * that get none, and tops that go on over nothing.
 */
export function topProblems(run: TopRun, missingBolts: number, project: Project): Problem[] {
  return [
    ...run.steps.flatMap((step) => cutoutProblem(step, run, project)),
    ...boltProblem(run, missingBolts, project),
    ...run.unbolted.flatMap((over) => unboltedProblem(run, over, project)),
    ...bareProblem(run, project),
    ...rearProblem(run, project),
  ]
}

/** A top carries itself so far past a cabinet. Common practice, no source. */
const BARE: Mm = 150

/** What goes on to the wall of a corner where no cabinet stands wants something to lie on. */
function bareProblem(run: TopRun, project: Project): Problem[] {
  const past = Math.max(run.left, run.right)
  const step = past === run.left ? run.steps[0]! : run.steps.at(-1)!
  const cabinet = find(project.cabinets, step.cabinet)
  if (!cabinet || past <= Math.max(BARE, run.countertop.ends)) return []
  const say = (length: Mm) => formatWithUnit(length, project.display)
  const message = `${markOf(cabinet)}: its countertop goes on ${say(past)} to the wall over an empty corner; more than ${say(BARE)} wants ledgers on both walls, or a frame, to lie on.`
  const told = { measure: say(past), limit: say(BARE), source: PRACTICE }
  return [{ weight: 'mind', about: { kind: 'cabinet', cabinet: cabinet.id }, message, ...told }]
}

/** What stands out behind needs room there: all that the top lies on stands away from the walls, or none of it does so. */
function rearProblem(run: TopRun, project: Project): Problem[] {
  const step = run.steps.find(({ rear }) => rear > 0)
  const cabinet = step && find(project.cabinets, step.cabinet)
  if (!cabinet || isTopFree(run)) return []
  const rear = formatWithUnit(step.rear, project.display)
  const message = `${markOf(cabinet)}: its countertop is to stand out ${rear} behind, but not all that it lies on stands away from the walls: it ends at the wall. An island has a finished back and no nailers.`
  const told = { measure: rear, limit: formatWithUnit(0, project.display), source: GEOMETRY }
  return [{ weight: 'mind', about: { kind: 'cabinet', cabinet: cabinet.id }, message, ...told }]
}

function boltProblem({ steps }: TopRun, missing: number, project: Project): Problem[] {
  const first = find(project.cabinets, steps[0]!.cabinet)
  if (missing === 0 || !first) return []
  const message = `${markOf(first)}: ${missingWords(missing)}`
  const told = { measure: `${missing} missing`, limit: 'none', source: GEOMETRY }
  return [{ weight: 'mind', about: { kind: 'cabinet', cabinet: first.id }, message, ...told }]
}

/** Thicknesses are told; two of one thickness lie at different heights. */
function unboltedProblem({ steps, thickness, isSeat }: TopRun, over: Unbolted, project: Project): Problem[] {
  const cabinet = find(project.cabinets, steps[0]!.cabinet)
  if (!cabinet) return []
  const say = (length: Mm) => formatWithUnit(length, project.display)
  const isThickness = thickness !== over.thickness
  const [own, other] = isThickness ? [thickness, over.thickness] : [steps[0]!.level, over.level]
  const [its, that] = isThickness
    ? [`of ${say(own)}`, `of ${say(other)}`]
    : [`${say(own)} over the floor`, `${say(other)} over the floor`]
  const message =
    `${markOf(cabinet)}: its ${isSeat ? 'seat board' : 'countertop'}, ${its}, stops in the corner at the front edge of ${over.mark}, ${that}, and gets no ` +
    `bolts there: these lie at one height in both. Draw the two together by something else, or make both of one board.`
  const told = { measure: say(own), limit: say(other), source: GEOMETRY }
  return [{ weight: 'know', about: { kind: 'cabinet', cabinet: cabinet.id }, message, ...told }]
}

function cutoutProblem(step: TopStep, run: TopRun, project: Project): Problem[] {
  const cabinet = find(project.cabinets, step.cabinet)
  const { cutout } = step
  if (!cabinet || !cutout) return []
  const say = (length: Mm) => formatWithUnit(length, project.display)
  const size = `${say(cutout.width)} x ${say(cutout.depth)}`
  const tell = (weight: Problem['weight'], words: string, measure: string, limit: string): Problem[] => {
    const message = `${markOf(cabinet)}: ${words}`
    return [{ weight, about: { kind: 'cabinet', cabinet: cabinet.id }, message, measure, limit, source: GEOMETRY }]
  }
  if (!isInTop(cutoutBox(step, cutout, run), run)) {
    const from = say(cutout.fromFront)
    return tell(
      'stop',
      `its cut-out of ${size}, ${from} from the front, does not lie within a countertop ${say(topLength(run))} long and ${say(topDepth(run))} deep; it is left out.`,
      size,
      `within ${say(topLength(run))} x ${say(topDepth(run))}`,
    )
  }
  const { carcassMaterial } = methodOf(cabinet, project)
  const thickness = find(project.materials, carcassMaterial)?.thickness ?? 0
  const clear = settle(cabinet.width - 2 * thickness)
  if (cutout.width > clear) {
    const words = `its cut-out is ${say(cutout.width)} wide; between its sides there is ${say(clear)}.`
    return tell('mind', words, say(cutout.width), say(clear))
  }
  if (!cutout.aside) return []
  const atLeft = fromLeftOf(cabinet, cutout)
  const beside = { left: atLeft, right: settle(cabinet.width - atLeft - cutout.width) }
  const side = beside.left < beside.right ? 'left' : 'right'
  if (beside[side] >= thickness) return []
  const gap = beside[side]
  const where = gap < 0 ? `${say(-gap)} past its cabinet at the ${side}` : `${say(gap)} from the ${side} of its cabinet`
  const words = `its cut-out ends ${where}, over its ${side} side of ${say(thickness)}: what is let in would stand on it.`
  return tell('mind', words, say(gap), say(thickness))
}
