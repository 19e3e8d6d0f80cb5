import { type ReactNode, useEffect, useMemo, useState } from 'react'
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
 * A card next to what is selected, on the side where it covers less. It stays where it is during a gesture and fades, so
 * that it is not in the way of the hand; so it does while free places are offered. While Shift is down, to select more,
 * what is under it is seen and reached through it.
 */
export function Beside({ view, pane, children }: BesideProps) {
  const cabinets = useStore((state) => state.history.present.cabinets)
  const selection = useStore((state) => state.selection)
  const isThrough = useIsShiftDown()
  const isBusy = useStore((state) => state.gesture !== null || state.placing !== null)
  const chosen = useMemo(
    () => chosenCabinets(selection).flatMap((id): Cabinet[] => (cabinets[id] ? [cabinets[id]] : [])),
    [selection, cabinets],
  )
  if (chosen.length === 0) return null
  const left = view.x + Math.min(...chosen.map((one) => one.left)) * view.zoom
  const right = view.x + Math.max(...chosen.map((one) => one.left + one.width)) * view.zoom
  const x = besideX(left, right, pane.width, Object.values(cabinets), view)
  const clamped = Math.max(RIM_PX, Math.min(x, pane.width - WIDTH_PX - RIM_PX))
  return (
    <div
      className={styles.beside}
      data-nohand
      data-nowheel
      data-busy={isBusy || undefined}
      data-through={isThrough || undefined}
      style={{ left: clamped, width: WIDTH_PX }}
    >
      {children}
    </div>
  )
}

/** To the right where there is room and no more is covered than to the left, by the cabinets whose middles it covers. */
function besideX(left: number, right: number, room: number, cabinets: readonly Cabinet[], view: View): number {
  const [rightX, leftX] = [right + AWAY_PX, left - AWAY_PX - WIDTH_PX]
  const hasRight = rightX + WIDTH_PX <= room - RIM_PX
  const hasLeft = leftX >= RIM_PX
  if (!hasRight || !hasLeft) return hasRight ? rightX : leftX
  const covered = (x: number) =>
    cabinets.filter((one) => {
      const middle = view.x + (one.left + one.width / 2) * view.zoom
      return middle > x && middle < x + WIDTH_PX
    }).length
  return covered(leftX) < covered(rightX) ? leftX : rightX
}

function useIsShiftDown(): boolean {
  const [isDown, setIsDown] = useState(false)
  useEffect(() => {
    const look = (event: KeyboardEvent) => {
      // Capitals are typed with Shift, too.
      const isTyping = event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement
      setIsDown(event.shiftKey && !isTyping)
    }
    const forget = () => setIsDown(false)
    addEventListener('keydown', look)
    addEventListener('keyup', look)
    addEventListener('blur', forget)
    return () => {
      removeEventListener('keydown', look)
      removeEventListener('keyup', look)
      removeEventListener('blur', forget)
    }
  }, [])
  return isDown
}
