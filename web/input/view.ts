import type { Mm, Rect } from '../../engine/index'

/** How the wall is seen: a scale, and where its lower left corner is in the pane, in pixels from the top left. */
export interface View {
  /** Pixels for a millimetre. */
  readonly zoom: number
  readonly x: number
  readonly y: number
}

export interface PaneSize {
  readonly width: number
  readonly height: number
}

/** Room round the wall: for the tray, the heights and the chains of widths. */
export interface Margins {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const LEAST_ZOOM = 0.01
const MOST_ZOOM = 4

/** The view in which a part of the wall fills the pane within its margins. */
export function fitView(what: Rect, pane: PaneSize, margins: Margins): View {
  const width = Math.max(40, pane.width - margins.left - margins.right)
  const height = Math.max(40, pane.height - margins.top - margins.bottom)
  const zoom = clampZoom(Math.min(width / what.width, height / what.height))
  return {
    zoom,
    x: margins.left + (width - what.width * zoom) / 2 - what.left * zoom,
    y: margins.top + (height + what.height * zoom) / 2 + what.bottom * zoom,
  }
}

/** Nearer or farther, with what is under a point of the pane staying there. */
export function zoomAt(view: View, px: number, py: number, by: number): View {
  const zoom = clampZoom(view.zoom * by)
  const ratio = zoom / view.zoom
  return { zoom, x: px - (px - view.x) * ratio, y: py - (py - view.y) * ratio }
}

export function panBy(view: View, dx: number, dy: number): View {
  return { ...view, x: view.x + dx, y: view.y + dy }
}

/** The point of the wall under a point of the pane. */
export function onWall(view: View, px: number, py: number): { readonly x: Mm; readonly y: Mm } {
  return { x: (px - view.x) / view.zoom, y: (view.y - py) / view.zoom }
}

function clampZoom(zoom: number): number {
  return Math.min(MOST_ZOOM, Math.max(LEAST_ZOOM, zoom))
}
