import type { Cabinet } from '../project/document'
import { type Mm, settle } from '../units/length'

/** From above, measured from the corner of both walls: along the own wall, and out from it, which is along the other one. */
export interface Point {
  readonly own: Mm
  readonly other: Mm
}

/** A leaf from closed to opened square: the line that it turns about, and where its free edge is before and after. */
export interface Swing {
  readonly hinge: Point
  readonly closed: Point
  readonly open: Point
}

/**
 * How the doors of a corner cabinet swing, by the faces of fronts so thick; none where it has none. That of a diagonal
 * turns about one of its ends. Of an L first the leaf that is pulled folds on to the other, and then both turn about the
 * free end of the own leg:
 *
 *      |      |                      |
 *      |      # -> folds here        |           # opened square
 *      |      #                      |           #
 *      |      #_________             |      _____#
 *      +--------- hinge              +---------- hinge
 */
export function swingsOf({ corner, front, width, depth }: Cabinet, thickness: Mm): Swing[] {
  if (!corner || front.kind === 'open') return []
  const { other, otherDepth, hand, kind } = corner
  const [along, out] = [width - otherDepth, other - depth]
  if (along <= 0 || out <= 0) return []
  if (kind === 'L') {
    const inner = { own: settle(otherDepth + thickness), other: settle(depth + thickness) }
    const hinge = { own: width, other: inner.other }
    return [
      { hinge, closed: inner, open: { own: width, other: settle(inner.other + width - inner.own) } },
      {
        hinge: inner,
        closed: { own: inner.own, other },
        open: { own: settle(inner.own + other - inner.other), other: inner.other },
      },
    ]
  }
  const line = Math.hypot(along, out)
  const before = ({ own, other: away }: Point, by: Mm): Point => ({
    own: settle(own + (by * out) / line),
    other: settle(away + (by * along) / line),
  })
  const ends = [before({ own: width, other: depth }, thickness), before({ own: otherDepth, other }, thickness)] as const
  const isHingedAtOwn = (front.kind === 'door' ? front.hinge : 'left') !== hand
  const [hinge, closed] = isHingedAtOwn ? ends : [ends[1], ends[0]]
  return [{ hinge, closed, open: before(hinge, line) }]
}

/** One degree: a chord of it is two hundredths of a mm within the swing of the widest door. */
const STEP = Math.PI / 180

/** The way of the free edge, and the leaf as it stands when it is open. */
function wayOf({ hinge, closed, open }: Swing): Point[] {
  const angleTo = ({ own, other }: Point) => Math.atan2(other - hinge.other, own - hinge.own)
  const radius = Math.hypot(closed.own - hinge.own, closed.other - hinge.other)
  const from = angleTo(closed)
  const turn = ((angleTo(open) - from + 3 * Math.PI) % (2 * Math.PI)) - Math.PI
  const steps = Math.max(1, Math.ceil(Math.abs(turn) / STEP))
  const way = Array.from({ length: steps + 1 }, (_, at): Point => {
    const angle = from + (turn * at) / steps
    return { own: hinge.own + radius * Math.cos(angle), other: hinge.other + radius * Math.sin(angle) }
  })
  return [...way, hinge]
}

/** A stretch along a wall, from the corner. */
export interface Stretch {
  readonly from: Mm
  readonly to: Mm
}

/** How far a swing comes out from one of both walls within a stretch along it, in mm; 0 where it does not come there. */
export function outWithin(swing: Swing, wall: 'own' | 'other', { from, to }: Stretch): Mm {
  const flat = wayOf(swing).map(({ own, other }) =>
    wall === 'own' ? { along: own, out: other } : { along: other, out: own },
  )
  const reached = flat.slice(1).flatMap((end, at) => {
    const start = flat[at]!
    const [low, high] = [
      Math.max(from, Math.min(start.along, end.along)),
      Math.min(to, Math.max(start.along, end.along)),
    ]
    if (low > high) return []
    const run = end.along - start.along
    if (run === 0) return [Math.max(start.out, end.out)]
    return [low, high].map((along) => start.out + ((end.out - start.out) * (along - start.along)) / run)
  })
  return settle(Math.max(0, ...reached))
}
