import type { Random } from '../basics/random'
import type { BestStrips } from './bestStrips'
import { type Board, copyOf, listParts, RIP, type Twig, tidy } from './cutTree'
import type { Goal } from './goal'
import type { Lot } from './lot'
import { findSpot, type Look, putAt, type Spot } from './spot'

/** A state is compared with the one so many turns ago. */
const LATE = 100
/** One rest in fifty is overlooked. */
const BLINK = 0.02
/** What large rests count beside homeless parts, both in sheets. */
const REST_SHARE = 0.02
/** So often the strips of two sheets are dealt out anew before the ruin. */
const DEALT = 0.2
/** So often waste is not minded; otherwise it is shunned this much. */
const HEEDLESS = 0.3
const WASTE_SHUNNED = 20
/** So often a sheet is ruined as a whole. */
const WHOLE = 0.15
/** What a turn costs beside the rests that it looks at; more when more is asked of a state than its sheets. */
const TURN = 20
const DEAR_TURN = 200
/** Every so many turns, whatever is homeless then counts for so much more from there on (found by trial). */
const PATIENCE = 100
const IMPATIENCE = 0.02
/** The same where a state has other costs, which it must not save by leaving parts homeless. */
const STERN_IMPATIENCE = 0.1
/** So often sheets are ripped anew where that is asked for. */
const RIPPED_ANEW = 0.5
/** Of many sheets only so many are worked on at a time, chosen anew every so many turns (found by trial). */
const AT_WORK = 30
const MANY = 45
const SPELL = 300
/** Of so many sheets that chance picks of many, the one with the least on it is ruined or dealt out (found by trial). */
const PICKED = 5
/** Where parts are counted, so often the smallest are placed first (found by trial). */
const SMALL_FIRST = 0.3

function meanArea({ kinds }: Lot): number {
  const count = kinds.reduce((sum, { quantity }) => sum + quantity, 0)
  return kinds.reduce((sum, { area, quantity }) => sum + area * quantity, 0) / Math.max(1, count)
}

export function lookFor(lot: Lot, random: Random): Look {
  const nextBlink = () => Math.ceil(-Math.log(1 - random()) / BLINK)
  return { lot, nextBlink, untilBlink: 1 / BLINK, dead: 0, work: 0, fuss: null }
}

/**
 * Ruin and recreate on cut trees, for a number of sheets that is one too few: the parts that have no place are the pool.
 * Every turn takes some parts and strips off one, two or three sheets and puts all of the pool where it fits best, the
 * largest first. A turn is kept when less is homeless than now, or than some turns ago (late acceptance); when the pool
 * is empty the goal is reached. Kinds that stay in the pool count for more with time (guided local search). Source: Gardeyn and Wauters, 'A goal-driven ruin and recreate heuristic for the 2D
 * variable-sized bin packing problem with guillotine constraints', 2022 (from memory).
 */
export class Search {
  boards: Board[]
  pool: number[]
  private cost: number
  private turns = 0
  /** The first of the sheets that are worked on. */
  private from = 0
  private readonly before: { readonly at: number; readonly board: Board }[] = []
  private readonly late: Float64Array
  private readonly sizes: Float64Array
  private readonly refused: Int32Array
  /** What an area of each kind counts while it is homeless. */
  private readonly urgency: Float64Array
  /** What a part counts where all count alike. */
  private readonly share: number
  /** Whether what is homeless is counted by parts, and the smallest are placed first. */
  private readonly isCounted: boolean
  private readonly spot: Spot = { board: 0, rest: 0, turned: false, across: false, loss: Infinity }

