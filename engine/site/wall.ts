import { freeId, valuesOf, type WallId } from '../basics/id'
import { remember } from '../basics/remember'
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
  const { closes: _, ...like } = last
  return { ...like, id, name: `Wall ${number}`, order: last.order + 1, meets: false, openings: {} }
}

/** Walls that meet in an inside corner: the right end of the one is the left end of the other. */
export interface InsideCorner {
  readonly before: Wall
  readonly after: Wall
}

/** The walls in rows, each meeting the one before it in its row. The first wall has none before it to meet. */
export function rowsOfWalls(project: Walled): Wall[][] {
  const rows: Wall[][] = []
  for (const wall of wallsOf(project)) {
    const last = rows.at(-1)
    if (last && wall.meets) last.push(wall)
    else rows.push([wall])
  }
  return rows
}

/** A room whose corners are all square inside corners has so many walls. */
const WALLS_OF_A_ROOM = 4

/** Whether a row of walls could meet itself: its last wall the first. */
export function canClose(row: readonly Wall[]): boolean {
  return row.length === WALLS_OF_A_ROOM
}

/** The inside corners of a project, in the order of their walls; that which closes a room comes behind its others. */
export function cornersOf({ walls }: Walled): readonly InsideCorner[] {
  return cornersAmong(walls)
}

const cornersAmong = remember((walls: Project['walls']): readonly InsideCorner[] => {
  return rowsOfWalls({ walls }).flatMap((row) => {
    const corners = row.slice(1).map((after, at) => ({ before: row[at]!, after }))
    const last = row.at(-1)!
    return canClose(row) && last.closes ? [...corners, { before: last, after: row[0]! }] : corners
  })
})

/** A wall that faces another one: both meet the wall between them, whose length is how far they are apart. */
export interface Opposite {
  readonly wall: Wall
  readonly between: Wall
  /** Which of the two facing walls comes first in the row: its right end is where the left end of the other one is across. */
  readonly before: Wall
}

/** The walls that face a wall; in a closed room one, by way of the wall that comes first of those between. */
export function oppositesOf(project: Walled, wall: Wall): Opposite[] {
  const corners = cornersOf(project)
  const found = corners.flatMap((corner) =>
    corners
      .filter(({ before }) => before.id === corner.after.id)
      .flatMap(({ after }): Opposite[] => {
        const { before, after: between } = corner
        if (before.id === wall.id) return [{ wall: after, between, before }]
        return after.id === wall.id ? [{ wall: before, between, before }] : []
      }),
  )
  return found.filter((one, at) => found.findIndex((other) => other.wall.id === one.wall.id) === at)
}

/** Doors and windows that reach into a band of heights, from left to right. */
export function openingsAcross(wall: Wall, band: Interval): Opening[] {
  return valuesOf<Opening>(wall.openings)
    .filter(({ bottom, height }) => intervalsOverlap(band, { from: bottom, to: settle(bottom + height) }))
    .sort((a, b) => a.left - b.left || (a.id < b.id ? -1 : 1))
}
