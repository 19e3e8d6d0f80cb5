import type { CabinetId } from '../basics/id'
import { valuesOf } from '../basics/id'
import type { Countertop } from '../project/between'
import type { Project, Wall } from '../project/document'
import { find } from '../project/references'
import { footprintOf } from '../runs/footprint'
import { rightEdge, sharedBy } from '../runs/lane'
import { type Mm, settle } from '../units/length'
import { isOneTop, type TopRun, type TopStep, topBoards, topDepth, topLength, topStepOf } from './countertop'
import { isOneKick, type KickStep, kickPieces, kickStepOf } from './kick'
import { type BuiltRun, bandingRules, boardsFrom, partsOfRun, type RunName, runNamed } from './run'
import { cabinetsAt, remembered, runsAlong } from './runsAlong'
import { longestBoard } from './splice'
import { topProblems } from './topProblems'
import { trimsOf } from './trimsOf'

const NOTHING: readonly BuiltRun[] = []

/** Every run of a project with its boards: kicks, countertops, then trims, each from left to right along each wall. */
export function betweenOf(project: Project): readonly BuiltRun[] {
  const { kick, ...others } = project.between
  if (kick === 'perCabinet' && Object.values(others).every((one) => one === null)) return NOTHING
  const walls = valuesOf<Wall>(project.walls).sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1))
  return [...kicksOf(project, walls), ...topsOf(project, walls), ...trimsOf(project, walls)]
}

function kicksOf(project: Project, walls: readonly Wall[]): BuiltRun[] {
  if (project.between.kick === 'perCabinet') return []
  const runs = walls.flatMap((wall) => {
    const along = runsAlong(project, wall, (cabinet) => kickStepOf(cabinet, project), isOneKick)
    return along.map((steps) => ({ wall, steps }))
  })
  return runs.map(({ wall, steps }): BuiltRun => {
    const first = steps[0]!
    const name = runNamed('Kick', 'K', first.cabinet, project)
    const longest = longestBoard(project, first.material)
    const hasGrain = project.materials[first.material]?.hasGrain
    const made = remembered(project, [name, steps.map((step) => shifted(step, first.from)), longest, hasGrain], () => ({
      parts: partsOfRun(name, boardsFrom(kickPieces(steps, longest)), project),
      problems: [],
    }))
    const width = settle(steps.at(-1)!.to - first.from)
    const place = { wall: wall.id, left: first.from, bottom: 0, width, height: first.height, depth: first.face }
    return { ...name, kind: 'kick', place, cabinets: steps.map(({ cabinet }) => cabinet), ...made }
  })
}

function topsOf(project: Project, walls: readonly Wall[]): BuiltRun[] {
  const { countertop } = project.between
  const thickness = countertop && find(project.materials, countertop.material)?.thickness
  if (!countertop || !thickness) return []
  const runs = walls.flatMap((wall) => {
    const along = runsAlong(project, wall, (cabinet) => topStepOf(cabinet, project), isOneTop)
    return along.map((steps) => ({ wall, steps }))
  })
  return runs.map(({ wall, steps }) => {
    const name = runNamed('Top', 'T', steps[0]!.cabinet, project)
    return topOf(project, wall, steps, name, countertop, thickness)
  })
}

function topOf(
  project: Project,
  wall: Wall,
  steps: readonly TopStep[],
  name: RunName,
  countertop: Countertop,
  thickness: Mm,
): BuiltRun {
  const [left, right] = endsOf(project, wall, steps, countertop.ends, thickness)
  const longest = longestBoard(project, countertop.material)
  const run: TopRun = { steps, left, right, countertop, thickness, longest }
  const first = steps[0]!
  const hasGrain = project.materials[countertop.material]?.hasGrain
  const own = { ...run, steps: steps.map((step) => shifted(step, first.from)) }
  const marks = steps.map(({ cabinet }) => project.cabinets[cabinet]!.number)
  const made = remembered(
    project,
    [name, own, marks, hasGrain, project.display, bandingRules(project).isInFinishedSize],
    () => ({
      parts: partsOfRun(name, topBoards(run), project),
      problems: topProblems(run, project),
    }),
  )
  const place = {
    wall: wall.id,
    left: settle(first.from - left),
    bottom: first.level,
    width: topLength(run),
    height: settle(thickness + countertop.splash),
    depth: topDepth(run),
  }
  return { ...name, kind: 'countertop', place, cabinets: steps.map(({ cabinet }) => cabinet), ...made }
}

/** A step measured from the left end of its run. */
function shifted<Step extends KickStep | TopStep>(step: Step, by: Mm): Step {
  const middle = 'middle' in step ? { middle: settle(step.middle - by) } : {}
  return { ...step, ...middle, from: settle(step.from - by), to: settle(step.to - by) }
}

/**
 * How far a top stands out past its ends: by what is wanted, but not into the end of the wall or what stands beside it.
 * Two tops of one level share the gap between them.
 */
function endsOf(project: Project, wall: Wall, steps: readonly TopStep[], wanted: Mm, thickness: Mm): readonly [Mm, Mm] {
  const { from, level } = steps[0]!
  const { to } = steps.at(-1)!
  const inRun = new Set<CabinetId>(steps.map(({ cabinet }) => cabinet))
  const band = { left: from, width: settle(to - from), bottom: level, height: thickness }
  let left = Math.min(wanted, from)
  let right = Math.min(wanted, settle(wall.length - to))
  for (const other of cabinetsAt(project, wall).filter(({ id }) => !inRun.has(id))) {
    const there = footprintOf(other, project)
    const hasTop = other.kind === 'base'
    const covered = hasTop ? { ...there, height: settle(there.height + thickness) } : there
    if (sharedBy(band, covered).y <= 0) continue
    const share = hasTop ? 2 : 1
    if (there.left + there.width / 2 < from + band.width / 2) left = Math.min(left, (from - rightEdge(there)) / share)
    else right = Math.min(right, (there.left - to) / share)
  }
  return [settle(Math.max(0, left)), settle(Math.max(0, right))]
}
