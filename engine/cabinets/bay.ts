import { type Interval, intervalsOverlap } from '../geometry/interval'
import { type Mm, settle } from '../units/length'
import { bayApart, STAYS } from './apart'
import type { Explode } from './board'
import { backFront, type Carcass } from './carcass'
import type { Piece } from './piece'

/** What bounds a bay: a side, or one of the partitions, counted from the left. */
export interface Upright {
  readonly role: 'leftSide' | 'rightSide' | 'partition'
  readonly number: number
}

export const LEFT_SIDE: Upright = { role: 'leftSide', number: 1 }
export const RIGHT_SIDE: Upright = { role: 'rightSide', number: 1 }

/** A room between two uprights. */
export interface Bay extends Interval {
  readonly left: Upright
  readonly right: Upright
  /** How its shelves leave the carcass. */
  readonly apart: Explode
}

/** The room between the sides. */
export function wholeBay({ thickness, width }: Carcass): Bay {
  return { from: thickness, to: settle(width - thickness), left: LEFT_SIDE, right: RIGHT_SIDE, apart: STAYS }
}

/** The bays that partitions leave; `posts` are their left faces from the left. */
export function baysBetween(posts: readonly Mm[], carcass: Carcass): Bay[] {
  const whole = wholeBay(carcass)
  const post = (number: number): Upright => ({ role: 'partition', number })
  return [...posts, null].map((to, at): Bay => {
    const before = posts[at - 1]
    return {
      from: before === undefined ? whole.from : settle(before + carcass.thickness),
      to: to ?? whole.to,
      left: before === undefined ? whole.left : post(at),
      right: to === null ? whole.right : post(at + 1),
      apart: bayApart(at, posts.length + 1),
    }
  })
}

/** The part of the height that shelves and a partition may use: the highest run of openings without a drawer. */
export interface Stretch extends Interval {
  /** Whether it ends at a fixed board that parts it from the drawers. */
  readonly hasLineBelow: boolean
  readonly hasLineAbove: boolean
  /** Whether another partition is let into that line from its other face. */
  readonly isMetBelow?: boolean
  readonly isMetAbove?: boolean
}

/** What lies behind at a height: the back, or a nailer or stretcher before it. */
export function rearAt(y: Interval, obstacles: readonly Piece[], carcass: Carcass): Mm {
  const before = obstacles.filter(({ box }) => intervalsOverlap(y, { from: box.min.y, to: box.max.y }))
  return Math.max(backFront(carcass), ...before.map(({ box }) => box.max.z))
}
