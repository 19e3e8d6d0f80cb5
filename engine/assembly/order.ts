import type { Board, BoardRole } from '../cabinets/board'
import type { Axis } from '../geometry/vector'
import { isFreeAlong } from './way'

/** A board and where it comes from; null where it only goes in together with those beside it. */
export interface Placing<Of extends Board> {
  readonly board: Of
  readonly from: Axis | null
}

/** In the order in which boards are taken off, as far as they can be. Sides are closed last; a back before them if it must. */
const OFF_FIRST: readonly BoardRole[] = [
  ...(['rightSide', 'top', 'frontStretcher', 'backStretcher', 'topNailer', 'bottomNailer', 'middleNailer'] as const),
  ...(['back', 'fixedShelf', 'partition', 'divider', 'bottom', 'leftSide'] as const),
  ...(['drawerBoxBack', 'drawerBottom', 'drawerBoxFront', 'drawerSide'] as const),
]

/**
 * The order of putting boards together: taken apart one by one, each along an axis that is free, and told backwards. So
 * no board goes in after what would block it. A back that comes off the whole carcass goes on last: it squares the box.
 */
export function assemblyOrder<Of extends Board>(boards: readonly Of[]): Placing<Of>[] {
  const left = [...boards].sort((a, b) => rank(a) - rank(b) || b.number - a.number)
  const off: Placing<Of>[] = []
  const back = left.find((board) => board.role === 'back' && isFreeAlong(board, '-z', without(left, board)))
  if (back) takeOff(back, '-z', left, off)
  while (left.length > 0) {
    const next = nextOff(left)
    if (!next) return [...left.reverse().map((board) => ({ board, from: null })), ...off.reverse()]
    takeOff(next.board, next.from, left, off)
  }
  return off.reverse()
}

function takeOff<Of extends Board>(board: Of, from: Axis, left: Of[], off: Placing<Of>[]): void {
  left.splice(left.indexOf(board), 1)
  off.push({ board, from })
}

function nextOff<Of extends Board>(left: readonly Of[]): { readonly board: Of; readonly from: Axis } | null {
  for (const board of left) {
    const from = waysOf(board).find((axis) => isFreeAlong(board, axis, without(left, board)))
    if (from) return { board, from }
  }
  return null
}

/** A board is put on across its own faces before it is slid along them; from the open side before the lying one. */
function waysOf({ placement }: Board): readonly Axis[] {
  const across = placement.thickness[1]!
  const ways = ['+x', '+y', '-z', '+z', '-x', '-y'] as const
  return [...ways.filter((axis) => axis[1] === across), ...ways.filter((axis) => axis[1] !== across)]
}

function without<Of extends Board>(boards: readonly Of[], board: Of): Of[] {
  return boards.filter((one) => one !== board)
}

function rank({ role }: Board): number {
  const at = OFF_FIRST.indexOf(role)
  return at < 0 ? OFF_FIRST.length : at
}
