import { type Content, contentsOf } from './contents'
import type { Way } from './cutTree'
import type { Row, Stack } from './knapsack'
import type { PatternSheet, PatternStrip } from './pattern'

/** What sheets are listed from: stacks by their lengths, and the best strips of each width, both priced. */
export interface Priced {
  readonly way: Way
  readonly stacks: readonly Stack[]
  readonly lengths: readonly number[]
  readonly widths: readonly number[]
  /** For every width in turn, how high each stack may be in it. */
  readonly heights: Int32Array
  readonly along: number
  readonly row: Row
  /** The worth of the best strip of each width. */
  readonly strips: Float64Array
  /** Whether a section is one part, as high as its strip. */
  readonly isExact: boolean
}

/** A sheet that can be cut, with no more of a kind on it than there is. */
export interface ListedSheet {
  /** For each kind, how many parts of it are on it. */
  readonly counts: Int32Array
  readonly worth: number
  readonly sheet: () => PatternSheet
}

interface Section {
  readonly stack: number
  readonly content: Content
}

/** A place in the order of stacks and contents: what comes after the first on a strip is never before it. */
interface Place {
  readonly order: number
  readonly content: number
}

const FIRST: Place = { order: 0, content: 0 }

/** A strip that is being filled: the point that is left under it, and what it and all before it must be worth. */
interface Begun {
  readonly width: number
  readonly under: number
  readonly need: number
  readonly sections: Section[]
}

/** The length of a sheet in cells: what may yet come on a strip is looked up by them, with lengths rounded down. */
const CELLS = 512
/** After so many steps others may have a turn. */
const CHUNK = 2_000_000
/** More sheets take too much memory. */
const MOST_LISTED = 50_000
/** One sheet looked at takes as much time as so many steps of a pricing, and a cell as much as so many. */
const LOOK_STEPS = 150

/**
 * All sheets that are worth no less than `least` at these prices, with no more of a kind than is in demand and nothing
 * left out that would go into a section: strips from the widest to the narrowest, in each its sections, in each its parts.
 * A sheet is left off where even the best that could come beside it, each part as often as wished, is worth too little.
 */
export class Listing {
  readonly sheets: ListedSheet[] = []
  steps = 0
  /** Whether it was left before its end. */
  isCut = false
  private next = 0
  private readonly contents: readonly (readonly Content[])[]
  private readonly left: number[]
  /** The sheets told so far, by a sum over their parts. */
  private readonly known = new Map<number, ListedSheet[]>()
  /** How many parts of each kind are on the sheet so far, and the sum over them. */
  private readonly used: Int32Array
  private sum = 0
  /** For each width, the best beside a strip of it up to each point, with strips no wider. */
  private readonly beside: readonly Float64Array[]
  private readonly rests: (Float64Array | undefined)[] = []
  private readonly orders: (readonly number[] | undefined)[] = []
  private readonly cells: readonly number[]
  private readonly cell: number
  /** The strips so far, from the widest: their widths, and the stack and the content of each section. */
  private readonly made: { readonly width: number; readonly sections: readonly Section[] }[] = []

  constructor(
    private readonly priced: Priced,
    prices: Float64Array,
    demand: readonly number[],
    private readonly least: number,
    private readonly most: number,
  ) {
    const { stacks, along, lengths, row, strips, isExact } = priced
    this.left = [...demand]
    this.used = new Int32Array(demand.length)
    this.contents = stacks.map((stack) => contentsOf(stack, prices, demand, isExact))
    this.beside = row.upTo(strips)
    this.cell = along / CELLS
    this.cells = lengths.map((length) => Math.floor(length / this.cell))
  }

  /** Lists them, those with the widest strip first. Yields null between steps. */
  run(): Generator<null, void> {
    const { widths, row } = this.priced
    return this.addStrips(row.points.length - 1, 0, widths.length - 1, FIRST)
  }

  /** Strips beside those that are there, up to a point, none wider than the last and those as wide in their order. */
  private *addStrips(point: number, worth: number, last: number, from: Place): Generator<null, void> {
    if (worth >= this.least) this.tell(worth)
    const { row, strips, along } = this.priced
    for (let width = last; width >= 0 && !this.isCut; width--) {
      const under = row.under(point, width)
      if (under < 0) continue
      const need = this.least - this.beside[width]![under]!
      if (worth + strips[width]! < need) continue
      const strip = { width, under, need, sections: [] }
      this.made.push(strip)
      yield* this.addSections(strip, width === last ? from : FIRST, along, worth, null)
      this.made.pop()
    }
  }

