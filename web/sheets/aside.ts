import type { Edit, MaterialId, Project, StockId } from '../../engine/index'
import type { Fold } from './folds'

/** One sheet less on hand, as a spoiled one is left in the rack; null where as many can be bought as are needed. */
export function leavingAside(
  { stock: { id } }: { readonly stock: Pick<Fold['stock'], 'id'> },
  { stock, materials }: Project,
): { readonly edit: Edit; readonly label: string } | null {
  const own = stock[id as StockId]
  if (!own || own.quantity === null || own.quantity === 0) return null
  const { name } = materials[own.material as MaterialId]!
  return {
    edit: { kind: 'putStock', stock: { ...own, quantity: own.quantity - 1 } },
    label: `Leave one ${own.isOffcut ? 'offcut' : 'sheet'} of ${name} aside`,
  }
}
