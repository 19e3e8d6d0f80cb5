import { type Mm, settle } from '../units/length'

/**
 * What is worked on a board, in the board's own frame: x from one end along its length, y from one edge across it. The
 * inside face is the one at the full thickness, the outside face the one at 0.
 */
export type Operation = Recess | Notch | HoleRow

export type Face = 'inside' | 'outside'

/** The narrow faces: the ends at 0 and at the full length, the edges at 0 and at the full width. */
export type EdgeFace = 'start' | 'end' | 'low' | 'high'

/** A groove runs with the grain, a dado across it, a rabbet along an edge; all three are a rectangle sunk into a face. */
export interface Recess {
  readonly kind: 'groove' | 'dado' | 'rabbet'
  readonly face: Face
  readonly x: Mm
  readonly y: Mm
  readonly length: Mm
  readonly width: Mm
  readonly depth: Mm
}

/** A rectangle cut out of a corner or an edge, right through. */
export interface Notch {
  readonly kind: 'notch'
  readonly x: Mm
  readonly y: Mm
  readonly length: Mm
  readonly width: Mm
}

/** What a hole is bored for. */
export type HolePurpose =
  | 'shelfPin'
  | 'hingeCup'
  | 'hingeScrew'
  | 'hingePlate'
  | 'slide'
  | 'screw'
  | 'pilot'
  | 'dowel'
  | 'looseTenon'
  | 'pull'
  | 'legPlate'

/** Equal holes in a line; one hole is a row of one. */
export interface HoleRow {
  readonly kind: 'holeRow'
  readonly purpose: HolePurpose
  readonly face: Face | EdgeFace
  /** Which way the line runs: along the board's length unless it says otherwise. */
  readonly along?: 'width'

  /** Centre of the first hole. In an end, x is where the end is; in an edge, y is where the edge is. */
  readonly x: Mm
  readonly y: Mm
  /** In an end or an edge: from the outside face to the centres. */
  readonly up?: Mm
  readonly step: Mm
  readonly count: number
  readonly diameter: Mm
  /** Of a mortise with round ends: how long it is along its line, from end to end. As wide as its diameter. */
  readonly oval?: Mm
  /** The diameter at the face of what is sunk for a head, at 90 degrees. */
  readonly countersink?: Mm
  readonly depth: Mm
}

/** The centres of the holes of a row, on its face. */
export function centresOf(row: HoleRow): Centre[] {
  return Array.from({ length: row.count }, (_, at) => centreOf(row, at))
}

export interface Centre {
  readonly x: Mm
  readonly y: Mm
}

/** The centre of one hole of a row, from 0. */
export function centreOf({ x, y, step, along }: HoleRow, at: number): Centre {
  return along === 'width' ? { x, y: settle(y + at * step) } : { x: settle(x + at * step), y }
}

export function isInEdge({ face }: Pick<HoleRow, 'face'>): boolean {
  return face !== 'inside' && face !== 'outside'
}
