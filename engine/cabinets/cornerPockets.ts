import { pocketsOf } from '../project/fixing'
import type { Board } from './board'
import type { Doors } from './cornerDoor'
import type { Legs } from './cornerLegs'
import { isLevelMember, isMember, isMet, memberJoints } from './framePockets'
import { type PocketJoint, pocketed } from './pocket'
import type { FixedBoards } from './spacing'

/**
 * The boards with the pocket holes of the frames of an L, all square to its walls: in their members, in the rails of the second
 * where they are butted against those of the first, which holds both together without a stile in the corner, and in the
 * outsides of the two sides, towards the frames. The bottom and the top are cut out behind the rails, where no pocket is
 * bored: there, and on the slanting edges of a diagonal, a frame is glued.
 */
export function withCornerPockets(boards: readonly Board[], legs: Legs, { hand }: Pick<Doors, 'hand'>): FixedBoards {
  const { frame, method } = legs.own
  if (!frame || legs.kind !== 'L') return { boards, missing: 0 }
  const pockets = pocketsOf(method)
  const { frameFixing } = method
  const inside =
    frame.rules.joint.kind === 'pocketScrews' ? [...memberJoints(boards, pockets), ...railJoints(boards, pockets)] : []
  const behind = frameFixing?.kind === 'pocketScrews' ? sideJoints(boards, hand, frameFixing) : []
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
