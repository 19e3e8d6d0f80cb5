import type { BuiltRun } from '../between/run'
import { isMitre } from '../cabinets/operation'
import type { Part } from '../parts/part'
import type { Project } from '../project/document'
import { machiningOf } from './machining'
import { type AssemblyStep, stepOf } from './step'

/** What is done to the boards over several cabinets, from the saw until they are put up before, under or on them. */
export function assemblyOfRun({ kind, parts }: Pick<BuiltRun, 'kind' | 'parts'>, project: Project): AssemblyStep[] {
  const order = project.methods[project.method]!
  const steps = [...machiningOf(parts, order), stepOf('fitting', fittingWords(kind, parts), parts)]
  return steps.filter(({ marks }) => marks.length > 0)
}

function fittingWords(kind: BuiltRun['kind'], parts: readonly Part[]): string {
  switch (kind) {
    case 'kick':
      return `When the cabinets stand, hold the kick boards before them so that they come off again${splicedWords(parts, 'longKick')}.`
    case 'countertop':
      return 'When the bases stand level, lay the boards on them, draw their seams together, and fit the splash to the wall.'
    case 'lightRail':
      return `When the cabinets hang, screw the light rail on from above, through their bottoms${trimWords(kind, parts)}.`
    case 'crown':
      return `When the cabinets are fixed, screw the crown to their tops, or to cleats behind it on them${trimWords(kind, parts)}.`
    case 'valance':
      return 'When the cabinets hang, screw the valance between them, from inside their sides.'
  }
}

function trimWords(kind: 'lightRail' | 'crown', parts: readonly Part[]): string {
  const returned = parts.filter(({ role }) => role !== kind)
  const how = returned.some(isMitred) ? 'at their mitres' : 'behind its ends'
  const returns = returned.length > 0 ? `, its returns glued to it ${how} first` : ''
  const meets = parts.some((part) => part.role === kind && isMitred(part))
    ? ', mitres glued and closed at the face'
    : ''
  return `${returns}${meets}${splicedWords(parts, kind)}`
}

function isMitred({ operations }: Part): boolean {
  return operations.some((one) => one.kind === 'bevel' && isMitre(one))
}

function splicedWords(parts: readonly Part[], role: Part['role']): string {
  return parts.filter((part) => part.role === role).length > 1 ? ', with a block glued behind each splice' : ''
}
