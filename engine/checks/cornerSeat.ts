import { boxOf } from '../cabinets/boardBox'
import type { Box } from '../geometry/box'
import type { Interval } from '../geometry/interval'
import type { Part } from '../parts/part'
import { type Mm, settle } from '../units/length'
import { withRole } from './boards'

/** A leg of a board through a corner, taken to be borne by its side and by the corner post. */
export interface LegOfSeat {
  /** Along its own wall, from the left of the cabinet, or along the other wall, from the corner: as the cabinet's frame has it. */
  readonly along: 'x' | 'z'
  /** What bears it at its ends, along its wall. */
  readonly post: Interval
  readonly side: Interval
  /** Along its wall, from the post to the side. */
  readonly span: Mm
  /** From its wall to its front edge: of an L that of the leg, of a diagonal as deep as it is in the middle of the span. */
  readonly depth: Mm
}

/**
 * Both legs of a top through a corner. The board of an L gets deeper where the other leg begins, and either leg stiffens the
 * other: neither is counted. Common practice, no source.
 *
 *      post________________
 *        |    .    span    |side
 *        |....            _|
 *        |    |__________|    depth
 *        |____|
 *         side
 */
export function legsOfSeat(top: Part, parts: readonly Part[]): LegOfSeat[] {
  const [post] = withRole(parts, 'cornerPost').map(boxOf)
  if (!post) return []
  const sides = withRole(parts, 'leftSide', 'rightSide').map((part) => ({ box: boxOf(part), part }))
  return sides.flatMap(({ box, part }): LegOfSeat[] => {
    const along = part.placement.thickness.endsWith('x') ? 'x' : 'z'
    const span = between(post, box, along)
    if (span <= 0) return []
    const [atPost, atSide] = [post, box].map(({ min, max }) => ({ from: min[along], to: max[along] }))
    return [{ along, post: atPost!, side: atSide!, span, depth: depthOf(top, box, along, span) }]
  })
}

function between(a: Box, b: Box, along: 'x' | 'z'): Mm {
  return settle(Math.max(b.min[along] - a.max[along], a.min[along] - b.max[along]))
}

function depthOf(top: Part, side: Box, along: 'x' | 'z', span: Mm): Mm {
  const across = along === 'x' ? 'z' : 'x'
  const own = boxOf(top)
  const leg = settle(Math.min(side.max[across], own.max[across]) - Math.max(side.min[across], own.min[across]))
  const clip = top.operations.find((one) => one.kind === 'clip')
  if (clip?.kind !== 'clip') return leg
  // A level board has its length along x and its width along z.
  const [run, out] = along === 'x' ? [clip.length, clip.width] : [clip.width, clip.length]
  const thick = settle(side.max[along] - side.min[along])
  const fromEnd = Math.min(run, span / 2 + thick)
  return settle(leg + (out * fromEnd) / run)
}
