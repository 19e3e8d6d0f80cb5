import { Columns, DUST, kindsOf, type WeighedSheet } from './columns'
import type { Lot } from './lot'
import type { Known } from './plan'
import type { LinearSolver, Solved } from './solver'
import type { Patterns } from './staged'

export interface Programme {
  /** No layout needs fewer sheets. */
  readonly bound: number
  /** So many sheets it takes in fractions. */
  readonly value: number
  /** The sheets that the programme takes last, the most taken first. */
  readonly taken: readonly WeighedSheet[]
}

/** What a programme knows on its way. */
export interface Underway extends Programme {
  /** What it takes in fractions may well be rounded to a sheet fewer than the plan has; said once. */
  readonly isEasy: boolean
}

/** So many new sheets are looked for at each set of prices. */
const NEW_SHEETS = 40
/** The next prices lie between the programme's and the best so far, which keeps them from leaping about. */
const CALM = 0.3
/** Prices are looked at briefly as long as that finds more new sheets than this, and thoroughly every so often. */
const FEW = 1
const THOROUGH_EVERY = 6
/** One step of a pricing takes so much of the time that looking at a rest takes. */
export const STEP_WORK = 1 / 30
/** What solving costs, for every number in the programme. */
const NUMBER_WORK = 12
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
  solve: LinearSolver,
): Generator<Underway | null, Programme> {
  const { boards } = plan
  const demand = lot.kinds.map(({ quantity }) => quantity)
  const columns = new Columns(demand)
  columns.addPlan(plan)
  let best = 0
  // Until the programme knows better a part is worth its area.
  let calm = Float64Array.from(lot.kinds, ({ area }) => area / lot.sheetArea)
  let solved: Solved | null = null
  let isBrief = false
  let isCalm = true
  let isToBeRounded = true
  let told = least
  const known = (): Programme => ({
    bound: Math.ceil(best - DUST),
    value: solved?.value ?? Infinity,
    taken: solved ? columns.taken(solved.values) : [],
  })
  for (let spent = 0, turn = 1; spent < work; turn++) {
    solved = solve(columns.text())
    if (!solved) break
    const own = Float64Array.from(demand, (_, kind) => Math.max(0, solved!.duals[kind] ?? 0))
    const prices = isCalm ? own.map((price, kind) => (1 - CALM) * price + CALM * calm[kind]!) : own
    const priced = patterns.price(prices, NEW_SHEETS, isBrief)
    spent += priced.steps * STEP_WORK + columns.numbers * NUMBER_WORK
    const bound = isBrief ? 0 : total(demand, prices) / priced.best
    if (bound > best) {
      best = bound
      calm = prices
    }
    const isMet = Math.ceil(best - DUST) >= Math.min(boards.length, Math.ceil(solved.value - DUST))
    let added = 0
    for (const sheet of priced.sheets) {
      const kinds = kindsOf(sheet)
      if (kinds.reduce((sum, kind) => sum + own[kind]!, 0) > 1 + DUST && columns.add(kinds, sheet)) added++
    }
    if (isMet || (added === 0 && prices === own && !isBrief)) break
    isCalm = added > 0 || isBrief
    isBrief = added > FEW && turn % THOROUGH_EVERY !== 0
    const isEasy = isToBeRounded && solved.value < boards.length - 1 - EASY_SLACK
    if (isEasy) isToBeRounded = false
    const isLifted = Math.ceil(best - DUST) > told
    if (isLifted) told = Math.ceil(best - DUST)
    yield isEasy || isLifted ? { ...known(), isEasy } : null
  }
  return known()
}

function total(demand: readonly number[], prices: Float64Array): number {
  return demand.reduce((sum, quantity, kind) => sum + quantity * prices[kind]!, 0)
}
