import { valuesOf, type WallId } from '../basics/id'
import type { Problem } from '../basics/problem'
import { remember } from '../basics/remember'
import type { Part } from '../parts/part'
import type { Cabinet, Project, Wall } from '../project/document'

/** What stands and hangs at a wall, from left to right. */
export function cabinetsAt({ cabinets }: Project, wall: Wall): readonly Cabinet[] {
  return byWall(cabinets).get(wall.id) ?? []
}

/** Kicks, tops and every kind of trim ask for the same at each move. */
const byWall = remember((cabinets: Project['cabinets']): ReadonlyMap<WallId, readonly Cabinet[]> => {
  const walls = new Map<WallId, Cabinet[]>()
  const fromLeft = valuesOf<Cabinet>(cabinets).sort((a, b) => a.left - b.left || (a.id < b.id ? -1 : 1))
  for (const one of fromLeft) {
    const before = walls.get(one.wall)
    if (before) before.push(one)
    else walls.set(one.wall, [one])
  }
  return walls
})

/** What of each cabinet at a wall goes into a run, parted wherever one does not go on from the one before it. */
export function runsAlong<Step>(
  project: Project,
  wall: Wall,
  stepOf: (cabinet: Cabinet) => Step | null,
  goesOn: (a: Step, b: Step) => boolean,
): Step[][] {
  return parted(
    cabinetsAt(project, wall).flatMap((cabinet): Step[] => {
      const step = stepOf(cabinet)
      return step === null ? [] : [step]
    }),
    goesOn,
  )
}

/** Steps from left to right, parted wherever one does not go on from the one before it. */
export function parted<Step>(steps: readonly Step[], goesOn: (a: Step, b: Step) => boolean): Step[][] {
  const runs: Step[][] = []
  for (const step of steps) {
    const last = runs.at(-1)
    if (last && goesOn(last.at(-1)!, step)) last.push(step)
    else runs.push([step])
  }
  return runs
}

export interface Boards {
  readonly parts: readonly Part[]
  readonly problems: readonly Problem[]
}

/** Boards by what they are made from: a run that nothing touched, or that only moved as a whole, keeps its own. */
const known = new Map<string, Boards>()
const MOST_KNOWN = 500

export function remembered({ between }: Project, from: unknown, make: () => Boards): Boards {
  const key = JSON.stringify([from, between.pins, between.sheets])
  const before = known.get(key)
  if (before) return before
  if (known.size >= MOST_KNOWN) known.clear()
  const fresh = make()
  known.set(key, fresh)
  return fresh
}
