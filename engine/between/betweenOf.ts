import { valuesOf } from '../basics/id'
import type { Project, Wall } from '../project/document'
import { areTopsMade } from '../project/topOver'
import { type Mm, settle } from '../units/length'
import { isOneKick, type KickStep, kickPieces, kickStepOf } from './kick'
import { kicksMet } from './kickCorner'
import { type SlantKick, slantKickBoards, slantKicks } from './kickSlant'
import { type BuiltRun, boardsFrom, partsOfRun, runNamed } from './run'
import { remembered, runsAlong } from './runsAlong'
import { sameRun } from './sameRun'
import { longestBoard } from './splice'
import { topsOf } from './tops'
import { trimsOf } from './trimsOf'

const NOTHING: readonly BuiltRun[] = []

/** Every run of a project with its boards: kicks, countertops, then trims, each from left to right along each wall. */
export function betweenOf(project: Project): readonly BuiltRun[] {
  const { kick, pins: _, sheets: __, ...others } = project.between
  if (kick === 'perCabinet' && !areTopsMade(project) && Object.values(others).every((one) => one === null))
    return NOTHING
  const walls = valuesOf<Wall>(project.walls).sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1))
  return [...kicksOf(project, walls), ...topsOf(project, walls), ...trimsOf(project, walls)].map(sameRun)
}

function kicksOf(project: Project, walls: readonly Wall[]): BuiltRun[] {
  if (project.between.kick === 'perCabinet') return []
  const along = (wall: Wall) => runsAlong(project, wall, (cabinet) => kickStepOf(cabinet, project), isOneKick)
  const met = kicksMet(project, new Map(walls.map((wall) => [wall.id, along(wall)])))
  const { met: mitred, slants } = slantKicks(project, met, walls)
  const runs = walls.flatMap((wall) => mitred.get(wall.id)!.map((kick) => ({ wall, ...kick })))
  const straight = runs.map(({ wall, steps, mitres }): BuiltRun => {
    const first = steps[0]!
    const name = runNamed('Kick', 'K', first.cabinet, project)
    const longest = longestBoard(project, first.material)
    const hasGrain = project.materials[first.material]?.hasGrain
    const made = remembered(
      project,
      [name, steps.map((step) => shifted(step, first.from)), mitres, longest, hasGrain],
      () => ({
        parts: partsOfRun(name, boardsFrom(kickPieces(steps, longest, mitres)), project),
        problems: [],
      }),
    )
    const width = settle(steps.at(-1)!.to - first.from)
    const place = { wall: wall.id, left: first.from, bottom: 0, width, height: first.height, depth: first.face }
    return { ...name, kind: 'kick', place, cabinets: steps.map(({ cabinet }) => cabinet), ...made }
  })
  return [...straight, ...slants.map((one) => builtSlant(project, one))]
}

/** `BKC2`: the kick before the slanting front of B2. */
function builtSlant(project: Project, slant: SlantKick): BuiltRun {
  const { cabinet, kick, setback, ends } = slant
  const { id, wall, left, width, depth, corner } = cabinet
  const name = runNamed('KickCorner', 'KC', id, project)
  const longest = longestBoard(project, kick.material)
  const key = [name, kick, setback, ends, corner, width, depth, longest, project.materials[kick.material]?.hasGrain]
  const made = remembered(project, key, () => ({
    parts: partsOfRun(name, slantKickBoards(slant, longest), project),
    problems: [],
  }))
  return {
    ...name,
    kind: 'kick',
    place: { wall, left, bottom: 0, width, height: kick.height, depth },
    cabinets: [id],
    ...made,
  }
}

/** A step measured from the left end of its run. */
function shifted(step: KickStep, by: Mm): KickStep {
  return { ...step, from: settle(step.from - by), to: settle(step.to - by) }
}
