import { listParts } from './cutTree'
import type { PatternSheet } from './pattern'
import type { Plan } from './plan'
import { type Covered, Simplex } from './simplex'
import type { Patterns, Priced } from './staged'

/** What adding up may have lost. */
export const DUST = 1e-6

/** One step of a pricing takes so much of the time that looking at a rest takes, and one of solving so much. */
export const STEP_WORK = 1 / 8
const SOLVING_WORK = 1 / 30

/** A way to fill a sheet, and how many such sheets the programme takes of it: a fraction. */
export interface WeighedSheet {
  readonly sheet: PatternSheet
  readonly weight: number
}

/** The kinds of all parts on a sheet in order, one for each part. */
export function kindsOf({ strips }: PatternSheet): number[] {
  const list: number[] = []
  for (const { sections } of strips) {
    for (const { kinds } of sections) for (const { kind } of kinds) list.push(kind)
  }
  return list.sort((a, b) => a - b)
}

/** The sheets that the programme may choose from. */
export class Columns {
  /** Steps of all pricings. */
  private priced = 0
  private readonly simplex: Simplex
  /** By the numbers of their columns; none for those that are not to be told. */
  private readonly sheets: (PatternSheet | null)[]
  /** The numbers of columns by their kinds. */
  private readonly known = new Map<string, number>()
  private readonly demand: number[]
  constructor(demand: readonly number[]) {
    this.demand = [...demand]
    this.simplex = new Simplex(demand)
    this.sheets = demand.map(() => null)
  }

  /** What solving and pricing took so far, in rests looked at. */
  get work(): number {
    return this.simplex.steps * SOLVING_WORK + this.priced * STEP_WORK
  }

  price(patterns: Patterns, prices: Float64Array, most: number): Priced {
    const priced = patterns.price(prices, this.demand, most)
    this.priced += priced.steps
    return priced
  }

  /** The sheets of a plan. They are not told as taken. */
  addPlan({ boards }: Plan): void {
    for (const { root } of boards) {
      const kinds: number[] = []
      listParts(root, kinds)
      this.add(
        kinds.sort((a, b) => a - b),
        null,
      )
    }
  }

  /** Whether it is a new one; its kinds in order. A sheet that came with a plan can be told once it is known how it is cut. */
  add(kinds: readonly number[], sheet: PatternSheet | null): boolean {
    const key = kinds.join()
    const known = this.known.get(key)
    if (known !== undefined) {
      this.sheets[known] ??= sheet
      return false
    }
    this.known.set(key, this.sheets.length)
    const rows: number[] = []
    const counts: number[] = []
    for (const kind of kinds) {
      if (rows[rows.length - 1] === kind) counts[counts.length - 1]!++
      else {
        rows.push(kind)
        counts.push(1)
      }
    }
    this.simplex.add(rows, counts)
    this.sheets.push(sheet)
    return true
  }

  /** So many parts of a kind are left. */
  demandOf(kind: number, demand: number): void {
    this.demand[kind] = demand
    this.simplex.demandOf(kind, demand)
  }

  solve(): Covered | null {
    return this.simplex.solve()
  }

  /** The sheets that the last solution takes, with the best at its prices added to choose from; none where it has none. */
  solvedWith(patterns: Patterns, most: number): WeighedSheet[] {
    const before = this.solve()
    if (!before) return []
    let added = 0
    const prices = before.duals.map((price) => Math.max(0, price))
    for (const sheet of this.price(patterns, prices, most).sheets) {
      if (sheet.worth > 1 + DUST && this.add(kindsOf(sheet), sheet)) added++
    }
    return added === 0 || this.solve() ? this.taken() : []
  }

  /** The sheets that the last solution takes, the most taken first. */
  taken(): WeighedSheet[] {
    return [...this.simplex.columnsTaken()]
      .flatMap(({ column, times }): WeighedSheet[] => {
        const sheet = this.sheets[column]
        return sheet ? [{ sheet, weight: times }] : []
      })
      .sort((a, b) => b.weight - a.weight)
  }
}
