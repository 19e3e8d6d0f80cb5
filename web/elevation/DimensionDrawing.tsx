import { memo } from 'react'
import styles from './Elevation.module.css'

/** As many figures as a text is wide: fractions are set small. */
function figuresIn(text: string): number {
  const fraction = /\d+\/\d+/.exec(text)?.[0] ?? ''
  return text.length - fraction.length * 0.5
}

interface DimensionDrawingProps {
  readonly dimensionKey: string
  readonly way: 'along' | 'up'
  readonly from: number
  readonly to: number
  /** Where its line is: y for widths, x for heights, drawing down. */
  readonly at: number
  readonly text: string
  readonly name: string
  readonly isLive: boolean
  readonly canType: boolean
  readonly mmPerPx: number
  readonly onType: (key: string) => void
}

const TICK_PX = 4
const TEXT_PX = 12
/** A width of the average figure in its height. */
const FIGURE = 0.62
const TARGET_PX = 24

/** A dimension line that ends in slashes. A press on its figure lets a length be typed over it. */
export const DimensionDrawing = memo(function DimensionDrawing(props: DimensionDrawingProps) {
  const { dimensionKey, way, from, to, at, text, name, isLive, canType, mmPerPx, onType } = props
  const room = (to - from) / mmPerPx
  const isRead = room > figuresIn(text) * TEXT_PX * FIGURE + 2 || isLive
  const tick = TICK_PX * mmPerPx
  const middle = (from + to) / 2
  const look = `${styles.dimension} ${isLive ? styles.live : ''}`
  const frame = way === 'along' ? undefined : `translate(${at} ${-middle}) rotate(-90) translate(${-middle} ${-at})`
  const width = Math.max(TARGET_PX * mmPerPx, Math.min(to - from, 64 * mmPerPx))
  const doesType = canType && isRead && (room >= TARGET_PX || isLive)
  const press = () => onType(dimensionKey)
  return (
    <g className={look} transform={frame}>
      <line x1={from} x2={to} y1={at} y2={at} />
      <path
        d={`M${from - tick} ${at + tick}l${2 * tick} ${-2 * tick}M${to - tick} ${at + tick}l${2 * tick} ${-2 * tick}`}
      />
      {isRead && (
        <g
          data-nohand
          {...(doesType && {
            role: 'button',
            tabIndex: 0,
            'aria-label': `${name}: ${text}. Type another`,
            'data-dimension': dimensionKey,
            className: styles.typed,
            onClick: press,
            onKeyDown: (event) => {
              if (event.key !== 'Enter' && event.key !== ' ') return
              event.preventDefault()
              event.stopPropagation()
              press()
            },
          })}
        >
          <rect x={middle - width / 2} y={at - 20 * mmPerPx} width={width} height={TARGET_PX * mmPerPx} />
          <text x={middle} y={at - 5 * mmPerPx} fontSize={TEXT_PX * mmPerPx}>
            {text}
          </text>
        </g>
      )}
    </g>
  )
})
