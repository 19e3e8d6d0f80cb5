import type { Project, TrimKind, Wall } from '../project/document'
import { find } from '../project/references'
import { type BuiltRun, bandingRules, boardsFrom, partsOfRun, runNamed } from './run'
import { remembered } from './runsAlong'
import { longestBoard } from './splice'
import { type Stretch, trimmedRuns, valancesAt } from './stretch'
import { NEITHER, type TrimRun, trimFace, trimPieces } from './trim'
import { type CornerTrimmed, cornerTrimBoards, cornerTrims, type TrimRules } from './trimCorner'
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
      const stretches =
        kind === 'valance' ? valancesAt(project, wall, trim) : trimmedRuns({ project, kind, trim }, wall, thickness)
      const rules = { trim, thickness, band, longest }
      const straight = stretches.map((one) => builtTrim(project, wall, kind, { ...one.run, kind, ...rules }, one))
      if (kind === 'valance') return straight
      const inCorners = cornerTrims({ project, kind, trim }, wall).map((one) =>
        builtInCorner(project, wall, { kind, ...rules }, one),
      )
      return [...straight, ...inCorners]
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

/** `UCC2`: the crown before the slanting face of U2, or before the other leg of an L. */
function builtInCorner(project: Project, wall: Wall, rules: TrimRules, one: CornerTrimmed): BuiltRun {
  const { kind, trim, thickness } = rules
  const { cabinet, bottom, made: from } = one
  const { left, width, depth } = cabinet
  const name = runNamed(`${ID_NAMES[kind]}Corner`, `${LETTERS[kind]}C`, cabinet.id, project)
  const hasGrain = project.materials[trim.material]?.hasGrain
  const { isInFinishedSize } = bandingRules(project)
  const key = [name, rules, from, bottom, hasGrain, wall.height, project.display, isInFinishedSize]
  const made = remembered(project, key, () => {
    const parts = partsOfRun(name, cornerTrimBoards(from, rules), project)
    const run: TrimRun = {
      ...rules,
      edges: [0, parts[0]?.length ?? 0],
      front: depth,
      ...{ returns: NEITHER, mitres: NEITHER },
    }
    return { parts, problems: trimProblems(run, { cabinets: [cabinet.id], bottom }, name, wall, project) }
  })
  const size = { width, height: trim.height, depth: Math.max(trimFace({ front: depth, trim }), thickness) }
  return { ...name, kind, place: { wall: wall.id, left, bottom, ...size }, cabinets: [cabinet.id], ...made }
}
