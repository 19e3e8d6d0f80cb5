import { memo } from 'react'
import { formatLength, type LengthDisplay, type Opening, valuesOf, type Wall } from '../../engine/index'
import { useIsCoarse } from '../ui/wide'
import styles from './Elevation.module.css'

interface WallDrawingProps {
  readonly wall: Wall
  readonly display: LengthDisplay
  readonly mmPerPx: number
}

const FLOOR_PAST_PX = 40
const HATCH_PX = 9

/** The wall from the room: its outline, the floor it stands on, its doors and windows. */
export const WallDrawing = memo(function WallDrawing({ wall, display, mmPerPx }: WallDrawingProps) {
  const past = FLOOR_PAST_PX * mmPerPx
  const size = `${formatLength(wall.length, display)} × ${formatLength(wall.height, display)}`
  return (
    <>
      <rect className={styles.wall} x={0} y={-wall.height} width={wall.length} height={wall.height} />
      {valuesOf<Opening>(wall.openings).map((opening) => (
        <OpeningDrawing key={opening.id} opening={opening} />
      ))}
      <line className={styles.floor} x1={-past} x2={wall.length + past} y1={0} y2={0} />
      <path className={styles.ground} d={groundHatch(-past, wall.length + past, HATCH_PX * mmPerPx)} />
      <text className={styles.title} x={0} y={-wall.height - 40 * mmPerPx} fontSize={13 * mmPerPx}>
        {wall.name}
        <tspan className={styles.caption} dx={10 * mmPerPx} fontSize={11.5 * mmPerPx}>
          {size}, seen from the room
        </tspan>
      </text>
    </>
  )
})

/** What can be done with an empty wall. */
export function FirstWords({ wall, mmPerPx }: { readonly wall: Wall; readonly mmPerPx: number }) {
  const line = 18 * mmPerPx
  const isCoarse = useIsCoarse()
  return (
    <text className={styles.firstWords} fontSize={13 * mmPerPx} y={-wall.height / 2}>
      <tspan x={wall.length / 2}>
        {isCoarse ? 'Press Base, Upper or Tall and pick a place,' : 'Pull a base, an upper or a tall onto the wall,'}
      </tspan>
      <tspan x={wall.length / 2} dy={line}>
        {isCoarse ? 'or pull one onto the wall.' : 'or draw a box here.'}
      </tspan>
    </text>
  )
}

function OpeningDrawing({ opening }: { readonly opening: Opening }) {
  const { kind, left, bottom, width, height } = opening
  const frame = Math.min(45, width / 8)
  const [x, y] = [left + frame, -(bottom + height) + frame]
  const inner = kind === 'door' ? height - frame : height - 2 * frame
  return (
    <g className={styles.opening} data-opening={opening.id}>
      <rect x={left} y={-(bottom + height)} width={width} height={height} />
      <rect className={styles.pane} x={x} y={y} width={width - 2 * frame} height={inner} />
      {kind === 'window' && <line x1={left + width / 2} x2={left + width / 2} y1={y} y2={y + inner} />}
    </g>
  )
}

function groundHatch(from: number, to: number, step: number): string {
  const count = Math.floor((to - from) / step)
  return Array.from({ length: count }, (_, at) => {
    const x = from + (at + 1) * step
    return `M${x} 0l${-step * 0.7} ${step * 0.7}`
  }).join('')
}
