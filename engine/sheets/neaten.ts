import { BestStrips } from './bestStrips'
import { type Board, copyOf, holdNarrow, release } from './cutTree'
import { HandlingCount, mostLeft, offcutsOn } from './handling'
import { type Lot, partsIn } from './lot'
import type { Plan } from './plan'
import type { Saw } from './saw'
import { Search } from './search'
import { MANY_PARTS } from './settings'

/** What one unit of handling costs beside a part without a place, in sheets (found by trial). */
const UNIT = 0.002
/** An offcut in use that is given up counts so many sheets: it spares a new sheet a piece, which no setting is worth. */
const GIVEN_UP = 10
/**
 * Of an offcut that was won before, so much is kept; the rest may go for fewer settings. Among many parts a narrow one
 * gives way, and the more is kept the larger its share of the sheet is (found by trial).
 */
const KEPT = { ofFew: 0.7, ofMany: { least: 0.4, more: 0.5 } }
/** After so many turns without a better plan states are kept that cost so many units more (found by trial). */
const LOOSENED = { ofFew: { patience: 2000, units: 6 }, ofMany: { patience: 8000, units: 40 } }

/**
 * On as many sheets, plans that take fewer settings and cuts, and among those plans that leave more in one piece.
 * `isOffcutKept`: the largest offcut stays in one piece, or most of it. Yields null between chunks of work.
 */
export function* neaten(saw: Saw, first: Plan, budget: number, isOffcutKept: boolean): Generator<Plan | null> {
  const { lot, look, random, chunk } = saw
  const count = new HandlingCount(lot)
  const until = look.work + budget
  let now = 0
  const served = offcutsOn(first.boards)
  const cost = (boards: readonly Board[]) => {
    now = count.of(boards) - mostLeft(boards) + (served > 0 ? (GIVEN_UP * (served - offcutsOn(boards))) / UNIT : 0)
    return UNIT * now
  }
  const freed = (board: Board) => (board.isHeld ? release(copyOf(board), lot) : board)
  look.fuss = count
  const areMany = partsIn(lot) >= MANY_PARTS
  const { patience, units } = areMany ? LOOSENED.ofMany : LOOSENED.ofFew
  const strips = areMany ? new BestStrips(lot, count, random) : null
  const boards = isOffcutKept ? withOffcutKept(first.boards, lot, areMany) : first.boards
  const search = new Search(lot, { boards, pool: [] }, look, random, cost, strips)
  let best = now
  let turns = 0
  let next = look.work + chunk
  while (look.work < until) {
    const isKept = search.turn()
    if (++turns % patience === 0) search.loosen(units * UNIT)
    if (isKept && search.pool.length === 0 && now < best - 1e-9) {
      best = now
      turns = 0
      yield { boards: search.settled().map(freed), left: [] }
    }
    if (look.work > next) {
      next = look.work + chunk
      yield null
    }
  }
  look.fuss = null
}

/** The sheet with the most left in one piece is for now taken to be without it. */
function withOffcutKept(boards: readonly Board[], lot: Lot, areMany: boolean): Board[] {
  const most = mostLeft(boards)
  const { ofFew, ofMany } = KEPT
  const kept = areMany ? ofMany.least + ofMany.more * most : ofFew
  const at = boards.findIndex((board) => mostLeft([board]) === most)
  return boards.map((board, index) => (index === at ? holdNarrow(copyOf(board), kept, lot) : board))
}
