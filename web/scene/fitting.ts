import { type RefObject, useCallback, useEffect, useRef } from 'react'
import type { OwnerId } from '../../engine/index'
import { useStore } from '../store/store'
import type { CameraHands } from './Camera'
import { boxToShow, ownersOf } from './showing'

export interface Fitting {
  /** Shows the whole run. */
  all(): void
  /** Shows the cabinets that the selection is in. */
  chosen(): void
  /** The picture has a new size. */
  sized(): void
}

/** Keeps the run in view: at first, in a pane of a new size, with other walls, and as it is taken apart, until the maker goes nearer. */
export function useFitting(hands: RefObject<CameraHands | null>): Fitting {
  const fitted = useRef<readonly OwnerId[] | null>(null)
  const isPlaced = useRef(false)
  const explode = useStore((state) => state.explode)
  const project = useStore((state) => state.shown.id)
  const walls = useStore((state) => state.shown.walls)

  const fit = useCallback(
    (cabinets: readonly OwnerId[] | null, isGliding: boolean) => {
      const { derived, explode: now } = useStore.getState()
      fitted.current = cabinets
      isPlaced.current = hands.current !== null
      hands.current?.fit(boxToShow(derived, now, cabinets), isGliding && !prefersStill())
    },
    [hands],
  )

  // Taken further apart, or with another wall, there is more to be seen or less.
  useEffect(() => {
    if (isPlaced.current && hands.current?.isFitted()) fit(fitted.current, false)
  }, [explode, walls, hands, fit])

  useEffect(() => {
    if (isPlaced.current) fit(null, false)
  }, [project, fit])

  return {
    all: useCallback(() => fit(null, true), [fit]),
    chosen: useCallback(() => {
      const { derived, selection } = useStore.getState()
      fit(ownersOf(derived, selection), true)
    }, [fit]),
    sized: useCallback(() => {
      if (hands.current?.isFitted()) fit(fitted.current, false)
    }, [fit, hands]),
  }
}

function prefersStill(): boolean {
  return window.matchMedia('(prefers-reduced-motion: reduce)').matches
}
