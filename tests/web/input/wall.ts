import {
  applyEdit,
  type Cabinet,
  type CabinetId,
  type CabinetKind,
  NOTHING_BESIDE,
  newProject,
  type Project,
} from '../../../engine/index'

/** A metric wall of 3600 by 2400 with the cabinets that a test is about. */
export function aWall(...cabinets: readonly Cabinet[]): Project {
  return cabinets.reduce((project, cabinet) => applyEdit(project, { kind: 'addCabinet', cabinet }), newProject('mm'))
}

export function base(mark: string, shape: Partial<Cabinet> = {}): Cabinet {
  return cabinetOf('base', mark, { width: 600, height: 868, depth: 580, bottom: 0, ...shape })
}

export function upper(mark: string, shape: Partial<Cabinet> = {}): Cabinet {
  return cabinetOf('upper', mark, { width: 600, height: 720, depth: 330, bottom: 1432, ...shape })
}

function cabinetOf(kind: CabinetKind, mark: string, shape: Partial<Cabinet>): Cabinet {
  return {
    id: idOf(mark),
    kind,
    number: Number(mark.slice(1)),
    wall: 'w1' as Cabinet['wall'],
    left: 0,
    bottom: 0,
    width: 600,
    height: 868,
    depth: 580,
    front: { kind: 'open' },
    interior: { fixedShelves: 0, adjustableShelves: 0, partition: null },
    method: null,
    overrides: {},
    isGrainRunning: false,
    pins: {},
    beside: NOTHING_BESIDE,
    cutout: null,
    corner: null,
    ...shape,
  }
}

/** `B1` is filed as `b1`. */
export function idOf(mark: string): CabinetId {
  return mark.toLowerCase() as CabinetId
}
