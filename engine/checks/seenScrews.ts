import { methodOf } from '../cabinets/build'
import type { Cabinet, Project, Side } from '../project/document'
import { markOf } from '../project/mark'
import type { BuildMethod } from '../project/method'
import { gapAtLeg, gapsBeside } from '../runs/neighbours'
import type { Mm } from '../units/length'
import { about, type Finding, PRACTICE } from './finding'

/** Through a wider gap the side of a cabinet is seen. Common practice, no source. */
const UNSEEN: Mm = 5

/**
 * The heads of screws, or pocket holes, on sides that nothing covers: no neighbour, no wall, no filler before the gap and no
 * finished end. Pocket holes in the underside of what hangs are looked at from below.
 */
export function seenScrewFindings(project: Project, cabinets: readonly Cabinet[]): Finding[] {
  return cabinets.flatMap((cabinet) => {
    const method = methodOf(cabinet, project)
    return [...sideFinding(cabinet, method, project), ...underFinding(cabinet, method)]
  })
}

/** What is screwed through the sides of a cabinet from outside; a frame across a diagonal is glued on them. */
function inSides(cabinet: Cabinet, { fixing, faceFrame, frameFixing }: BuildMethod): string | null {
  if (fixing.kind === 'screws') return 'screws through'
  const isFrameScrewed =
    faceFrame !== null && frameFixing?.kind === 'pocketScrews' && cabinet.corner?.kind !== 'diagonal'
  return isFrameScrewed ? 'pocket holes in' : null
}

function sideFinding(cabinet: Cabinet, method: BuildMethod, project: Project): Finding[] {
  const what = inSides(cabinet, method)
  if (what === null) return []
  const seen = seenSides(project, cabinet)
  if (seen.length === 0) return []
  const where = seen.length === 2 ? 'both its sides' : `its ${seen[0]} side`
  const way = what === 'screws through' ? 'hold its corners with dowels or loose tenons' : 'glue its frame on'
  const message = `${what} ${where} are seen: nothing stands there or covers it. Put a skin or a panel there, or ${way}.`
  const measure = seen.length === 2 ? '2 sides' : '1 side'
  return [
    about({ cabinet, mark: markOf(cabinet) }, { weight: 'mind', message, measure, limit: 'none', source: PRACTICE }),
  ]
}

function underFinding(cabinet: Cabinet, { fixing, faceFrame, frameFixing, cornerJoint }: BuildMethod): Finding[] {
  const isCornerScrewed = fixing.kind === 'pocketScrews' && cornerJoint.kind === 'butt'
  const isFrameScrewed = faceFrame !== null && frameFixing?.kind === 'pocketScrews'
  if (cabinet.kind !== 'upper' || !(isCornerScrewed || isFrameScrewed)) return []
  const message = 'pocket holes in the underside of its bottom are seen from below. Plug them, or cover the bottom.'
  return [
    about(
      { cabinet, mark: markOf(cabinet) },
      { weight: 'know', message, measure: 'underneath', limit: 'none', source: PRACTICE },
    ),
  ]
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
