import { valuesOf } from '../basics/id'
import type { BuiltRun } from '../between/run'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { isSeatHigh } from '../project/underTop'
import { fitOf } from '../runs/fit'
import { rightEdge } from '../runs/lane'
import { inch, type Mm, settle } from '../units/length'
import { about, type Finding, type Remedy, withRemedy } from './finding'
import { sayIn } from './say'
import { countertops, surfaceOf } from './worktop'

/** From a countertop up to what hangs over it, to work there. */
const OVER = inch(15)
const SOURCE = 'LSU AgCenter, Kitchen Design and Space Guidelines'
/** What hangs nearer stands on the top, and is meant to. Common practice, no source. */
const STANDS: Mm = 10

/** Uppers that hang so near over a countertop that nobody can work under them; over what is cooked on more is told elsewhere. */
export function overTopFindings(project: Project, runs: readonly BuiltRun[]): Finding[] {
  const uppers = valuesOf<Cabinet>(project.cabinets).filter(({ kind }) => kind === 'upper')
  const tops = countertops(runs).filter(({ cabinets }) => !isSeatHigh(project.cabinets[cabinets[0]!]!))
  return uppers.flatMap((upper) => {
    const under = tops.filter(({ place }) => {
      return place.wall === upper.wall && place.left < rightEdge(upper) && rightEdge(place) > upper.left
    })
    const gaps = under.map((top) => ({ top, gap: settle(upper.bottom - surfaceOf(top, project)) }))
    const near = gaps.filter(({ gap }) => gap > STANDS && gap < OVER).sort((a, b) => a.gap - b.gap)[0]
    return near ? [nearFinding(upper, near, project)] : []
  })
}

function nearFinding(upper: Cabinet, { top, gap }: { top: BuiltRun; gap: Mm }, project: Project): Finding {
  const [measure, limit] = sayIn(project.display).apart(gap, OVER)
  const message = `hangs ${measure} over the countertop ${top.mark}; ${limit} at least are asked for to work under it.`
  const told = { weight: 'know', message, measure, limit, source: SOURCE } as const
  return withRemedy(about({ cabinet: upper, mark: markOf(upper) }, told), () =>
    raised(upper, settle(surfaceOf(top, project) + OVER), project),
  )
}

/** With all that hangs at its height on its wall, where there is room for it. */
function raised(upper: Cabinet, bottom: Mm, project: Project): Remedy | null {
  const all = valuesOf<Cabinet>(project.cabinets).filter((one) => {
    return one.kind === 'upper' && one.wall === upper.wall && one.bottom === upper.bottom
  })
  const moved = all.map((one) => ({ ...one, bottom }))
  if (!fitOf(project, moved).fits) return null
  const label = `Hang ${moved.map(markOf).join(', ')} at ${sayIn(project.display).length(bottom)}`
  return { label, edit: { kind: 'shapeCabinets', shapes: moved.map(({ id }) => ({ id, bottom })) } }
}
