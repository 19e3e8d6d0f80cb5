import type { Sketch, SketchPiece } from '../../engine/index'
import styles from './Bench.module.css'
import { withTakenEdge } from './takenEdge'

/**
 * The piece of a step before the cut, to scale but for an edge that is taken off: what falls on either side of the blade,
 * what is waste, and in a heavy line the edge that is measured from.
 */
export function PiecePicture({ sketch, label }: { readonly sketch: Sketch; readonly label: string }) {
  const { length, width, cuts, pieces, measuredFrom, edgeAt } = withTakenEdge(sketch)
  // A sketch has y up, a screen has it down.
  const down = (y: number, height: number) => width - y - height
  const least = Math.min(length, width * 2.2) / 11
  // In a long narrow strip they fill its width, so that they can be read at all.
  const letters = Math.max(least, Math.min(length / 28, width * 0.75))
  const rim = length / 60
  // Beside the line of the cut that makes it, not over it.
  const edge = edgeAt === 0 ? 0 : edgeAt + 0.7 * rim
  return (
    <svg
      className={styles.picture}
      viewBox={`${-rim} ${-rim} ${length + 2 * rim} ${width + 2 * rim}`}
      role="img"
      aria-label={label}
    >
      {pieces.map((piece, at) => {
        const { left, bottom, width: along, height: across } = piece.rect
        return (
          <rect
            key={at}
            className={styles[piece.kind]}
            x={left}
            y={down(bottom, across)}
            width={along}
            height={across}
          />
        )
      })}
      <rect className={styles.outline} x={0} y={0} width={length} height={width} />
      {cuts.map(({ left, bottom, width: along, height: across }, at) => (
        <path
          key={at}
          className={at === 0 ? styles.firstCut : styles.laterCut}
          d={
            along > across
              ? `M${left - rim} ${down(bottom, across) + across / 2}h${along + 2 * rim}`
              : `M${left + along / 2} ${down(bottom, across) - rim}v${across + 2 * rim}`
          }
        />
      ))}
      <path
        className={styles.reference}
        d={measuredFrom === 'edge' ? `M0 ${width - edge}h${length}` : `M${edge} 0v${width}`}
      />
      {pieces.map((piece, at) => (
        <PieceName key={at} piece={piece} y={down(piece.rect.bottom, piece.rect.height)} {...{ letters, least }} />
      ))}
    </svg>
  )
}

/** A width of the average letter in its height. */
const LETTER = 0.62

interface PieceNameProps {
  readonly piece: SketchPiece
  readonly y: number
  readonly letters: number
  /** Below about half of these nothing is written. */
  readonly least: number
}

/** The name where there is room for it; waste is named too, so that it is not told by its hatch alone. */
function PieceName({ piece, y, letters, least }: PieceNameProps) {
  const { left, width, height } = piece.rect
  const name = piece.kind === 'waste' ? 'waste' : piece.name
  const isUpright = height > width
  const [along, across] = isUpright ? [height, width] : [width, height]
  const size = Math.min(letters, across * 0.8, along / (name.length * LETTER))
  if (size < least * 0.45) return null
  const [x, middle] = [left + width / 2, y + height / 2]
  return (
    <text
      className={styles.pieceName}
      x={x}
      y={middle}
      fontSize={size}
      transform={isUpright ? `rotate(-90 ${x} ${middle})` : undefined}
    >
      {name}
    </text>
  )
}
