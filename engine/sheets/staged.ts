import { distinct, heightsOf, type Item, MOST_HEIGHTS, Row, rasterPoints, Stack } from './knapsack'
import type { Lot } from './lot'

/**
 * The best sheet there is when every part has a price: strips side by side, in each strip sections one after another, in
 * each section parts of its length on one another. A part may be taken as often as it fits, so no layout that is cut in
 * so many directions is worth more.
 *
 *     sheet              strip                section
 *     +-----------+      +-----+---+----+     +---+
 *     |  strip    |      |     |   |    |     | b |
 *     +-----------+      | sec |sec|    |     +---+
 *     |  strip    |      |     |   |    |     | a |
 *     +-----------+      +-----+---+----+     +---+
 *
 * Source: Gilmore and Gomory, 'Multistage cutting stock problems of two and more dimensions', Operations Research 13
 * (1965), from memory; raster points after Scheithauer and Terno, 1996, from memory.
 */
export interface Patterns {
  /** About how many steps all pricings of a programme take (found by trial). */
  readonly steps: number
  /**
   * The worth of the best sheet, and the best sheets that hold each of the most promising strips. A brief pricing looks
   * only at strips as wide as were promising when all were looked at last: its best is no bound, but its sheets are
   * sheets.
   */
  price(prices: Float64Array, most: number, isBrief: boolean): Priced
}

export interface Priced {
  readonly best: number
  readonly sheets: readonly PatternSheet[]
  /** How many steps it took, to be counted as work. */
  readonly steps: number
}

/** Kinds of parts in a section, on one another. */
export interface PatternSection {
  readonly along: number
  readonly kinds: readonly { readonly kind: number; readonly across: number; readonly turned: boolean }[]
}

export interface PatternStrip {
  readonly across: number
  readonly sections: readonly PatternSection[]
}

export interface PatternSheet {
  readonly strips: readonly PatternStrip[]
  readonly worth: number
}

const MOST_LENGTHS = 300
const LEAST_PROMISING = 80

/**
 * For the largest sheet, as if there were enough of it: what can be cut from fewer, or from smaller ones beside it, can be
 * cut from these. Null where no sheet is as long and as wide as all others, and where there is no limit of directions,
 * boards that must stay together, or too many different sizes.
 */
export function patternsOf(lot: Lot): Patterns | null {
  const stock = lot.stocks.find(({ length, width }) =>
    lot.stocks.every((other) => other.length <= length && other.width <= width),
  )
  if (!stock || lot.first === 'any') return null
  if ((lot.depth !== 2 && lot.depth !== 3) || lot.kinds.some(({ block }) => block)) return null
  const isRipFirst = lot.first === 'rip'
  const [along, across] = isRipFirst ? [stock.length, stock.width] : [stock.width, stock.length]
  return patternsIn(itemsOf(lot, isRipFirst, along, across), along, across, lot.depth === 2)
}

function itemsOf({ kinds }: Lot, isRipFirst: boolean, along: number, across: number): Item[] {
  return kinds.flatMap(({ length, width, turns }, kind): Item[] => {
    const [a, b] = isRipFirst ? [length, width] : [width, length]
    const own = { kind, along: a, across: b, turned: false }
    const ways = turns ? [own, { kind, along: b, across: a, turned: true }] : [own]
    return ways.filter((way) => way.along <= along && way.across <= across)
  })
}

function patternsIn(items: readonly Item[], along: number, across: number, isExact: boolean): Patterns | null {
  const lengths = distinct(items.map((item) => item.along))
  const points = lengths.length <= MOST_LENGTHS ? rasterPoints(lengths, along) : null
  const places = points && rasterPoints(distinct(items.map((item) => item.across)), across)
  if (!points || !places) return null
  const stacks: Stack[] = []
  for (const length of lengths) {
    const alike = items.filter((item) => item.along === length)
    const heights = heightsOf(alike, across, isExact)
    if (!heights) return null
    stacks.push(new Stack(alike, heights, isExact))
  }
  const widths = distinct(stacks.flatMap(({ sums }) => [...sums])).filter((width) => width > 0)
  if (widths.length > MOST_HEIGHTS) return null
  const kinds = new Set(items.map(({ kind }) => kind)).size
  return new StagedPatterns(stacks, widths, new Row(lengths, points), new Row(widths, places), isExact, kinds)
}

