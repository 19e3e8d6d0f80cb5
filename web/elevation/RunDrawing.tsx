import { memo } from 'react'
import { type BuiltRun, boxOf, isMitre, type Part, toCabinet } from '../../engine/index'
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
          {run.isOwn && ' *'}
        </text>
      )}
    </g>
  )
})

/** From where to where the face of a board with mitred ends is seen; behind it, the one beside it hides what is longer. */
function faceOf({ placement, length, operations }: Part): readonly [number, number] | null {
  const mitres = operations.flatMap((one) => (one.kind === 'bevel' && isMitre(one) ? [one] : []))
  if (mitres.length === 0 || placement.length !== '-x') return null
  const shorter = (end: 'start' | 'end') =>
    mitres.findLast(({ edge, face }) => edge === end && face === 'outside')?.by ?? 0
  const ends = [shorter('start'), length - shorter('end')].map((x) => toCabinet(placement, x, 0, 0).x)
  return [Math.min(...ends), Math.max(...ends)]
}

function Board({ part, isKick }: { readonly part: Part; readonly isKick: boolean }) {
  const { min, max } = boxOf(part)
  const [from, to] = faceOf(part) ?? [min.x, max.x]
  const [x, y] = [from, max.y]
  const size = { width: to - from, height: max.y - min.y }
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
