import type { Part } from '../../engine/index'
import styles from './Elevation.module.css'
import { pullShapes } from './pullShapes'

/** What fronts are pulled by, where they are bored for it. */
export function Pulls({ parts }: { readonly parts: readonly Part[] }) {
  return parts.flatMap((part) =>
    pullShapes(part).map(({ left, bottom, width, height, isKnob }, at) => (
      <rect
        key={`${part.id} ${at}`}
        className={styles.bored}
        x={left}
        y={-bottom - height}
        width={width}
        height={height}
        rx={isKnob ? width / 2 : 3}
      />
    )),
  )
}
