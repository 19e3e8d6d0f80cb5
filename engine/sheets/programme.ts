import { listParts } from './cutTree'
import type { Lot } from './lot'
import type { Plan } from './plan'
import type { PatternSheet, Patterns } from './staged'

/**
 * Solves a linear programme written in the LP format, and gives the value and the dual of every constraint and the value
 * of every variable in the order in which the text names them; null when it finds no optimum.
 */
export type LinearSolver = (text: string) => Solved | null

/** The solver; undefined while it is still being loaded, null where there is none. */
export type SolverAtHand = () => LinearSolver | null | undefined

export interface Solved {
  readonly value: number
  readonly duals: readonly number[]
  readonly values: readonly number[]
}

/** A way to fill a sheet, and how many such sheets the programme takes of it: a fraction. */
export interface WeighedSheet {
  readonly sheet: PatternSheet
  readonly weight: number
}

export interface Programme {
  /** No layout needs fewer sheets. */
  readonly bound: number
  /** So many sheets it takes in fractions. */
  readonly value: number
  /** The sheets that the programme takes last, the most taken first. */
  readonly taken: readonly WeighedSheet[]
}

/** So many new sheets are looked for at each set of prices. */
const NEW_SHEETS = 40
/** The next prices lie between the programme's and the best so far, which keeps them from leaping about. */
const CALM = 0.5
/** Prices are looked at briefly as long as that finds more new sheets than this, and thoroughly every so often. */
const FEW = 3
const THOROUGH_EVERY = 6
/** One step of a pricing takes so much of the time that looking at a rest takes. */
export const STEP_WORK = 1 / 30
/** What solving costs, for every number in the programme. */
const NUMBER_WORK = 12
/** What adding up may have lost. */
const DUST = 1e-6

/**
 * How many sheets the parts need at least when sheets may be cut in fractions, with every layout of so many directions
 * allowed: by column generation. At any prices of parts, what all parts cost, divided by what the best sheet is worth, is
 * a bound, so the search may end at any time. Yields null between steps; ends when the bound meets the plan, when the
 * programme says that it cannot, or when the work is spent. Sources: Gilmore and Gomory, Operations Research 9 (1961);
 * Farley, 'A note on bounding a class of linear programming problems', Operations Research 38 (1990); both from memory.
 */
export function* programmeOf(
  lot: Lot,
  patterns: Patterns,
  { boards }: Plan,
  work: number,
  solve: LinearSolver,
): Generator<null, Programme> {
  const demand = lot.kinds.map(({ quantity }) => quantity)
  const columns = new Columns(demand)
  for (const { root } of boards) {
    const kinds: number[] = []
    listParts(root, kinds)
    columns.add(kinds, null)
  }
  let best = 0
  // Until the programme knows better a part is worth its area.
  let calm = Float64Array.from(lot.kinds, ({ area }) => area / lot.sheetArea)
  let solved: Solved | null = null
  let isBrief = false
  let isCalm = true
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
    yield null
  }
  return {
    bound: Math.ceil(best - DUST),
    value: solved?.value ?? Infinity,
    taken: solved ? columns.taken(solved.values) : [],
  }
}

function total(demand: readonly number[], prices: Float64Array): number {
  return demand.reduce((sum, quantity, kind) => sum + quantity * prices[kind]!, 0)
}

/** The kinds of all parts on a sheet, one for each part. */
export function kindsOf({ strips }: PatternSheet): number[] {
  return strips.flatMap(({ sections }) => sections.flatMap(({ kinds }) => kinds.map(({ kind }) => kind)))
}

/** The sheets that the programme may choose from. */
class Columns {
  numbers = 0
  private readonly sheets: (PatternSheet | null)[] = []
  private readonly known = new Set<string>()
  /** The terms of the constraint of each kind. */
  private readonly terms: string[][]
  constructor(private readonly demand: readonly number[]) {
    this.terms = demand.map(() => [])
  }

  /** Whether it is a new one. */
  add(kinds: readonly number[], sheet: PatternSheet | null): boolean {
    const counts = new Map<number, number>()
    for (const kind of [...kinds].sort((a, b) => a - b)) counts.set(kind, (counts.get(kind) ?? 0) + 1)
    const key = [...counts].join(';')
    if (this.known.has(key)) return false
    this.known.add(key)
    for (const [kind, count] of counts) this.terms[kind]!.push(`${count} x${this.sheets.length}`)
    this.numbers += counts.size
    this.sheets.push(sheet)
    return true
  }

  text(): string {
    const all = this.sheets.map((_, at) => `x${at}`).join(' + ')
    const rows = this.terms.map((terms, kind) => ` d${kind}: ${terms.join(' + ')} >= ${this.demand[kind]}`)
    return `Minimize\n obj: ${all}\nSubject To\n${rows.join('\n')}\nEnd\n`
  }

  taken(values: readonly number[]): WeighedSheet[] {
    return this.sheets
      .flatMap((sheet, at): WeighedSheet[] => {
        const weight = values[at] ?? 0
        return sheet && weight > DUST ? [{ sheet, weight }] : []
      })
      .sort((a, b) => b.weight - a.weight)
  }
}
