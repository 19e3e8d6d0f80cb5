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
  const length = to - from
  const room = length / mmPerPx
  const isRead = room > figuresIn(text) * TEXT_PX * FIGURE + 2 || isLive
  const tick = TICK_PX * mmPerPx
  const look = `${styles.dimension} ${isLive ? styles.live : ''}`
  // It is drawn from its own start, so that one that is only pushed along changes nothing but its place.
  const frame = way === 'along' ? `translate(${from} ${at})` : `translate(${at} ${-from}) rotate(-90)`
  const width = Math.max(TARGET_PX * mmPerPx, Math.min(length, 64 * mmPerPx))
  const doesType = canType && isRead && (room >= TARGET_PX || isLive)
  const press = () => onType(dimensionKey)
  return (
    <g className={look} transform={frame}>
      <line x2={length} />
      <path d={`M${-tick} ${tick}l${2 * tick} ${-2 * tick}M${length - tick} ${tick}l${2 * tick} ${-2 * tick}`} />
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
          <rect x={(length - width) / 2} y={-20 * mmPerPx} width={width} height={TARGET_PX * mmPerPx} />
          <text x={length / 2} y={-5 * mmPerPx} fontSize={TEXT_PX * mmPerPx}>
            {text}
          </text>
        </g>
      )}
    </g>
  )
})
