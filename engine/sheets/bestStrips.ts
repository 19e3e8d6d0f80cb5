import type { Random } from '../basics/random'
import { type Board, listParts, RIP, type Twig } from './cutTree'
import type { HandlingCount } from './handling'
import { type Lot, mayComeFrom } from './lot'
import type { PatternSection } from './pattern'
import { stripTwig } from './settledSheets'
import { type Item, itemsOf, lengthsOf, StripOfSections } from './stripOfSections'

/** What a part counts is its area, more or less by up to so much, and up to so much more the larger it is. */
const NOISE = 0.1
const MORE_FOR_LARGE = 0.15
/** How much more or less a strip counts for its area. */
const STRIP_NOISE = 0.05
/** What one unit of handling costs beside the area of a sheet: a mood for each time. */
const MOODS = [0, 0.0015, 0.0045, 0.009]
/** What one section tried costs beside a rest that is looked at (measured). */
const TRIED_WORK = 0.5
/** So often a whole width is given up, where no more sheets than these have it, and so often it is avoided then. */
const GIVEN_UP = 0.2
const MOST_SHEETS = 4
const AVOIDED = 0.8

/** The best strip of a width; what it is worth for its area is Infinity before that is known. */
interface StripOfWidth {
  readonly across: number
  /** Kinds of parts that are as wide. */
  readonly kinds: number[]
  /** How much it counts for its area. */
  readonly favour: number
  score: number
  sections: readonly PatternSection[]
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
  private readonly strip: StripOfSections
  private active: Item[] = []
  private mood = 0
  constructor(
    private readonly lot: Lot,
    private readonly count: HandlingCount,
    private readonly random: Random,
  ) {
    this.isRip = lot.first !== 'crosscut'
    this.lengths = lengthsOf(lot, this.isRip)
    this.items = itemsOf(lot, this.isRip, this.lengths)
    this.areas = lot.kinds.map(({ area }) => area / lot.sheetArea)
    this.sizes = this.areas.map((area) => Math.log(20 * area))
    this.strip = new StripOfSections(lot.kinds.length, this.lengths.length, lot.depth > 2)
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
    const { strip } = this
    const before = strip.tried
    this.priceAll(pool)
    for (const board of ours) this.fill(board, avoided)
    pool.length = 0
    for (let kind = 0; kind < strip.left.length; kind++) {
      for (let one = strip.left[kind]!; one > 0; one--) pool.push(kind)
    }
    return TRIED_WORK * (strip.tried - before)
  }

  private priceAll(pool: readonly number[]): void {
    const { count, random, isRip, items } = this
    const { left, prices, trims, stops } = this.strip
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

  /**
   * One strip after the other, each the one that is worth the most for its area. As parts are used up no strip becomes
   * worth more: one whose parts are all there still is as good as it was, and what another was worth it is not above.
   */
  private fill(board: Board, avoided: number): void {
    const { mood, count, isRip } = this
    const { left } = this.strip
    const { root } = board
    const along = isRip ? root.length : root.width
    const strips = this.stripsFor(board, along, avoided)
    for (;;) {
      let best: StripOfWidth | null = null
      for (const strip of strips) {
        if (strip.across <= root.rest && strip.score > (best?.score ?? -Infinity)) best = strip
      }
      if (!best) return
      if (best.score < Infinity && this.strip.areThere(best.sections)) {
        root.pieces.push(stripTwig(best, root, root.way, left))
        root.rest -= best.across
        continue
      }
      const isAny = best.kinds.some((kind) => left[kind]! > 0)
      const worth = isAny ? this.strip.worthOf(best.across, along) - mood * count.costOfCut(best.across, 1, isRip) : 0
      best.sections = isAny ? this.strip.best : []
      best.score = best.sections.length > 0 ? (worth / (best.across * along)) * best.favour : -Infinity
    }
  }

  /** The strips that may be cut from a sheet, one of each width; the parts that may lie on it are in their groups then. */
  private stripsFor({ stock, sheet }: Board, along: number, avoided: number): StripOfWidth[] {
    const { lot } = this
    const { groups, left } = this.strip
    const strips: StripOfWidth[] = []
    for (const group of groups) group.length = 0
    for (const item of this.active) {
      const { kind, across } = item
      if (left[kind] === 0 || item.along > along) continue
      const wanted = lot.kinds[kind]!
      if (!mayComeFrom(wanted, stock) || (wanted.sheet !== undefined && wanted.sheet !== sheet)) continue
      groups[item.group]!.push(item)
      if (across === avoided) continue
      const known = strips[strips.length - 1]
      if (known?.across === across) known.kinds.push(kind)
      else strips.push({ across, kinds: [kind], favour: this.anyFavour(), score: Infinity, sections: [] })
    }
    return strips
  }

  private anyFavour(): number {
    return 1 + STRIP_NOISE * (2 * this.random() - 1)
  }
}
