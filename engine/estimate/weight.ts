import type { MaterialId } from '../basics/id'
import { boardWeight } from '../breakdown/lift'
import type { Part } from '../parts/part'
import type { Material } from '../project/document'

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
