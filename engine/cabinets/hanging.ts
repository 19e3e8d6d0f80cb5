import type { Box } from '../geometry/box'
import { type Rect, rightOf, topOf } from '../geometry/rect'
import { type Mm, settle } from '../units/length'
import type { Board, BoardRole, FrontFace } from './board'
import { boxOf } from './boardBox'
import { leavesOf } from './leaf'
import type { Face } from './operation'

/** A door or a flap, and the board that its hinges are screwed to. */
export interface Hanging {
  /** The board that its cups are bored in. */
  readonly leaf: Board
  readonly rect: Rect
  readonly hinge: 'left' | 'right' | 'top'
  readonly carrier: Board
  /** What a flap before several bays hangs on besides: a board at the same height in each. None where it is left out. */
  readonly also?: readonly Board[]
  /** Of the carrier. */
  readonly face: Face
  /** How far the leaf covers the edge of its carrier, from the inside of it; below 0 where it stands inside. */
  readonly overlay: Mm
}

const CARRIERS = {
  left: ['leftSide', 'partition'],
  right: ['rightSide', 'partition'],
  top: ['top', 'frontStretcher', 'fixedShelf'],
} as const satisfies Record<Hanging['hinge'], readonly BoardRole[]>

/** A board farther inside than this is not what a front closes against. */
const MOST_REVEAL: Mm = 10

/**
 * What every door and flap hangs on. Where there is no board beside it, it is left out; before a face frame all are, since
 * their plates are screwed to the frame and nothing is bored in the carcass.
 */
export function hangingsOf(boards: readonly Board[], fronts: readonly FrontFace[]): Hanging[] {
  if (hasFaceFrame(boards)) return []
  return leavesOf(boards, fronts).flatMap(({ hinge, rect, hung: leaf }) => {
    const all = boards
      .filter(({ role }) => (CARRIERS[hinge] as readonly BoardRole[]).includes(role))
      .map((carrier) => ({ carrier, box: boxOf(carrier) }))
      .filter((one) => isBeside(one, hinge, rect))
      .sort((a, b) => Math.abs(overlayAt(a.box, hinge, rect)) - Math.abs(overlayAt(b.box, hinge, rect)))
    const [found] = all
    if (!found) return []
    const { carrier, box } = found
    const overlay = overlayAt(box, hinge, rect)
    const level = all.filter((one) => overlayAt(one.box, hinge, rect) === overlay && one.carrier.role === carrier.role)
    const also = hinge === 'top' ? level.slice(1).map((one) => one.carrier) : []
    const hanging: Hanging = { leaf, rect, hinge, carrier, face: faceTowards(carrier, hinge), overlay }
    return [also.length > 0 ? { ...hanging, also } : hanging]
  })
}

export function hasFaceFrame(boards: readonly Board[]): boolean {
  return boards.some(({ role }) => role === 'stile')
}

function overlayAt({ min, max }: Box, hinge: Hanging['hinge'], rect: Rect): Mm {
  if (hinge === 'left') return settle(max.x - rect.left)
  return hinge === 'right' ? settle(rightOf(rect) - min.x) : settle(topOf(rect) - min.y)
}

/** The face of a carrier is one that the leaf closes against: a stretcher on its edge has none. */
function isBeside(
  { carrier, box }: { readonly carrier: Board; readonly box: Box },
  hinge: Hanging['hinge'],
  rect: Rect,
): boolean {
  const isLevel = hinge === 'top'
  if (!carrier.placement.thickness.endsWith(isLevel ? 'y' : 'x')) return false
  const overlay = overlayAt(box, hinge, rect)
  if (overlay < -MOST_REVEAL || overlay > carrier.thickness + MOST_REVEAL) return false
  return isLevel
    ? box.min.x < rightOf(rect) && box.max.x > rect.left
    : box.min.y < topOf(rect) && box.max.y > rect.bottom
}

/** The inside of a partition looks right and that of a fixed shelf up; all others look into the cabinet. */
function faceTowards({ role }: Board, hinge: Hanging['hinge']): Face {
  if (role === 'partition') return hinge === 'left' ? 'inside' : 'outside'
  return role === 'fixedShelf' ? 'outside' : 'inside'
}
