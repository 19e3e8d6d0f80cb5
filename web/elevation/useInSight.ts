import { useEffect } from 'react'
import { type Cabinet, footprintOf, type Rect, type Wall } from '../../engine/index'
import { inSight, type Margins } from '../input/view'
import { chosenCabinets } from '../store/selection'
import { useStore } from '../store/store'
import type { ViewHands } from './useView'

/** Clear of the tray, of the names of the walls and of the buttons of the view. */
const WIDE: Margins = { left: 88, right: 16, top: 24, bottom: 48 }
const NARROW: Margins = { left: 10, right: 10, top: 24, bottom: 24 }

/**
 * What is picked, here or in another view, is brought into sight, and so it is when the pane gets another size. A view that
 * is moved away from it by hand stays as it is, and nothing moves under a hand.
 */
export function useInSight({ pane, now, adjust, isNarrow }: ViewHands, wall: Wall): void {
  const selection = useStore((state) => state.selection)
  const isHeld = useStore((state) => state.gesture !== null)
  useEffect(() => {
    if (isHeld || pane.width === 0) return
    const what = chosenOn(wall, chosenCabinets(selection))
    if (!what) return
    const next = inSight(now.current, what, pane, isNarrow ? NARROW : WIDE)
    if (next !== now.current) adjust(next)
  }, [selection, isHeld, pane, now, adjust, isNarrow, wall])
}

/** All that is chosen on a wall, as one rectangle. */
function chosenOn(wall: Wall, ids: readonly Cabinet['id'][]): Rect | null {
  const project = useStore.getState().history.present
  const all = ids.flatMap((id) => {
    const cabinet = project.cabinets[id]
    return cabinet?.wall === wall.id ? [footprintOf(cabinet, project)] : []
  })
  if (all.length === 0) return null
  const [left, bottom] = [Math.min(...all.map((one) => one.left)), Math.min(...all.map((one) => one.bottom))]
  const right = Math.max(...all.map((one) => one.left + one.width))
  const top = Math.max(...all.map((one) => one.bottom + one.height))
  return { left, bottom, width: right - left, height: top - bottom }
}
