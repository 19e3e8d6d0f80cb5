import type { BuiltRun } from '../between/run'
import { cutoutAlong } from '../project/cutout'
import type { Cabinet, Countertop, Cutout, OwnTop, Project } from '../project/document'
import type { Edit } from '../project/edit'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { countertopOver, topEdit, topThickness } from '../project/topOver'
import { topEdge } from '../runs/lane'
import { type Mm, settle } from '../units/length'

/** A sink or hob that is let into a countertop, along the wall and up it. */
export interface LetIn {
  readonly cabinet: Cabinet
  readonly mark: string
  readonly of: Cutout['of']
  readonly left: Mm
  readonly right: Mm
  readonly top: BuiltRun
  /** The upper face of the countertop, from the floor. */
  readonly surface: Mm
}

/** Everything that is let into the countertops of a project. */
export function letInto(project: Project, runs: readonly BuiltRun[]): LetIn[] {
  return countertops(runs).flatMap((top) =>
    top.cabinets.flatMap((id): LetIn[] => {
      const cabinet = project.cabinets[id]!
      const { cutout } = cabinet
      // What is let into a corner lies in the top of its own wall.
      if (!cutout || cabinet.wall !== top.place.wall) return []
      const surface = surfaceOf(top, project)
      const along = cutoutAlong(cabinet, cutout)
      // One that does not lie in its countertop is left out, and told there.
      if (!isWithin(along, top) || cutout.fromFront <= 0 || cutout.fromFront + cutout.depth >= top.place.depth)
        return []
      return [{ cabinet, mark: markOf(cabinet), of: cutout.of, ...along, top, surface }]
    }),
  )
}

function isWithin({ left, right }: Pick<LetIn, 'left' | 'right'>, { place }: BuiltRun): boolean {
  return left > place.left && right < place.left + place.width
}

export function countertops(runs: readonly BuiltRun[]): BuiltRun[] {
  return runs.filter(({ kind }) => kind === 'countertop')
}

export function surfaceOf({ cabinets }: BuiltRun, project: Project): Mm {
  const first = project.cabinets[cabinets[0]!]!
  return settle(topEdge(first) + topThickness(first, project))
}

/** What a countertop is made by: the same over all that it goes over. */
export function countertopOf({ cabinets }: BuiltRun, project: Project): Countertop {
  return countertopOver(project.cabinets[cabinets[0]!]!, project)!
}

/** A change of one measure of a countertop, where that is settled: over its own bases, or for the project. */
export function topChanged({ cabinets }: BuiltRun, project: Project, change: OwnTop): Edit {
  return topEdit(
    project,
    cabinets.flatMap((id) => find(project.cabinets, id) ?? []),
    change,
  )
}
