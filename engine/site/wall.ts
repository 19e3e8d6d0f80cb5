import { freeId, valuesOf, type WallId } from '../basics/id'
import { type Interval, intervalsOverlap } from '../geometry/interval'
import type { Opening, Project, Wall } from '../project/document'
import { find } from '../project/references'
import { settle } from '../units/length'

type Walled = Pick<Project, 'walls'>

/** The walls of a project in their order. */
export function wallsOf(project: Walled): Wall[] {
  return valuesOf<Wall>(project.walls).sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1))
}

/** The first wall; null only for a project without a wall. */
export function firstWall(project: Walled): Wall | null {
  return wallsOf(project)[0] ?? null
}

/** A wall by its id; the first where none is asked for, or the one that is asked for is gone. */
export function wallAt(project: Walled, id: WallId | null): Wall | null {
  return (id !== null && find(project.walls, id)) || firstWall(project)
}

/** Another wall behind the last one, as long and as high as that. */
export function freshWall(project: Project): Wall {
  const last = wallsOf(project).at(-1)!
  const names = new Set(wallsOf(project).map(({ name }) => name))
  let number = wallsOf(project).length + 1
  while (names.has(`Wall ${number}`)) number++
  const id = freeId<WallId>('w', project.walls)
  return { ...last, id, name: `Wall ${number}`, order: last.order + 1, meets: false, openings: {} }
}

/** Walls that meet in an inside corner: the right end of the one is the left end of the other. */
export interface InsideCorner {
  readonly before: Wall
  readonly after: Wall
}

/** The inside corners of a project, in the order of their walls. The first wall has none before it to meet. */
export function cornersOf(project: Project): InsideCorner[] {
  const walls = wallsOf(project)
  return walls.slice(1).flatMap((after, at) => (after.meets ? [{ before: walls[at]!, after }] : []))
}

/** Doors and windows that reach into a band of heights, from left to right. */
export function openingsAcross(wall: Wall, band: Interval): Opening[] {
  return valuesOf<Opening>(wall.openings)
    .filter(({ bottom, height }) => intervalsOverlap(band, { from: bottom, to: settle(bottom + height) }))
    .sort((a, b) => a.left - b.left || (a.id < b.id ? -1 : 1))
}
