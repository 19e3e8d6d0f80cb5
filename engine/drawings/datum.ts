import type { Board } from '../cabinets/board'
import { centresOf } from '../cabinets/operation'

/** Where a board is measured from: an edge and an end, each by its name and by whether it is at 0 of the board's frame. */
export interface Datum {
  readonly edge: string
  readonly isEdgeAtZero: boolean
  readonly end: string
}

/** From the front edge and the lower or left end; a door from the edge that its cups are at. */
export function datumOf({ placement: { length, width }, width: across, operations }: Board): Datum {
  const end = length === '+y' ? 'lower end' : length === '-x' ? 'right end' : length === '+x' ? 'left end' : 'first end'
  if (width.endsWith('z')) return { edge: 'front edge', isEdgeAtZero: width === '-z', end }
  const cups = operations.flatMap((one) => (one.kind === 'holeRow' && one.purpose === 'hingeCup' ? centresOf(one) : []))
  const isHung = cups.length > 0 && new Set(cups.map(({ y }) => y)).size === 1
  if (isHung) return { edge: 'hinge edge', isEdgeAtZero: cups[0]!.y < across / 2, end }
  return { edge: width.endsWith('y') ? 'lower edge' : 'first edge', isEdgeAtZero: true, end }
}

const OTHER_ENDS: Readonly<Record<string, string>> = {
  'lower end': 'upper end',
  'left end': 'right end',
  'right end': 'left end',
  'first end': 'second end',
}

/** The end that is not the datum. */
export function otherEnd({ end }: Pick<Datum, 'end'>): string {
  return OTHER_ENDS[end]!
}
