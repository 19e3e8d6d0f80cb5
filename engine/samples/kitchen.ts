import type { CabinetId, OpeningId, ProjectId } from '../basics/id'
import { newProject } from '../project/defaults'
import {
  type Cabinet,
  type CabinetKind,
  type Front,
  type FrontRow,
  type Interior,
  NOTHING_BESIDE,
  type Project,
} from '../project/document'
import { firstWall } from '../site/wall'
import type { Mm } from '../units/length'

const DOOR_LEFT: Front = { kind: 'door', hinge: 'left' }
const DOOR_RIGHT: Front = { kind: 'door', hinge: 'right' }
const PAIR: Front = { kind: 'pair' }
const EMPTY: Interior = { fixedShelves: 0, adjustableShelves: 0, partition: null }

/** A drawer front as high as the fist of a kitchen needs it (common practice, no source). */
const TOP_DRAWER: FrontRow = { size: { kind: 'fixed', height: 140 }, front: { kind: 'drawer' } }

/**
 * The kitchen that the first run opens: one wall of 3600 under a ceiling at 2400, its window over the sink. A place is
 * left at the right end, for a machine or one more base.
 *
 *     |    |U1|  window  |U2|U3|U4| |
 *     | T1 |--+          +--+--+--| |
 *     |    |B1|B2|  B3  |B4|B5|     |
 */
export function demonstrationKitchen(): Project {
  const plain = newProject('mm', 'Ferry Cottage kitchen')
  const wall = firstWall(plain)!
  const overTheSink = {
    id: 'o1' as OpeningId,
    kind: 'window',
    left: 1300,
    bottom: 1000,
    width: 1200,
    height: 1100,
  } as const
  const cabinets = [
    place(plain, 'tall', 1, 0, 600, rows(share(2, DOOR_LEFT), share(3, DOOR_LEFT)), shelves(4, 1)),
    place(plain, 'base', 1, 600, 500, rows(TOP_DRAWER, share(1, { kind: 'drawer' }), share(1, { kind: 'drawer' }))),
    place(plain, 'base', 2, 1100, 300, rows(TOP_DRAWER, share(1, DOOR_LEFT)), shelves(1)),
    place(plain, 'base', 3, 1400, 800, PAIR),
    place(plain, 'base', 4, 2200, 450, rows(TOP_DRAWER, share(1, DOOR_RIGHT)), shelves(1)),
    place(plain, 'base', 5, 2650, 300, DOOR_RIGHT, shelves(2)),
    place(plain, 'upper', 1, 600, 650, PAIR, { ...shelves(2), partition: { at: 0.5 } }),
    place(plain, 'upper', 2, 2550, 300, { kind: 'open' }, shelves(0, 2)),
    place(plain, 'upper', 3, 2850, 400, DOOR_LEFT, shelves(2)),
    place(plain, 'upper', 4, 3250, 300, DOOR_RIGHT, shelves(2)),
  ]
  return {
    ...plain,
    id: 'ferry-cottage' as ProjectId,
    walls: {
      [wall.id]: { ...wall, name: 'Window wall', openings: { [overTheSink.id]: overTheSink } },
    } as Project['walls'],
    cabinets: numbered(cabinets),
  }
}

const PLAIN = {
  ...{ method: null, overrides: {}, isGrainRunning: false, pins: {} },
  ...{ beside: NOTHING_BESIDE, cutout: null, corner: null },
} as const

/** A cabinet at the usual height and depth of its kind. */
export function place(
  project: Project,
  kind: CabinetKind,
  number: number,
  left: Mm,
  width: Mm,
  front: Front,
  interior: Interior = EMPTY,
): Cabinet {
  const { height, depth, bottom } = project.newCabinets[kind]
  const wall = firstWall(project)!.id
  const id = 'k0' as CabinetId
  return { id, kind, number, wall, left, bottom, width, height, depth, front, interior, ...PLAIN }
}

/** Cabinets as a map, named k1, k2... in the order given. */
export function numbered(cabinets: readonly Cabinet[]): Project['cabinets'] {
  const named = cabinets.map((cabinet, at) => ({ ...cabinet, id: `k${at + 1}` as CabinetId }))
  return Object.fromEntries(named.map((cabinet) => [cabinet.id, cabinet]))
}

export function rows(...all: readonly FrontRow[]): Front {
  return { kind: 'rows', rows: all }
}

export function share(part: number, front: Front): FrontRow {
  return { size: { kind: 'share', share: part }, front }
}

export function shelves(adjustableShelves: number, fixedShelves = 0): Interior {
  return { fixedShelves, adjustableShelves, partition: null }
}
