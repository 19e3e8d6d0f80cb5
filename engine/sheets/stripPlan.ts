import { type Board, CROSSCUT, freshBoard, RIP, tidy } from './cutTree'
import { type Lot, partsIn, type StockKind } from './lot'
import type { PatternSection } from './pattern'
import { isBetter, type Plan } from './plan'
import { stripTwig } from './settledSheets'
import { itemsOf, lengthsOf, StripOfSections } from './stripOfSections'

/** A part counts for its area, and by so much more the larger it is: the best plan of these is taken (found by trial). */
const MORE_FOR_LARGE = [0.15, 0.05, 0.3]
/** So many parts are placed in all, over these; of more kinds, or yet more parts, it would take long. */
const PARTS_TRIED = 400
const MOST_KINDS = 200
const MOST_PARTS = 3000
/** So many ways to fill the rest of a sheet with strips are tried. */
const MOST_TRIED = 200

/** The best strip of a width from what is left; what it is worth is Infinity until that is known. */
interface StripOfWidth {
  readonly across: number
  /** Kinds of parts that are as wide, and those of them that lie as they are. */
  readonly kinds: number[]
  readonly own: number[]
  worth: number
  sections: readonly PatternSection[]
}

/**
 * A plan by whole strips, sheet after sheet: the first strip is as wide as the widest part without a place, and the next is
 * the widest of those that together are worth the most in what is left of the sheet. Null where there are several sizes of
 * sheets or too few, very many parts or kinds of them, or boards that ask for more than a place. Source: finite best strip, Berkey and Wang, 'Two-dimensional
 * finite bin-packing algorithms', Journal of the Operational Research Society 38 (1987), with the knapsacks of Gilmore and
 * Gomory, 'Multistage cutting stock problems of two and more dimensions', Operations Research 13 (1965); from memory.
 */
export function stripPlan(lot: Lot): Plan | null {
  const [stock, ...others] = lot.stocks
  const isPlain = lot.kinds.every(({ block, from, sheet }) => !block && from === undefined && sheet === undefined)
  const parts = partsIn(lot)
  const areMany = lot.kinds.length > MOST_KINDS || parts > MOST_PARTS
  if (!stock || others.length > 0 || !isPlain || areMany) return null
  let best: Plan | null = null
  for (const more of MORE_FOR_LARGE.slice(0, Math.max(1, Math.round(PARTS_TRIED / parts)))) {
    const boards = new SheetsByStrips(lot, stock, more).boards()
    if (!boards || boards.length > stock.quantity) continue
    const plan = { boards, left: [] }
    if (!best || isBetter(plan, best)) best = plan
  }
  return best
}

class SheetsByStrips {
  private readonly isRip: boolean
  private readonly along: number
  private readonly across: number
  private readonly maker: StripOfSections
  /** The widest first. */
  private readonly strips: StripOfWidth[] = []

  constructor(
    private readonly lot: Lot,
    private readonly stock: StockKind,
    moreForLarge: number,
  ) {
    this.isRip = lot.first !== 'crosscut'
    this.along = this.isRip ? stock.length : stock.width
    this.across = this.isRip ? stock.width : stock.length
    const lengths = lengthsOf(lot, this.isRip)
    this.maker = new StripOfSections(lot.kinds.length, lengths.length, lot.depth > 2)
    for (const [kind, { quantity, area }] of lot.kinds.entries()) {
      const share = area / lot.sheetArea
      this.maker.left[kind] = quantity
      this.maker.prices[kind] = share * (1 + moreForLarge * Math.log(20 * share))
    }
    for (const item of itemsOf(lot, this.isRip, lengths)) {
      const { kind, across, turned } = item
      if (item.along > this.along || across > this.across) continue
      this.maker.groups[item.group]!.push(item)
      const known = this.strips[this.strips.length - 1]
      const strip = known?.across === across ? known : { across, kinds: [], own: [], worth: Infinity, sections: [] }
      if (strip !== known) this.strips.push(strip)
      strip.kinds.push(kind)
      if (!turned || !this.mayLieAsItIs(kind)) strip.own.push(kind)
    }
  }

  private mayLieAsItIs(kind: number): boolean {
    const { length, width } = this.lot.kinds[kind]!
    return length <= this.stock.length && width <= this.stock.width
  }

  /** All sheets; null where a part has no place on any. */
  boards(): Board[] | null {
    const { lot, stock, isRip, strips } = this
    const boards: Board[] = []
    for (;;) {
      const widest = strips.find(({ own }) => this.isAnyLeft(own))
      if (!widest) return this.isAnyLeft(lot.kinds.keys()) ? null : boards
      const board = freshBoard(stock, isRip ? RIP : CROSSCUT, lot)
      let room = this.across
      for (let strip: StripOfWidth | null = this.renewed(widest); strip; strip = this.nextFor(room)) {
        if (strip.sections.length === 0) return null
        const twig = stripTwig(strip, stock, board.root.way, this.maker.left)
        board.root.pieces.push(twig)
        room -= strip.across
      }
      tidy(board, lot)
      boards.push(board)
    }
  }

  private isAnyLeft(kinds: Iterable<number>): boolean {
    for (const kind of kinds) if (this.maker.left[kind]! > 0) return true
    return false
  }

  /** With what it is worth now. */
  private renewed(strip: StripOfWidth): StripOfWidth {
    const { maker } = this
    const isAny = this.isAnyLeft(strip.kinds)
    strip.worth = isAny ? maker.worthOf(strip.across, this.along) : 0
    strip.sections = isAny ? maker.best : []
    return strip
  }

  /**
   * The widest of the strips that together are worth the most in a room; null where none fits. As parts are used up no
   * strip becomes worth more, so only those are renewed that would be next.
   */
  private nextFor(room: number): StripOfWidth | null {
    for (const strip of this.strips) if (strip.worth === Infinity && strip.across <= room) this.renewed(strip)
    for (;;) {
      const next = this.mostWorth(room)
      if (!next || this.maker.areThere(next.sections)) return next
      this.renewed(next)
    }
  }

  private mostWorth(room: number): StripOfWidth | null {
    const value = ({ worth, across }: StripOfWidth) => worth / across
    const strips = this.strips
      .filter(({ across, worth }) => across <= room && worth > 0)
      .sort((a, b) => value(b) - value(a) || b.across - a.across)
    let widest: StripOfWidth | null = null
    let most = 0
    let tried = 0
    const fill = (from: number, rest: number, worth: number, first: StripOfWidth | null) => {
      if (worth > most) {
        most = worth
        widest = first
      }
      for (let at = from; at < strips.length && tried < MOST_TRIED; at++) {
        const strip = strips[at]!
        tried++
        if (worth + rest * value(strip) <= most) return
        if (strip.across > rest) continue
        fill(at, rest - strip.across, worth + strip.worth, first && first.across > strip.across ? first : strip)
      }
    }
    fill(0, room, 0, null)
    return widest
  }
}
