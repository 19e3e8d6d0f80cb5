import type { Rect } from '../geometry/rect'
import type { Mm } from '../units/length'

/**
 * What is drawn once and shown on many papers: the screen, SVG and whatever else. In mm at full size, x to the right and
 * y up.
 */
export interface Drawing {
  readonly bounds: Rect
  /** From the back to the front. */
  readonly marks: readonly DrawingMark[]
}

export type Layer =
  | 'sheet'
  | 'trim'
  | 'part'
  | 'offcut'
  /** What is sawn out of a part once it is cut, and kept. */
  | 'freed'
  /** Over boards whose grain runs on. */
  | 'run'
  | 'waste'
  | 'hatch'
  | 'grain'
  | 'cut'
  | 'text'
  | 'caption'
  | 'dimension'
  | 'recess'
  | 'hole'
  /** The edges that a part is measured from. */
  | 'datum'

export type DrawingMark = LineMark | RectMark | CircleMark | TextMark | DimensionMark

export interface Point {
  readonly x: Mm
  readonly y: Mm
}

export interface LineMark {
  readonly kind: 'line'
  readonly layer: Layer
  readonly from: Point
  readonly to: Point
}

export interface RectMark {
  readonly kind: 'rect'
  readonly layer: Layer
  readonly rect: Rect
  /** Which placement of its layout a part is, so that a view can say which part was picked. */
  readonly placement?: number
}

export interface CircleMark {
  readonly kind: 'circle'
  readonly layer: Layer
  readonly at: Point
  readonly diameter: Mm
}

export interface TextMark {
  readonly kind: 'text'
  readonly layer: Layer
  /** The middle of the text. */
  readonly at: Point
  readonly text: string
  /** Height of the letters. */
  readonly size: Mm
  /** Whether it reads from the foot up. */
  readonly isUpright: boolean
  readonly placement?: number
}

/** A measure between two points, its line moved by `offset` to the left of the way from one to the other. */
export interface DimensionMark {
  readonly kind: 'dimension'
  readonly layer: Layer
  readonly from: Point
  readonly to: Point
  readonly offset: Mm
  readonly text: string
  readonly size: Mm
}

/** The ends of a dimension line where it is drawn, beside what it measures. */
export function dimensionLine({ from, to, offset }: DimensionMark): { readonly from: Point; readonly to: Point } {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1
  const by = { x: (-(to.y - from.y) / length) * offset, y: ((to.x - from.x) / length) * offset }
  return { from: { x: from.x + by.x, y: from.y + by.y }, to: { x: to.x + by.x, y: to.y + by.y } }
}

/** Lines at 45 degrees through a rectangle, on one raster for the whole drawing so that neighbours join. */
export function hatch(rect: Rect, spacing: Mm, layer: Layer): LineMark[] {
  const { left, bottom } = rect
  const [right, top] = [left + rect.width, bottom + rect.height]
  const lines: LineMark[] = []
  // Each line is y = x + rise.
  for (let rise = Math.ceil((bottom - right) / spacing) * spacing; rise < top - left; rise += spacing) {
    const fromX = Math.max(left, bottom - rise)
    const toX = Math.min(right, top - rise)
    if (toX <= fromX) continue
    lines.push({ kind: 'line', layer, from: { x: fromX, y: fromX + rise }, to: { x: toX, y: toX + rise } })
  }
  return lines
}
