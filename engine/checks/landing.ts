import type { BuiltRun } from '../between/run'
import type { Cutout, Project } from '../project/document'
import { rightEdge } from '../runs/lane'
import { inch, type Mm, settle } from '../units/length'
import { about, type Finding } from './finding'
import { sayIn } from './say'
import { type LetIn, letInto } from './worktop'

/** Countertop to put things down on: at one side of it, and at the other. */
const LANDINGS: Readonly<Record<Cutout['of'], { readonly wide: Mm; readonly narrow: Mm; readonly source: string }>> = {
  sink: { wide: inch(24), narrow: inch(18), source: 'LSU AgCenter, Kitchen Design and Space Guidelines' },
  hob: { wide: inch(15), narrow: inch(12), source: 'a list after the NKBA planning guidelines' },
}

/** Sinks and hobs with less countertop beside them than cooks ask for. */
export function landingFindings(project: Project, runs: readonly BuiltRun[]): Finding[] {
  const all = letInto(project, runs)
  return all.flatMap((one) => landingFinding(one, all, project))
}

function landingFinding(one: LetIn, all: readonly LetIn[], project: Project): Finding[] {
  const { wide, narrow, source } = LANDINGS[one.of]
  const [less, more] = besideIt(one, all).sort((a, b) => a - b) as [Mm, Mm]
  if (less >= narrow && more >= wide) return []
  const say = sayIn(project.display)
  const isOther = less >= narrow
  const [measure, limit] = isOther ? say.apart(more, wide) : say.apart(less, narrow)
  const message =
    `its ${one.of} has ${say.length(less)} and ${say.length(more)} of countertop beside it; cooks ask for ` +
    `${say.length(narrow)} at one side and ${say.length(wide)} at the other.`
  return [about(one, { weight: 'know', message, measure, limit, source })]
}

/** Free countertop to the left and to the right, as far as the next thing that is let into it. */
function besideIt({ left, right, top }: LetIn, all: readonly LetIn[]): [Mm, Mm] {
  const others = all.filter((other) => other.top === top)
  const from = Math.max(top.place.left, ...others.filter((other) => other.right <= left).map((other) => other.right))
  const to = Math.min(rightEdge(top.place), ...others.filter((other) => other.left >= right).map((other) => other.left))
  return [settle(left - from), settle(to - right)]
}
