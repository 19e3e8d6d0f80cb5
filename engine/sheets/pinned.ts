import type { JobPart, SheetJob } from './job'
import type { SheetLayout } from './layout'
import { fits, type Lot, type PartKind, type StockKind } from './lot'

/** The sheet that a part asks for: a number among the sheets of its material. */
export function pinKey({ material, sheet }: Pick<JobPart, 'material' | 'sheet'>): string {
  return `${sheet} of ${material}`
}

/** The numbers of the sheets that the parts on a layout ask for; one at most where it is sound. */
export function numberAskedFor({ parts }: SheetJob): (layout: SheetLayout) => number | undefined {
  const asked = new Map(parts.flatMap(({ id, sheet }) => (sheet === undefined ? [] : [[id, sheet] as const])))
  if (asked.size === 0) return () => undefined
  return ({ placements }) => {
    const first = placements.find(({ part }) => asked.has(part))
    return first && asked.get(first.part)
  }
}

/** The sheets that parts ask for and that are locked with some of them. */
export function lockedSheets({ parts, locked = [] }: SheetJob): ReadonlySet<string> {
  const asking = new Map(parts.flatMap((part) => (part.sheet === undefined ? [] : [[part.id, pinKey(part)] as const])))
  if (asking.size === 0) return new Set()
  return new Set(locked.flatMap(({ placements }) => placements.flatMap(({ part }) => asking.get(part) ?? [])))
}

/** Whether a kind of part asks for one sheet by its number. */
export function isAskedFor({ sheet }: PartKind): boolean {
  return sheet !== undefined
}

/** The numbers of the sheets that parts of a lot ask for, each once. */
export function sheetsAskedFor({ kinds }: Pick<Lot, 'kinds'>): number[] {
  return [...new Set(kinds.flatMap(({ sheet, quantity }) => (sheet === undefined || quantity === 0 ? [] : [sheet])))]
}

/** The same order with what asks for its sheet first, so that the sheet is opened while there is one. */
export function pinnedFirst({ kinds }: Lot, order: readonly number[]): readonly number[] {
  if (!kinds.some(isAskedFor)) return order
  const isPinned = (kind: number) => isAskedFor(kinds[kind]!)
  return [...order.filter(isPinned), ...order.filter((kind) => !isPinned(kind))]
}

/**
 * What the sheet of a number is opened on: of the stock that every part asking for it fits on, whole sheets before
 * offcuts, those with area enough for all of them before others, then the favourite, or the cheapest by area. Null where
 * none is left that any of them fits on.
 */
export function stockForSheet(
  { kinds, stocks }: Lot,
  sheet: number,
  opened: ReadonlyMap<StockKind, number>,
  favourite: StockKind | null,
): StockKind | null {
  const own = kinds.filter((kind) => kind.sheet === sheet)
  const needed = own.reduce((sum, { area, quantity }) => sum + area * quantity, 0)
  const area = ({ length, width }: StockKind) => length * width
  const rank = (stock: StockKind) =>
    8 * own.filter((kind) => !fits(kind, stock)).length +
    4 * Number(area(stock) < needed) +
    2 * Number(stock.offcut) +
    Number(stock !== favourite)
  const there = stocks.filter(
    (stock) => (opened.get(stock) ?? 0) < stock.quantity && own.some((kind) => fits(kind, stock)),
  )
  const cost = (stock: StockKind) => stock.price / area(stock)
  return there.sort((a, b) => rank(a) - rank(b) || cost(a) - cost(b) || area(b) - area(a))[0] ?? null
}
