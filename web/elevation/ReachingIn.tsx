import { memo } from 'react'
import { markOf, type Project, reachingIn, type Wall } from '../../engine/index'
import styles from './Elevation.module.css'

interface ReachingInProps {
  readonly project: Project
  readonly wall: Wall
  readonly mmPerPx: number
}

const HATCH_PX = 7
/** Wide enough on the screen to say from which wall it comes. */
const SAID_PX = 96

/** What of the walls that this one meets stands in its way, pale and out of the hand's reach, with its mark. */
export const ReachingIn = memo(function ReachingIn({ project, wall, mmPerPx }: ReachingInProps) {
  // The leg of a corner cabinet along this wall covers its leg along its own.
  const bodies = reachingIn(project, wall).filter(({ rear, cabinet, isLeg }) => {
    return rear < project.newCabinets[cabinet.kind].depth && isLeg === (cabinet.corner !== null)
  })
  if (bodies.length === 0) return null
  const step = HATCH_PX * mmPerPx
  return (
    <g className={styles.reaching} data-reaching>
      <defs>
        <pattern
          id="reaching-in"
          width={step}
          height={step}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(-45)"
        >
          <line x1={0} x2={0} y1={0} y2={step} />
        </pattern>
      </defs>
      {bodies.map(({ cabinet, left, width, bottom, height }) => {
        const [x, y] = [left + width / 2, -(bottom + height / 2)]
        const from = project.walls[cabinet.wall]?.name
        return (
          <g key={cabinet.id} data-mark={markOf(cabinet)}>
            <rect x={left} y={-(bottom + height)} width={width} height={height} />
            <text className={styles.mark} x={x} y={y} fontSize={13 * mmPerPx}>
              {markOf(cabinet)}
            </text>
            {width / mmPerPx > SAID_PX && (
              <text className={styles.caption} x={x} y={y + 16 * mmPerPx} fontSize={11.5 * mmPerPx}>
                from {from}
              </text>
            )}
          </g>
        )
      })}
    </g>
  )
})
