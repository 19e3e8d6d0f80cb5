import type { Mm, Rect } from '../../engine/index'
import styles from './Bench.module.css'

interface DamagePictureProps {
  readonly name: string
  /** Of the piece as it lies, mm. */
  readonly length: Mm
  readonly width: Mm
  /** From the corner of its first edges, mm; what hangs over is not drawn. */
  readonly damage: Rect
}

/** The piece as it lies with what is damaged of it, and the end and the edge that it is measured from in heavy lines. */
export function DamagePicture({ name, length, width, damage }: DamagePictureProps) {
  const rim = Math.max(length / 16, 60)
  const letters = Math.max(length / 26, 24)
  const [right, top] = [damage.left + damage.width, damage.bottom + damage.height]
  const left = clamp(damage.left, length)
  const along = clamp(right, length) - left
  const bottom = clamp(damage.bottom, width)
  const across = clamp(top, width) - bottom
  return (
    <svg
      className={styles.damagePicture}
      viewBox={`${-rim} ${-rim / 3} ${length + rim * 1.4} ${width + rim * 1.4}`}
      role="img"
      aria-label={`Where ${name} is damaged`}
    >
      <rect className={styles.piece} width={length} height={width} />
      <rect className={styles.outline} width={length} height={width} />
      {along > 0 && across > 0 && (
        <g className={styles.damage} data-damage={[left, bottom, along, across].join(' ')}>
          <rect x={left} y={width - bottom - across} width={along} height={across} />
          <path d={`M${left} ${width - bottom}l${along} ${-across}m${-along} 0l${along} ${across}`} />
        </g>
      )}
      <path className={styles.reference} d={`M0 0V${width}H${length}`} />
      <text className={styles.edgeName} x={length / 2} y={width + rim * 0.6} fontSize={letters}>
        first edge
      </text>
      <text
        className={styles.edgeName}
        x={-rim * 0.45}
        y={width / 2}
        fontSize={Math.min(letters, width / 5)}
        transform={`rotate(-90 ${-rim * 0.45} ${width / 2})`}
      >
        first end
      </text>
    </svg>
  )
}

function clamp(at: Mm, most: Mm): Mm {
  return Math.min(Math.max(at, 0), most)
}
