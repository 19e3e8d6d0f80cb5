import type { Project, TrimKind, Wall } from '../project/document'
import { find } from '../project/references'
import { type BuiltRun, bandingRules, boardsFrom, partsOfRun, runNamed } from './run'
import { remembered } from './runsAlong'
import { longestBoard } from './splice'
import { type Stretch, trimmedRuns, valancesAt } from './stretch'
import { type TrimRun, trimFace, trimPieces } from './trim'
import { trimProblems } from './trimProblems'

const ID_NAMES: Readonly<Record<TrimKind, string>> = { lightRail: 'Rail', crown: 'Crown', valance: 'Valance' }
/** The second letter of a mark: `UL2` is the light rail of the run that begins with U2. */
const LETTERS: Readonly<Record<TrimKind, string>> = { lightRail: 'L', crown: 'C', valance: 'V' }
const KINDS = ['lightRail', 'crown', 'valance'] as const

/** Light rails under uppers, crowns on uppers and talls, valances over windows between uppers. */
export function trimsOf(project: Project, walls: readonly Wall[]): BuiltRun[] {
  return KINDS.flatMap((kind) => {
    const trim = project.between[kind]
    const thickness = trim && find(project.materials, trim.material)?.thickness
    if (!trim || !thickness) return []
    const longest = longestBoard(project, trim.material)
    const band = bandingRules(project).fronts
    return walls.flatMap((wall) => {
      const stretches = kind === 'valance' ? valancesAt(project, wall, trim) : trimmedRuns(project, wall, kind, trim)
      return stretches.map((one) =>
        builtTrim(project, wall, kind, { ...one.run, kind, trim, thickness, band, longest }, one),
      )
    })
  })
}

function builtTrim(project: Project, wall: Wall, kind: TrimKind, run: TrimRun, stretch: Stretch): BuiltRun {
  const { trim, thickness, edges } = run
  const { cabinets, left, bottom } = stretch
  const name = runNamed(ID_NAMES[kind], LETTERS[kind], cabinets[0]!, project)
  const hasGrain = project.materials[trim.material]?.hasGrain
  const made = remembered(
    project,
    [name, run, bottom, hasGrain, wall.height, project.display, bandingRules(project).isInFinishedSize],
    () => ({
      parts: partsOfRun(name, boardsFrom(trimPieces(run)), project),
      problems: trimProblems(run, stretch, name, wall, project),
    }),
  )
  const size = { width: edges.at(-1)!, height: trim.height, depth: Math.max(trimFace(run), thickness) }
  return { ...name, kind, place: { wall: wall.id, left, bottom, ...size }, cabinets, ...made }
}
