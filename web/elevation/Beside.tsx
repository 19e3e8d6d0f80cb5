import { type ReactNode, useMemo } from 'react'
import type { Cabinet } from '../../engine/index'
import type { PaneSize, View } from '../input/view'
import { chosenCabinets } from '../store/selection'
import { useStore } from '../store/store'
import styles from './Elevation.module.css'

interface BesideProps {
  readonly view: View
  readonly pane: PaneSize
  readonly children: ReactNode
}

/** Wide enough for the longest name of a front. */
const WIDTH_PX = 268
const AWAY_PX = 18
const RIM_PX = 10

/**
 * A card next to what is selected: to the right of it where there is room, else to its left. It stays where it is during
 * a gesture and fades, so that it is not in the way of the hand; so it does while free places are offered.
 */
export function Beside({ view, pane, children }: BesideProps) {
  const cabinets = useStore((state) => state.history.present.cabinets)
  const selection = useStore((state) => state.selection)
  const isBusy = useStore((state) => state.gesture !== null || state.placing !== null)
  const chosen = useMemo(
    () => chosenCabinets(selection).flatMap((id): Cabinet[] => (cabinets[id] ? [cabinets[id]] : [])),
    [selection, cabinets],
  )
  if (chosen.length === 0) return null
  const left = view.x + Math.min(...chosen.map((one) => one.left)) * view.zoom
  const right = view.x + Math.max(...chosen.map((one) => one.left + one.width)) * view.zoom
  const isRight = right + AWAY_PX + WIDTH_PX <= pane.width - RIM_PX
  const x = isRight ? right + AWAY_PX : left - AWAY_PX - WIDTH_PX
  const clamped = Math.max(RIM_PX, Math.min(x, pane.width - WIDTH_PX - RIM_PX))
  return (
    <div
      className={styles.beside}
      data-nohand
      data-nowheel
      data-busy={isBusy || undefined}
      style={{ left: clamped, width: WIDTH_PX }}
    >
      {children}
    </div>
  )
}
