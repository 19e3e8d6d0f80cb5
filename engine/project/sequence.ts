import type { PartId, SequenceId } from '../basics/id'

/** Boards that are cut one after the other from one sheet, so that the grain runs on over them. */
export interface Sequence {
  readonly id: SequenceId
  /** Along their lengths they lie end to end, along their widths edge to edge. */
  readonly along: 'length' | 'width'
  /** In the order in which they lie. Boards that the design has not are passed over. */
  readonly boards: readonly PartId[]
}

/** More than anybody marks. */
export const MOST_IN_SEQUENCE = 200

/** How a board of a cabinet or of a run is named: `k1/left-side`, `Top-k1/countertop-1`. */
export const BOARD_NAME = /^([a-z][a-z0-9-]{0,39}|[A-Z][A-Za-z0-9-]{0,59})\/[a-z][a-z0-9-]{0,59}$/
