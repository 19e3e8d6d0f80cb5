import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import { holesIn, type PinRows } from './boring'
import { type Legs, mirrored, turnedLeg } from './cornerLegs'
import type { Bevel, Notch } from './operation'
import { boardOf, type Piece } from './piece'
import { kickNotch, sidesOf } from './side'

/** One at the free end of each leg. */
export function cornerSides(legs: Legs): Piece[] {
  return [turnedLeg(sideOf(legs, 'other'), legs), sideOf(legs, 'own')]
}

/**
 * A side as it stands along the wall of its own leg. Behind a slanting face frame it goes on to that, with its front edge
 * bevelled to lie against it; beside an inset door, to the face of that.
 */
function sideOf(legs: Legs, leg: 'own' | 'other'): Piece {
  const [left, right] = sidesOf(legs[leg])
  const side = leg === 'own' ? right! : left!
  const { min, max } = side.box
  return { ...side, box: { min, max: { ...max, z: settle(max.z + bevelBy(legs, leg)) } } }
}

/** How much farther the inside of a side goes on than its outside, to the line of the frame or of an inset door. */
function bevelBy({ kind, own, other }: Legs, leg: 'own' | 'other'): Mm {
  if (kind === 'L' || !(own.frame || own.isInset)) return 0
  const [along, out] = [own.width - other.depth, other.width - own.depth]
  return settle(own.thickness * (leg === 'own' ? out / along : along / out))
}

/** A side with what is worked on it as the side of its leg: the kick cut out, pins, and the bevel. */
export function workedSide(board: Board, pins: readonly PinRows[], legs: Legs, leg: 'own' | 'other'): Board {
  const side = sideOf(legs, leg)
  const isSeenInMirror = side.role !== board.role
  const straight = boardOf(isSeenInMirror ? mirrored(side, legs[leg].width) : side)
  const by = bevelBy(legs, leg)
  const role = board.role === 'leftSide' ? 'leftSide' : 'rightSide'
  const notch = kickNotch(legs[leg], role)
  const holes = holesIn({ ...board, placement: straight.placement }, pins, legs[leg])
  return {
    ...board,
    operations: [
      ...(notch ? [deepened(notch, by)] : []),
      ...board.operations,
      ...(by > 0 ? [frontBevel(role, by)] : []),
      ...holes,
    ],
  }
}

/** The notch ends at the front edge, wherever that is. */
function deepened(notch: Notch, by: Mm): Notch {
  return by > 0 ? { ...notch, width: settle(notch.width + by) } : notch
}

/** The front edge of a left side is at the far end of its width, that of a right one at the near end. */
function frontBevel(role: 'leftSide' | 'rightSide', by: Mm): Bevel {
  return { kind: 'bevel', edge: role === 'leftSide' ? 'high' : 'low', face: 'outside', by }
}
