import type { Mm } from '../units/length'

/** By the place of the opening in the front: `0-1` is the second of the first, `whole` all of it. */
export type AsBuilt = Readonly<Record<string, MeasuredOpening>>

/** Clear, from board to board; null for what was not measured. */
export interface MeasuredOpening {
  readonly width: Mm | null
  readonly height: Mm | null
}
