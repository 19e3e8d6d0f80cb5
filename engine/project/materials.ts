import { freeId, type MaterialId, type StockId, valuesOf } from '../basics/id'
import type { Mm } from '../units/length'
import type { Material, Project, Shop, Stock } from './document'

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

/** What is taken off each edge of a sheet before anything is measured from it; an offcut has its clean edges. */
export function trimOf({ isOffcut }: Stock, { trim }: Shop): Mm {
  return isOffcut ? 0 : trim
}

/** Another board to begin with, like the thickest there is, and a sheet of it to be bought. */
export function freshBoard(project: Project): { readonly material: Material; readonly stock: Stock } {
  const id = freeId<MaterialId>('b', project.materials)
  const like = materialsInOrder(project.materials)[0]
  const usual = { nominal: 18, thickness: 18, hasGrain: true, density: 680, stiffness: 9000 }
  const size = { length: 2440, width: 1220, price: 0, quantity: null, isOffcut: false, isExcluded: false }
  return {
    material: { ...usual, ...like, id, name: 'New board' },
    stock: { ...size, id: freeId<StockId>('s', project.stock), material: id },
  }
}

/** The sheets that a board is to come from, where they are of its material: others are no wish. */
export function wishedFrom(stock: Project['stock'], material: MaterialId, from: StockId | null): StockId | null {
  return from !== null && Object.hasOwn(stock, from) && stock[from]!.material === material ? from : null
}
