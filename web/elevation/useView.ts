import { type RefObject, useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react'
import type { Rect, Wall } from '../../engine/index'
import { fitView, type Margins, type PaneSize, panBy, type View, zoomAt } from '../input/view'
import { useIsNarrow } from '../ui/wide'

const WIDE_MARGINS: Margins = { left: 112, right: 84, top: 64, bottom: 84 }
/** Under the names of the walls. */
const SEVERAL_MARGINS: Margins = { ...WIDE_MARGINS, top: 106 }
const NARROW_MARGINS: Margins = { left: 22, right: 74, top: 64, bottom: 146 }
/** Without the tray and the buttons of the view. */
const BARE_MARGINS: Margins = { ...NARROW_MARGINS, bottom: 72 }
/** Of a notch of the wheel; trackpads send many small ones. */
const ZOOM_PER_PX = 0.0016

export interface ViewHands {
  readonly view: View
  /** The view as it is now, for events that come between two drawings. */
  readonly now: RefObject<View>
  readonly pane: PaneSize
  readonly isNarrow: boolean
  /** Shows the wall so, until it is fitted again. */
  adjust(next: View): void
  pan(dx: number, dy: number): void
  zoom(px: number, py: number, by: number): void
  zoomMiddle(by: number): void
  fit(): void
}

interface Around {
  /** It stands alone, without the tray, the walls and the buttons. */
  readonly isBare: boolean
  /** There are several walls, whose names stand over it. */
  readonly areSeveral: boolean
}

/** The view of the wall: it fits the pane until it is moved by hand, and again after Fit. */
export function useView(host: RefObject<HTMLElement | null>, wall: Wall, { isBare, areSeveral }: Around): ViewHands {
  const [pane, setPane] = useState<PaneSize>({ width: 0, height: 0 })
  const [view, setView] = useState<View>({ zoom: 0.2, x: 100, y: 400 })
  const now = useRef(view)
  const isFitted = useRef(true)
  const isNarrow = useIsNarrow()
  const wide = areSeveral ? SEVERAL_MARGINS : WIDE_MARGINS
  const margins = isBare ? BARE_MARGINS : isNarrow ? NARROW_MARGINS : wide
  const show = useCallback((next: View) => {
    now.current = next
    setView(next)
  }, [])

  const fit = useCallback(() => {
    isFitted.current = true
    const frame = host.current
    if (frame) show(fitted(wall, { width: frame.clientWidth, height: frame.clientHeight }, margins))
  }, [host, show, wall, margins])

  useLayoutEffect(() => {
    const frame = host.current
    if (!frame) return
    const measure = () => {
      const size = { width: frame.clientWidth, height: frame.clientHeight }
      setPane(size)
      if (isFitted.current && size.width > 0) show(fitted(wall, size, margins))
    }
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(frame)
    return () => observer.disconnect()
  }, [host, show, wall, margins])

  const adjust = useCallback(
    (next: View) => {
      isFitted.current = false
      show(next)
    },
    [show],
  )
  const zoom = useCallback((px: number, py: number, by: number) => adjust(zoomAt(now.current, px, py, by)), [adjust])
  const pan = useCallback((dx: number, dy: number) => adjust(panBy(now.current, dx, dy)), [adjust])
  useWheel(host, zoom, pan)
  const zoomMiddle = useCallback(
    (by: number) => {
      const frame = host.current
      if (frame) zoom(frame.clientWidth / 2, frame.clientHeight / 2, by)
    },
    [host, zoom],
  )
  return { view, now, pane, isNarrow, adjust, pan, zoom, zoomMiddle, fit }
}

/** The wheel is listened to here and not by React, because only so can the page be kept from scrolling. */
function useWheel(
  host: RefObject<HTMLElement | null>,
  zoom: (px: number, py: number, by: number) => void,
  pan: (dx: number, dy: number) => void,
) {
  useEffect(() => {
    const frame = host.current
    if (!frame) return
    const onWheel = (event: WheelEvent) => {
      if (event.target instanceof Element && event.target.closest('[data-nowheel]')) return
      event.preventDefault()
      const box = frame.getBoundingClientRect()
      if (event.shiftKey && !event.ctrlKey) pan(-(event.deltaX || event.deltaY), 0)
      else {
        const pixels = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? event.deltaY * 16 : event.deltaY
        const by = Math.exp(-pixels * ZOOM_PER_PX * (event.ctrlKey ? 4 : 1))
        zoom(event.clientX - box.left, event.clientY - box.top, by)
      }
    }
    frame.addEventListener('wheel', onWheel, { passive: false })
    return () => frame.removeEventListener('wheel', onWheel)
  }, [host, zoom, pan])
}

function fitted(wall: Wall, pane: PaneSize, margins: Margins): View {
  const whole: Rect = { left: 0, bottom: 0, width: wall.length, height: wall.height }
  return fitView(whole, pane, margins)
}
