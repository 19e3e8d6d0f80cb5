import type { CabinetId, MaterialId } from '../basics/id'
import { forward, WAYS } from '../cabinets/apart'
import { methodOf } from '../cabinets/build'
import { type Piece, room, UNBANDED } from '../cabinets/piece'
import type { Cabinet, Project, Side } from '../project/document'
import { find } from '../project/references'
import { roomBeside } from '../runs/footprint'
import { rightEdge } from '../runs/lane'
import { type Mm, settle } from '../units/length'
import { spliced } from './splice'

/** The stretch of kick before one cabinet. */
export interface KickStep {
  readonly cabinet: CabinetId
  /** Along the wall. */
  readonly from: Mm
  readonly to: Mm
  /** From the wall to the face that is seen: at the setback behind the front edge of the carcass. */
  readonly face: Mm
  readonly height: Mm
  readonly material: MaterialId
  readonly thickness: Mm
}

/** What a kick before a cabinet is made of, and how far it stands behind its front; null where it has none. */
export function kickOf(cabinet: Cabinet, project: Project) {
  const { floor, carcassMaterial: material } = methodOf(cabinet, project)
  const thickness = find(project.materials, material)?.thickness
  if (cabinet.kind === 'upper' || floor.kind === 'none' || !(floor.height > 0) || thickness === undefined) return null
  return { floor: floor.kind, setback: floor.setback, height: settle(floor.height), material, thickness }
}

/** The kick before a cabinet, under a filler and before an end with the kick cut out of it; null where it has none. */
export function kickStepOf(cabinet: Cabinet, project: Project): KickStep | null {
  // A corner closes its own floor, along both its inside faces.
  if (cabinet.corner || cabinet.space?.isKickBefore === false) return null
  const kick = kickOf(cabinet, project)
  if (!kick) return null
  const { height, material, thickness } = kick
  return {
    cabinet: cabinet.id,
    from: settle(cabinet.left - kickRoomBeside(cabinet, 'left', project)),
    to: settle(rightEdge(cabinet) + kickRoomBeside(cabinet, 'right', project)),
    face: settle(cabinet.depth - kick.setback),
    ...{ height, material, thickness },
  }
}

/** How far the kick runs on past the carcass: only a panel that stands on the floor stops it there. */
function kickRoomBeside(cabinet: Cabinet, side: Side, project: Project): Mm {
  const beside = cabinet.beside[side]
  const stopsIt = beside.kind === 'panel' && beside.foot === 'floor'
  return stopsIt ? 0 : roomBeside(cabinet, side, project)
}

/** How much longer the kick of a run is at its rear than at its face, at the ends where it is mitred. */
export interface KickMitres {
  readonly left: Mm
  readonly right: Mm
}

/** Kicks in one line that touch: one board goes before all of them. */
export function isOneKick(a: KickStep, b: KickStep): boolean {
  return a.to === b.from && a.face === b.face && a.height === b.height && a.material === b.material
}

/** The boards of one run, in its frame: as long as the run, spliced where their sheets end, mitred where it meets a diagonal. */
export function kickPieces(run: readonly KickStep[], longest: Mm, mitres: KickMitres): Piece[] {
  const [first] = run
  if (!first || first.face <= first.thickness) return []
  const edges = [0, ...run.map(({ to }) => settle(to - first.from))]
  const length = edges.at(-1)!
  // Its length runs from right to left.
  const bevelled = (edge: 'start' | 'end', by: Mm) =>
    by > 0 ? [{ kind: 'bevel', edge, face: 'outside', by } as const] : []
  return spliced(edges, longest).map(({ from, to }, at) => ({
    bevels: [...bevelled('start', to === length ? mitres.right : 0), ...bevelled('end', from === 0 ? mitres.left : 0)],
    role: 'longKick',
    number: at + 1,
    material: first.material,
    box: room([from, to], [0, first.height], [first.face - first.thickness, first.face]),
    lie: 'onEdgeLookingIn',
    banded: UNBANDED,
    explode: forward(WAYS.kick),
  }))
}
