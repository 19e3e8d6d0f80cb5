import { methodOf } from '../cabinets/build'
import type { Cabinet, Project, Side } from '../project/document'
import { markOf } from '../project/mark'
import { gapAtLeg, gapsBeside } from '../runs/neighbours'
import type { Mm } from '../units/length'
import { about, type Finding, PRACTICE } from './finding'

/** Through a wider gap the side of a cabinet is seen. Common practice, no source. */
const UNSEEN: Mm = 5

/** The heads of screws on sides that nothing covers: no neighbour, no wall, no filler before the gap and no finished end. */
export function seenScrewFindings(project: Project, cabinets: readonly Cabinet[]): Finding[] {
  return cabinets.flatMap((cabinet) => {
    if (methodOf(cabinet, project).fixing.kind !== 'screws') return []
    const seen = seenSides(project, cabinet)
    if (seen.length === 0) return []
    const where = seen.length === 2 ? 'both its sides' : `its ${seen[0]} side`
    const message = `screws through ${where} are seen: nothing stands there or covers it. Put a skin or a panel there, or hold its corners with dowels or loose tenons.`
    const measure = seen.length === 2 ? '2 sides' : '1 side'
    return [
      about({ cabinet, mark: markOf(cabinet) }, { weight: 'mind', message, measure, limit: 'none', source: PRACTICE }),
    ]
  })
}

/** A corner cabinet has a side at the free end of each leg and none in its corner; nothing covers the one at the other wall. */
function seenSides(project: Project, cabinet: Cabinet): Side[] {
  const gaps = gapsBeside(project, cabinet)
  const { corner, beside } = cabinet
  return (['left', 'right'] as const satisfies readonly Side[]).filter((side) => {
    if (side === corner?.hand) return (gapAtLeg(project, cabinet)?.gap ?? 0) > UNSEEN
    return beside[side].kind === 'none' && gaps[side].gap > UNSEEN
  })
}
