import {
  checkLength,
  counted,
  type Edit,
  freeId,
  type OffcutLeft,
  offcutsLeft,
  type Project,
  type Stock,
  type StockId,
} from '../../engine/index'
import { show } from './cutting'
import type { Cutting } from './state'
import { useStore } from './store'

/** What of the finished cutting can be kept as offcuts on hand; smaller than any sheet may be, it is no stock. */
export function offcutsOf({ input, done }: Cutting, { stock }: Project): OffcutLeft[] {
  const left = offcutsLeft(input, { done: new Set(done) }, stock)
  const say = { unit: 'mm', step: 0.1 } as const
  const isStock = ({ length, width }: OffcutLeft) =>
    checkLength('sheetLength', length, say).ok && checkLength('sheetWidth', width, say).ok
  return left.ok ? left.value.filter(isStock) : []
}

/** Whether they are kept, and not let go by an undo since. */
export function areOffcutsKept({ offcuts = [] }: Cutting, { stock }: Project): boolean {
  return offcuts.length > 0 && offcuts.every((id) => stock[id] !== undefined)
}

/**
 * Keeps what is left over as offcuts on hand, as one undo step. They are set aside: the design has all its boards still,
 * and no layout of it may count on what was left when they were cut.
 */
export function keepOffcuts(): void {
  const { cutting, history, actions } = useStore.getState()
  if (!cutting || areOffcutsKept(cutting, history.present)) return
  const left = offcutsOf(cutting, history.present)
  const puts: Extract<Edit, { kind: 'putStock' }>[] = []
  let taken: Readonly<Record<StockId, Stock>> = history.present.stock
  for (const { material, length, width, quantity } of left) {
    const id = freeId<StockId>('s', taken)
    const stock: Stock = { id, material, length, width, price: 0, quantity, isOffcut: true, isExcluded: true }
    taken = { ...taken, [id]: stock }
    puts.push({ kind: 'putStock', stock })
  }
  const pieces = left.reduce((sum, { quantity }) => sum + quantity, 0)
  actions.commit({ kind: 'several', edits: puts }, `Keep ${counted(pieces, 'offcut')}`)
  show({ ...cutting, offcuts: puts.map(({ stock }) => stock.id) })
}
