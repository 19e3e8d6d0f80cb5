import type { Problem } from '../basics/problem'
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
  { cabinets, bottom }: Stretch,
  { mark }: RunName,
  wall: Wall,
  project: Project,
): Problem[] {
  const { kind, trim, thickness, longest, edges } = run
  const say = (length: Mm) => formatWithUnit(length, project.display)
  const words: string[] = []
  const top = settle(bottom + trim.height)
  if (trimFace(run) < thickness) {
    words.push(`its face would be ${say(trimFace(run))} from the wall; its board is ${say(thickness)} thick.`)
  }
  if (top > wall.height) {
    words.push(`its upper edge would be at ${say(top)}; the ceiling of ${wall.name} is at ${say(wall.height)}.`)
  }
  const length = edges.at(-1)!
  if (kind === 'valance' && length > longest) {
    words.push(`it goes over ${say(length)} in one length; its sheets give ${say(longest)}. As drawn it has a splice.`)
  }
  return words.map((one) => ({
    weight: 'stop',
    about: { kind: 'cabinet', cabinet: cabinets[0]! },
    message: `The ${ROLE_NAMES[kind]} ${mark}: ${one}`,
  }))
}
