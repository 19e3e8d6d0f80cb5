import { type Board, CROSSCUT, freshBoard, listParts, RIP } from './cutTree'
import type { Lot, StockKind } from './lot'
import { sheetsAskedFor, stockForSheet } from './pinned'
import { costOf, type Plan } from './plan'

/** What a search sets out from: sheets, often fewer or cheaper than now, and parts that must find their place on them. */
export interface Goal {
  readonly boards: readonly Board[]
  readonly pool: readonly number[]
  /** Whether a part without a place counts as one, however large it is: where the sheets run short, small ones go first. */
  readonly isCounted?: boolean
  /** What an area of each kind counts at first while it has no place; one where this is left out. */
  readonly urgency?: Float64Array
}

/** So many goals are tried, the smallest savings first: they leave the most room. */
const MOST_GOALS = 12
/** Of one kind up to so many sheets are exchanged for up to so many of another. */
const EXCHANGED = 3
/** Of each kind of sheet that is not begun only so many are worked on. */
const MOST_UNOPENED = 20

/**
 * Every way to pay less that may still hold all parts: a sheet of each kind given up, for nothing or for a cheaper one
 * that is there, and a few of one kind for a few of another; the boldest saving last. With parts left over, the goal is to
 * place more of them on the sheets there are.
 */
export function goalsFor(plan: Plan, lot: Lot, bound: number): Goal[] {
  if (plan.left.length > 0) return goalsRunningShort(plan, lot)
  const whole = wholeOf(lot)
  const room = roomOn(plan.boards)
  const savings = [...singlesIn(plan, lot), ...exchangesIn(plan, lot)].flatMap(({ given, taken }) => {
    const fresh = taken.map((stock) => ({ stock }))
    const saved = costOf({ boards: given }) - costOf({ boards: fresh })
    const count = plan.boards.length - given.length + taken.length
    const area = room - roomOn(given) + roomOn(fresh)
    // An offcut that serves is kept in use: it spares a new sheet, if only a piece of one.
    const isFewer = taken.length < given.length && given.every(({ stock }) => !stock.offcut)
    const isLess = saved > 1e-9 || (Math.abs(saved) <= 1e-9 && isFewer)
    return isLess && count >= bound && area >= whole ? [{ given, taken, saved }] : []
  })
  return savings
    .sort((a, b) => a.saved - b.saved)
    .slice(0, MOST_GOALS)
    .map(({ given, taken }) => giveUp(plan, given, taken, lot))
}

/** Sheets that are there and not begun are worked on too, as far as they can be counted, and those that are asked for. */
function goalsRunningShort(plan: Plan, lot: Lot): Goal[] {
  const begun = [...plan.boards, ...missingSheets(plan, lot)]
  const unopened = lot.stocks.flatMap((stock) => {
    const there = { boards: begun, left: plan.left }
    const count = stock.quantity === Infinity ? 0 : Math.min(MOST_UNOPENED, stock.quantity - countOf(stock, there))
    return Array.from({ length: Math.max(0, count) }, () => freshBoard(stock, firstWay(lot), lot))
  })
  const goal = { boards: [...begun, ...unopened], pool: plan.left }
  const counted = { ...goal, isCounted: true }
  return wholeOf(lot) > roomOn(goal.boards) ? [counted] : [goal, counted]
}

/** The sheets that parts ask for by their numbers and that no board of a plan is, as long as there are any to open. */
function missingSheets({ boards }: Plan, lot: Lot): Board[] {
  const opened = new Map<StockKind, number>()
  for (const { stock } of boards) opened.set(stock, (opened.get(stock) ?? 0) + 1)
  return sheetsAskedFor(lot)
    .filter((sheet) => !boards.some((board) => board.sheet === sheet))
    .flatMap((sheet) => {
      const stock = stockForSheet(lot, sheet, opened, null)
      if (!stock) return []
      opened.set(stock, (opened.get(stock) ?? 0) + 1)
      return [freshBoard(stock, firstWay(lot), lot, Infinity, sheet)]
    })
}

function wholeOf({ kinds }: Lot): number {
  return kinds.reduce((sum, { area, quantity }) => sum + area * quantity, 0)
}

function roomOn(boards: TakenPlan['boards']): number {
  return boards.reduce((sum, { stock }) => sum + areaOf(stock), 0)
}

/** What a plan takes, without what lies where on it. */
export interface TakenPlan {
  readonly boards: readonly { readonly stock: StockKind }[]
  readonly left: Plan['left']
}

