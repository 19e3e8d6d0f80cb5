import type { CabinetId } from '../basics/id'
import { forward, WAYS } from '../cabinets/apart'
import type { Banding } from '../cabinets/board'
import type { Bevel } from '../cabinets/operation'
import { bandedOn, type Piece, room, UNBANDED } from '../cabinets/piece'
import type { Interval } from '../geometry/interval'
import type { Cabinet, Project, Side, Trim, TrimKind } from '../project/document'
import { find } from '../project/references'
import { footprintOf } from '../runs/footprint'
import { rightEdge, topEdge } from '../runs/lane'
import { type Mm, settle } from '../units/length'
import { spliced } from './splice'

/** What one upper or tall gives the trim under or on it to go along. */
export interface TrimStep {
  readonly cabinet: CabinetId
  /** Along the wall, with what stands beside the carcass. */
  readonly from: Mm
  readonly to: Mm
  /** From the wall to the front edge of the carcass. */
  readonly front: Mm
  /** Where carcass and trim meet, above the floor. */
  readonly level: Mm
}

/** What goes along cabinets. */
export type TrimmedKind = Exclude<TrimKind, 'valance'>

/** Light rails go under uppers, crowns on uppers and talls. */
export function trimStepOf(cabinet: Cabinet, kind: TrimmedKind, project: Project): TrimStep | null {
  if (cabinet.kind === 'base' || cabinet.space || (kind === 'lightRail' && cabinet.kind !== 'upper')) return null
  const footprint = footprintOf(cabinet, project)
  const whole = { from: footprint.left, to: rightEdge(footprint) }
  const along = cabinet.corner ? withoutCorner(cabinet, whole, kind, project) : whole
  return along.to > along.from
    ? { cabinet: cabinet.id, ...along, front: cabinet.depth, level: levelOf(cabinet, kind) }
    : null
}

/** Where a cabinet and the trim under or on it meet, above the floor. */
export function levelOf(cabinet: Cabinet, kind: TrimmedKind): Mm {
  return kind === 'crown' ? topEdge(cabinet) : cabinet.bottom
}

/**
 * What of a corner cabinet lies along its own wall: of an L its own leg, as far into the inside corner as the rear of the
 * trim before the other leg, which is butted against it; of a diagonal no more than the filler or end at its free side.
 */
function withoutCorner(cabinet: Cabinet, whole: Interval, kind: TrimmedKind, project: Project): Interval {
  const { kind: of, hand, otherDepth } = cabinet.corner!
  const trim = project.between[kind]
  const thickness = (trim && find(project.materials, trim.material)?.thickness) ?? 0
  const inner = of === 'L' ? settle(otherDepth + (trim?.forward ?? 0) - thickness) : cabinet.width
  return hand === 'left'
    ? { from: settle(cabinet.left + inner), to: whole.to }
    : { from: whole.from, to: settle(rightEdge(cabinet) - inner) }
}

export function isOneTrim(a: TrimStep, b: TrimStep): boolean {
  return a.to === b.from && a.front === b.front && a.level === b.level
}

/** A stretch of trim in plain measures. */
export interface TrimRun {
  readonly kind: TrimKind
  /** Where it may be spliced: its ends and the edges of its carcasses, from its own left end. */
  readonly edges: readonly Mm[]
  readonly front: Mm
  readonly trim: Trim
  readonly thickness: Mm
  /** Of the band on edges that are seen; 0 for none. */
  readonly band: Mm
  readonly longest: Mm
  /** How far back the return at each end goes, from the wall: to the wall itself, to a neighbour, or null for none. */
  readonly returns: { readonly left: Mm | null; readonly right: Mm | null }
  /** Of ends that are mitred: which face ends at the short point, and by how much it is shorter. Its edges are to the long one. */
  readonly mitres: { readonly left: Mitre | null; readonly right: Mitre | null }
}

export type Mitre = Pick<Bevel, 'face' | 'by'>

/** A trim without returns, or without mitres. */
export const NEITHER = { left: null, right: null } as const

