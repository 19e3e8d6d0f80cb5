import { type Rect, rightOf, topOf } from '../geometry/rect'
import type { Cabinet, CabinetKind } from '../project/document'
import { type Mm, settle } from '../units/length'

/** What cannot stand in the same place: bases and talls share the low lane, uppers and talls the high one. */
export type Lane = 'low' | 'high'

const LANES: Readonly<Record<CabinetKind, readonly Lane[]>> = { base: ['low'], upper: ['high'], tall: ['low', 'high'] }

export function lanesOf(kind: CabinetKind): readonly Lane[] {
  return LANES[kind]
}

export function doLanesMeet(a: CabinetKind, b: CabinetKind): boolean {
  return LANES[a].some((lane) => LANES[b].includes(lane))
}

/** The cabinet as it is seen on its wall. */
export function faceOf({ left, bottom, width, height }: Cabinet): Rect {
  return { left, bottom, width, height }
}

/** The right edge and the top, settled: 0.1 + 0.2 is more than 0.3, and cabinets that touch would seem to overlap. */
export function rightEdge(rect: Rect): Mm {
  return settle(rightOf(rect))
}

export function topEdge(rect: Rect): Mm {
  return settle(topOf(rect))
}

/** How much two rectangles share along the wall and up it; 0 or less is the gap between them. */
export function sharedBy(a: Rect, b: Rect): { readonly x: Mm; readonly y: Mm } {
  return {
    x: settle(Math.min(rightEdge(a), rightEdge(b)) - Math.max(a.left, b.left)),
    y: settle(Math.min(topEdge(a), topEdge(b)) - Math.max(a.bottom, b.bottom)),
  }
}

export function doOverlap(a: Rect, b: Rect): boolean {
  const { x, y } = sharedBy(a, b)
  return x > 0 && y > 0
}
