import { pocketsOf } from '../project/fixing'
import type { Mm } from '../units/length'
import type { Board, BoardRole } from './board'
import { boxOf } from './boardBox'
import type { Carcass } from './carcass'
import { inBoard } from './frame'
import { type PocketJoint, pocketed } from './pocket'
import type { FixedBoards } from './spacing'

const UPRIGHT: readonly BoardRole[] = ['stile', 'mullion']
const LEVEL: readonly BoardRole[] = ['topRail', 'bottomRail', 'midRail']
const BEHIND: readonly BoardRole[] = ['leftSide', 'rightSide', 'bottom', 'top', 'frontStretcher']

/**
 * The boards with the pocket holes of a face frame: in the backs of all members that are butted to others, and in the faces
 * of the carcass that look out of it, towards the frame.
 */
export function withFramePockets(boards: readonly Board[], { frame, method, depth }: Carcass): FixedBoards {
  if (!frame) return { boards, missing: 0 }
  const pockets = pocketsOf(method)
  const { frameFixing } = method
  const inside = frame.rules.joint.kind === 'pocketScrews' ? memberJoints(boards, pockets) : []
  const behind = frameFixing?.kind === 'pocketScrews' ? carcassJoints(boards, depth, frameFixing) : []
  return pocketed(boards, [...inside, ...behind], pockets)
}

export function isMember({ role }: Board): boolean {
  return UPRIGHT.includes(role) || LEVEL.includes(role)
}

export function isLevelMember({ role }: Board): boolean {
  return LEVEL.includes(role)
}

/** In the backs of all members that are butted to others of a frame. */
export function memberJoints(boards: readonly Board[], spacing: PocketJoint['spacing']): PocketJoint[] {
  const of = (roles: readonly BoardRole[]) => boards.filter(({ role }) => roles.includes(role))
  const [upright, level] = [of(UPRIGHT), of(LEVEL)]
  const joints = (board: Board, into: readonly Board[]) =>
    (['start', 'end'] as const)
      .map((towards): PocketJoint => {
        return { board, face: 'inside', towards, stretch: { from: 0, to: board.width }, spacing, into }
      })
      .filter(isMet)
  return [
    ...level.flatMap((board) => joints(board, upright)),
    ...upright.filter(({ role }) => role === 'mullion').flatMap((board) => joints(board, level)),
  ]
}

/** In an inside corner a rail ends where no upright of its frame is. */
export function isMet({ board, towards, into }: PocketJoint): boolean {
  const end = towards === 'start' ? 0 : board.length
  return into.some((one) => {
    const { min, max } = inBoard(board, boxOf(one))
    const isAtEnd = min.x <= end + DUST && max.x >= end - DUST
    return isAtEnd && min.y < board.width && max.y > 0 && min.z < board.thickness - DUST && max.z > DUST
  })
}

/** Coordinates are sums of settled lengths: less than this is the dust of adding them. */
const DUST: Mm = 1e-3

/** The front edges that the frame stands on. */
export function carcassJoints(boards: readonly Board[], depth: number, spacing: PocketJoint['spacing']): PocketJoint[] {
  const into = boards.filter(isMember)
  return boards.flatMap((board): PocketJoint[] => {
    const { width } = board.placement
    if (!BEHIND.includes(board.role) || !width.endsWith('z') || boxOf(board).max.z !== depth) return []
    const towards = width === '+z' ? 'high' : 'low'
    return [{ board, face: 'outside', towards, stretch: { from: 0, to: board.length }, spacing, into }]
  })
}
