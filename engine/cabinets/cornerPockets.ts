import { pocketsOf } from '../project/fixing'
import { settle } from '../units/length'
import type { Board } from './board'
import type { Doors } from './cornerDoor'
import type { Legs } from './cornerLegs'
import { isLevelMember, isMember, isMet, memberJoints } from './framePockets'
import { type PocketJoint, pocketed } from './pocket'
import type { FixedBoards } from './spacing'

/**
 * The boards with the pocket holes of the frames of an L, all square to its walls: in their members, in the rails of the second
 * where they are butted against those of the first, which holds both together without a stile in the corner, and towards
 * the frames in the outsides of the two sides, in the underside of the bottom and on the top, along both lines of their
 * inside corner.
 */
export function withCornerPockets(boards: readonly Board[], legs: Legs, { hand }: Pick<Doors, 'hand'>): FixedBoards {
  const { frame, method } = legs.own
  if (!frame) return { boards, missing: 0 }
  const pockets = pocketsOf(method)
  const { frameFixing } = method
  const inside =
    frame.rules.joint.kind === 'pocketScrews' ? [...memberJoints(boards, pockets), ...railJoints(boards, pockets)] : []
  const behind =
    frameFixing?.kind === 'pocketScrews'
      ? [...sideJoints(boards, hand, frameFixing), ...levelJoints(boards, frameFixing)]
      : []
  return pocketed(boards, [...inside, ...behind], pockets)
}

/** In the inside corner a rail ends at the face of the one like it before the other leg. */
function railJoints(boards: readonly Board[], spacing: PocketJoint['spacing']): PocketJoint[] {
  const rails = boards.filter(isLevelMember)
  return rails.flatMap((board) => {
    const into = rails.filter((one) => one !== board && one.role === board.role)
    return (['start', 'end'] as const)
      .map((towards): PocketJoint => {
        return { board, face: 'inside', towards, stretch: { from: 0, to: board.width }, spacing, into }
      })
      .filter(isMet)
  })
}

/** The front edges of both sides: of that at the own leg towards z, of the other along the own wall, out of its corner. */
function sideJoints(boards: readonly Board[], hand: Doors['hand'], spacing: PocketJoint['spacing']): PocketJoint[] {
  const into = boards.filter(isMember)
  const outOfCorner = hand === 'left' ? '+x' : '-x'
  return boards.flatMap((board): PocketJoint[] => {
    if (board.role !== 'leftSide' && board.role !== 'rightSide') return []
    const isOwn = (board.role === 'rightSide') === (hand === 'left')
    const towards = board.placement.width === (isOwn ? '+z' : outOfCorner) ? 'high' : 'low'
    return [{ board, face: 'outside', towards, stretch: { from: 0, to: board.length }, spacing, into }]
  })
}

/** Both lines of the inside corner that is cut out of the bottom and the top, in their outer faces. */
function levelJoints(boards: readonly Board[], spacing: PocketJoint['spacing']): PocketJoint[] {
  const into = boards.filter(isMember)
  return boards.flatMap((board): PocketJoint[] => {
    const [away] = board.operations
    if ((board.role !== 'bottom' && board.role !== 'top') || board.outline !== 'L' || away?.kind !== 'notch') return []
    const { x, y, length, width } = away
    const [endX, endY] = [settle(x + length), settle(y + width)]
    const common = { board, face: 'outside', spacing, into } as const
    const across = y > 0 ? ({ towards: 'high', inner: y } as const) : ({ towards: 'low', inner: endY } as const)
    const along = x > 0 ? ({ towards: 'end', inner: x } as const) : ({ towards: 'start', inner: endX } as const)
    return [
      { ...common, ...across, stretch: { from: x, to: endX } },
      { ...common, ...along, stretch: { from: y, to: endY } },
    ]
  })
}
