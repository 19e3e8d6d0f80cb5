import { memo } from 'react'
import type { Cabinet, Project } from '../../engine/index'
import { type Divider, dividersOf, partedBy } from '../input/divide'
import { useIsCoarse } from '../ui/wide'
import styles from './Elevation.module.css'

/** What can be taken hold of, across the line: more for a finger, and never so much that the smaller side cannot be. */
const TARGET_PX = { fine: 14, coarse: 30 } as const
const MOST_OF_SIDE = 0.7
const LEAST_PX = 8
const GRIP_PX = { long: 18, thick: 4 } as const

interface DividersProps {
  readonly project: Project
  readonly cabinet: Cabinet
  readonly mmPerPx: number
}

/** The lines by which the front of the chosen cabinet is divided, each with a grip in its middle. */
export const Dividers = memo(function Dividers({ project, cabinet, mmPerPx }: DividersProps) {
  const most = TARGET_PX[useIsCoarse() ? 'coarse' : 'fine'] * mmPerPx
  return dividersOf(project, cabinet).map((divider) => {
    const { path, axis, before } = divider
    const key = path.join()
    const target = Math.max(LEAST_PX * mmPerPx, Math.min(most, Math.min(...partedBy(divider)) * MOST_OF_SIDE))
    const { x, y, along } = lineOf(divider, cabinet)
    const isAcross = axis === 'x'
    const [long, thick] = [Math.min(GRIP_PX.long * mmPerPx, along / 2), GRIP_PX.thick * mmPerPx]
    return (
      <g key={key} data-divider={key} data-of={cabinet.id} className={isAcross ? styles.across : styles.upward}>
        {around(x, y, isAcross ? target : before.rect.width, isAcross ? before.rect.height : target, styles.target!)}
        {around(x, y, isAcross ? thick : long, isAcross ? long : thick, styles.grip!)}
      </g>
    )
  })
})

function around(x: number, y: number, width: number, height: number, className: string) {
  return <rect className={className} x={x - width / 2} y={y - height / 2} width={width} height={height} />
}

/** The middle of a dividing line on the drawing, and how long it is: in the middle of the gap between the two fronts. */
function lineOf({ axis, before: { rect }, after }: Divider, { left, bottom }: Cabinet) {
  if (axis === 'y') {
    const y = (rect.bottom + after.rect.bottom + after.rect.height) / 2
    return { x: left + rect.left + rect.width / 2, y: -(bottom + y), along: rect.width }
  }
  const x = (rect.left + rect.width + after.rect.left) / 2
  return { x: left + x, y: -(bottom + rect.bottom + rect.height / 2), along: rect.height }
}
