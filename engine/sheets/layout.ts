import type { Piece } from '../geometry/sheetTree'

export type { CutPiece, LeftPiece, PartPiece, Piece, Place } from '../geometry/sheetTree'

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

/** Equal for sheets that are cut alike, in whatever order their fields were written. */
export function layoutKey({ stock, root }: Pick<SheetLayout, 'stock' | 'root'>): string {
  return JSON.stringify([stock, pieceKey(root)])
}

function pieceKey(piece: Piece): unknown {
  const { kind, x, y, length, width } = piece
  const place = [kind, x, y, length, width]
  if (piece.kind === 'cut') return [...place, piece.direction, piece.pieces.map(pieceKey)]
  return piece.kind === 'part' ? [...place, piece.part, piece.rotated] : place
}

export interface SheetAnswer {
  readonly sheets: readonly SheetLayout[]
  readonly unplaced: readonly { readonly part: string; readonly quantity: number; readonly reason: string }[]
  /** The least number of sheets that any layout of these parts needs, by material. */
  readonly bounds: Readonly<Record<string, number>>
  /** Whether the number of sheets meets the bounds, so that no layout needs fewer. */
  readonly proved: boolean
  /** Whether no layout that has the locked sheets needs fewer; left out where no sheet is locked. */
  readonly provedWithLocked?: boolean
  /** The number is proved, and a layout that costs less may be possible all the same; left out otherwise. */
  readonly mayCostLess?: true
}
