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

export interface Placement2D {
  readonly part: string
  readonly x: number
  readonly y: number
  /** Of the part itself, not as it lies. */
  readonly length: number
  readonly width: number
  readonly rotated: boolean
}

/** One sheet, cut alike `copies` times. `root` is the sheet less its trim. */
export interface SheetLayout {
  readonly stock: string
  readonly copies: number
  readonly root: Piece
  /** The part pieces of the tree in the order in which the tree names them. */
  readonly placements: readonly Placement2D[]
}

/** The part pieces of a tree, in the order in which the tree names them. */
export function placementsIn(piece: Piece): Placement2D[] {
  if (piece.kind === 'cut') return piece.pieces.flatMap(placementsIn)
  if (piece.kind !== 'part') return []
  const { part, x, y, rotated } = piece
  const length = rotated ? piece.width : piece.length
  const width = rotated ? piece.length : piece.width
  return [{ part, x, y, length, width, rotated }]
}

export interface SheetAnswer {
  readonly sheets: readonly SheetLayout[]
  readonly unplaced: readonly { readonly part: string; readonly quantity: number; readonly reason: string }[]
  /** The least number of sheets that any layout of these parts needs, by material. */
  readonly bounds: Readonly<Record<string, number>>
  /** Whether the number of sheets meets the bounds, so that no layout needs fewer. */
  readonly proved: boolean
}
