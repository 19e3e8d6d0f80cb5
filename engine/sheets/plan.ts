import { type Random, randomFrom } from '../basics/random'
import { type Board, CROSSCUT, copyOf, freshBoard, RIP, type Twig, tidy } from './cutTree'
import { fits, type Lot, type StockKind } from './lot'
import { findSpot, type Look, putAt, type Spot } from './spot'

/** Boards planned for a lot, and what found no sheet any more: indices of kinds, one for each part. */
export interface Plan {
  readonly boards: readonly Board[]
  readonly left: readonly number[]
}

/** Rests looked at between two looks up: a few milliseconds' worth. */
const CHUNK = 150_000
const LATE = 60
const BLINK = 0.02

/** The quickest plan worth showing: the largest parts first, by three measures; the fewest sheets win. */
export function firstPlan(lot: Lot): Plan {
  const { kinds } = lot
  const measures = [
    (kind: number) => kinds[kind]!.width * 1e12 + kinds[kind]!.length,
    (kind: number) => kinds[kind]!.area,
    (kind: number) => kinds[kind]!.length * 1e12 + kinds[kind]!.width,
  ]
  const plans = measures.map((measure) =>
    fill(
      lot,
      [...everyPart(lot)].sort((a, b) => measure(b) - measure(a) || a - b),
    ),
  )
  return plans.reduce((a, b) => (isBetter(b, a) ? b : a))
}

export function isBetter(a: Plan, b: Plan): boolean {
  if (a.left.length !== b.left.length) return a.left.length < b.left.length
  const bought = ({ boards }: Plan) => boards.filter(({ stock }) => !stock.offcut).length
  return bought(a) !== bought(b) ? bought(a) < bought(b) : a.boards.length < b.boards.length
}

function everyPart({ kinds }: Lot): number[] {
  return kinds.flatMap(({ quantity }, kind) => new Array<number>(quantity).fill(kind))
}

function fill(lot: Lot, order: readonly number[]): Plan {
  const boards: Board[] = []
  const left: number[] = []
  const look: Look = { lot, blink: () => false, work: 0 }
  const spot: Spot = { board: 0, rest: 0, turned: false, across: false, loss: Infinity }
  for (const kind of order) {
    if (findSpot(boards, kind, look, spot).loss === Infinity) {
      const stock = nextStock(lot, boards, kind)
      if (!stock) {
        left.push(kind)
        continue
      }
      boards.push(freshBoard(stock, lot.first === 'crosscut' ? CROSSCUT : RIP, lot))
      findSpot(boards, kind, look, spot, boards.length - 1)
      if (spot.loss === Infinity) {
        boards.pop()
        left.push(kind)
        continue
      }
    }
    putAt(boards[spot.board]!, kind, spot, lot)
  }
  return { boards, left }
}

/** Offcuts before sheets, the smallest that serves; of sheets the cheapest by area. */
function nextStock(lot: Lot, boards: readonly Board[], kind: number): StockKind | null {
  const there = lot.stocks.filter(
    (stock) => fits(lot.kinds[kind]!, stock) && boards.filter((board) => board.stock === stock).length < stock.quantity,
  )
  const offcuts = there.filter(({ offcut }) => offcut).sort((a, b) => a.length * a.width - b.length * b.width)
  const rate = ({ price, length, width }: StockKind) => price / (length * width)
  return offcuts[0] ?? there.sort((a, b) => rate(a) - rate(b) || b.length * b.width - a.length * a.width)[0] ?? null
}

/**
 * Ruin and recreate on cut trees: one sheet is given up, its parts are homeless, and again and again a few parts are
 * taken off some sheets and all the homeless are put where they fit best, the largest first. A state is kept when less
 * area is homeless than some states ago (late acceptance); when nobody is homeless a sheet is saved, and the next is
 * given up. Source: Gardeyn and Wauters, 2022 (from memory). Yields null between chunks, and every better plan.
 */
