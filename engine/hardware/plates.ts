import type { Rules } from '../cabinets/build'
import { formatSold, PLAIN_MM } from '../units/format'
import type { HardwareRow } from './row'

/** Plates that are screwed in holes of boards, by their height. */
export function hingePlates(quantity: number, { method: { hinge }, display = PLAIN_MM }: Rules): HardwareRow {
  return { name: `hinge plate, ${formatSold(hinge.plateHeight, display)} high`, quantity, length: null }
}

/** How a hinge is bought that needs no plate besides. */
export const ON_FRAME = ', screwed to the frame'
