import type { Board } from '../cabinets/board'
import type { CabinetBuild, Rules } from '../cabinets/build'
import { hingesFor } from '../cabinets/hinge'
import { leafWeight } from '../cabinets/leaf'
import { hingePlates, ON_FRAME } from './plates'
import type { HardwareRow } from './row'

/**
 * What the doors of a corner hang on. The hung leaf of an L carries both, so that their weight together counts, and must
 * open far enough to fold back; a diagonal door hangs aslant on its side. Each has a plate, but for those that are screwed
 * to a face frame.
 */
export function cornerHinges({ cabinet, boards }: CabinetBuild, rules: Rules): HardwareRow[] {
  const { method, materials } = rules
  const leaves = cabinet.corner?.kind === 'L' ? 2 : 1
  const hung = boards.filter((board) => leafOf(board, leaves) === 1)
  const folded = boards.filter((board) => leafOf(board, leaves) === 2)
  if (hung.length === 0) return []
  const densityOf = ({ material }: Board) => materials[material]?.density ?? 0
  const weightOf = (leaf: readonly Board[]) => leafWeight({ boards: leaf }, densityOf)
  const quantity = hingesFor(heightOf(hung), weightOf([...hung, ...folded]), method.hinge)
  const [on, plates] = method.faceFrame ? [ON_FRAME, 0] : ['', quantity]
  if (cabinet.corner?.kind === 'diagonal') {
    return [{ name: `hinge for a diagonal door${on}`, quantity, length: null }, hingePlates(plates, rules)]
  }
  const between = folded.length > 0 ? hingesFor(heightOf(folded), weightOf(folded), method.hinge) : 0
  return [
    { name: `wide-angle hinge for folding doors${on}`, quantity, length: null },
    { name: 'hinge between folding leaves', quantity: between, length: null },
    hingePlates(plates + between, rules),
  ]
}

/** Which leaf a board is of, from 1. Mid rails and the panels over them are numbered after the others of all leaves. */
function leafOf({ role, number }: Board, leaves: number): number | null {
  if (role === 'door' || role === 'doorPanel') return number > leaves ? number - leaves : number
  if (role === 'doorStile') return Math.ceil(number / 2)
  if (role === 'doorRail') return number > 2 * leaves ? number - 2 * leaves : Math.ceil(number / 2)
  return null
}

/** Of the leaf itself, or of its stiles. */
function heightOf(leaf: readonly Board[]): number {
  return Math.max(...leaf.map(({ length }) => length))
}
