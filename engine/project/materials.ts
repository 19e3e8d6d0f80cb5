import { valuesOf } from '../basics/id'
import type { Material, Project, Stock } from './document'

/** The thickest by name first: an order that hangs on nothing that saving, opening or measuring a board changes. */
export function materialsInOrder(materials: Project['materials']): Material[] {
  return valuesOf<Material>(materials).sort((a, b) => b.nominal - a.nominal || (a.id < b.id ? -1 : 1))
}

/** The sheets and offcuts of a material, in the order that the packer and the buy list have. */
export function stockOf(stock: Project['stock'], material: Material['id']): Stock[] {
  return valuesOf<Stock>(stock)
    .filter((one) => one.material === material)
    .sort((a, b) => (a.id < b.id ? -1 : 1))
}
