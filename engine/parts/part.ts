import type { OwnerId, PartId, StockId } from '../basics/id'
import type { Board } from '../cabinets/board'
import type { Mm } from '../units/length'

/** One board of one cabinet, or of a run of them, with its mark and the size to cut. */
export interface Part extends Board {
  readonly id: PartId
  readonly owner: OwnerId
  /** `B3-LS`: the cabinet and the board. */
  readonly mark: string
  /** `left side`, `bottom`: what the maker calls it, without the cabinet. */
  readonly name: string
  /** To be cut: without the banding where the finished size includes it. */
  readonly cutLength: Mm
  readonly cutWidth: Mm
  /** By how much the lines of its outline inside the rectangle are sawn farther in, for the banding that goes on there. */
  readonly sawnIn?: Mm
  /** Whether the board must lie with its length along the grain of the sheet. */
  readonly isGrainBound: boolean
  /** The bank that it is cut in, where the grain runs on: `B3 fronts`. */
  readonly bank: PartBank | null
  /** The sheets that it must come from; null for any of its material. */
  readonly from: StockId | null
  /** The number of the sheet that it must come from, among those of its material; any where it is left out. */
  readonly sheet?: number
}

/** Boards of one bank are cut side by side, in the order of their places, from one sheet. */
export interface PartBank {
  readonly id: string
  readonly along: 'length' | 'width'
  readonly place: number
}
