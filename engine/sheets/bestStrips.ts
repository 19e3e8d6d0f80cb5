import type { Random } from '../basics/random'
import { type Board, listParts, RIP, type Twig } from './cutTree'
import type { HandlingCount } from './handling'
import { type Lot, mayComeFrom } from './lot'
import type { PatternSection } from './pattern'
import { stripTwig } from './settledSheets'

/** What a part counts is its area, more or less by up to so much, and up to so much more the larger it is. */
const NOISE = 0.1
const MORE_FOR_LARGE = 0.15
/** How much a strip counts for its area, more or less. */
const STRIP_NOISE = 0.05
/** What one unit of handling costs beside the area of a sheet: a mood for each time. */
const MOODS = [0, 0.0015, 0.0045, 0.009]
/** A strip is left as it is after so many sections tried. */
const MOST_TRIED = 300
/** What one section tried costs beside a rest that is looked at (measured). */
const TRIED_WORK = 0.5
/** So often a whole width is given up, where no more sheets than these have it, and so often it is avoided then. */
const GIVEN_UP = 0.2
const MOST_SHEETS = 4
const AVOIDED = 0.8

/** A kind of part as it may lie in a strip: along it, and across it. */
interface Item {
  readonly kind: number
  readonly turned: boolean
  readonly along: number
  readonly across: number
  /** Which of the lengths it has. */
  readonly group: number
}

/** Parts of one length from edge to edge of a strip: one as wide as the strip, or several trimmed. */
interface Section {
  along: number
  worth: number
  density: number
  readonly items: Item[]
  count: number
}

/** Sheets that are ripped anew, and the width that is avoided then; -1 for none. */
export interface Anew {
  readonly sheets: readonly number[]
  readonly avoided: number
}

/**
 * Rips sheets anew: takes strips off some of them, and cuts one strip after the other from what is free there, each
 * the best of its width out of the parts that have no place. Part by part a search does not find its way from one set of
 * widths to another, which takes several strips at once. Source: the strips of sequential value correction, Belov and
 * Scheithauer, 'Setup and open-stacks minimization in one-dimensional stock cutting', INFORMS Journal on Computing 19
 * (2007), from memory.
 */
export class BestStrips {
  private readonly isRip: boolean
  /** The widest first. */
  private readonly items: readonly Item[]
  private readonly lengths: readonly number[]
  private readonly areas: readonly number[]
  /** How large each kind is: 0 for a twentieth of a sheet, in powers of e. */
  private readonly sizes: readonly number[]
  private readonly left: number[]
  private readonly prices: Float64Array
  private readonly trims: Float64Array
  private readonly stops: Float64Array
  private active: Item[] = []
  /** For each length the items that may be taken now. */
  private readonly groups: Item[][]
  private readonly stack: Item[] = []
  /** All sections that may be in a strip, kept from strip to strip so that none is made anew; the first `made` count. */
  private readonly sections: Section[] = []
  private readonly densest: Section[] = []
  private made = 0
  private readonly taken: Section[] = []
  private best: PatternSection[] = []
  private most = 0
  private tried = 0
  private mood = 0
  constructor(
    private readonly lot: Lot,
    private readonly count: HandlingCount,
    private readonly random: Random,
  ) {
    this.isRip = lot.first !== 'crosscut'
    const ways = lot.kinds.flatMap(({ length, width, turns, block }, kind) => {
      if (block) return []
      const [a, b] = this.isRip ? [length, width] : [width, length]
      const own = { kind, along: a, across: b, turned: false }
      return turns ? [own, { kind, along: b, across: a, turned: true }] : [own]
    })
    this.lengths = [...new Set(ways.map(({ along }) => along))]
    this.items = ways
      .map((way) => ({ ...way, group: this.lengths.indexOf(way.along) }))
      .sort((a, b) => b.across - a.across || a.kind - b.kind)
    this.areas = lot.kinds.map(({ area }) => area / lot.sheetArea)
    this.sizes = this.areas.map((area) => Math.log(20 * area))
    this.groups = this.lengths.map(() => [])
    this.left = lot.kinds.map(() => 0)
    this.prices = new Float64Array(lot.kinds.length)
    this.trims = new Float64Array(this.items.length)
    this.stops = new Float64Array(this.lengths.length)
  }

