import type { Problem } from '../basics/problem'
import { methodOf } from '../cabinets/build'
import type { Project } from '../project/document'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { formatWithUnit } from '../units/format'
import { type Mm, settle } from '../units/length'
import { cutoutBox, isInTop, type TopRun, type TopStep, topDepth, topLength } from './countertop'

/** Cut-outs that cannot be made, or that the cabinet below is too narrow for. */
export function topProblems(run: TopRun, project: Project): Problem[] {
  return run.steps.flatMap((step) => cutoutProblem(step, run, project))
}

function cutoutProblem(step: TopStep, run: TopRun, project: Project): Problem[] {
  const cabinet = find(project.cabinets, step.cabinet)
  const { cutout } = step
  if (!cabinet || !cutout) return []
  const say = (length: Mm) => formatWithUnit(length, project.display)
  const size = `${say(cutout.width)} x ${say(cutout.depth)}`
  const tell = (weight: Problem['weight'], words: string): Problem[] => [
    { weight, about: { kind: 'cabinet', cabinet: cabinet.id }, message: `${markOf(cabinet)}: ${words}` },
  ]
  if (!isInTop(cutoutBox(step, cutout, run), run)) {
    const from = say(cutout.fromFront)
    return tell(
      'stop',
      `its cut-out of ${size}, ${from} from the front, does not lie within a countertop ${say(topLength(run))} long and ${say(topDepth(run))} deep; it is left out.`,
    )
  }
  const { carcassMaterial } = methodOf(cabinet, project)
  const clear = settle(cabinet.width - 2 * (find(project.materials, carcassMaterial)?.thickness ?? 0))
  if (cutout.width <= clear) return []
  return tell('mind', `its cut-out is ${say(cutout.width)} wide; between its sides there is ${say(clear)}.`)
}
