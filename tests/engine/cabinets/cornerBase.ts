import type { Board } from '../../../engine/cabinets/board'
import type { HolePurpose } from '../../../engine/cabinets/operation'
import { aCabinet, rulesWith } from '../../helpers/cabinets'

/** 920 along its own wall and 580 deep there, 860 along the other and 560 deep. */
export const L_BASE = aCabinet('base', {
  ...{ width: 920, height: 720, depth: 580, front: { kind: 'door', hinge: 'left' } },
  interior: { fixedShelves: 1, adjustableShelves: 1, partition: null },
  corner: { kind: 'L', hand: 'left', other: 860, otherDepth: 560 },
})
export const BASE_RULES = rulesWith({
  cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: 6 } },
  back: { kind: 'groove', inset: 12, depth: 7, clearance: 2 },
  floor: { kind: 'notched', height: 100, setback: 75 },
  shelves: { ...rulesWith().method.shelves, setback: 10 },
  banding: { carcass: 1, fronts: 0, isInFinishedSize: false },
})

/** Each row of a purpose in a board, as one looks at it: where its first hole is along and across the board. */
export function bored(board: Board, purpose: HolePurpose): string[] {
  return board.operations.flatMap((one) =>
    one.kind === 'holeRow' && one.purpose === purpose ? [`${one.face} ${one.x}, ${one.y}`] : [],
  )
}