  constructor(
    private readonly lot: Lot,
    { boards, pool, isCounted = false, urgency }: Goal,
    private readonly look: Look,
    private readonly random: Random,
    /** What else a state costs, in sheets. */
    private readonly aside: ((boards: readonly Board[]) => number) | null = null,
    /** Rips sheets anew half the time instead of ruining them; not where it is left out. */
    private readonly strips: BestStrips | null = null,
  ) {
    this.boards = [...boards]
    this.pool = [...pool]
    this.isCounted = isCounted
    for (const board of this.boards) board.stamp = 0
    this.sizes = new Float64Array(lot.kinds.length)
    this.refused = new Int32Array(lot.kinds.length)
    this.urgency = urgency?.slice() ?? new Float64Array(lot.kinds.length).fill(1)
    this.share = meanArea(lot)
    this.cost = this.costNow()
    this.late = new Float64Array(LATE).fill(this.cost)
  }

  /** Whether the turn was kept. */
  turn(): boolean {
    if (this.turns % SPELL === 0) this.choose()
    this.turns++
    const poolBefore = this.pool
    this.before.length = 0
    this.pool = poolBefore.slice()
    if (this.random() < DEALT) this.deal()
    if (this.strips && this.random() < RIPPED_ANEW) this.ripAnew(this.strips)
    else this.ruin()
    this.recreate()
    if (this.aside) for (const { at } of this.before) tidy(this.boards[at]!, this.lot)
    const cost = this.costNow()
    const at = this.turns % LATE
    const isKept = cost <= this.late[at]! || cost <= this.cost || (!this.aside && this.pool.length === 0)
    if (isKept) this.cost = cost
    else {
      for (const { at, board } of this.before) this.boards[at] = board
      this.pool = poolBefore
    }
    this.late[at] = this.cost
    if (this.turns % PATIENCE === 0 && !this.isCounted) this.press()
    this.look.work += (this.aside ? DEAR_TURN : TURN) + this.boards.length + 4 * poolBefore.length
    return isKept
  }

  /** From here on states are kept again that cost more by so much. */
  loosen(more: number): void {
    this.late.fill(this.cost + more)
  }

  /** Parts that are homeless time and again become urgent, so that the search does not rest where they are left out. */
  private press(): void {
    const more = this.aside ? STERN_IMPATIENCE : IMPATIENCE
    for (const kind of this.pool) this.urgency[kind]! += more
    this.cost = this.costNow()
  }

  /** The sheets with parts on them, each strip no wider than it must be. What this search did not touch is as it was. */
  settled(): Board[] {
    for (const board of this.boards) if (board.stamp > 0) tidy(board, this.lot)
    return this.boards.filter(({ used }) => used > 0)
  }

  private costNow(): number {
    let homeless = this.isCounted ? this.pool.length * this.share : 0
    if (!this.isCounted) for (const kind of this.pool) homeless += this.lot.kinds[kind]!.area * this.urgency[kind]!
    let worth = 0
    for (const board of this.boards) worth += board.worth
    return homeless / this.lot.sheetArea - REST_SHARE * worth + (this.aside?.(this.boards) ?? 0)
  }

  /** A board that this turn may change; the one before is kept, to go back to. */
  private mine(at: number): Board {
    const board = this.boards[at]!
    if (board.stamp === this.turns) return board
    this.before.push({ at, board })
    const copy = copyOf(board)
    copy.stamp = this.turns
    this.boards[at] = copy
    return copy
  }

  /** Which of many sheets are worked on for a while: they are brought to the end, behind `from`. */
  private choose(): void {
    const { boards } = this
    if (this.aside || boards.length <= MANY) return
    this.from = boards.length - AT_WORK
    for (let at = boards.length - 1; at >= this.from; at--) {
      const other = this.below(at + 1)
      const held = boards[at]!
      boards[at] = boards[other]!
      boards[other] = held
    }
  }

  private anyAtWork(): number {
    const { boards, from } = this
    const any = () => from + this.below(boards.length - from)
    let picked = any()
    if (this.aside || boards.length <= MANY) return picked
    for (let others = PICKED - 1; others > 0; others--) {
      const other = any()
      if (boards[other]!.used < boards[picked]!.used) picked = other
    }
    return picked
  }

