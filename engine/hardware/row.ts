import type { Mm } from '../units/length'

/** What is bought for a cabinet besides boards. */
export interface HardwareRow {
  readonly name: string
  readonly quantity: number
  /** Of what is sold by its length: slides, screws, dowels. */
  readonly length: Mm | null
}
