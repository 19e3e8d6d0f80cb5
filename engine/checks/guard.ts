import type { CabinetId } from '../basics/id'
import type { Problem } from '../basics/problem'
import { applyEdit } from '../project/apply'
import type { Project } from '../project/document'
import { type Finding, type Remedy, withRemedy } from './finding'

/** What is found in a project as it is, and what would be found about a cabinet in one that is tried. */
export interface Judge {
  readonly found: () => readonly Problem[]
  readonly judged: (cabinet: CabinetId, tried: Project) => readonly Problem[]
}

const GRAVITY: Readonly<Record<Problem['weight'], number>> = { know: 0, mind: 1, stop: 2 }

/** A way out is offered only where it does not bring another finding of the same weight, or a graver one, about its cabinet. */
export function guarded(finding: Finding, project: Project, judge: Judge): Finding {
  if (finding.about.kind !== 'cabinet' || !('remedy' in finding)) return finding
  const { cabinet } = finding.about
  return withRemedy(finding, () => {
    const { remedy } = finding
    return remedy && !doesHarm(remedy, finding, cabinet, project, judge) ? remedy : null
  })
}

function doesHarm(
  remedy: Remedy,
  finding: Finding,
  cabinet: CabinetId,
  project: Project,
  { found, judged }: Judge,
): boolean {
  const known = gravest(found(), cabinet)
  const after = gravest(judged(cabinet, applyEdit(project, remedy.edit)), cabinet)
  return [...after].some(([kind, weight]) => weight >= GRAVITY[finding.weight] && weight > (known.get(kind) ?? -1))
}

/** How grave what is found about a cabinet is, by the words of the findings without their figures. */
function gravest(problems: readonly Problem[], cabinet: CabinetId): ReadonlyMap<string, number> {
  const kinds = new Map<string, number>()
  for (const { about, message, weight } of problems) {
    if (about.kind !== 'cabinet' || about.cabinet !== cabinet) continue
    const kind = kindOf(message)
    kinds.set(kind, Math.max(kinds.get(kind) ?? -1, GRAVITY[weight]))
  }
  return kinds
}

/** `B1: 2 doors of 600 mm` and `B1: 3 doors of 597.5 mm` are of one kind. */
function kindOf(message: string): string {
  return message.replace(/[\d./ ]+/g, ' ')
}
