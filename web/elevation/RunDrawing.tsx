import { memo } from 'react'
import { type BuiltRun, boxOf, type Part } from '../../engine/index'
import styles from './Elevation.module.css'

interface RunDrawingProps {
  readonly run: BuiltRun
  /** Millimetres for a pixel. */
  readonly mmPerPx: number
}

/** Boards over a run, from the room, with the mark of a countertop at its left end. */
export const RunDrawing = memo(function RunDrawing({ run, mmPerPx }: RunDrawingProps) {
  const { left, bottom, height, width } = run.place
  const isNamed = width / mmPerPx > 60
  return (
    <g className={styles.run} transform={`translate(${left} ${-bottom})`}>
      {run.parts.map((part) => (
        <Board key={part.id} part={part} isKick={run.kind === 'kick'} />
      ))}
      {isNamed && run.kind === 'countertop' && (
        <text className={styles.mark} x={6 * mmPerPx} y={-height - 4 * mmPerPx} fontSize={11 * mmPerPx}>
          {run.mark}
        </text>
      )}
    </g>
  )
})

function Board({ part, isKick }: { readonly part: Part; readonly isKick: boolean }) {
  const { min, max } = boxOf(part)
  const [x, y] = [min.x, max.y]
  const size = { width: max.x - min.x, height: max.y - min.y }
  const cutouts = part.operations.flatMap((one) => (one.kind === 'notch' ? [one] : []))
  return (
    <>
      <rect className={isKick ? styles.kick : styles.carcass} x={x} y={-y} {...size} />
      {cutouts.map((cut) => (
        <path
          key={cut.x}
          className={styles.cutout}
          d={`M${x + cut.x} ${-y}v${size.height}M${x + cut.x + cut.length} ${-y}v${size.height}`}
        />
      ))}
    </>
  )
}
