import { Columns, DUST, kindsOf } from './columns'
import { isRepeated, type Lot } from './lot'
import type { Known } from './plan'
import type { Covered } from './simplex'
import type { Patterns } from './staged'

export interface Programme {
  /** No layout needs fewer sheets. */
  readonly bound: number
  /** So many sheets it takes in fractions. */
  readonly value: number
  /** What its sheets are priced by. */
  readonly patterns: Patterns
  /** The sheets that it chooses from. */
  readonly columns: Columns
  /** What the parts cost at the best bound so far, in sheets: no sheet is worth more than one. */
  readonly prices: Float64Array
}

/** What a programme knows on its way. */
export interface Underway extends Programme {
  /** What it takes in fractions may well be rounded to a sheet fewer than the plan has; said once. */
  readonly isEasy: boolean
}

/** So many new sheets are looked for at each set of prices. */
const NEW_SHEETS = 20
/**
 * Prices lie so far from the programme's towards the best so far, which keeps them from leaping about; those that give no
 * new sheet are drawn nearer to the programme's.
 */
const CALM = [0.6, 0.3, 0]
/** A programme that takes no more than this above its bound, in sheets, is as good as solved. */
const SOLVED = 0.01
/** From where nothing is left to prove, a programme is solved on for so much of the work that it took until then. */
const AFTERWARDS = 1
/** Where it may be settled whether so few sheets do, the nearer to its end the fewer are to be listed. */
const NEAR_AFTERWARDS = 10
const NEAR_SOLVED = 0.001
/** With more sheets, or more than this left over on all together, in sheets, there are too many ways to fill one. */
const MOST_SHEETS = 6
export const MOST_OVER = 0.1
/** So many sheets fewer in fractions than are hoped for make it likely that whole ones can be found. */
const EASY_SLACK = 0.7

/**
 * How many sheets the parts need at least when sheets may be cut in fractions, with every layout of so many directions
 * allowed: by column generation. At any prices of parts, what all parts cost, divided by what the best sheet is worth, is
 * a bound, so the search may end at any time. Yields null between steps; ends when the bound meets the plan, when the
 * programme says that it cannot, or when the work is spent. On the way it yields itself when the bound is lifted above
 * `least`, or when it may be rounded. Sources: Gilmore and Gomory, Operations Research 9 (1961);
 * Farley, 'A note on bounding a class of linear programming problems', Operations Research 38 (1990); both from memory.
 */
export function* programmeOf(
  lot: Lot,
  patterns: Patterns,
  { plan, bound: least }: Known,
  work: number,
): Generator<Underway | null, Programme> {
  const { boards } = plan
  const demand = lot.kinds.map(({ quantity }) => quantity)
  const columns = new Columns(demand)
  columns.addPlan(plan)
  let best = 0
  // Until the programme knows better a part is worth its area.
  let calm = Float64Array.from(lot.kinds, ({ area }) => area / lot.sheetArea)
  let scale = 1
  let solved: Covered | null = null
  let isToBeRounded = true
  let told = least
  const known = (): Programme => ({
    bound: Math.ceil(best - DUST),
    value: solved?.value ?? Infinity,
    patterns,
    columns,
    prices: calm.map((price) => price * scale),
  })
  const afterwards = isRepeated(lot) ? AFTERWARDS : 0
  let until = Infinity
  /** Where a sheet fewer may yet be found, a programme that is solved nearer to its end shows the way to it. */
  const isMet = (value: number) => {
    const bound = Math.ceil(best - DUST)
    if (bound < Math.min(boards.length, Math.ceil(value - DUST))) return false
    const isNear = canBeSettled(lot, boards.length - 1, value)
    until = Math.min(until, columns.work * (1 + (isNear ? NEAR_AFTERWARDS : afterwards)))
    return bound >= boards.length || value - best < (isNear ? NEAR_SOLVED : SOLVED) || columns.work >= until
  }
  /** How many sheets are new that are worth more than they cost at the programme's own prices. */
  const addSheets = (own: Float64Array, value: number): number => {
    let added = 0
    for (const share of CALM) {
      const prices = own.map((price, kind) => (1 - share) * price + share * calm[kind]!)
      const priced = columns.price(patterns, prices, NEW_SHEETS)
      const bound = total(demand, prices) / priced.best
      if (bound > best) {
        best = bound
        calm = prices
        scale = 1 / priced.best
      }
      for (const sheet of priced.sheets) {
        const kinds = kindsOf(sheet)
        if (kinds.reduce((sum, kind) => sum + own[kind]!, 0) > 1 + DUST && columns.add(kinds, sheet)) added++
      }
      if (added > 0 || isMet(value)) break
    }
    return added
  }
  while (columns.work < work) {
    solved = columns.solve()
    if (!solved) break
    const own = Float64Array.from(demand, (_, kind) => Math.max(0, solved!.duals[kind] ?? 0))
    const added = addSheets(own, solved.value)
    if (added === 0 || isMet(solved.value)) break
    const isEasy = isToBeRounded && solved.value < boards.length - 1 - EASY_SLACK
    if (isEasy) isToBeRounded = false
    const isLifted = Math.ceil(best - DUST) > told
    if (isLifted) told = Math.ceil(best - DUST)
    yield isEasy || isLifted ? { ...known(), isEasy } : null
  }
  return known()
}

/** Whether so many sheets can be listed, of which a programme takes so many in fractions. */
export function canBeSettled(lot: Lot, count: number, value: number): boolean {
  return lot.stocks.length === 1 && count <= MOST_SHEETS && count - value < MOST_OVER
}

function total(demand: readonly number[], prices: Float64Array): number {
  return demand.reduce((sum, quantity, kind) => sum + quantity * prices[kind]!, 0)
}
