import type { CabinetId, MaterialId, OpeningId, StockId, WallId } from '../../engine/basics/id'
import { newProject } from '../../engine/project/defaults'
import {
  type Cabinet,
  type CabinetKind,
  NOTHING_BESIDE,
  type Opening,
  type Project,
} from '../../engine/project/document'
import type { Appliance, ApplianceSpace } from '../../engine/project/space'
import { usualSpace } from '../../engine/project/usualSpace'

export type Said = Partial<Omit<Cabinet, 'id' | 'kind' | 'number'>>

export const WALL = 'w1' as WallId
const KINDS: Readonly<Record<string, CabinetKind>> = { B: 'base', U: 'upper', T: 'tall', S: 'base' }

/** A cabinet by its mark, `B1`, with the usual sizes of its kind and what the test says. Its id is the mark, small. */
export function cabinet(mark: string, said: Said = {}): Cabinet {
  const kind = KINDS[mark.charAt(0)]!
  return {
    id: idOf(mark),
    kind,
    number: Number(mark.slice(1)),
    wall: WALL,
    left: 0,
    ...newProject('mm').newCabinets[kind],
    front: { kind: 'open' },
    interior: { fixedShelves: 0, adjustableShelves: 0, partition: null },
    method: null,
    overrides: {},
    isGrainRunning: false,
    pins: {},
    beside: NOTHING_BESIDE,
    cutout: null,
    corner: null,
    ...said,
  }
}

/** A space by its mark, `S1`, of the usual size for an appliance and what the test says. */
export function space(mark: string, of: Appliance, said: Said = {}, asks: Partial<ApplianceSpace> = {}): Cabinet {
  const usual = usualSpace(newProject('mm'), of, 'base')
  return { ...cabinet(mark, { ...usual, ...said }), space: { ...usual.space, ...asks } }
}

/** A metric project with one wall of 3600 by 2400 and the cabinets on it. */
export function aWall(...cabinets: readonly Cabinet[]): Project {
  const plain = newProject('mm')
  return { ...plain, cabinets: Object.fromEntries(cabinets.map((one) => [one.id, one])) as Project['cabinets'] }
}

/** The same project with other measures of its wall, and openings in it. */
export function withWall(
  project: Project,
  said: { readonly length?: number; readonly height?: number },
  ...openings: readonly Omit<Opening, 'id'>[]
): Project {
  const named = openings.map((opening, at) => ({ ...opening, id: `o${at + 1}` as OpeningId }))
  const wall = { ...project.walls[WALL]!, ...said, openings: Object.fromEntries(named.map((one) => [one.id, one])) }
  return { ...project, walls: { [WALL]: wall } as Project['walls'] }
}

export function idOf(mark: string): CabinetId {
  return mark.toLowerCase() as CabinetId
}

/** A cabinet of the project by its mark. */
export function the(project: Project, mark: string): Cabinet {
  return project.cabinets[idOf(mark)]!
}

export const OTHER_WALL = 'w2' as WallId

/** A metric project with two walls, the second of 2800: its left end meets the right end of the first, of 3600, in a corner. */
export function aCorner(...cabinets: readonly Cabinet[]): Project {
  const project = aWall(...cabinets)
  const first = project.walls[WALL]!
  const second = { ...first, id: OTHER_WALL, name: 'Side wall', order: 2, length: 2800, meets: true }
  return { ...project, walls: { ...project.walls, [OTHER_WALL]: second } }
}

/** Walls `w1` to `w4` of a closed room of 3600 by 2800, and the cabinets at them. */
export function aRoom(...cabinets: readonly Cabinet[]): Project {
  const project = aCorner(...cabinets)
  const [first, second] = [project.walls[WALL]!, project.walls[OTHER_WALL]!]
  const third = { ...first, id: 'w3' as WallId, name: 'Wall 3', order: 3, meets: true }
  const fourth = { ...second, id: 'w4' as WallId, name: 'Wall 4', order: 4, closes: true }
  return { ...project, walls: { ...project.walls, [third.id]: third, [fourth.id]: fourth } }
}

/** The same project with one more sheet of a material, longer than any run of a test. */
export function withBoards(project: Project, material: MaterialId, length: number): Project {
  const id = 's9' as StockId
  const usual = Object.values(project.stock).find((one) => one.material === material)!
  return { ...project, stock: { ...project.stock, [id]: { ...usual, id, length } } }
}
