import { memo } from 'react'
import { boxOf, type Cabinet, type Guide, type Part, type Rect, type Wall } from '../../engine/index'
import type { Edge } from '../input/hand'
import styles from './Elevation.module.css'

const HANDLE_PX = 12
const TARGET_PX = 24

/** The edges by which a cabinet is stretched: what stands keeps its feet on the floor. */
export function edgesOf({ kind }: Cabinet): readonly Edge[] {
  return kind === 'upper' ? ['left', 'right', 'top', 'bottom'] : ['left', 'right', 'top']
}

export const Handles = memo(function Handles({ cabinet, mmPerPx }: { cabinet: Cabinet; mmPerPx: number }) {
  const { id, left, bottom, width, height } = cabinet
  const places: Readonly<Record<Edge, readonly [number, number]>> = {
    left: [left, -(bottom + height / 2)],
    right: [left + width, -(bottom + height / 2)],
    top: [left + width / 2, -(bottom + height)],
    bottom: [left + width / 2, -bottom],
  }
  const [size, target] = [HANDLE_PX * mmPerPx, TARGET_PX * mmPerPx]
  // Of a narrow cabinet the targets would meet: they stand outside it then.
  const out = Math.max(0, target / 2 - width / 4)
  const shift = { left: -out, right: out, top: 0, bottom: 0 } as const
  return edgesOf(cabinet).map((edge) => {
    const [x, y] = places[edge]
    const isAcross = edge === 'left' || edge === 'right'
    return (
      <g key={edge} data-handle={edge} data-of={id} className={isAcross ? styles.across : styles.upward}>
        <rect
          className={styles.target}
          x={x - target / 2 + shift[edge]}
          y={y - target / 2}
          width={target}
          height={target}
        />
        <rect
          className={styles.handle}
          x={x - size / 2}
          y={y - size / 2}
          width={size}
          height={size}
          rx={2.5 * mmPerPx}
        />
      </g>
    )
  })
})

/** The hatch over what does not fit: colour is never the only sign. */
export function WrongHatch({ mmPerPx }: { readonly mmPerPx: number }) {
  const step = 9 * mmPerPx
  return (
    <defs>
      <pattern id="wrong-hatch" width={step} height={step} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line className={styles.hatchLine} x1={0} x2={0} y1={0} y2={step} />
      </pattern>
    </defs>
  )
}

/** Over everything else, so that what does not fit is seen whole. */
export function Wrong({ cabinet }: { readonly cabinet: Cabinet | undefined }) {
  if (!cabinet) return null
  const { left, bottom, width, height } = cabinet
  return <rect className={styles.hatched} x={left} y={-(bottom + height)} width={width} height={height} />
}

interface GuidesProps {
  readonly guides: readonly Guide[]
  readonly wall: Wall
  readonly mmPerPx: number
}

const GUIDE_TEXT_PX = 11.5

/** Snapped chalk lines with the name of what they belong to. */
export function Guides({ guides, wall, mmPerPx }: GuidesProps) {
  const past = 26 * mmPerPx
  const size = GUIDE_TEXT_PX * mmPerPx
  return guides.slice(0, 4).map(({ axis, at, to }, index) => (
    <g key={`${axis} ${at} ${to}`} className={styles.guide}>
      {axis === 'x' ? (
        <line x1={at} x2={at} y1={past / 2} y2={-wall.height - past} />
      ) : (
        <line x1={-past} x2={wall.length + past} y1={-at} y2={-at} />
      )}
      <text
        x={axis === 'x' ? at + 5 * mmPerPx : 6 * mmPerPx}
        y={axis === 'x' ? -wall.height + (16 + index * 15) * mmPerPx : -at - 5 * mmPerPx}
        fontSize={size}
      >
        {to}
      </text>
    </g>
  ))
}

interface SlotsProps {
  readonly slots: readonly Rect[]
  /** `Put a base here`. */
  readonly verb: string
  readonly show: (length: number) => string
  readonly mmPerPx: number
  readonly onPlace: (slot: Rect) => void
}

/** Free places to be clicked, for those who would rather not drag. */
export function Slots({ slots, verb, show, mmPerPx, onPlace }: SlotsProps) {
  return slots.map((slot, at) => {
    const { left, bottom, width, height } = slot
    return (
      // biome-ignore lint/a11y/useSemanticElements: a button of HTML cannot stand in a drawing.
      <g
        key={`${left} ${bottom}`}
        role="button"
        tabIndex={0}
        data-slot={at + 1}
        data-nohand
        className={styles.slot}
        aria-label={`${verb} at ${show(left)}, ${show(width)} wide`}
        onClick={() => onPlace(slot)}
        onKeyDown={(event) => {
          if (event.key !== 'Enter' && event.key !== ' ') return
          event.preventDefault()
          onPlace(slot)
        }}
      >
        <rect x={left} y={-(bottom + height)} width={width} height={height} />
        <text x={left + width / 2} y={-(bottom + height / 2)} fontSize={12 * mmPerPx}>
          {show(width)}
        </text>
      </g>
    )
  })
}

/** Where a part is seen from the room, in chalk. */
export function PartOutline({
  part,
  place,
}: {
  readonly part: Part
  readonly place: Pick<Cabinet, 'left' | 'bottom'>
}) {
  const { min, max } = boxOf(part)
  return (
    <rect
      className={styles.part}
      x={place.left + min.x}
      y={-(place.bottom + max.y)}
      width={max.x - min.x}
      height={max.y - min.y}
    />
  )
}
