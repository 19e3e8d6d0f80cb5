import type { LinearSolver } from '../sheets/solver'
import { solverOn } from '../sheets/solver'

/** The solver of linear programmes, once it is loaded. */
export async function loadSolver(): Promise<LinearSolver> {
  const { default: load } = await import('highs')
  return solverOn(await load())
}
