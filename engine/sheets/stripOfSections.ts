import type { Lot } from './lot'
import type { PatternSection } from './pattern'

/** A strip is left as it is after so many sections tried, out of so many. */
const MOST_TRIED = 300
const MOST_MADE = 200

/** A kind of part as it may lie in a strip: along it, and across it. */
export interface Item {
  readonly kind: number
  readonly turned: boolean
  readonly along: number
  readonly across: number
  /** Which of the lengths it has. */
  readonly group: number
}

/** All lengths that parts may have along a strip. */
export function lengthsOf({ kinds }: Lot, isRip: boolean): number[] {
  const ways = kinds.flatMap(({ length, width, turns, block }) => {
    if (block) return []
    return turns ? [length, width] : [isRip ? length : width]
  })
  return [...new Set(ways)]
}

/** How parts may lie in strips that are ripped, or crosscut where that is the first cut; the widest first. Banks do not. */
export function itemsOf({ kinds }: Lot, isRip: boolean, lengths: readonly number[]): Item[] {
  const items = kinds.flatMap(({ length, width, turns, block }, kind) => {
    if (block) return []
    const [along, across] = isRip ? [length, width] : [width, length]
    const own = { kind, along, across, turned: false, group: lengths.indexOf(along) }
    return turns ? [own, { kind, along: across, across: along, turned: true, group: lengths.indexOf(across) }] : [own]
  })
  return items.sort((a, b) => b.across - a.across || a.kind - b.kind)
}

/** Parts of one length from edge to edge of a strip: one as wide as the strip, or several trimmed. */
interface Section {
  along: number
  worth: number
  density: number
  readonly items: Item[]
  count: number
}

/** Finds the best strip of a width out of parts that are left, by what each counts. */
export class StripOfSections {
  /** How many of each kind are left. */
  readonly left: number[]
  /** What a part of each kind counts. */
  readonly prices: Float64Array
  /** What it costs to trim a part of each kind. */
  readonly trims: Float64Array
  /** What it costs to cut a section, for each length. */
  readonly stops: Float64Array
  /** For each length the items that may be taken now, the widest first. */
  readonly groups: readonly Item[][]
  /** Sections that were tried so far. */
  tried = 0
  /** The best strip that was found last, from its one end to the other. */
  best: readonly PatternSection[] = []
  private readonly stack: Item[] = []
  /** All sections that may be in a strip, kept from strip to strip so that none is made anew; the first `made` count. */
  private readonly sections: Section[] = []
  private readonly densest: Section[] = []
  private made = 0
  private readonly taken: Section[] = []
  private readonly kept: Section[] = []
  private keptCount = 0
  private most = 0

  constructor(
    kinds: number,
    lengths: number,
    /** Whether parts may be trimmed after a rip and a crosscut. */
    private readonly mayTrim: boolean,
  ) {
    this.left = new Array<number>(kinds).fill(0)
    this.prices = new Float64Array(kinds)
    this.trims = new Float64Array(kinds)
    this.stops = new Float64Array(lengths)
    this.groups = Array.from({ length: lengths }, () => [])
  }

  /** Whether as many parts as a strip has are left. */
  areThere(sections: readonly PatternSection[]): boolean {
    const { left } = this
    let isShort = false
    for (const { kinds } of sections) for (const { kind } of kinds) isShort = --left[kind]! < 0 || isShort
    for (const { kinds } of sections) for (const { kind } of kinds) left[kind]!++
    return !isShort
  }

  /** What the best strip of a width is worth, which is `best` then. */
  worthOf(width: number, along: number): number {
    const { groups, sections, densest, stops, prices, left, kept } = this
    this.made = 0
    for (let group = 0; group < groups.length; group++) {
      const items = groups[group]!
      let at = 0
      while (at < items.length && items[at]!.across > width) at++
      for (; at < items.length && items[at]!.across === width; at++) {
        if (left[items[at]!.kind]! === 0) continue
        this.stack[0] = items[at]!
        this.note(1, prices[items[at]!.kind]! - stops[group]!)
      }
      if (this.mayTrim && at < items.length) this.pile(items, at, width, 0, -stops[group]!)
    }
    for (let at = 0; at < this.made; at++) {
      const section = sections[at]!
      let to = at
      for (; to > 0 && densest[to - 1]!.density < section.density; to--) densest[to] = densest[to - 1]!
      densest[to] = section
    }
    this.most = 0
    this.keptCount = 0
    const until = this.tried + MOST_TRIED
    this.lay(0, 0, along, 0, until)
    this.tried += this.made
    this.best = kept
      .slice(0, this.keptCount)
      .map(({ along, items, count }) => ({ along, kinds: items.slice(0, count) }))
    return this.most
  }

  /** All ways to lay parts of one length side by side until no other fits. */
  private pile(items: readonly Item[], from: number, rest: number, high: number, worth: number): void {
    const { left, prices, trims, stack } = this
    let isFull = true
    for (let next = from; next < items.length && this.made < MOST_MADE; next++) {
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
    const { taken, densest, left, kept } = this
    if (worth > this.most) {
      this.most = worth
      this.keptCount = deep
      for (let at = 0; at < deep; at++) kept[at] = taken[at]!
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
