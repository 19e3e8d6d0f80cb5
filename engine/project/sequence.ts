import type { PartId, SequenceId } from '../basics/id'

/** Boards that are cut one after the other from one sheet, so that the grain runs on over them. */
export interface Sequence {
  readonly id: SequenceId
  /** Along their lengths they lie end to end, along their widths edge to edge. */
  readonly along: 'length' | 'width'
  /** In the order in which they lie. Boards that the design has not are passed over. */
  readonly boards: readonly PartId[]
}

/** As many boards as a sheet can hold in a row, and more than any does. */
export const MOST_IN_SEQUENCE = 200
