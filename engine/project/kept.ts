import type { KeptId, StockId } from '../basics/id'
import type { Piece } from '../geometry/sheetTree'

/** Sheets that are cut alike and stay as they are. Parts are named by the key of their row in the cut list. */
export interface KeptSheet {
  readonly id: KeptId
  /** How many sheets came before it when it was kept: the number that it keeps, as far as its material has as many. */
  readonly order: number
  /** Its number among the sheets of its material when it was kept, from 1: what boards that must come from it ask for. */
  readonly sheet?: number
  readonly stock: StockId
  readonly copies: number
  /** The sheet less its trim. */
  readonly root: Piece
}