  /** One to three sheets; or all that have a width that few have, and perhaps one more. */
  choose(boards: readonly Board[]): Anew {
    const any = () => Math.floor(this.random() * boards.length)
    const given = this.random() < GIVEN_UP ? this.anyWidthOn(boards[any()]!) : -1
    const having = boards.flatMap((board, at) => (given >= 0 && this.hasWidth(board, given) ? [at] : []))
    const isGiven = having.length > 0 && having.length <= MOST_SHEETS
    const more = isGiven ? Math.floor(2 * this.random()) : 1 + Math.floor(3 * this.random())
    const others = Array.from({ length: more }, any)
    const sheets = [...new Set(isGiven ? [...having, ...others] : others)]
    return { sheets, avoided: isGiven && this.random() < AVOIDED ? given : -1 }
  }

  private anyWidthOn({ root }: Board): number {
    const strip = root.pieces[Math.floor(this.random() * root.pieces.length)]
    return strip && this.isOurs(root) ? this.acrossOf(strip) : -1
  }

  private hasWidth({ root }: Board, width: number): boolean {
    return this.isOurs(root) && root.pieces.some((strip) => this.acrossOf(strip) === width)
  }

  private isOurs({ way }: Twig): boolean {
    return (way === RIP) === this.isRip
  }

  private acrossOf({ length, width }: Twig): number {
    return this.isRip ? width : length
  }

  /** Takes strips off these sheets and fills them anew from the pool; what has no place then is left in it. The work it took. */
  ripAnew(boards: readonly Board[], avoided: number, pool: number[]): number {
    const share = 0.4 + 0.6 * this.random()
    const ours = boards.filter(({ root }) => this.isOurs(root))
    for (const { root } of ours) {
      root.pieces = root.pieces.filter((strip) => {
        const across = this.acrossOf(strip)
        if (across !== avoided && this.random() >= share) return true
        root.rest += across
        listParts(strip, pool)
        return false
      })
    }
    this.tried = 0
    this.priceAll(pool)
    for (const board of ours) this.fill(board, avoided)
    pool.length = 0
    for (let kind = 0; kind < this.left.length; kind++) {
      for (let one = this.left[kind]!; one > 0; one--) pool.push(kind)
    }
    return TRIED_WORK * this.tried
  }

  private priceAll(pool: readonly number[]): void {
    const { left, prices, trims, stops, count, random, isRip, items } = this
    left.fill(0)
    for (const kind of pool) left[kind]!++
    const power = MORE_FOR_LARGE * random()
    const mood = MOODS[Math.floor(random() * MOODS.length)]!
    this.mood = mood
    this.active = items.filter(({ kind }) => left[kind]! > 0)
    for (const { kind, across } of this.active) {
      prices[kind] = this.areas[kind]! * (1 + power * this.sizes[kind]! + NOISE * (2 * random() - 1))
      trims[kind] = mood * count.costOfCut(across, 3, isRip)
    }
    for (let group = 0; group < stops.length; group++) {
      stops[group] = mood * count.costOfCut(this.lengths[group]!, 2, !isRip)
    }
  }

