import type { Placement } from '../geometry/placement'
import type { Bevel, EdgeFace } from './operation'

const OTHER: Readonly<Record<EdgeFace, EdgeFace>> = { start: 'end', end: 'start', low: 'high', high: 'low' }

/**
 * Which edge or end of a board another is in the mirror image about the middle of its cabinet. Its inside stays its inside,
 * so that what stands upright is the other way round across, and everything else the other way round along.
 */
export function mirroredEdge(edge: EdgeFace, { length }: Pick<Placement, 'length'>): EdgeFace {
  const isAcross = edge === 'low' || edge === 'high'
  return isAcross === length.endsWith('y') ? OTHER[edge] : edge
}

export function mirroredBevel(bevel: Bevel, placement: Pick<Placement, 'length'>): Bevel {
  return { ...bevel, edge: mirroredEdge(bevel.edge, placement) }
}