class StagedPatterns implements Patterns {
  readonly steps: number
  private readonly isHigher: Uint8Array
  private readonly isPromising: Uint8Array
  constructor(
    private readonly stacks: readonly Stack[],
    private readonly widths: readonly number[],
    private readonly strip: Row,
    private readonly sheet: Row,
    private readonly isExact: boolean,
    kinds: number,
  ) {
    this.isHigher = new Uint8Array(stacks.length)
    this.isPromising = new Uint8Array(widths.length)
    this.steps = widths.length * strip.points.length * kinds
  }

  price(prices: Float64Array, most: number, isBrief: boolean): Priced {
    const before = this.sheet.steps + this.strip.steps
    for (const stack of this.stacks) stack.reprice(prices)
    const worth = this.stripWorths(isBrief)
    const best = this.sheet.fill(worth)
    const { sheet, widths } = this
    const promising = widths
      .map((_, strip) => ({ strip, worth: worth[strip]! + sheet.best[sheet.beside(strip)]! }))
      .sort((a, b) => b.worth - a.worth || a.strip - b.strip)
    if (!isBrief) this.remember(promising.map(({ strip }) => strip))
    const built = new Map<number, PatternStrip>()
    const sheets: PatternSheet[] = []
    let last = -1
    for (const each of promising) {
      if (sheets.length === most) break
      // Strips of equal worth would only tell the same sheet again.
      if (worth[each.strip] === last) continue
      last = worth[each.strip]!
      const strips = [each.strip, ...sheet.piecesAt(sheet.beside(each.strip))].map((strip) => {
        const known = built.get(strip) ?? this.stripOf(strip)
        built.set(strip, known)
        return known
      })
      sheets.push({ strips, worth: each.worth })
    }
    return { best, sheets, steps: this.sheet.steps + this.strip.steps - before }
  }

  private remember(inOrder: readonly number[]): void {
    this.isPromising.fill(0)
    for (const strip of inOrder.slice(0, Math.max(LEAST_PROMISING, inOrder.length / 6))) this.isPromising[strip] = 1
  }

  /** The worth of the best strip of each width. */
  private stripWorths(isBrief: boolean): Float64Array {
    const { widths, strip, stacks } = this
    const worths = new Float64Array(widths.length)
    const sections = new Float64Array(stacks.length)
    const heights = new Int32Array(stacks.length)
    let worth = 0
    for (let at = 0; at < widths.length; at++) {
      if (isBrief && !this.isPromising[at]) continue
      const hope = this.raise(heights, sections, widths[at]!)
      if (this.isExact || hope > worth) worth = strip.fill(sections)
      worths[at] = worth
    }
    return worths
  }

  /**
   * Lets every section be as high as a strip. What a strip with a section that is worth more than before could be worth
   * at most, if all beside it were as good as the best section of all.
   */
  private raise(heights: Int32Array, sections: Float64Array, width: number): number {
    const { sizes, points } = this.strip
    const length = points[points.length - 1]!
    let density = 0
    for (const [at, { sums, worth }] of this.stacks.entries()) {
      while (heights[at]! + 1 < sums.length && sums[heights[at]! + 1]! <= width) heights[at]!++
      const isHere = !this.isExact || sums[heights[at]!] === width
      const now = isHere ? worth[heights[at]!]! : 0
      this.isHigher[at] = now > sections[at]! ? 1 : 0
      sections[at] = now
      density = Math.max(density, now / sizes[at]!)
    }
    let hope = 0
    for (let at = 0; at < sizes.length; at++) {
      if (this.isHigher[at]) hope = Math.max(hope, sections[at]! + density * (length - sizes[at]!))
    }
    return hope
  }

  private stripOf(which: number): PatternStrip {
    const heights = new Int32Array(this.stacks.length)
    const sections = new Float64Array(this.stacks.length)
    const across = this.widths[which]!
    this.raise(heights, sections, across)
    this.strip.fill(sections)
    const pieces = this.strip.piecesAt(this.strip.points.length - 1)
    return {
      across,
      sections: pieces.map((piece) => ({
        along: this.strip.sizes[piece]!,
        kinds: this.stacks[piece]!.kindsAt(heights[piece]!),
      })),
    }
  }
}