  /** On a strip with so much room that is worth so much with what is on it and before it. */
  private *addSections(
    strip: Begun,
    from: Place,
    room: number,
    worth: number,
    first: Place | null,
  ): Generator<null, void> {
    if (this.isDue()) yield null
    if (this.isCut) return
    const { width, under, need, sections } = strip
    const { lengths, widths, isExact } = this.priced
    const across = widths[width]!
    if (first && isReached(sections, across)) yield* this.addStrips(under, worth, width, first)
    const order = this.orderIn(width)
    const rests = this.restsIn(width)
    for (let at = from.order; at < order.length; at++) {
      const row = at * (CELLS + 1)
      if (worth + rests[row + Math.ceil(room / this.cell)]! < need) return
      const stack = order[at]!
      const rest = room - lengths[stack]!
      if (rest < 0) continue
      const after = rests[row + Math.ceil(rest / this.cell)]!
      const contents = this.contents[stack]!
      for (let which = at === from.order ? from.content : 0; which < contents.length; which++) {
        const content = contents[which]!
        if (worth + content.worth + after < need) break
        if (isExact ? content.height !== across : content.height > across) continue
        if (!this.isThere(content) || this.isShort(content, stack, across)) continue
        const place = { order: at, content: which }
        this.take(content, 1)
        sections.push({ stack, content })
        yield* this.addSections(strip, place, rest, worth + content.worth, first ?? place)
        sections.pop()
        this.take(content, -1)
        if (this.isCut) return
      }
    }
  }

  /** Counts a sheet looked at; whether it is time for a rest. */
  private isDue(): boolean {
    this.steps += LOOK_STEPS
    if (this.steps > this.most || this.sheets.length > MOST_LISTED) this.isCut = true
    if (this.steps < this.next) return false
    this.next = this.steps + CHUNK
    return true
  }

  private isThere({ items, counts }: Content): boolean {
    for (let at = 0; at < items.length; at++) if (this.left[items[at]!]! < counts[at]!) return false
    return true
  }

  /** Whether a part that is left would go into a section too: then the section with it is as good. */
  private isShort({ items, counts, height }: Content, stack: number, across: number): boolean {
    if (this.priced.isExact) return false
    for (const item of this.priced.stacks[stack]!.items) {
      if (height + item.across > across) continue
      const own = items.indexOf(item.kind)
      if (this.left[item.kind]! > (own < 0 ? 0 : counts[own]!)) return true
    }
    return false
  }

  private take({ items, counts }: Content, times: number): void {
    for (let at = 0; at < items.length; at++) {
      const more = times * counts[at]!
      this.left[items[at]!]! -= more
      this.used[items[at]!]! += more
      this.sum += more * markOf(items[at]!)
    }
  }

  /** The stacks in a strip, the most worth for their length first. */
  private orderIn(width: number): readonly number[] {
    const { stacks, lengths } = this.priced
    const density = (stack: number) => this.worthIn(width, stack) / lengths[stack]!
    this.orders[width] ??= [...stacks.keys()]
      .filter((stack) => this.worthIn(width, stack) > 0)
      .sort((a, b) => density(b) - density(a) || a - b)
    return this.orders[width]!
  }

  private worthIn(width: number, stack: number): number {
    const { stacks, heights } = this.priced
    return stacks[stack]!.worth[heights[width * stacks.length + stack]!]!
  }

  /** For each stack of a strip in order, and each number of cells: the most that it and those after it are worth there. */
  private restsIn(width: number): Float64Array {
    const known = this.rests[width]
    if (known) return known
    const order = this.orderIn(width)
    const rests = new Float64Array((order.length + 1) * (CELLS + 1))
    for (let at = order.length - 1; at >= 0; at--) {
      const size = Math.max(1, this.cells[order[at]!]!)
      const worth = this.worthIn(width, order[at]!)
      const row = at * (CELLS + 1)
      for (let cell = 0; cell <= CELLS; cell++) {
        const without = rests[row + CELLS + 1 + cell]!
        rests[row + cell] = cell < size ? without : Math.max(without, rests[row + cell - size]! + worth)
      }
    }
    this.steps += order.length * CELLS
    this.rests[width] = rests
    return rests
  }

  private tell(worth: number): void {
    const { used, known, sum } = this
    const alike = known.get(sum) ?? []
    if (alike.some(({ counts }) => counts.every((count, kind) => count === used[kind]))) return
    if (alike.length === 0) known.set(sum, alike)
    const made = this.made.map(({ width, sections: own }) => ({ width, sections: [...own] }))
    const { way } = this.priced
    const listed: ListedSheet = {
      counts: used.slice(),
      worth,
      sheet: () => ({ way, worth, strips: made.map((strip) => this.stripOf(strip)) }),
    }
    alike.push(listed)
    this.sheets.push(listed)
  }

  private stripOf({ width, sections }: (typeof this.made)[number]): PatternStrip {
    const { lengths, widths, stacks } = this.priced
    return {
      across: widths[width]!,
      sections: sections.map(({ stack, content: { items, counts } }) => ({
        along: lengths[stack]!,
        kinds: items.flatMap((kind, at) => {
          const item = stacks[stack]!.items.find((own) => own.kind === kind)!
          return new Array<typeof item>(counts[at]!).fill(item)
        }),
      })),
    }
  }
}

/** Whether a section is as high as the strip: else it is a narrower one. */
function isReached(sections: readonly Section[], across: number): boolean {
  for (const { content } of sections) if (content.height === across) return true
  return false
}

/** Sums of them tell most sheets apart. */
function markOf(kind: number): number {
  return Math.floor(((kind * 0.6180339887 + 0.3) % 1) * 2 ** 40)
}
