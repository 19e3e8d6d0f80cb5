import type { PartId } from '../basics/id'
import type { CutRow } from '../cutlist/row'
import type { Rect } from '../geometry/rect'

/** What went wrong in the shop. */
export type Mishap =
  | { readonly kind: 'spoiled'; readonly parts: readonly PartId[] }
  /** On the sheet as it came: x along its length, y across from the corner of its first edges, mm. */
  | { readonly kind: 'damaged'; readonly sheet: number; readonly rect: Rect }
  /** A batch measures otherwise than the design had it: the rows that the design has with what was measured. */
  | { readonly kind: 'thickness'; readonly material: string; readonly rows: readonly CutRow[] }
