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

/** What is used of a solver library: one text in, one answer out, nothing kept between them. */
interface Library {
  solve(text: string, options: { solver: 'simplex'; presolve: 'off'; time_limit: number }): LibraryAnswer
}

interface LibraryAnswer {
  readonly Status: string
  readonly ObjectiveValue: number
  readonly Columns: Readonly<Record<string, object>>
  readonly Rows: readonly object[]
}

/** No programme of the packer's takes nearly so long. */
const LONGEST_S = 10

/** A library as the packer uses it: only an optimum counts as an answer. */
export function solverOn(library: Library): LinearSolver {
  return (text) => {
    const answer = library.solve(text, { solver: 'simplex', presolve: 'off', time_limit: LONGEST_S })
    if (answer.Status !== 'Optimal') return null
    const columns = Object.values(answer.Columns).sort((a, b) => numberIn(a, 'Index') - numberIn(b, 'Index'))
    return {
      value: answer.ObjectiveValue,
      duals: answer.Rows.map((row) => numberIn(row, 'Dual')),
      values: columns.map((column) => numberIn(column, 'Primal')),
    }
  }
}

function numberIn(entry: object, name: string): number {
  return Number((entry as Readonly<Record<string, unknown>>)[name] ?? 0)
}