/** Where trims meet in an inside corner of their faces, they are longer behind: null where they are butted. */
export function mitreBehind(thickness: Mm, tangent: number): Mitre | null {
  const by = settle(thickness * tangent)
  return by > 0 ? { face: 'outside', by } : null
}

export const RETURNS = { lightRail: 'lightRailReturn', crown: 'crownReturn' } as const

/** From the wall to the face of the trim. */
export function trimFace({ front, trim }: Pick<TrimRun, 'front' | 'trim'>): Mm {
  return settle(front + trim.forward)
}

/**
 * The boards of a stretch in its own frame. Returns are butted behind the long board, flush with the ends of the run:
 *
 *     |======================|     long board
 *     ||                    ||     returns, back to the wall
 */
export function trimPieces(run: TrimRun): Piece[] {
  const { kind, edges, trim, thickness } = run
  const face = trimFace(run)
  const behind = settle(face - thickness)
  if (behind < 0) return []
  const board = { material: trim.material, explode: forward(WAYS.kick) }
  const y = [0, trim.height] as const
  const length = edges.at(-1)!
  const boards = longPieces(run, 0, [behind, face])
  if (kind === 'valance') return boards
  const ends = [
    { rear: run.returns.left, x: [0, thickness], lie: 'onEdgeLookingRight' },
    { rear: run.returns.right, x: [length - thickness, length], lie: 'onEdgeLookingLeft' },
  ] as const
  // Of a return only the lower edge of a light rail is seen: its ends are butted.
  const banded = kind === 'lightRail' ? bandedOn(['low'], run.band, trim.height) : UNBANDED
  const returns = ends.flatMap(({ rear, x, lie }) =>
    rear === null || rear >= behind ? [] : [{ ...board, banded, box: room(x, y, [rear, behind]), lie }],
  )
  return [...boards, ...returns.map((one, at): Piece => ({ ...one, role: RETURNS[kind], number: at + 1 }))]
}

/** The long board of a trim, in lengths: from so far along, between its rear and its face, in a frame of its own. */
export function longPieces(run: TrimRun, left: Mm, z: readonly [Mm, Mm]): Piece[] {
  const { kind, edges, trim } = run
  const length = edges.at(-1)!
  return spliced(edges, run.longest).map(({ from, to }, at): Piece => {
    const [isFirst, isLast] = [from === 0, to === length]
    const bevels = mitredEnds(run, isFirst, isLast)
    return {
      ...{ material: trim.material, explode: forward(WAYS.kick), role: kind, number: at + 1, lie: 'onEdgeLookingIn' },
      banded: bandedOn(seenEdges(run, isFirst, isLast), run.band, trim.height),
      box: room([left + from, left + to], [0, trim.height], z),
      ...(bevels.length > 0 ? { bevels } : {}),
    }
  })
}

/** The length of a long board runs from right to left. */
function mitredEnds({ mitres: { left, right } }: TrimRun, isFirst: boolean, isLast: boolean): Bevel[] {
  return [
    ...(isLast && right ? [{ kind: 'bevel', edge: 'start', ...right } as const] : []),
    ...(isFirst && left ? [{ kind: 'bevel', edge: 'end', ...left } as const] : []),
  ]
}

/**
 * What of a long board is seen from the room: its lower edge, of a crown where it stands out before the carcass, and its ends
 * that stand free and square. Its length runs from right to left. Common practice, no source.
 */
export function seenEdges(run: TrimRun, isFirst: boolean, isLast: boolean): readonly (keyof Banding)[] {
  const { kind, trim, returns, mitres } = run
  const isFree = (side: Side) => returns[side] !== null && returns[side] < trimFace(run) && !mitres[side]
  const edges: (keyof Banding)[] = kind !== 'crown' || trim.forward > 0 ? ['low'] : []
  if (isLast && isFree('right')) edges.push('start')
  if (isFirst && isFree('left')) edges.push('end')
  return edges
}
