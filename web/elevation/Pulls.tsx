import { type Part, pullsIn, toCabinet } from '../../engine/index'
import styles from './Elevation.module.css'

/** How a plain pull and a plain knob are drawn, in mm, whichever are bought. */
const THICK = 11
const KNOB = 13

/** What fronts are pulled by, where they are bored for it. */
export function Pulls({ parts }: { readonly parts: readonly Part[] }) {
  return parts.flatMap((part) =>
    pullsIn(part).map(({ from, to }, at) => {
      const a = toCabinet(part.placement, from.x, from.y, 0)
      const b = toCabinet(part.placement, to.x, to.y, 0)
      const key = `${part.id} ${at}`
      if (a.x === b.x && a.y === b.y) return <circle key={key} className={styles.bored} cx={a.x} cy={-a.y} r={KNOB} />
      const [left, low] = [Math.min(a.x, b.x) - THICK / 2, Math.min(a.y, b.y) - THICK / 2]
      const [width, height] = [Math.abs(a.x - b.x) + THICK, Math.abs(a.y - b.y) + THICK]
      return <rect key={key} className={styles.bored} x={left} y={-low - height} width={width} height={height} rx={3} />
    }),
  )
}
