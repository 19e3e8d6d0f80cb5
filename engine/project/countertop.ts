import type { MaterialId } from '../basics/id'
import type { Mm } from '../units/length'

export interface Countertop {
  readonly material: MaterialId
  /** How far it stands out before the fronts. */
  readonly overhang: Mm
  /** How far it stands out past a free end of the run. */
  readonly ends: Mm
  /** The height of the board that stands on it at the wall; 0 for none. */
  readonly splash: Mm
}
