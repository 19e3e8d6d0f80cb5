import type { Rect, Sketch } from '../../engine/index'

/**
 * An edge that is taken off is drawn as wide as such a share of the length of its piece at least, where that is no more
 * than such a share of what it is taken from: as thin as it is, it would lie under the line.
 */
const LEAST = { ofLength: 0.05, ofWhole: 0.4 }

/** The sketch as it is drawn: to scale but for an edge that is taken off, which is wide enough to be seen as waste. */
export function withTakenEdge(sketch: Sketch): Sketch {
  const { length, width, cuts, pieces, measuredFrom, edgeAt } = sketch
  const isRip = measuredFrom === 'edge'
  const whole = isRip ? width : length
  const shown = Math.max(edgeAt, Math.min(LEAST.ofLength * length, LEAST.ofWhole * whole))
  if (edgeAt === 0 || shown === edgeAt) return sketch
  const at = (place: number) =>
    place <= edgeAt ? (place * shown) / edgeAt : whole - ((whole - place) * (whole - shown)) / (whole - edgeAt)
  const drawn = ({ left, bottom, width: along, height: across }: Rect): Rect =>
    isRip
      ? { left, bottom: at(bottom), width: along, height: at(bottom + across) - at(bottom) }
      : { left: at(left), bottom, width: at(left + along) - at(left), height: across }
  return {
    ...sketch,
    cuts: cuts.map(drawn),
    pieces: pieces.map((piece) => ({ ...piece, rect: drawn(piece.rect) })),
    edgeAt: shown,
  }
}
