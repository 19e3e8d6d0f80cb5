import { type Interval, intervalsOverlap } from '../geometry/interval'
import type { Mm } from '../units/length'
import { backFront, type Carcass } from './carcass'
import type { Piece } from './piece'

/** A room between two uprights. */
export interface Bay extends Interval {
  readonly left: 'leftSide' | 'partition'
  readonly right: 'rightSide' | 'partition'
}

/** The part of the height that shelves and a partition may use: the highest run of openings without a drawer. */
export interface Stretch extends Interval {
  /** Whether it ends at a fixed board that parts it from the drawers. */
  readonly hasLineBelow: boolean
  readonly hasLineAbove: boolean
}

/** What lies behind at a height: the back, or a nailer or stretcher before it. */
export function rearAt(y: Interval, obstacles: readonly Piece[], carcass: Carcass): Mm {
  const before = obstacles.filter(({ box }) => intervalsOverlap(y, { from: box.min.y, to: box.max.y }))
  return Math.max(backFront(carcass), ...before.map(({ box }) => box.max.z))
}
