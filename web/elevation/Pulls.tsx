import { type Part, pullsIn, toCabinet, type Vec3 } from '../../engine/index'
import styles from './Elevation.module.css'

/** How a plain pull and a plain knob are drawn, in mm, whichever are bought. */
const THICK = 11
const KNOB = 13
/** How far a pull stands out from its front, where it is seen from the side. */
const OUT = 32

/** What fronts are pulled by, where they are bored for it. */
export function Pulls({ parts }: { readonly parts: readonly Part[] }) {
  return parts.flatMap((part) =>
    pullsIn(part).map(({ from, to }, at) => {
      const a = toCabinet(part.placement, from.x, from.y, 0)
      const b = toCabinet(part.placement, to.x, to.y, 0)
      const key = `${part.id} ${at}`
      const out = toCabinet(part.placement, from.x, from.y, -OUT)
      if (Math.abs(out.x - a.x) > 1) return <Aslant key={key} a={a} b={b} out={out} />
      if (a.x === b.x && a.y === b.y) return <circle key={key} className={styles.bored} cx={a.x} cy={-a.y} r={KNOB} />
      const [left, low] = [Math.min(a.x, b.x) - THICK / 2, Math.min(a.y, b.y) - THICK / 2]
      const [width, height] = [Math.abs(a.x - b.x) + THICK, Math.abs(a.y - b.y) + THICK]
      return <rect key={key} className={styles.bored} x={left} y={-low - height} width={width} height={height} rx={3} />
    }),
  )
}

/** One on a leaf that stands aslant or on edge: from the face to where it ends. */
function Aslant({ a, b, out }: { readonly a: Vec3; readonly b: Vec3; readonly out: Vec3 }) {
  const half = a.y === b.y ? KNOB : THICK / 2
  const [left, right] = [Math.min(a.x, out.x), Math.max(a.x, out.x)]
  const [low, high] = [Math.min(a.y, b.y) - half, Math.max(a.y, b.y) + half]
  return <rect className={styles.bored} x={left} y={-high} width={right - left} height={high - low} rx={3} />
}
