import type { Cabinet, Project, Side } from '../project/document'
import type { Edit } from '../project/edit'
import { RANGES } from '../project/ranges'
import { type Mm, settle } from '../units/length'
import { gapsBeside } from './neighbours'

/** Left on a filler at a wall, which is never straight. Common practice, no source. */
export const USUAL_SCRIBE: Mm = 10

/**
 * A filler as wide as the gap beside a cabinet, to be scribed where the gap ends at the wall; one that stands there grows
 * by the gap. Null where there is no gap, another cabinet would fit into it, or a finished end closes the side,
 * and beside an appliance, which has no side to screw it to.
 */
export function gapFilled(project: Project, cabinet: Cabinet, side: Side): Edit | null {
  const beside = cabinet.beside[side]
  if (cabinet.space || (beside.kind !== 'none' && beside.kind !== 'filler')) return null
  const { gap, to } = gapsBeside(project, cabinet)[side]
  const width = settle(gap + (beside.kind === 'filler' ? beside.width : 0))
  if (!(gap > 0) || width > RANGES.filler.most) return null
  const scribe = beside.kind === 'filler' ? beside.scribe : to === 'the wall end' ? USUAL_SCRIBE : 0
  return { kind: 'setBeside', ids: [cabinet.id], side, beside: { kind: 'filler', width, scribe } }
}
