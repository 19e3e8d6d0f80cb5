import type { Problem } from '../basics/problem'
import { GEOMETRY } from '../basics/source'
import { ROLE_NAMES } from '../cabinets/role'
import type { Project, Wall } from '../project/document'
import { formatWithUnit } from '../units/format'
import { type Mm, settle } from '../units/length'
import type { RunName } from './run'
import type { Stretch } from './stretch'
import { type TrimRun, trimFace } from './trim'

/** What keeps a trim from being made or put up. */
export function trimProblems(
  run: TrimRun,
  { cabinets, bottom }: Pick<Stretch, 'cabinets' | 'bottom'>,
  { mark }: RunName,
  wall: Wall,
  project: Project,
): Problem[] {
  const { kind, trim, thickness, longest, edges } = run
  const say = (length: Mm) => formatWithUnit(length, project.display)
  const told: { readonly words: string; readonly is: Mm; readonly limit: Mm }[] = []
  const top = settle(bottom + trim.height)
  if (trimFace(run) < thickness) {
    const words = `its face would be ${say(trimFace(run))} from the wall; its board is ${say(thickness)} thick.`
    told.push({ words, is: trimFace(run), limit: thickness })
  }
  if (top > wall.height) {
    const words = `its upper edge would be at ${say(top)}; the ceiling of ${wall.name} is at ${say(wall.height)}.`
    told.push({ words, is: top, limit: wall.height })
  }
  const length = edges.at(-1)!
  if (kind === 'valance' && length > longest) {
    const words = `it goes over ${say(length)} in one length; its sheets give ${say(longest)}. As drawn it has a splice.`
    told.push({ words, is: length, limit: longest })
  }
  return told.map(({ words, is, limit }) => ({
    weight: 'stop',
    about: { kind: 'cabinet', cabinet: cabinets[0]! },
    message: `The ${ROLE_NAMES[kind]} ${mark}: ${words}`,
    ...{ measure: say(is), limit: say(limit), source: GEOMETRY },
  }))
}
