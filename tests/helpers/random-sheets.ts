import type { KeptId, MaterialId, StockId } from '../../engine/basics/id'
import type { Random } from '../../engine/basics/random'
import type { Project, Stock } from '../../engine/project/document'
import type { Edit } from '../../engine/project/edit'
import { length, pick, whole } from './dice'

/** Offcuts that are at hand. */
export function putStock(_: Project, random: Random): Edit {
  const stock: Stock = {
    id: `s${whole(4, 8, random)}` as StockId,
    material: pick(['carcass', 'back'], random) as MaterialId,
    length: length(300, 2440, random),
    width: length(150, 1220, random),
    price: whole(0, 9000, random) / 100,
    quantity: whole(1, 3, random),
    isOffcut: true,
    isExcluded: random() < 0.2,
  }
  return { kind: 'putStock', stock }
}

/** A sheet with nothing on it, of stock that may not be there. */
export function keepSheet(_: Project, random: Random): Edit {
  const place = { x: 10, y: 10, length: length(300, 2420, random), width: length(150, 1200, random) }
  return {
    kind: 'keepSheet',
    sheet: {
      id: `q${whole(1, 3, random)}` as KeptId,
      order: whole(0, 5, random),
      stock: `s${whole(1, 8, random)}` as StockId,
      copies: whole(1, 4, random),
      root: { kind: 'offcut', ...place },
    },
  }
}
