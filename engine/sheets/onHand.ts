import { Board, listParts } from './cutTree'
import type { Lot, StockKind } from './lot'

/**
 * Sheets that are alike but for being on hand or to be bought: those on hand are cut first, as many as there are. A board
 * that must come from the one kind stays there. The boards keep their order.
 */
export function onHandFirst(boards: readonly Board[], { stocks, kinds }: Lot): readonly Board[] {
  const counted = stocks.filter(({ quantity }) => quantity < Infinity)
  const twins = counted.filter((one) => stocks.some((other) => other.quantity === Infinity && areAlike(one, other)))
  if (twins.length === 0) return boards
  const left = new Map(twins.map((twin) => [twin, twin.quantity - boards.filter(({ stock }) => stock === twin).length]))
  return boards.map((board) => {
    if (board.stock.quantity < Infinity || isChosen(board, kinds)) return board
    const twin = twins.find((one) => areAlike(one, board.stock) && left.get(one)! > 0)
    if (!twin) return board
    left.set(twin, left.get(twin)! - 1)
    return new Board(twin, board.root, false, board.sheet)
  })
}

function areAlike(a: StockKind, b: StockKind): boolean {
  const size = ({ stock: { length, width, trim } }: StockKind) =>
    [length, width, trim?.length ?? 0, trim?.width ?? 0].join(' ')
  return a.price === b.price && a.offcut === b.offcut && size(a) === size(b)
}

function isChosen({ root }: Board, kinds: Lot['kinds']): boolean {
  const parts: number[] = []
  listParts(root, parts)
  return parts.some((kind) => kinds[kind]!.from !== undefined)
}
