import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import styles from './Split.module.css'

interface SplitProps {
  readonly label: string
  /** Which way the two panes lie: beside one another or one over the other. */
  readonly way: 'beside' | 'over'
  /** The share of the first pane. */
  readonly share: number
  readonly onShare: (share: number) => void
}

const LEAST = 0.2
const MOST = 0.8

/** The bar between two panes of one grid, moved by hand or by arrow keys. */
export function Split({ label, way, share, onShare }: SplitProps) {
  const bar = useRef<HTMLDivElement>(null)
  const set = (next: number) => onShare(Math.min(MOST, Math.max(LEAST, next)))

  function onPointerMove(event: PointerEvent<HTMLDivElement>) {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return
    const frame = bar.current!.parentElement!.getBoundingClientRect()
    set(way === 'beside' ? (event.clientX - frame.left) / frame.width : (event.clientY - frame.top) / frame.height)
  }

  function onKeyDown(event: KeyboardEvent) {
    const [less, more] = way === 'beside' ? ['ArrowLeft', 'ArrowRight'] : ['ArrowUp', 'ArrowDown']
    if (event.key !== less && event.key !== more) return
    event.preventDefault()
    set(share + (event.key === more ? 0.02 : -0.02))
  }

  return (
    // biome-ignore lint/a11y/useSemanticElements: a rule that can be moved is a separator, not an hr.
    <div
      ref={bar}
      role="separator"
      tabIndex={0}
      aria-label={label}
      aria-orientation={way === 'beside' ? 'vertical' : 'horizontal'}
      aria-valuemin={LEAST * 100}
      aria-valuemax={MOST * 100}
      aria-valuenow={Math.round(share * 100)}
      className={way === 'beside' ? styles.beside : styles.over}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={onPointerMove}
      onKeyDown={onKeyDown}
    />
  )
}
