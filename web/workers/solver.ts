import load from 'highs'
import runtime from 'highs/runtime?url'
import { type LinearSolver, solverOn } from '../../engine/sheets/pack'

/** The solver of linear programmes, from the files of the app itself. */
export async function loadSolver(): Promise<LinearSolver> {
  return solverOn(await load({ locateFile: () => runtime }))
}
