import type { Box } from '../geometry/box'
import { type Mm, settle } from '../units/length'
import { dimensionOf } from './frame'
import { LIES, type Piece, room } from './piece'

/** A tenon is a third of the board thick. Common practice, no source. */
const SHARE = 1 / 3
/** And has a shoulder at both edges, so that the mortise is closed. Common practice, no source. */
const SHOULDER: Mm = 6

/** The tenons at the ends of a member whose room reaches into its mates by them, and what is cut off around them. */
export function tenonsOf(
  piece: Piece,
  length: Mm,
  at: 'both ends' | 'low end' | 'high end' = 'both ends',
): { readonly tenons: readonly Box[]; readonly cheeks: readonly Box[] } {
  const { dimension: along } = dimensionOf(LIES[piece.lie].length)
  const across = along === 'x' ? 'y' : 'x'
  const { min, max } = piece.box
  const thick = settle((max.z - min.z) * SHARE)
  const rear = settle(min.z + (max.z - min.z - thick) / 2)
  const shoulder = settle(Math.min(SHOULDER, (max[across] - min[across]) / 4))
  const low = { from: min[along], to: settle(min[along] + length) }
  const high = { from: settle(max[along] - length), to: max[along] }
  const ends = [...(at === 'high end' ? [] : [low]), ...(at === 'low end' ? [] : [high])]
  const roomAt = (end: (typeof ends)[number], side: readonly [Mm, Mm], z: readonly [Mm, Mm]): Box => {
    const own = [end.from, end.to] as const
    return along === 'x' ? room(own, side, z) : room(side, own, z)
  }
  const whole = [min[across], max[across]] as const
  const inner = [min[across] + shoulder, max[across] - shoulder] as const
  const middle = [rear, rear + thick] as const
  const deep = [min.z, max.z] as const
  return {
    tenons: ends.map((end) => roomAt(end, inner, middle)),
    cheeks: ends.flatMap((end) => [
      roomAt(end, whole, [min.z, rear]),
      roomAt(end, whole, [rear + thick, max.z]),
      roomAt(end, [whole[0], inner[0]], deep),
      roomAt(end, [inner[1], whole[1]], deep),
    ]),
  }
}
