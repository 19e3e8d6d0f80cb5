import { type Board, CROSSCUT, copyOf, depthUsed, freshBoard, RIP, tidy } from './cutTree'
import { fits, type Lot, type StockKind } from './lot'
import { isAskedFor, pinnedFirst, stockForSheet } from './pinned'
import { findSpot, type Look, putAt, type Spot } from './spot'

/** Boards planned for a lot, and what found no sheet any more: indices of kinds, one for each part. */
export interface Plan {
  readonly boards: readonly Board[]
  readonly left: readonly number[]
}

/** A plan, and the least number of sheets that any plan needs as far as is known. */
export interface Known {
  readonly plan: Plan
  readonly bound: number
}

/** So many parts are placed in all for a first plan, over its tries. */
const PARTS_TRIED = 1500
/** Only so many of the latest boards are looked at for a part in a first plan. */
const BOARDS_OPEN = 150

/**
 * The quickest plan worth showing: the largest parts first, by several measures of large, with waste shunned more or
 * less (found by trial); the best plan wins.
 */
export function firstPlan(lot: Lot): Plan {
  const { kinds } = lot
  const parts = eachOf(kinds.map(({ quantity }) => quantity))
  const byWidth = (kind: number) => kinds[kind]!.width * 1e9 + kinds[kind]!.length
  const byLength = (kind: number) => kinds[kind]!.length * 1e9 + kinds[kind]!.width
  const byArea = (kind: number) => kinds[kind]!.area
  const byBoth = (kind: number) => kinds[kind]!.length + kinds[kind]!.width
  const tries: readonly [(kind: number) => number, number][] = [
    [byWidth, 10],
    [byArea, 10],
    [byBoth, 2],
    [byLength, 2],
    [byArea, 2],
    [byWidth, 2],
    [byBoth, 10],
    [byLength, 10],
  ]
  // What must come from one sheet, or from one kind of sheet, is placed while there is room on it.
  const bound = (kind: number) => (kinds[kind]!.from === undefined ? 1 : 0) - (isAskedFor(kinds[kind]!) ? 2 : 0)
  let best: Plan | null = null
  for (const [measure, dead] of tries.slice(0, triesFor(parts))) {
    const order = [...parts].sort((a, b) => bound(a) - bound(b) || measure(b) - measure(a) || a - b)
    for (const favourite of favourites(lot)) {
      const plan = fill(lot, order, dead, favourite)
      if (!best || isBetter(plan, best)) best = plan
    }
  }
  if (!best || best.left.length === 0) return best ?? { boards: [], left: [] }
  return withoutOffcuts(lot, bestOfShort(lot, best, parts), parts)
}

/** Eight at most, and one where there are many parts. */
function triesFor({ length }: readonly number[]): number {
  return Math.max(1, Math.min(8, Math.round(PARTS_TRIED / length)))
}

/** Where the sheets run short: so much of their area is taken up by the smallest parts, which are placed first. */
const SHARES_FILLED = [0.88, 0.82, 0.94, 0.75]
/** Only so many offcuts are left out in turn. */
const OFFCUTS_LEFT_OUT = 4

/** The most parts that find a place: the smallest that should just fit are placed as they would be alone. */
function bestOfShort(lot: Lot, first: Plan, parts: readonly number[]): Plan {
  const { kinds, stocks } = lot
  const area = (kind: number) => kinds[kind]!.area
  const small = [...parts].sort((a, b) => area(a) - area(b) || a - b)
  const room = stocks.reduce((sum, { length, width, quantity }) => sum + length * width * quantity, 0)
  let best = first
  for (const share of SHARES_FILLED.slice(0, triesFor(parts))) {
    let used = 0
    const taken = small.filter((kind) => {
      used += area(kind)
      return used <= share * room
    })
    const late = small.slice(taken.length)
    for (const measure of [area, (kind: number) => kinds[kind]!.width * 1e9 + kinds[kind]!.length]) {
      const order = [...taken].sort((a, b) => measure(b) - measure(a) || a - b)
      const plan = fill(lot, pinnedFirst(lot, [...order, ...late]), 10, null)
      if (isBetter(plan, best)) best = plan
    }
  }
  return best
}

/** An offcut more must not leave a part more: the plan without it is tried, and what is left then is put on the offcut. */
function withoutOffcuts(lot: Lot, first: Plan, parts: readonly number[]): Plan {
  let best = first
  const offcuts = lot.stocks.filter((stock) => stock.offcut)
  for (const offcut of offcuts.slice(0, Math.min(OFFCUTS_LEFT_OUT, triesFor(parts) - 1))) {
    const others = { ...lot, stocks: lot.stocks.filter((stock) => stock !== offcut) }
    const { boards, left } = bestOfShort(others, { boards: [], left: parts }, parts)
    const small = [...left].sort((a, b) => lot.kinds[a]!.area - lot.kinds[b]!.area || a - b)
    const plan = fill(lot, pinnedFirst(lot, small), 10, null, boards)
    if (isBetter(plan, best)) best = plan
  }
  return best
}

