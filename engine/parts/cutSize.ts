import type { Board } from '../cabinets/board'
import type { BandingRules } from '../project/method'
import { type Mm, settle } from '../units/length'

/**
 * What is cut of a board. Where the finished size includes the banding, each banded edge is cut back by its band; where
 * it does not, the board is cut to its finished size.
 */
export function cutSize(
  { length, width, banding }: Pick<Board, 'length' | 'width' | 'banding'>,
  { isInFinishedSize }: BandingRules,
): { readonly length: Mm; readonly width: Mm } {
  if (!isInFinishedSize) return { length, width }
  return {
    length: settle(length - banding.start - banding.end),
    width: settle(width - banding.low - banding.high),
  }
}
