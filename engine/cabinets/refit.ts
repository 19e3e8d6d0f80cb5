import { rightOf, topOf } from '../geometry/rect'
import { type Mm, settle } from '../units/length'
import { isSameRect } from './asBuilt'
import type { Board, BoardRole, FrontFace } from './board'
import { boxOf } from './boardBox'
import { dimensionOf } from './frame'
import type { Report } from './report'

/**
 * The boards with the fronts made to what was measured. The carcass stands and is bored: a hinge stays at its height, and
 * its cup as far from the edge that it hangs by.
 */
export function refitted(
  boards: readonly Board[],
  drawn: readonly FrontFace[],
  measured: readonly FrontFace[],
  report: Report,
): readonly Board[] {
  for (const [at, face] of drawn.entries()) {
    const isOff = !isSameRect(face.rect, measured[at]!.rect)
    if (isOff && !boards.some((board) => isBoardOf(board, face))) {
      report.mind('a front of five parts is made as it is drawn, and not to its opening as it was measured.')
    }
  }
  return boards.map((board) => {
    const at = drawn.findIndex((face) => isBoardOf(board, face))
    const [was, is] = [drawn[at], measured[at]]
    return was && is && !isSameRect(was.rect, is.rect) ? refit(board, was, is) : board
  })
}

const FRONTS: readonly BoardRole[] = ['door', 'flap', 'drawerFront', 'falseFront']

function isBoardOf(board: Board, { rect }: FrontFace): boolean {
  if (!FRONTS.includes(board.role)) return false
  const { min, max } = boxOf(board)
  return min.x === rect.left && min.y === rect.bottom && settle(max.x - min.x) === rect.width
}

interface Along {
  readonly origin: Mm
  readonly size: Mm
  /** What its holes are moved by, in the board's own direction. */
  readonly shift: Mm
}

function refit(board: Board, was: FrontFace, is: FrontFace): Board {
  const { placement } = board
  const length = alongAxis(placement.length, was, is)
  const width = alongAxis(placement.width, was, is)
  const origin = {
    ...placement.origin,
    [dimensionOf(placement.length).dimension]: length.origin,
    [dimensionOf(placement.width).dimension]: width.origin,
  }
  return {
    ...board,
    length: length.size,
    width: width.size,
    placement: { ...placement, origin },
    operations: board.operations.map((one) =>
      one.kind === 'holeRow' ? { ...one, x: settle(one.x + length.shift), y: settle(one.y + width.shift) } : one,
    ),
    isMeasured: true,
  }
}

function alongAxis(axis: Board['placement']['length'], was: FrontFace, is: FrontFace): Along {
  const { dimension, sign } = dimensionOf(axis)
  const [before, after] = [was, is].map(({ rect }) =>
    dimension === 'x' ? { from: rect.left, to: rightOf(rect) } : { from: rect.bottom, to: topOf(rect) },
  ) as [Ends, Ends]
  const [start, origin] = sign > 0 ? [before.from, after.from] : [before.to, after.to]
  const moved = movedWith(was.hinge, dimension, before, after)
  return { origin, size: settle(after.to - after.from), shift: settle(sign * (moved - (origin - start))) }
}

interface Ends {
  readonly from: Mm
  readonly to: Mm
}

/** Cups go with the edge that the leaf hangs by; along it they stay where the plates are. */
function movedWith(hinge: FrontFace['hinge'], dimension: 'x' | 'y' | 'z', before: Ends, after: Ends): Mm {
  if (hinge === 'left' && dimension === 'x') return after.from - before.from
  if (hinge === 'right' && dimension === 'x') return after.to - before.to
  return hinge === 'top' && dimension === 'y' ? after.to - before.to : 0
}