/** Every size of sheet that is bought is tried as the one that is bought first; null leaves it to the price. */
function favourites({ stocks }: Lot): (StockKind | null)[] {
  const bought = stocks.filter(({ offcut }) => !offcut)
  return bought.length < 2 ? [null] : [null, ...bought.slice(0, 4)]
}

export function costOf({ boards }: { readonly boards: readonly { readonly stock: StockKind }[] }): number {
  return boards.reduce((sum, { stock }) => sum + stock.price, 0)
}

/** Fewer parts left, then less to pay, then fewer new sheets, then the sheet with the most left over in one piece. */
export function isBetter(a: Plan, b: Plan): boolean {
  if (a.left.length !== b.left.length) return a.left.length < b.left.length
  const saved = costOf(b) - costOf(a)
  if (Math.abs(saved) > 1e-9) return saved > 0
  const sheets = ({ boards }: Plan) => boards.filter(({ stock }) => !stock.offcut).length
  if (sheets(a) !== sheets(b)) return sheets(a) < sheets(b)
  return mostLeftOver(a) > mostLeftOver(b)
}

function mostLeftOver({ boards }: Plan): number {
  return boards.reduce((most, board) => {
    const { root, stock } = board
    const area =
      root.way === RIP
        ? (stock.width - depthUsed(board)) * stock.length
        : (stock.length - depthUsed(board)) * stock.width
    return Math.max(most, area)
  }, 0)
}

/** The number of each kind, as often as there are parts of it. */
export function eachOf(quantities: readonly number[]): number[] {
  return quantities.flatMap((quantity, kind) => new Array<number>(quantity).fill(kind))
}

/** Places parts in their order, on boards that are begun and on new ones. */
function fill(
  lot: Lot,
  order: readonly number[],
  dead: number,
  favourite: StockKind | null,
  begun: readonly Board[] = [],
): Plan {
  const boards = begun.map(copyOf)
  const left: number[] = []
  const opened = new Map<StockKind, number>()
  for (const { stock } of begun) opened.set(stock, (opened.get(stock) ?? 0) + 1)
  const refused = new Set<number>()
  const look: Look = { lot, nextBlink: () => Infinity, untilBlink: Infinity, dead, work: 0, fuss: null }
  const spot: Spot = { board: 0, rest: 0, turned: false, across: false, loss: Infinity }
  for (const kind of order) {
    const { sheet } = lot.kinds[kind]!
    const from = sheet === undefined ? Math.max(0, boards.length - BOARDS_OPEN) : 0
    if (refused.has(kind)) spot.loss = Infinity
    else findSpot(boards, kind, look, spot, from)
    if (spot.loss === Infinity) {
      const stock = refused.has(kind) ? null : stockToOpen(lot, boards, opened, kind, favourite)
      if (stock) boards.push(freshBoard(stock, lot.first === 'crosscut' ? CROSSCUT : RIP, lot, Infinity, sheet))
      if (stock) findSpot(boards, kind, look, spot, boards.length - 1)
      // A bank may need more stages than there are, even on an empty sheet.
      if (stock && spot.loss === Infinity) boards.pop()
      if (!stock || spot.loss === Infinity) {
        refused.add(kind)
        left.push(kind)
        continue
      }
      opened.set(stock, (opened.get(stock) ?? 0) + 1)
    }
    putAt(boards[spot.board]!, kind, spot, lot)
  }
  for (const board of boards) tidy(board, lot)
  return { boards, left }
}

/** A sheet that parts ask for by its number is opened once, and as one that has room for all of them. */
function stockToOpen(
  lot: Lot,
  boards: readonly Board[],
  opened: ReadonlyMap<StockKind, number>,
  kind: number,
  favourite: StockKind | null,
): StockKind | null {
  const { sheet } = lot.kinds[kind]!
  if (sheet === undefined) return nextStock(lot, opened, kind, favourite)
  return boards.some((board) => board.sheet === sheet) ? null : stockForSheet(lot, sheet, opened, favourite)
}

/** Offcuts before sheets, the smallest that serves; of sheets the favourite, or the cheapest by area. */
function nextStock(
  lot: Lot,
  opened: ReadonlyMap<StockKind, number>,
  kind: number,
  favourite: StockKind | null,
): StockKind | null {
  const there = lot.stocks.filter((stock) => (opened.get(stock) ?? 0) < stock.quantity && fits(lot.kinds[kind]!, stock))
  const area = ({ length, width }: StockKind) => length * width
  const offcuts = there.filter(({ offcut }) => offcut).sort((a, b) => area(a) - area(b))
  if (offcuts[0]) return offcuts[0]
  if (favourite && there.includes(favourite)) return favourite
  return there.sort((a, b) => a.price / area(a) - b.price / area(b) || area(b) - area(a))[0] ?? null
}
