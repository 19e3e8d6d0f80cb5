import { CROSSCUT, RIP, type Way } from './cutTree'
import { Filling, type Limits } from './filling'
import { distinct, heightsOf, type Item, MOST_HEIGHTS, Row, rasterPoints, Stack } from './knapsack'
import { type ListedSheet, Listing } from './listing'
import type { Lot, StockKind } from './lot'
import type { PatternSheet, PatternStrip } from './pattern'

/**
 * The best sheet there is when every part has a price: strips side by side, in each strip sections one after another, in
 * each section parts of its length on one another. On a sheet a part may be taken more often than it is there, so no layout
 * that is cut in so many directions is worth more.
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
  /**
   * The worth of the best sheet, and the best sheets that hold each of the most promising strips, with so many parts of
   * each kind in demand: no section has more of them, nor have sections of one length on a strip.
   */
  price(prices: Float64Array, demand: readonly number[], most: number): Priced
  /**
   * All sheets worth no less than `least` at these prices with no more of any kind than is in demand, as far as `most`
   * steps of work allow.
   */
  list(prices: Float64Array, demand: readonly number[], least: number, most: number): Generator<null, Listed>
}

export interface Listed {
  readonly sheets: readonly ListedSheet[]
  /** Whether these are all. */
  readonly isAll: boolean
  readonly steps: number
}

export interface Priced {
  readonly best: number
  readonly sheets: readonly PatternSheet[]
  /** How many steps it took, to be counted as work. */
  readonly steps: number
}

const MOST_LENGTHS = 300
/** A programme of more kinds of parts takes too much memory and time for each of its steps. */
const MOST_KINDS = 700

/**
 * For the largest sheet, as if there were enough of it: what can be cut from fewer, or from smaller ones beside it, can be
 * cut from these. Null where no sheet is as long and as wide as all others, and where there is no limit of directions,
 * boards that must stay together, or too many different sizes. Where the shop does not mind, sheets that are ripped first and
 * sheets that are crosscut first stand side by side.
 */
export function patternsOf(lot: Lot): Patterns | null {
  const stock = lot.stocks.find(({ length, width }) =>
    lot.stocks.every((other) => other.length <= length && other.width <= width),
  )
  if (!stock || lot.kinds.length > MOST_KINDS) return null
  if ((lot.depth !== 2 && lot.depth !== 3) || lot.kinds.some(({ block }) => block)) return null
  const ways = lot.first === 'any' ? [RIP, CROSSCUT] : [lot.first === 'rip' ? RIP : CROSSCUT]
  const each = ways.map((way) => patternsBegun(way as Way, lot, stock))
  return each.every((patterns) => patterns !== null)
    ? {
        price: (prices, demand, most) => pricedBy(each, prices, demand, most),
        list: (prices, demand, least, most) => listedBy(each, prices, demand, least, most),
      }
    : null
}

function patternsBegun(way: Way, lot: Lot, stock: StockKind): Patterns | null {
  const [along, across] = way === RIP ? [stock.length, stock.width] : [stock.width, stock.length]
  return patternsIn(itemsOf(lot, way === RIP, along, across), along, across, lot.depth === 2, way)
}

function pricedBy(each: readonly Patterns[], prices: Float64Array, demand: readonly number[], most: number): Priced {
  const all = each.map((patterns) => patterns.price(prices, demand, most))
  return {
    best: Math.max(...all.map(({ best }) => best)),
    sheets: all.flatMap(({ sheets }) => sheets),
    steps: all.reduce((sum, { steps }) => sum + steps, 0),
  }
}

function* listedBy(
  each: readonly Patterns[],
  prices: Float64Array,
  demand: readonly number[],
  least: number,
  most: number,
): Generator<null, Listed> {
  const all: Listed[] = []
  for (const patterns of each) all.push(yield* patterns.list(prices, demand, least, most / each.length))
  return {
    sheets: all.flatMap(({ sheets }) => sheets),
    isAll: all.every(({ isAll }) => isAll),
    steps: all.reduce((sum, { steps }) => sum + steps, 0),
  }
}

function itemsOf({ kinds }: Lot, isRipFirst: boolean, along: number, across: number): Item[] {
  return kinds.flatMap(({ length, width, turns }, kind): Item[] => {
    const [a, b] = isRipFirst ? [length, width] : [width, length]
    const own = { kind, along: a, across: b, turned: false }
    const ways = turns ? [own, { kind, along: b, across: a, turned: true }] : [own]
    return ways.filter((way) => way.along <= along && way.across <= across)
  })
}

function patternsIn(
  items: readonly Item[],
  along: number,
  across: number,
  isExact: boolean,
  way: Way,
): Patterns | null {
  const lengths = distinct(items.map((item) => item.along))
  const places = rasterPoints(distinct(items.map((item) => item.across)), across)
  if (lengths.length > MOST_LENGTHS || !places) return null
  const stacks: Stack[] = []
  for (const length of lengths) {
    const alike = items.filter((item) => item.along === length)
    const heights = heightsOf(alike, across, isExact)
    if (!heights) return null
    stacks.push(new Stack(alike, heights, isExact))
  }
  const widths = distinct(stacks.flatMap(({ sums }) => [...sums])).filter((width) => width > 0)
  if (widths.length > MOST_HEIGHTS) return null
  return new StagedPatterns(stacks, widths, lengths, along, new Row(widths, places), isExact, way)
}

