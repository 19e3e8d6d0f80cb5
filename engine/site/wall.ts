import { valuesOf } from '../basics/id'
import { type Interval, intervalsOverlap } from '../geometry/interval'
import type { Opening, Project, Wall } from '../project/document'
import { settle } from '../units/length'

/** The walls of a project in their order. */
export function wallsOf(project: Project): Wall[] {
  return valuesOf<Wall>(project.walls).sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1))
}

/** The wall that new cabinets go on; null only for a project without a wall. */
export function firstWall(project: Project): Wall | null {
  return wallsOf(project)[0] ?? null
}

/** Doors and windows that reach into a band of heights, from left to right. */
export function openingsAcross(wall: Wall, band: Interval): Opening[] {
  return valuesOf<Opening>(wall.openings)
    .filter(({ bottom, height }) => intervalsOverlap(band, { from: bottom, to: settle(bottom + height) }))
    .sort((a, b) => a.left - b.left || (a.id < b.id ? -1 : 1))
}
