import type { Cabinet, Front } from '../project/document'
import { childrenOf } from '../project/frontTree'
import { baysOf } from '../project/interior'

/** Whether any front is drawn out on a box, or boxes stand behind the doors. */
export function hasDrawerBoxes({ front, interior }: Cabinet): boolean {
  const hasBox = (node: Front): boolean =>
    node.kind === 'drawer' || node.kind === 'pullOut' || childrenOf(node).some((child) => hasBox(child.front))
  const bays = front.kind === 'columns' ? front.columns : baysOf(interior)
  return (
    hasBox(front) ||
    [interior, ...bays.map(({ shelves }) => shelves)].some((shelves) => (shelves?.rollOuts?.count ?? 0) > 0)
  )
}
