import type { Board, BoardRole } from '../cabinets/board'
import { centresOf } from '../cabinets/operation'
import type { Axis } from '../geometry/vector'

/** Where a board is measured from: an edge and an end, each by its name and by whether it is at 0 of the board's frame. */
export interface Datum {
  readonly edge: string
  readonly isEdgeAtZero: boolean
  readonly end: string
}

/** What is at 0 of a board along each way that its length may run, as one sees it who stands before its cabinet. */
const ENDS = {
  '+x': 'left end',
  '-x': 'right end',
  '+y': 'lower end',
  '-y': 'upper end',
  '+z': 'rear end',
  '-z': 'front end',
} as const satisfies Record<Axis, string>

/** What is at 0 of a board across, where it does not run from front to rear. */
const EDGES = { '+x': 'left edge', '-x': 'right edge', '+y': 'lower edge', '-y': 'upper edge' } as const

/**
 * From the front edge and the lower, left or front end; a door from the edge that its cups are at. What stands upright and
 * flat before or behind its cabinet is measured from the left or the right edge.
 */
export function datumOf({ role, placement: { length, width }, width: across, operations }: Board): Datum {
  const end = ENDS[length]
  if (width === '+z' || width === '-z') return { edge: 'front edge', isEdgeAtZero: width === '-z', end }
  // The side of the other leg of a corner cabinet: its front is away from the wall that the leg stands at.
  if (isSide(role) && (width === '+x' || width === '-x')) {
    return { edge: 'front edge', isEdgeAtZero: (width === '+x') === (role === 'rightSide'), end }
  }
  const cups = operations.flatMap((one) => (one.kind === 'holeRow' && one.purpose === 'hingeCup' ? centresOf(one) : []))
  const isHung = cups.length > 0 && new Set(cups.map(({ y }) => y)).size === 1
  if (isHung) return { edge: 'hinge edge', isEdgeAtZero: cups[0]!.y < across / 2, end }
  return { edge: EDGES[width], isEdgeAtZero: true, end }
}

function isSide(role: BoardRole): boolean {
  return role === 'leftSide' || role === 'rightSide'
}

const OTHER_ENDS: Readonly<Record<string, string>> = {
  'lower end': 'upper end',
  'upper end': 'lower end',
  'left end': 'right end',
  'right end': 'left end',
  'front end': 'rear end',
  'rear end': 'front end',
}

/** The end that is not the datum. */
export function otherEnd({ end }: Pick<Datum, 'end'>): string {
  return OTHER_ENDS[end]!
}
