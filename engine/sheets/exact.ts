import { DUST, STEP_WORK } from './columns'
import type { ListedSheet } from './listing'
import type { Lot } from './lot'
import type { Known, Plan } from './plan'
import { canBeSettled, MOST_OVER, type Programme } from './programme'
import { goalOf } from './settledSheets'

/** Every part has a price at least: so much of the price is by area. */
const BY_AREA = 0.002
/** Of the work: what listing may take. */
const LISTING_SHARE = 0.75
/** One step of choosing takes so much of the time that looking at a rest takes. */
const CHOOSING_WORK = 1 / 4

/** A plan of so few sheets, or that there is none; neither where that was not found out. */
export interface Settled {
  readonly plan: Plan | null
  readonly isNone: boolean
}

const OPEN: Settled = { plan: null, isNone: false }

/**
 * Whether all parts go on a sheet fewer than a plan has. At the programme's prices no sheet is worth more than one, so on
 * so few sheets each is worth nearly one: all such sheets are listed, and some are chosen that hold all parts together.
 * Where every choice leads nowhere there is no such layout. Yields null between steps.
 */
export function* settledExactly(
  lot: Lot,
  { prices: own, value, patterns }: Programme,
  { plan }: Known,
  work: number,
): Generator<null, Settled> {
  const count = plan.boards.length - 1
  if (!canBeSettled(lot, count, value)) return OPEN
  const { kinds, sheetArea } = lot
  const demand = kinds.map(({ quantity }) => quantity)
  const prices = own.map((price, kind) => (1 - BY_AREA) * price + (BY_AREA * kinds[kind]!.area) / sheetArea)
  const over = count - worthOf(demand, prices)
  if (over > MOST_OVER) return OPEN
  const listed = yield* patterns.list(prices, demand, 1 - over - DUST, (LISTING_SHARE * work) / STEP_WORK)
  const left = work - listed.steps * STEP_WORK
  const cover = new Cover(listed.sheets, prices, demand, left / CHOOSING_WORK)
  const sheets = yield* cover.of(count)
  if (!sheets) return { plan: null, isNone: listed.isAll && !cover.isCut }
  const each = sheets.map(({ sheet }) => sheet())
  const { boards, pool } = goalOf(lot, each, count, 0)
  return pool.length > 0 ? OPEN : { plan: { boards: boards.filter(({ used }) => used > 0), left: [] }, isNone: false }
}

function worthOf(counts: ArrayLike<number>, prices: Float64Array): number {
  return prices.reduce((sum, price, kind) => sum + counts[kind]! * price, 0)
}

/** Some of the listed sheets that hold all parts together, by branch and bound. */
class Cover {
  /** Whether it was left before its end. */
  isCut = false
  private steps = 0
  private readonly left: number[]
  /** Of each sheet: its kinds, and how many parts it has of each. */
  private readonly kinds: readonly (readonly number[])[]
  private readonly counts: readonly (readonly number[])[]
  /** For each kind the sheets that have it, worth the most first. */
  private readonly having: readonly number[][]
  /** The kinds that are on the fewest sheets first. */
  private readonly rarest: readonly number[]

  constructor(
    private readonly listed: readonly ListedSheet[],
    private readonly prices: Float64Array,
    demand: readonly number[],
    private readonly most: number,
  ) {
    const kinds = [...demand.keys()]
    this.left = [...demand]
    this.kinds = listed.map(({ counts }) => kinds.filter((kind) => counts[kind]! > 0))
    this.counts = listed.map(({ counts }, sheet) => this.kinds[sheet]!.map((kind) => counts[kind]!))
    this.having = demand.map(() => [])
    const byWorth = [...listed.keys()].sort((a, b) => listed[b]!.worth - listed[a]!.worth || a - b)
    for (const sheet of byWorth) for (const kind of this.kinds[sheet]!) this.having[kind]!.push(sheet)
    this.rarest = kinds.sort((a, b) => this.having[a]!.length - this.having[b]!.length || a - b)
  }

  /** Null where there are none of so many, or none were found in time. Yields null between steps. */
  of(count: number): Generator<null, ListedSheet[] | null> {
    return this.rest(worthOf(this.left, this.prices), count)
  }

  /** So many sheets at most that hold all that is left, which is worth so much. */
  private *rest(worth: number, count: number): Generator<null, ListedSheet[] | null> {
    if (this.left.every((some) => some === 0)) return []
    if (count === 0) return null
    for (const { sheet, own } of this.choices(worth, count)) {
      const before = this.take(sheet)
      const others = yield* this.rest(worth - own, count - 1)
      this.giveBack(sheet, before)
      if (others) return [this.listed[sheet]!, ...others]
      if (this.isCut) return null
      if (count > 1) yield null
    }
    return null
  }

  /**
   * The rarest part that is left is on one of these. What they leave must not be worth more than there are sheets, as
   * none is worth more than one.
   */
  private choices(worth: number, count: number): { readonly sheet: number; readonly own: number }[] {
    const next = this.rarest.find((kind) => this.left[kind]! > 0)!
    const need = worth - (count - 1) - DUST
    const choices: { readonly sheet: number; readonly own: number }[] = []
    for (const sheet of this.having[next]!) {
      if (this.listed[sheet]!.worth < need) break
      const own = this.worthLeft(sheet)
      if (own >= need) choices.push({ sheet, own })
    }
    if (this.steps > this.most) this.isCut = true
    return this.isCut ? [] : choices.sort((a, b) => b.own - a.own || a.sheet - b.sheet)
  }

  /** What a sheet would take of what is left. */
  private worthLeft(sheet: number): number {
    const { left, prices } = this
    const kinds = this.kinds[sheet]!
    const counts = this.counts[sheet]!
    let worth = 0
    for (let at = 0; at < kinds.length; at++) worth += Math.min(counts[at]!, left[kinds[at]!]!) * prices[kinds[at]!]!
    this.steps += kinds.length
    return worth
  }

  /** What was left before of its kinds. */
  private take(sheet: number): readonly number[] {
    const { left } = this
    const kinds = this.kinds[sheet]!
    const before = kinds.map((kind) => left[kind]!)
    for (const [at, kind] of kinds.entries()) left[kind] = Math.max(0, left[kind]! - this.counts[sheet]![at]!)
    return before
  }

  private giveBack(sheet: number, before: readonly number[]): void {
    for (const [at, kind] of this.kinds[sheet]!.entries()) this.left[kind] = before[at]!
  }
}
