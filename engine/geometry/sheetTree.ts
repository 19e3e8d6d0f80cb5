/**
 * A layout is a tree of cuts. A piece is cut one way into pieces that lie side by side with a kerf between each and the
 * next, or is a part, an offcut or waste. Frame: x along the sheet's length, y along its width, from its untrimmed
 * corner, mm.
 *
 *     a rip separates in y          a crosscut separates in x
 *     +----------------------+      +--------+-------------+
 *     |        high          |      |        |             |
 *     +======================+      |  low   |    high     |
 *     |        low           |      |        |             |
 *     +----------------------+      +--------+-------------+
 */
export type Piece = PartPiece | LeftPiece | CutPiece

export interface Place {
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
}

export interface PartPiece extends Place {
  readonly kind: 'part'
  /** The id of the job's part. */
  readonly part: string
  readonly rotated: boolean
}

export interface LeftPiece extends Place {
  readonly kind: 'offcut' | 'waste'
}

export interface CutPiece extends Place {
  readonly kind: 'cut'
  readonly direction: 'rip' | 'crosscut'
  /**
   * In order of x or y, each a kerf before the next. Past the last piece there may be up to one kerf of the cut piece
   * left, which the blade turns to dust.
   */
  readonly pieces: readonly Piece[]
}