export function* improve(lot: Lot, first: Plan, bound: number, seed: number, budget: number): Generator<Plan | null> {
  const random = randomFrom(seed)
  const look: Look = { lot, blink: () => random() < BLINK, work: 0 }
  let best = first
  let next = CHUNK
  while (best.boards.length > bound && best.left.length === 0 && look.work < budget) {
    const state = give(best, lot)
    const late = new Array<number>(LATE).fill(state.homeless)
    let { boards, pool, homeless } = state
    for (let turn = 0; look.work < budget; turn++) {
      const tried = recreate(ruin(boards, pool, lot, random), look, random)
      const before = late[turn % LATE]!
      if (tried.homeless <= before || tried.homeless <= homeless) ({ boards, pool, homeless } = tried)
      late[turn % LATE] = homeless
      if (pool.length === 0) break
      look.work += 20
      if (look.work > next) {
        next += CHUNK
        yield null
      }
    }
    if (pool.length > 0) return
    best = { boards: boards.filter(({ used }) => used > 0), left: [] }
    yield best
  }
}

interface State {
  readonly boards: readonly Board[]
  readonly pool: readonly number[]
  readonly homeless: number
}

/** Gives up the sheet with the least on it, of those that are bought when any are. */
function give({ boards }: Plan, lot: Lot): State {
  const bought = boards.filter(({ stock }) => !stock.offcut)
  const least = (bought.length > 0 ? bought : boards).reduce((a, b) => (b.used < a.used ? b : a))
  const pool = partsOn(least.root)
  return { boards: boards.filter((board) => board !== least), pool, homeless: areaOf(pool, lot) }
}

function partsOn(twig: Twig): number[] {
  return twig.kind >= 0 ? [twig.kind] : twig.pieces.flatMap(partsOn)
}

function areaOf(pool: readonly number[], { kinds }: Lot): number {
  return pool.reduce((sum, kind) => sum + kinds[kind]!.area, 0)
}

interface Ruin {
  readonly boards: Board[]
  readonly pool: number[]
  readonly isMine: boolean[]
}

/** Takes some parts, or a whole strip, off one or two sheets. */
function ruin(boards: readonly Board[], pool: readonly number[], lot: Lot, random: Random): Ruin {
  const state: Ruin = { boards: [...boards], pool: [...pool], isMine: boards.map(() => false) }
  const count = Math.min(boards.length, 1 + Math.floor(random() * 2.4))
  for (let round = 0; round < count; round++) {
    const at = Math.floor(random() * boards.length)
    if (state.isMine[at]) continue
    const board = copyOf(state.boards[at]!)
    state.boards[at] = board
    state.isMine[at] = true
    const share = random() < 0.15 ? 1 : 0.15 + 0.5 * random()
    takeOff(board.root, share, state.pool, random)
    tidy(board, lot)
  }
  return state
}

/** Marks parts as gone; a whole strip goes as easily as a single part. */
function takeOff(twig: Twig, share: number, pool: number[], random: Random): void {
  for (const piece of twig.pieces) {
    if (random() < share * (piece.kind >= 0 ? 0.6 : 0.5)) {
      pool.push(...partsOn(piece))
      piece.gone = true
    } else if (piece.kind < 0) takeOff(piece, share, pool, random)
  }
}

function recreate({ boards, pool, isMine }: Ruin, look: Look, random: Random): State {
  const { lot } = look
  const { kinds } = lot
  const way = random()
  const measure = (kind: number) =>
    way < 0.5 ? kinds[kind]!.area : way < 0.75 ? kinds[kind]!.width : way < 0.95 ? kinds[kind]!.length : random()
  const order = pool.map((kind) => ({ kind, size: measure(kind) })).sort((a, b) => b.size - a.size)
  const spot: Spot = { board: 0, rest: 0, turned: false, across: false, loss: Infinity }
  const left: number[] = []
  for (const { kind } of order) {
    if (findSpot(boards, kind, look, spot).loss === Infinity) {
      left.push(kind)
      continue
    }
    if (!isMine[spot.board]) {
      boards[spot.board] = copyOf(boards[spot.board]!)
      isMine[spot.board] = true
    }
    putAt(boards[spot.board]!, kind, spot, lot)
  }
  return { boards, pool: left, homeless: areaOf(left, lot) }
}
