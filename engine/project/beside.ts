import type { MaterialId } from '../basics/id'
import type { Mm } from '../units/length'

/** As seen from the room. */
export type Side = 'left' | 'right'

export type Beside =
  | { readonly kind: 'none' }
  /** A strip of front board that closes a gap of `width`; `scribe` more is cut and fitted to the wall on site. */
  | { readonly kind: 'filler'; readonly width: Mm; readonly scribe: Mm }
  /** A thin board on the side of the carcass, as large as the side. */
  | { readonly kind: 'skin'; readonly material: MaterialId }
  /** A board that covers the side and the edge of the fronts, down to the floor or with the kick cut out of it. */
  | { readonly kind: 'panel'; readonly material: MaterialId; readonly foot: 'floor' | 'notched' }

export const NOTHING_BESIDE: { readonly [side in Side]: Beside } = { left: { kind: 'none' }, right: { kind: 'none' } }
