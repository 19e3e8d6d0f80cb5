import type { Board } from '../cabinets/board'
import type { BandingRules } from '../project/method'
import { type Mm, settle } from '../units/length'

/**
 * What is cut of a board. Where the finished size includes the banding, each banded edge is cut back by its band; where
 * it does not, the board is cut to its finished size. What is scribed to a wall is cut wider by what is left for that.
 * The lines of an outline inside the rectangle are sawn farther in by their band.
 */
export function cutSize(
  {
    length,
    width,
    banding,
    insideBanding,
    scribe = 0,
  }: Pick<Board, 'length' | 'width' | 'banding' | 'insideBanding' | 'scribe'>,
  { isInFinishedSize }: BandingRules,
): { readonly length: Mm; readonly width: Mm; readonly sawnIn: Mm } {
  if (!isInFinishedSize) return { length, width: settle(width + scribe), sawnIn: 0 }
  return {
    length: settle(length - banding.start - banding.end),
    width: settle(width - banding.low - banding.high + scribe),
    sawnIn: insideBanding?.thickness ?? 0,
  }
}