  /** Deals the strips of two sheets out anew, as they are, so that what was left on both comes together on one. */
  private deal(): void {
    const { boards } = this
    const one = this.anyAtWork()
    const two = this.anyAtWork()
    const isAlike = boards[one]!.stock === boards[two]!.stock && boards[one]!.root.way === boards[two]!.root.way
    // What asks for its sheet stays on it.
    if (one === two || !isAlike || boards[one]!.sheet !== boards[two]!.sheet) return
    const pair = [this.mine(one), this.mine(two)] as const
    const strips = this.shuffled([...pair[0].root.pieces, ...pair[1].root.pieces])
    const isRip = pair[0].root.way === RIP
    for (const { root } of pair) {
      root.pieces = []
      root.rest = isRip ? root.width : root.length
    }
    for (const strip of strips) {
      const size = isRip ? strip.width : strip.length
      const root = pair.find((board) => board.root.rest >= size)?.root
      if (!root) listParts(strip, this.pool)
      else {
        root.pieces.push(strip)
        root.rest -= size
      }
    }
    for (const board of pair) tidy(board, this.lot)
  }

  private ripAnew(strips: BestStrips): void {
    const { sheets, avoided } = strips.choose(this.boards)
    const boards = sheets.map((at) => this.mine(at))
    this.look.work += strips.ripAnew(boards, avoided, this.pool)
    for (const board of boards) tidy(board, this.lot)
  }

  private ruin(): void {
    const { random, boards } = this
    const count = Math.min(boards.length, 1 + Math.floor(random() * 2.4))
    for (let round = 0; round < count; round++) {
      const board = this.mine(this.anyAtWork())
      this.takeOff(board.root, random() < WHOLE ? 1 : this.aside ? 0.1 + 0.5 * random() : 0.3 + 0.6 * random())
      tidy(board, this.lot)
    }
  }

  /** Takes pieces off; a whole strip goes about as easily as a single part. */
  private takeOff(twig: Twig, share: number): void {
    const { pieces } = twig
    let left = 0
    for (let at = 0; at < pieces.length; at++) {
      const piece = pieces[at]!
      if (this.random() < share * (piece.kind >= 0 ? 0.6 : 0.5)) {
        listParts(piece, this.pool)
        continue
      }
      if (piece.kind < 0) this.takeOff(piece, share)
      pieces[left++] = piece
    }
    pieces.length = left
  }

  private recreate(): void {
    const { look, spot, pool, sizes, refused } = this
    look.dead = this.random() < HEEDLESS ? 0 : WASTE_SHUNNED
    this.measure()
    pool.sort((a, b) => sizes[b]! - sizes[a]! || a - b)
    let left = 0
    for (let at = 0; at < pool.length; at++) {
      const kind = pool[at]!
      if (refused[kind] !== this.turns && findSpot(this.boards, kind, look, spot, this.from).loss < Infinity) {
        putAt(this.mine(spot.board), kind, spot, this.lot)
      } else {
        refused[kind] = this.turns
        pool[left++] = kind
      }
    }
    pool.length = left
  }

  /** What makes a part large this turn: its area as it counts, its width, its length, or chance. */
  private measure(): void {
    const { sizes, lot, random, urgency } = this
    const way = random()
    if (this.isCounted && way < SMALL_FIRST) {
      for (const kind of this.pool) sizes[kind] = -lot.kinds[kind]!.area
      return
    }
    for (const kind of this.pool) {
      const { area, width, length } = lot.kinds[kind]!
      sizes[kind] = way < 0.5 ? area * urgency[kind]! : way < 0.75 ? width : way < 0.95 ? length : random()
    }
  }

  private shuffled(strips: Twig[]): Twig[] {
    for (let at = strips.length - 1; at > 0; at--) {
      const other = this.below(at + 1)
      const held = strips[at]!
      strips[at] = strips[other]!
      strips[other] = held
    }
    return strips
  }

  private below(count: number): number {
    return Math.floor(this.random() * count)
  }
}
