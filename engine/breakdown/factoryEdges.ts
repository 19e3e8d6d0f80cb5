import { type Mm, settle } from '../units/length'

/** The factory edges that a piece still has, beyond what the tree counts as the piece. */
export interface Rough {
  readonly start: Mm
  readonly end: Mm
  readonly low: Mm
  readonly high: Mm
}

/** Whether no factory edge is left. */
export function isClean({ start, end, low, high }: Rough): boolean {
  return start + end + low + high === 0
}

/** Of a piece with the factory edges that are still on it, in mm. */
export function sizeWith(
  { length, width }: { readonly length: Mm; readonly width: Mm },
  { start, end, low, high }: Rough,
): { readonly length: Mm; readonly width: Mm } {
  return { length: settle(length + start + end), width: settle(width + low + high) }
}
