import type { CabinetId } from '../basics/id'
import { forward, WAYS } from '../cabinets/apart'
import { type Piece, room, UNBANDED } from '../cabinets/piece'
import type { Cabinet, Project, Trim, TrimKind } from '../project/document'
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

/** Light rails go under uppers, crowns on uppers and talls. */
export function trimStepOf(cabinet: Cabinet, kind: Exclude<TrimKind, 'valance'>, project: Project): TrimStep | null {
  if (cabinet.kind === 'base' || (kind === 'lightRail' && cabinet.kind !== 'upper')) return null
  const footprint = footprintOf(cabinet, project)
  return {
    cabinet: cabinet.id,
    from: footprint.left,
    to: rightEdge(footprint),
    front: cabinet.depth,
    level: kind === 'crown' ? topEdge(cabinet) : cabinet.bottom,
  }
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
  readonly longest: Mm
  /** How far back the return at each end goes, from the wall: to the wall itself, to a neighbour, or null for none. */
  readonly returns: { readonly left: Mm | null; readonly right: Mm | null }
}

const RETURNS = { lightRail: 'lightRailReturn', crown: 'crownReturn' } as const

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
  const board = { material: trim.material, banded: UNBANDED, explode: forward(WAYS.kick) }
  const y = [0, trim.height] as const
  const boards = spliced(edges, run.longest).map(
    ({ from, to }, at): Piece => ({
      ...board,
      role: kind,
      number: at + 1,
      box: room([from, to], y, [behind, face]),
      lie: 'onEdgeLookingIn',
    }),
  )
  if (kind === 'valance') return boards
  const length = edges.at(-1)!
  const ends = [
    { rear: run.returns.left, x: [0, thickness], lie: 'onEdgeLookingRight' },
    { rear: run.returns.right, x: [length - thickness, length], lie: 'onEdgeLookingLeft' },
  ] as const
  const returns = ends.flatMap(({ rear, x, lie }) =>
    rear === null || rear >= behind ? [] : [{ ...board, box: room(x, y, [rear, behind]), lie }],
  )
  return [...boards, ...returns.map((one, at): Piece => ({ ...one, role: RETURNS[kind], number: at + 1 }))]
}