class StagedPatterns implements Patterns {
  /** For every width of a strip in turn, how high each stack may be in it. */
  private readonly heights: Int32Array
  private readonly sections: Float64Array
  private readonly isHigher: Uint8Array
  private readonly filling: Filling
  /** Of sections of each length on a strip. */
  private readonly limits: Limits
  /** The stacks that make up the best strip of each width, each as often as it is in it. */
  private readonly filled: (readonly number[])[] = []
  constructor(
    private readonly stacks: readonly Stack[],
    private readonly widths: readonly number[],
    private readonly lengths: readonly number[],
    private readonly along: number,
    private readonly sheet: Row,
    private readonly isExact: boolean,
    private readonly way: Way,
  ) {
    this.heights = heightsIn(stacks, widths, isExact)
    this.sections = new Float64Array(stacks.length)
    this.isHigher = new Uint8Array(stacks.length)
    this.filling = new Filling(lengths, along)
    this.limits = { count: new Int32Array(stacks.length), worth: new Float64Array(stacks.length) }
  }

  price(prices: Float64Array, demand: readonly number[], most: number): Priced {
    const before = this.stepsSoFar()
    this.reprice(prices, demand)
    const worth = this.stripWorths()
    const best = this.sheet.fill(worth)
    const { sheet, widths } = this
    const promising = widths
      .map((_, strip) => ({ strip, worth: worth[strip]! + sheet.best[sheet.beside(strip)]! }))
      .sort((a, b) => b.worth - a.worth || a.strip - b.strip)
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
      sheets.push({ way: this.way, strips, worth: each.worth })
    }
    return { best, sheets, steps: this.stepsSoFar() - before + this.heights.length }
  }

  *list(prices: Float64Array, demand: readonly number[], least: number, most: number): Generator<null, Listed> {
    const before = this.stepsSoFar()
    this.reprice(prices, demand)
    const { way, stacks, lengths, widths, heights, along, sheet: row, isExact } = this
    const priced = { way, stacks, lengths, widths, heights, along, row, strips: this.stripWorths(), isExact }
    const listing = new Listing(priced, prices, demand, least, most)
    yield* listing.run()
    return { sheets: listing.sheets, isAll: !listing.isCut, steps: this.stepsSoFar() - before + listing.steps }
  }

  private reprice(prices: Float64Array, demand: readonly number[]): void {
    const { stacks, limits } = this
    for (const [at, stack] of stacks.entries()) {
      stack.reprice(prices, demand)
      limits.count[at] = stack.parts
      limits.worth[at] = stack.all
    }
  }

  private stepsSoFar(): number {
    return this.sheet.steps + this.filling.steps
  }

  /** The worth of the best strip of each width. */
  private stripWorths(): Float64Array {
    const { widths, sections, filling } = this
    const worths = new Float64Array(widths.length)
    sections.fill(0)
    let worth = 0
    for (let at = 0; at < widths.length; at++) {
      const hope = this.raise(at)
      if (this.isExact) worth = 0
      this.filled[at] = worth > 0 ? this.filled[at - 1]! : []
      if (hope > worth) {
        worth = filling.fill(sections, worth, this.limits)
        if (filling.pieces) this.filled[at] = filling.pieces
      }
      worths[at] = worth
    }
    return worths
  }

  /**
   * Lets every section be as high as a strip. What a strip with a section that is worth more than before could be worth
   * at most, if all beside it were as good as the best section of all.
   */
  private raise(at: number): number {
    const { stacks, heights, lengths, along, sections, isHigher, isExact } = this
    const row = at * stacks.length
    let density = 0
    for (let stack = 0; stack < stacks.length; stack++) {
      const now = stacks[stack]!.worth[heights[row + stack]!]!
      isHigher[stack] = isExact || now > sections[stack]! ? 1 : 0
      sections[stack] = now
      density = Math.max(density, now / lengths[stack]!)
    }
    let hope = 0
    for (let stack = 0; stack < lengths.length; stack++) {
      if (isHigher[stack]) hope = Math.max(hope, sections[stack]! + density * (along - lengths[stack]!))
    }
    return hope
  }

  private stripOf(at: number): PatternStrip {
    const { stacks, heights, lengths, widths, filled } = this
    return {
      across: widths[at]!,
      sections: filled[at]!.map((stack) => ({
        along: lengths[stack]!,
        kinds: stacks[stack]!.kindsAt(heights[at * stacks.length + stack]!),
      })),
    }
  }
}

/** For every width in turn, the highest of each stack that goes into it, or is just as high. */
function heightsIn(stacks: readonly Stack[], widths: readonly number[], isExact: boolean): Int32Array {
  const heights = new Int32Array(widths.length * stacks.length)
  for (const [which, { sums }] of stacks.entries()) {
    let height = 0
    for (const [at, width] of widths.entries()) {
      while (height + 1 < sums.length && sums[height + 1]! <= width) height++
      heights[at * stacks.length + which] = isExact && sums[height] !== width ? 0 : height
    }
  }
  return heights
}
