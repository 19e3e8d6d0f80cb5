import type { MaterialId } from '../basics/id'
import type { Part } from '../parts/part'
import type { Material } from '../project/document'
import type { Mm } from '../units/length'

const CUBIC_MM_PER_CUBIC_M = 1e9

/** In kg, from lengths in mm and a density in kg per cubic metre. */
export function boardWeight(length: Mm, width: Mm, thickness: Mm, density: number): number {
  return (length * width * thickness * density) / CUBIC_MM_PER_CUBIC_M
}

/**
 * What some parts weigh together, in kg, at their finished size. Holes and grooves are not taken off, so it is a little
 * too much rather than too little.
 */
export function weightOf(
  parts: readonly Pick<Part, 'material' | 'length' | 'width' | 'thickness'>[],
  materials: Readonly<Record<MaterialId, Material>>,
): number {
  return parts.reduce((sum, { material, length, width, thickness }) => {
    return sum + boardWeight(length, width, thickness, materials[material]?.density ?? 0)
  }, 0)
}
