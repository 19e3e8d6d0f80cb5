import type { Cabinet } from '../project/document'
import { inch, type Mm } from '../units/length'
import type { Banding } from './board'
import type { Carcass } from './carcass'
import { bandedOn, boardOf, type Piece } from './piece'

/** Ends of talls higher than this have their top edges banded, where those are open above. Source: AWS 2009 4.4.4. */
const TALL_END: Mm = inch(80)

/**
 * A side with bands on those of its ends that are seen, where its method has them: the bottom edge of the ends of what
 * hangs as an upper, and the top edge of the ends of high talls that are open above. An end that stands in the bottom, or
 * in a top that lies over it, is not seen. Source: AWS 2009 4.4.4.
 */
export function withSeenEnds(
  piece: Piece,
  { kind, height }: Pick<Cabinet, 'kind' | 'height'>,
  carcass: Carcass,
): Piece {
  const { ends, carcass: thickness } = carcass.method.banding
  const isSide = piece.role === 'leftSide' || piece.role === 'rightSide'
  if (!ends || !isSide) return piece
  const isFootSeen = kind === 'upper' && carcass.bottom !== 'under'
  const isHeadSeen = ends === 'uppersAndTalls' && kind === 'tall' && height > TALL_END && !carcass.topOver
  const seen: (keyof Banding)[] = [
    ...(isFootSeen ? (['start'] as const) : []),
    ...(isHeadSeen ? (['end'] as const) : []),
  ]
  if (seen.length === 0) return piece
  const { length, width } = boardOf(piece)
  return { ...piece, banded: bandedOn([...frontEdge(piece), ...seen], thickness, Math.min(length, width)) }
}

/** The front edge of a side where that is banded, by its place on the board. */
function frontEdge({ role, banded: { edges } }: Piece): (keyof Banding)[] {
  if (edges === 'front') return [role === 'leftSide' ? 'high' : 'low']
  return edges === 'low' || edges === 'high' ? [edges] : []
}