  /** One strip after the other, each the one that is worth the most for its area. */
  private fill({ root, stock, sheet }: Board, avoided: number): void {
    const { lot, left, groups, mood, count, isRip } = this
    const along = isRip ? root.length : root.width
    for (;;) {
      for (const group of groups) if (group.length > 0) group.length = 0
      const widths: number[] = []
      for (const item of this.active) {
        const { kind, across } = item
        if (left[kind]! === 0 || across > root.rest || item.along > along) continue
        const wanted = lot.kinds[kind]!
        if (!mayComeFrom(wanted, stock) || (wanted.sheet !== undefined && wanted.sheet !== sheet)) continue
        groups[item.group]!.push(item)
        if (widths[widths.length - 1] !== across) widths.push(across)
      }
      let [score, width] = [-Infinity, 0]
      let best: readonly PatternSection[] = []
      for (const across of widths) {
        if (across === avoided) continue
        const worth = this.bestOf(across, along) - mood * count.costOfCut(across, 1, isRip)
        const own = (worth / (across * along)) * (1 + STRIP_NOISE * (2 * this.random() - 1))
        if (own <= score || this.best.length === 0) continue
        score = own
        width = across
        best = this.best
      }
      if (best.length === 0) return
      root.pieces.push(stripTwig({ across: width, sections: best }, root, root.way, left))
      root.rest -= width
    }
  }

  /** What the best strip of a width is worth, which is `best` then. */
  private bestOf(width: number, along: number): number {
    const { groups, sections, densest, stops, prices, lot } = this
    this.made = 0
    for (let group = 0; group < groups.length; group++) {
      const items = groups[group]!
      let at = 0
      while (at < items.length && items[at]!.across > width) at++
      for (; at < items.length && items[at]!.across === width; at++) {
        this.stack[0] = items[at]!
        this.note(1, prices[items[at]!.kind]! - stops[group]!)
      }
      if (lot.depth > 2 && at < items.length) this.pile(items, at, width, 0, -stops[group]!)
    }
    for (let at = 0; at < this.made; at++) {
      const section = sections[at]!
      let to = at
      for (; to > 0 && densest[to - 1]!.density < section.density; to--) densest[to] = densest[to - 1]!
      densest[to] = section
    }
    this.best = []
    this.most = 0
    const until = this.tried + MOST_TRIED
    this.lay(0, 0, along, 0, until)
    this.tried += this.made
    return this.most
  }

  /** All ways to lay parts of one length side by side until no other fits. */
  private pile(items: readonly Item[], from: number, rest: number, high: number, worth: number): void {
    const { left, prices, trims, stack } = this
    let isFull = true
    for (let next = from; next < items.length; next++) {
      const item = items[next]!
      const { kind, across } = item
      if (across > rest || left[kind]! === 0) continue
      isFull = false
      left[kind]!--
      stack[high] = item
      this.pile(items, next, rest - across, high + 1, worth + prices[kind]! - trims[kind]!)
      left[kind]!++
    }
    if (isFull && high > 0) this.note(high, worth)
  }

  private note(high: number, worth: number): void {
    if (worth <= 0) return
    const { sections, stack } = this
    if (this.made === sections.length) sections.push({ along: 0, worth: 0, density: 0, items: [], count: 0 })
    const section = sections[this.made++]!
    section.along = stack[0]!.along
    section.worth = worth
    section.density = worth / section.along
    section.count = high
    for (let at = 0; at < high; at++) section.items[at] = stack[at]!
  }

  /** Branch and bound over the sections, the densest first. */
  private lay(from: number, deep: number, rest: number, worth: number, until: number): void {
    const { taken, densest, left } = this
    if (worth > this.most) {
      this.most = worth
      this.best = taken.slice(0, deep).map(({ along, items, count }) => ({ along, kinds: items.slice(0, count) }))
    }
    for (let next = from; next < this.made && this.tried < until; next++) {
      this.tried++
      const section = densest[next]!
      if (worth + rest * section.density <= this.most) return
      if (section.along > rest || !this.takes(section)) continue
      taken[deep] = section
      this.lay(next, deep + 1, rest - section.along, worth + section.worth, until)
      for (let at = 0; at < section.count; at++) left[section.items[at]!.kind]!++
    }
  }

  private takes({ items, count }: Section): boolean {
    const { left } = this
    for (let at = 0; at < count; at++) {
      if (--left[items[at]!.kind]! >= 0) continue
      for (let back = at; back >= 0; back--) left[items[back]!.kind]!++
      return false
    }
    return true
  }
}
