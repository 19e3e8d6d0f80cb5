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

/** The kick before a cabinet, under a filler and before an end with the kick cut out of it; null where it has none. */
export function kickStepOf(cabinet: Cabinet, project: Project): KickStep | null {
  const { floor, carcassMaterial } = methodOf(cabinet, project)
  const thickness = find(project.materials, carcassMaterial)?.thickness
  // A corner closes its own floor, along both its inside faces.
  if (cabinet.corner || cabinet.space?.isKickBefore === false) return null
  if (cabinet.kind === 'upper' || floor.kind === 'none' || !(floor.height > 0) || thickness === undefined) return null
  return {
    cabinet: cabinet.id,
    from: settle(cabinet.left - kickRoomBeside(cabinet, 'left', project)),
    to: settle(rightEdge(cabinet) + kickRoomBeside(cabinet, 'right', project)),
    face: settle(cabinet.depth - floor.setback),
    height: settle(floor.height),
    material: carcassMaterial,
    thickness,
  }
}

/** How far the kick runs on past the carcass: only a panel that stands on the floor stops it there. */
function kickRoomBeside(cabinet: Cabinet, side: Side, project: Project): Mm {
  const beside = cabinet.beside[side]
  const stopsIt = beside.kind === 'panel' && beside.foot === 'floor'
  return stopsIt ? 0 : roomBeside(cabinet, side, project)
}

/** Kicks in one line that touch: one board goes before all of them. */
export function isOneKick(a: KickStep, b: KickStep): boolean {
  return a.to === b.from && a.face === b.face && a.height === b.height && a.material === b.material
}

/** The boards of one run, in its frame: as long as the run, spliced where their sheets end. */
export function kickPieces(run: readonly KickStep[], longest: Mm): Piece[] {
  const [first] = run
  if (!first || first.face <= first.thickness) return []
  const edges = [0, ...run.map(({ to }) => settle(to - first.from))]
  return spliced(edges, longest).map(({ from, to }, at) => ({
    role: 'longKick',
    number: at + 1,
    material: first.material,
    box: room([from, to], [0, first.height], [first.face - first.thickness, first.face]),
    lie: 'onEdgeLookingIn',
    banded: UNBANDED,
    explode: forward(WAYS.kick),
  }))
}
