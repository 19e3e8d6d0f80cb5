import { type Mm, settle } from '../units/length'

/**
 * What is worked on a board, in the board's own frame: x from one end along its length, y from one edge across it. The
 * inside face is the one at the full thickness, the outside face the one at 0.
 */
export type Operation = Recess | Notch | Clip | Bevel | HoleRow | EdgeSlot

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

/** A rectangle cut out of a corner or an edge, or an opening within the board, right through. */
export interface Notch {
  readonly kind: 'notch'
  readonly x: Mm
  readonly y: Mm
  readonly length: Mm
  readonly width: Mm
  /**
   * What an opening in a back is for; or whether it is a corner that goes into no dado, since that is stopped, or that has no
   * band, since there it would lie before one. Nothing where it is left out.
   */
  readonly for?: 'pipes' | 'air' | 'stop' | 'band'
}

/** Whether there is wood all round what is cut out of a board. */
export function isOpening({ x, y, length, width }: Notch, board: { readonly length: Mm; readonly width: Mm }): boolean {
  return x > 0 && y > 0 && settle(x + length) < board.length && settle(y + width) < board.width
}

/**
 * A corner cut off straight, right through: `length` of the board's length and `width` of its width go at the corner
 * where an end (that at x = 0 or the other) meets an edge (that at y = 0 or the other).
 */
export interface Clip {
  readonly kind: 'clip'
  readonly end: 'start' | 'end'
  readonly edge: 'low' | 'high'
  readonly length: Mm
  readonly width: Mm
}

/** The rectangle around a corner that is cut off, in the board's own frame. */
export function aroundClip(clip: Clip, board: { readonly length: Mm; readonly width: Mm }): Notch {
  const x = clip.end === 'start' ? 0 : settle(board.length - clip.length)
  const y = clip.edge === 'low' ? 0 : settle(board.width - clip.width)
  return { kind: 'notch', x, y, length: clip.length, width: clip.width }
}

/**
 * An edge ripped with the blade tilted, from end to end, or an end mitred so: one face keeps its width or its length to the
 * long point, the other is `by` less, to the short point.
 */
export interface Bevel {
  readonly kind: 'bevel'
  readonly edge: EdgeFace
  /** The face that gets narrower, or shorter. */
  readonly face: Face
  readonly by: Mm
}

/** Whether an end is cut with the blade tilted, and not an edge. */
export function isMitre({ edge }: Pick<Bevel, 'edge'>): boolean {
  return edge === 'start' || edge === 'end'
}

/** The rectangle of a face over what a bevel takes, in the board's own frame. */
function aroundBevel({ edge, by }: Bevel, board: { readonly length: Mm; readonly width: Mm }): Notch {
  const { length, width } = board
  return isMitre({ edge })
    ? { kind: 'notch', x: edge === 'start' ? 0 : settle(length - by), y: 0, length: by, width }
    : { kind: 'notch', x: 0, y: edge === 'low' ? 0 : settle(width - by), length, width: by }
}

/** By how many degrees the blade is tilted for a bevel. */
export function tiltOf({ by }: Pick<Bevel, 'by'>, thickness: Mm): number {
  return (Math.atan2(by, thickness) * 180) / Math.PI
}

/** Cut along a plane that is square to no edge of its board, or not to its faces. */
export function isSlantedCut(one: Operation): one is Clip | Bevel {
  return one.kind === 'clip' || one.kind === 'bevel'
}

/** The rectangle around what such a cut takes. */
export function aroundSlant(one: Clip | Bevel, board: { readonly length: Mm; readonly width: Mm }): Notch {
  return one.kind === 'clip' ? aroundClip(one, board) : aroundBevel(one, board)
}

/** A slot in an edge that leaves both faces whole: a groove for a panel runs its whole length, a mortise takes a tenon. */
export interface EdgeSlot {
  readonly kind: 'edgeGroove' | 'mortise'
  /** The edge at y = 0, or at y = width. */
  readonly edge: 'low' | 'high'
  readonly x: Mm
  readonly length: Mm
  /** From the outside face to the slot, and its width across the thickness. */
  readonly up: Mm
  readonly width: Mm
  readonly depth: Mm
}

export function isEdgeSlot(one: Operation): one is EdgeSlot {
  return one.kind === 'edgeGroove' || one.kind === 'mortise'
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
  | 'biscuit'
  | 'pocketScrew'
  | 'pull'
  | 'pullBolt'
  | 'frontScrew'
  | 'frontPilot'
  | 'legPlate'
  | 'seamBolt'

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
  /** Square to its face, or along its own axis where it is bored aslant. */
  readonly depth: Mm
  readonly slant?: Slant
}

/** A hole that is bored aslant from a face, as pocket holes are: towards an end or an edge, at an angle to the face. */
export interface Slant {
  readonly towards: EdgeFace
  /** In degrees. */
  readonly angle: number
  /** In degrees: along its face it is turned so far aside, towards the edge at the full width or the end at the full length. */
  readonly aside?: number
  /** From the middle of its mouth to the line within the board that it is bored towards, where that is not its end or edge. */
  readonly away?: Mm
}

/** Which way it goes along its face, in the board's own frame, 1 long. */
export function wayOf({ towards, aside = 0 }: Slant): Centre {
  const [straight, turned] = [Math.cos(radians(aside)), Math.sin(radians(aside))]
  const way = towards === 'end' || towards === 'high' ? straight : -straight
  return towards === 'start' || towards === 'end' ? { x: way, y: turned } : { x: turned, y: way }
}

/** How long the mouth of a hole is along its line, or along the way that it is bored aslant. */
export function mouthLength({ diameter, oval, slant }: Pick<HoleRow, 'diameter' | 'oval' | 'slant'>): Mm {
  return slant ? settle(diameter / Math.sin(radians(slant.angle))) : (oval ?? diameter)
}

/** Whether a mouth that is longer than wide is long along the board. */
export function isLongAlong({ along, slant }: Pick<HoleRow, 'along' | 'slant'>): boolean {
  return slant ? slant.towards === 'start' || slant.towards === 'end' : along !== 'width'
}

export function radians(degrees: number): number {
  return (degrees * Math.PI) / 180
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
