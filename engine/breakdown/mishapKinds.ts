import type { PartId } from '../basics/id'
import type { CutRow } from '../cutlist/row'
import type { Rect } from '../geometry/rect'

/** What went wrong in the shop. */
export type Mishap =
  | { readonly kind: 'spoiled'; readonly parts: readonly PartId[] }
  | Damage
  /** A batch measures otherwise than the design had it: the rows that the design has with what was measured. */
  | { readonly kind: 'thickness'; readonly material: string; readonly rows: readonly CutRow[] }
  /** No mishap: openings were measured, and these are the rows with what is made to them. */
  | { readonly kind: 'openings'; readonly rows: readonly CutRow[] }

export interface Damage {
  readonly kind: 'damaged'
  /** A sheet by its number, with all that was cut from it; or one piece at hand by its name. */
  readonly on: number | string
  /** On the sheet as it came or the piece as it lies: x along its length, y across, from the corner of its first edges, mm. */
  readonly rect: Rect
}