/** A plan that no plan can beat: no sheet fewer is possible, and none of its sheets has a cheaper one beside it. */
export function isBest(plan: TakenPlan, lot: Lot, bound: number): boolean {
  const bought = lot.stocks.filter(({ offcut }) => !offcut)
  const cheapest = Math.min(...bought.map(({ price }) => price))
  const isCheap = plan.boards.every(({ stock }) => stock.offcut || stock.price <= cheapest)
  const isPaid = costOf(plan) > 0 && lot.stocks.some(({ offcut }) => offcut)
  return plan.left.length === 0 && plan.boards.length === bound && isCheap && !(isPaid && hasFreeOffcut(plan, lot))
}

function hasFreeOffcut(plan: TakenPlan, lot: Lot): boolean {
  return lot.stocks.some((stock) => stock.offcut && countOf(stock, plan) < stock.quantity)
}

/** Of every kind of sheet the one with the least on it; each that is asked for by its number. */
function leastUsed({ boards }: Plan): Board[] {
  const least = new Map<StockKind | Board, Board>()
  for (const board of boards) {
    const kind = board.sheet === undefined ? board.stock : board
    const known = least.get(kind)
    if (!known || board.used < known.used) least.set(kind, board)
  }
  return [...least.values()]
}

interface Exchange {
  readonly given: readonly Board[]
  readonly taken: readonly StockKind[]
}

/** One sheet of each kind, the least used, for nothing or for one of another kind that is there. */
function singlesIn(plan: Plan, { stocks }: Lot): Exchange[] {
  return leastUsed(plan).flatMap((board) => {
    const taken = stocks.filter((stock) => isThere(stock, plan, board))
    // A sheet that parts ask for by its number is there in any plan, and is a whole one where it can be.
    const isAsked = board.sheet !== undefined
    const ways = [...(isAsked ? [] : [[]]), ...taken.flatMap((stock) => (isAsked && stock.offcut ? [] : [[stock]]))]
    return ways.map((way) => ({ given: [board], taken: way }))
  })
}

/**
 * Several sheets that are bought, of one kind, the least used first, for one or several of another that are there. One
 * of them at most is asked for by its number.
 */
function exchangesIn(plan: Plan, { stocks }: Lot): Exchange[] {
  const bought = stocks.filter(({ offcut }) => !offcut)
  if (bought.length < 2) return []
  const count = (most: number) => Array.from({ length: Math.min(EXCHANGED, most) }, (_, at) => at + 1)
  return bought.flatMap((kind) => {
    const own = plan.boards.filter(({ stock }) => stock.stock.id === kind.stock.id).sort((a, b) => a.used - b.used)
    const free = own.filter(({ sheet }) => sheet === undefined)
    const asked = own.filter(({ sheet }) => sheet !== undefined)
    const given = [
      ...count(free.length).map((give) => free.slice(0, give)),
      ...asked.flatMap((board) => count(1 + free.length).map((give) => [board, ...free.slice(0, give - 1)])),
    ]
    return bought
      .filter((other) => other !== kind)
      .flatMap((other) =>
        given.flatMap((boards) =>
          count(other.quantity - countOf(other, plan))
            .filter((take) => boards.length > 1 || take > 1)
            .map((take) => ({ given: boards, taken: new Array<StockKind>(take).fill(other) })),
        ),
      )
  })
}

function giveUp(plan: Plan, given: readonly Board[], taken: readonly StockKind[], lot: Lot): Goal {
  const pool: number[] = []
  for (const { root } of given) listParts(root, pool)
  const boards = plan.boards.filter((board) => !given.includes(board))
  const sheet = given[0]!.sheet
  const fresh = taken.map((stock, at) => freshBoard(stock, firstWay(lot), lot, Infinity, at === 0 ? sheet : undefined))
  return { boards: [...boards, ...fresh], pool }
}

function isThere(stock: StockKind, plan: Plan, given: Board): boolean {
  return stock !== given.stock && countOf(stock, plan) < stock.quantity
}

/** Counted by the stock itself, since a lot without locked sheets has kinds of its own. */
function countOf({ stock }: StockKind, { boards }: TakenPlan): number {
  return boards.filter((board) => board.stock.stock.id === stock.id).length
}

function areaOf({ length, width }: StockKind): number {
  return length * width
}

export function firstWay({ first }: Lot): typeof RIP | typeof CROSSCUT {
  return first === 'crosscut' ? CROSSCUT : RIP
}
