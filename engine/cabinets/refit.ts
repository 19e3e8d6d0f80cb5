import type { Box } from '../geometry/box'
import { rightOf, topOf } from '../geometry/rect'
import { type Mm, settle } from '../units/length'
import type { Board, BoardRole, FrontFace } from './board'
import { boxOf } from './boardBox'
import { dimensionOf } from './frame'
import { FIVE_PARTS } from './role'

/** A front as it is drawn, and as it is made to what was measured; null where nothing was. */
export interface Refit {
  readonly drawn: FrontFace
  readonly measured: FrontFace | null
}

/**
 * The boards with the fronts made to what was measured. The carcass stands and is bored: a hinge stays at its height, and
 * its cup as far from the edge that it hangs by. `anew` are the boards of all fronts as measured, with their joints and
 * without holes: of them the parts of fronts in five parts are taken.
 */
export function refitted(
  boards: readonly Board[],
  fronts: readonly Refit[],
  anew: ReadonlyMap<string, Board>,
): readonly Board[] {
  return boards.map((board) => {
    const front = fronts.find(({ drawn }) => isBoardOf(board, drawn))
    if (!front?.measured) return board
    const fresh = FIVE_PARTS.some((role) => role === board.role) ? anew.get(nameOf(board)) : board
    return fresh ? refit(board, fresh, front.drawn, front.measured) : board
  })
}

/** What a board is called among those of its cabinet. */
export function nameOf({ role, number }: Pick<Board, 'role' | 'number'>): string {
  return `${role} ${number}`
}

const FRONTS: readonly BoardRole[] = ['door', 'flap', 'drawerFront', 'falseFront', ...FIVE_PARTS]

function isBoardOf(board: Board, { rect }: FrontFace): boolean {
  if (!FRONTS.includes(board.role)) return false
  const { min, max } = boxOf(board)
  return (
    min.x >= settle(rect.left) &&
    min.y >= settle(rect.bottom) &&
    max.x <= settle(rightOf(rect)) &&
    max.y <= settle(topOf(rect))
  )
}

interface Along {
  readonly origin: Mm
  readonly size: Mm
  /** What its holes are moved by, in the board's own direction. */
  readonly shift: Mm
}

/** A slab as large as its front, or a part of a front where it is in it anew, with the holes of the board as it was. */
function refit(board: Board, fresh: Board, was: FrontFace, is: FrontFace): Board {
  const { placement } = board
  const before = boxOf(board)
  const after = fresh === board ? withRect(before, is) : boxOf(fresh)
  const along = (axis: Board['placement']['length']) => alongAxis(axis, before, after, was, is)
  const [length, width] = [along(placement.length), along(placement.width)]
  const origin = {
    ...placement.origin,
    [dimensionOf(placement.length).dimension]: length.origin,
    [dimensionOf(placement.width).dimension]: width.origin,
  }
  const holes = board.operations.flatMap((one) =>
    one.kind === 'holeRow' ? [{ ...one, x: settle(one.x + length.shift), y: settle(one.y + width.shift) }] : [],
  )
  return {
    ...board,
    length: length.size,
    width: width.size,
    placement: { ...placement, origin },
    operations: [...fresh.operations.filter(({ kind }) => kind !== 'holeRow'), ...holes],
    isMeasured: true,
  }
}

function withRect({ min, max }: Box, { rect }: FrontFace): Box {
  return {
    min: { ...min, x: rect.left, y: rect.bottom },
    max: { ...max, x: settle(rightOf(rect)), y: settle(topOf(rect)) },
  }
}

function alongAxis(axis: Board['placement']['length'], before: Box, after: Box, was: FrontFace, is: FrontFace): Along {
  const { dimension, sign } = dimensionOf(axis)
  const [start, origin] =
    sign > 0 ? [before.min[dimension], after.min[dimension]] : [before.max[dimension], after.max[dimension]]
  const size = settle(after.max[dimension] - after.min[dimension])
  const moved = movedWith(was, is, dimension)
  return { origin, size, shift: settle(sign * (moved - (origin - start))) }
}

/** Cups go with the edge that the leaf hangs by; along it they stay where the plates are. */
function movedWith(was: FrontFace, is: FrontFace, dimension: 'x' | 'y' | 'z'): Mm {
  if (was.hinge === 'left' && dimension === 'x') return is.rect.left - was.rect.left
  if (was.hinge === 'right' && dimension === 'x') return rightOf(is.rect) - rightOf(was.rect)
  return was.hinge === 'top' && dimension === 'y' ? topOf(is.rect) - topOf(was.rect) : 0
}
