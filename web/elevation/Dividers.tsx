import { memo } from 'react'
import type { Cabinet, Project } from '../../engine/index'
import { dividersOf } from '../input/divide'
import styles from './Elevation.module.css'

const TARGET_PX = 14

/** The lines by which the front of the chosen cabinet is divided, to be taken hold of. */
export const Dividers = memo(function Dividers(props: { project: Project; cabinet: Cabinet; mmPerPx: number }) {
  const { project, cabinet, mmPerPx } = props
  const target = TARGET_PX * mmPerPx
  return dividersOf(project, cabinet).map(({ path, axis, before: { rect } }) => {
    const [left, bottom] = [cabinet.left + rect.left, cabinet.bottom + rect.bottom]
    const key = path.join()
    return axis === 'y' ? (
      <rect
        key={key}
        data-divider={key}
        data-of={cabinet.id}
        className={`${styles.target} ${styles.upward}`}
        x={left}
        y={-bottom - target / 2}
        width={rect.width}
        height={target}
      />
    ) : (
      <rect
        key={key}
        data-divider={key}
        data-of={cabinet.id}
        className={`${styles.target} ${styles.across}`}
        x={left + rect.width - target / 2}
        y={-(bottom + rect.height)}
        width={target}
        height={rect.height}
      />
    )
  })
})
