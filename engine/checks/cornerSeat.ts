import { boxOf } from '../cabinets/boardBox'
import type { Box } from '../geometry/box'
import type { Interval } from '../geometry/interval'
import type { Part } from '../parts/part'
import type { Material } from '../project/document'
import { type Mm, settle } from '../units/length'
import { withRole } from './boards'

/** A leg of a level board through a corner, a top or a shelf, taken to be borne by its side and by the corner post. */
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
  /** Whether the span runs across the grain of the board, which goes along its own wall. */
  readonly isAcrossGrain: boolean
}

/** Of a board in the way that a leg of it spans, in newtons per square millimetre. */
export function stiffnessIn({ isAcrossGrain }: Pick<LegOfSeat, 'isAcrossGrain'>, board: Material): number {
  return (isAcrossGrain ? board.stiffnessAcross : undefined) ?? board.stiffness
}

/** What is assumed of a leg that spans across the grain of a board of which only the stiffness along it is known. */
export function grainWords({ isAcrossGrain }: Pick<LegOfSeat, 'isAcrossGrain'>, board: Material): string {
  if (!isAcrossGrain) return ''
  return board.stiffnessAcross === undefined
    ? ', across its grain and taken to be as stiff there as along it (birch ply is softer by a sixth to a third, other boards by more: from memory; its stiffness across can be typed with the board)'
    : ', across its grain'
}

/**
 * Both legs of a level board through a corner. The board of an L gets deeper where the other leg begins, and either leg stiffens the
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
    return [
      {
        along,
        post: atPost!,
        side: atSide!,
        span,
        depth: depthOf(top, box, along, span),
        isAcrossGrain: !top.placement.length.endsWith(along),
      },
    ]
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
