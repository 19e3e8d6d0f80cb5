import type { CabinetId, PartId } from '../basics/id'
import type { Board } from '../cabinets/board'
import type { Mm } from '../units/length'

/** One board of one cabinet, with its mark and the size to cut. */
export interface Part extends Board {
  readonly id: PartId
  readonly cabinet: CabinetId
  /** `B3-LS`: the cabinet and the board. */
  readonly mark: string
  /** `left side`, `bottom`: what the maker calls it, without the cabinet. */
  readonly name: string
  /** To be cut: without the banding where the finished size includes it. */
  readonly cutLength: Mm
  readonly cutWidth: Mm
  /** Whether the board must lie with its length along the grain of the sheet. */
  readonly isGrainBound: boolean
}
