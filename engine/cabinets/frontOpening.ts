import type { Front } from '../project/document'
import type { FrontPath } from '../project/frontTree'
import type { MeasuredOpening } from '../project/measured'
import type { Mm } from '../units/length'

/** An opening that a front is made to: clear, from board to board, as it is drawn and as it was measured. */
export interface FrontOpening {
  readonly key: string
  readonly path: FrontPath
  readonly front: Front
  readonly drawn: Size
  readonly measured: MeasuredOpening | null
  /** Measured less drawn; 0 where nothing was measured, or what was measured cannot be. */
  readonly off: Size
  /** Whether what stands in it is made to what was measured, be that as it was drawn. */
  readonly isMade: boolean
}

export interface Size {
  readonly width: Mm
  readonly height: Mm
}
