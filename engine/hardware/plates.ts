import type { BuildMethod } from '../project/method'
import { plainMm } from '../units/format'
import type { HardwareRow } from './row'

/** Plates that are screwed in holes of boards, by their height in mm. */
export function hingePlates(quantity: number, { hinge }: BuildMethod): HardwareRow {
  return { name: `hinge plate, ${plainMm(hinge.plateHeight)} mm high`, quantity, length: null }
}

/** How a hinge is bought that needs no plate besides. */
export const ON_FRAME = ', screwed to the frame'
