import { listParts } from './cutTree'
import type { Plan } from './plan'
import type { LinearSolver } from './solver'
import type { PatternSheet, Patterns } from './staged'

/** What adding up may have lost. */
export const DUST = 1e-6

/** A way to fill a sheet, and how many such sheets the programme takes of it: a fraction. */
export interface WeighedSheet {
  readonly sheet: PatternSheet
  readonly weight: number
}

/** The kinds of all parts on a sheet, one for each part. */
export function kindsOf({ strips }: PatternSheet): number[] {
  return strips.flatMap(({ sections }) => sections.flatMap(({ kinds }) => kinds.map(({ kind }) => kind)))
}

/** The sheets that the programme may choose from. */
export class Columns {
  numbers = 0
  private readonly sheets: (PatternSheet | null)[] = []
  private readonly known = new Set<string>()
  /** The terms of the constraint of each kind. */
  private readonly terms: string[][]
  constructor(private readonly demand: readonly number[]) {
    this.terms = demand.map(() => [])
  }

  /** The sheets of a plan, so that there are some for every part. They are never told as taken. */
  addPlan({ boards }: Plan): void {
    for (const { root } of boards) {
      const kinds: number[] = []
      listParts(root, kinds)
      this.add(kinds, null)
    }
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

  /** The sheets that a programme of these and of the best at its prices takes; none where it cannot be solved. */
  solvedWith(patterns: Patterns, most: number, solve: LinearSolver): WeighedSheet[] {
    const before = solve(this.text())
    if (!before) return []
    const prices = Float64Array.from(this.demand, (quantity, kind) =>
      quantity > 0 ? Math.max(0, before.duals[kind] ?? 0) : 0,
    )
    let added = 0
    for (const sheet of patterns.price(prices, most).sheets) {
      if (sheet.worth > 1 + DUST && this.add(kindsOf(sheet), sheet)) added++
    }
    const solved = added > 0 ? solve(this.text()) : before
    return solved ? this.taken(solved.values) : []
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
