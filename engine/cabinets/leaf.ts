import { type Rect, rightOf, topOf } from '../geometry/rect'
import { settle } from '../units/length'
import type { Board, BoardRole, FrontFace } from './board'
import { boxOf } from './boardBox'

/** A door or a flap as it is made: one board, or the five parts of it. */
export interface Leaf<Of extends Board = Board> {
  readonly hinge: 'left' | 'right' | 'top'
  readonly rect: Rect
  readonly boards: readonly Of[]
  /** The board that its cups are bored in: the leaf itself, or the stile or rail at its hinges. */
  readonly hung: Of
}

const LEAF_ROLES: readonly BoardRole[] = ['door', 'flap', 'doorStile', 'doorRail', 'doorPanel']

/** The doors and flaps among some boards, in the order of the fronts. One of which a board is missing is none. */
export function leavesOf<Of extends Board>(boards: readonly Of[], fronts: readonly FrontFace[]): Leaf<Of>[] {
  const candidates = boards
    .filter(({ role }) => LEAF_ROLES.includes(role))
    .map((board) => ({ board, box: boxOf(board) }))
  return fronts.flatMap(({ kind, hinge, rect }) => {
    if (kind !== 'door' || !hinge) return []
    const right = rightOf(rect)
    const top = topOf(rect)
    const own = candidates.filter(
      ({ box: { min, max } }) =>
        min.x >= settle(rect.left) && max.x <= settle(right) && min.y >= settle(rect.bottom) && max.y <= settle(top),
    )
    const hung = own.find(({ board, box: { min, max } }) => {
      if (board.role === 'door' || board.role === 'flap') return true
      if (hinge === 'top') return board.role === 'doorRail' && max.y === settle(top)
      return board.role === 'doorStile' && (hinge === 'left' ? min.x === settle(rect.left) : max.x === settle(right))
    })
    return hung ? [{ hinge, rect, boards: own.map(({ board }) => board), hung: hung.board }] : []
  })
}

/** In kg, by what a cubic metre of each board weighs. */
export function leafWeight({ boards }: Pick<Leaf, 'boards'>, densityOf: (board: Board) => number): number {
  return boards.reduce((sum, board) => {
    return sum + ((board.length * board.width * board.thickness) / 1e9) * densityOf(board)
  }, 0)
}

/** How many cups are bored in a board. */
export function cupsIn({ operations }: Pick<Board, 'operations'>): number {
  return operations.filter((one) => one.kind === 'holeRow' && one.purpose === 'hingeCup').length
}
