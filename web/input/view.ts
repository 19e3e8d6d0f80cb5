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

/**
 * The view moved by as little as brings a part of the wall wholly into the pane within its margins; the very same view where
 * it is there already, or is so large that it fills the pane anyway.
 */
export function inSight(view: View, what: Rect, pane: PaneSize, margins: Margins): View {
  const left = view.x + what.left * view.zoom
  const top = view.y - (what.bottom + what.height) * view.zoom
  const dx = shiftInto(left, what.width * view.zoom, margins.left, pane.width - margins.right)
  const dy = shiftInto(top, what.height * view.zoom, margins.top, pane.height - margins.bottom)
  return dx === 0 && dy === 0 ? view : panBy(view, dx, dy)
}

/** By how much a stretch is moved to lie between two ends: to their middle where it is longer and leaves half of them bare. */
function shiftInto(from: number, size: number, least: number, most: number): number {
  const room = most - least
  if (size <= room) return Math.max(0, least - from) + Math.min(0, most - from - size)
  const seen = Math.min(most, from + size) - Math.max(least, from)
  return seen >= room / 2 ? 0 : (least + most - size) / 2 - from
}

function clampZoom(zoom: number): number {
  return Math.min(MOST_ZOOM, Math.max(LEAST_ZOOM, zoom))
}
