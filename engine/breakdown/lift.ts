import type { Mm } from '../units/length'

const CUBIC_MM_PER_CUBIC_M = 1e9

/** In kg, from lengths in mm and a density in kg per cubic metre. */
export function boardWeight(length: Mm, width: Mm, thickness: Mm, density: number): number {
  return (length * width * thickness * density) / CUBIC_MM_PER_CUBIC_M
}
