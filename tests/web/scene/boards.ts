import type {
  Cabinet,
  CabinetId,
  Derived,
  DerivedCabinet,
  MaterialId,
  Part,
  PartId,
  Vec3,
  WallId,
} from '../../../engine/index'

/** An upright board, its length up and its width out into the room, standing at x in a cabinet; it leaves along `by`. */
export function upright(name: string, at: { x: number; by?: Vec3; role?: Part['role'] }): Part {
  return {
    role: at.role ?? 'leftSide',
    number: 1,
    material: 'm1' as MaterialId,
    length: 700,
    width: 500,
    thickness: 18,
    banding: { low: 0, high: 0, start: 0, end: 0 },
    // Length up and width out of the wall: the thickness runs to the left of the origin's right face, y cross z = x.
    placement: { origin: { x: at.x, y: 0, z: 0 }, length: '+y', width: '+z', thickness: '+x' },
    operations: [],
    explode: { by: at.by ?? { x: 0, y: 0, z: 0 }, from: 0, to: 1 },
    id: `k1/${name}` as PartId,
    owner: 'k1' as CabinetId,
    mark: `B1-${name}`,
    name,
    cutLength: 700,
    cutWidth: 500,
    isGrainBound: true,
    bank: null,
    from: null,
  }
}

export function built(id: string, left: number, parts: readonly Part[], box: Partial<Cabinet> = {}): DerivedCabinet {
  const cabinet = {
    id: id as CabinetId,
    kind: 'base',
    number: 1,
    wall: 'w1' as WallId,
    left,
    bottom: 0,
    width: 600,
    height: 700,
    depth: 500,
    ...box,
  } as Cabinet
  return { cabinet, mark: id, parts, fronts: [], openings: [], hardware: [], problems: [] }
}

/** Cabinets on one wall, with just as much of the rest as the scene asks for. */
export function onAWall(...cabinets: DerivedCabinet[]): Derived {
  const wall = { id: 'w1', name: 'Window wall', order: 1, length: 3600, height: 2400, openings: {} }
  const parts = cabinets.flatMap((each) => each.parts)
  return {
    project: { walls: { w1: wall }, materials: { m1: { density: 700 } }, display: { unit: 'mm', step: 1 } },
    cabinets,
    runs: [],
    cabinetOf: Object.fromEntries(cabinets.map((each) => [each.cabinet.id, each])),
    partOf: new Map(parts.map((part) => [part.id, part])),
    rowOf: new Map(parts.map((part) => [part.id, `row of ${part.name}`])),
    cutList: { rows: [], totals: [] },
  } as unknown as Derived
}
