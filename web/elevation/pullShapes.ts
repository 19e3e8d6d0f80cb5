import { type DerivedCabinet, type Mm, type Part, pullsIn, type Rect, toCabinet, topOf } from '../../engine/index'

/** How a plain pull and a plain knob are drawn, whichever are bought: how thick, and half as wide. */
const THICK: Mm = 11
const KNOB: Mm = 13
/** How far a pull stands out from its front, where it is seen from the side. */
const OUT: Mm = 32

/** A pull as it is seen from the room, in the frame of its cabinet. */
export interface PullShape extends Rect {
  /** Whether it is round. */
  readonly isKnob: boolean
}

/** The pulls of a front. On a leaf that stands aslant or on edge one reaches from the face to where it ends. */
export function pullShapes(part: Part): PullShape[] {
  return pullsIn(part).map(({ from, to }) => {
    const a = toCabinet(part.placement, from.x, from.y, 0)
    const b = toCabinet(part.placement, to.x, to.y, 0)
    const out = toCabinet(part.placement, from.x, from.y, -OUT)
    const isAslant = Math.abs(out.x - a.x) > 1
    const isOneHole = a.y === b.y && (isAslant || a.x === b.x)
    const half = isOneHole ? KNOB : THICK / 2
    const [low, high] = [Math.min(a.y, b.y) - half, Math.max(a.y, b.y) + half]
    const across = isAslant ? [a.x, out.x] : [Math.min(a.x, b.x) - half, Math.max(a.x, b.x) + half]
    const left = Math.min(...across)
    const width = Math.max(...across) - left
    return { left, bottom: low, width, height: high - low, isKnob: isOneHole && !isAslant }
  })
}

/** How long and how thick the line is that stands for a pull, and how far under the upper edge of its drawer. */
const LINE_PX = 22
const LINE_THICK_PX = 2
const LINE_UNDER_PX = 9

/** The short line by which a drawer that is bored for no pull is told from a door. */
export function drawerLine(rect: Rect, mmPerPx: number): Rect {
  const width = Math.min(rect.width / 2, LINE_PX * mmPerPx)
  const height = LINE_THICK_PX * mmPerPx
  const middle = topOf(rect) - Math.min(rect.height / 2, LINE_UNDER_PX * mmPerPx)
  return { left: rect.left + (rect.width - width) / 2, bottom: middle - height / 2, width, height }
}

/** Whether the drawers of a cabinet are bored for pulls, which are then drawn where they are. */
export function isBoredForPulls(parts: readonly Part[]): boolean {
  return parts.some((part) => part.role === 'drawerFront' && pullsIn(part).length > 0)
}

/** All pulls that are drawn before a cabinet, and the lines that stand for them. */
export function pullsBefore({ parts, fronts }: DerivedCabinet, mmPerPx: number): Rect[] {
  const drawers = isBoredForPulls(parts) ? [] : fronts.filter(({ kind }) => kind === 'drawer')
  return [...parts.flatMap(pullShapes), ...drawers.map(({ rect }) => drawerLine(rect, mmPerPx))]
}
