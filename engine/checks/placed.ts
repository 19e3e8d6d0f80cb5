import type { CabinetId } from '../basics/id'
import type { BuiltRun } from '../between/run'
import { areFrontsInset, methodOf } from '../cabinets/build'
import type { Project } from '../project/document'
import { areTopsMade } from '../project/topOver'
import { acrossFindings } from './across'
import { bareTopFindings } from './bareTop'
import { besideFindings } from './beside'
import { blindMeasureFindings } from './blindMeasure'
import { drawerOut } from './boards'
import { cornerFindings } from './corner'
import type { Checked, Finding } from './finding'
import { hobFindings } from './hob'
import { insideCornerFindings } from './insideCorner'
import { landingFindings } from './landing'
import { lostCutoutFindings } from './lostCutout'
import { overhangFindings } from './overhang'
import { overTopFindings } from './overTop'
import { partedCornerFindings } from './partedCorner'
import { partedTopFindings } from './partedTop'
import { seatBoardFindings } from './seatBoard'
import { seenScrewFindings } from './seenScrews'
import { sillFindings } from './sill'
import { spaceFindings } from './space'
import { drawerFindings, freeFindings, standingFindings } from './standing'
import { triangleFindings } from './triangle'
import { uncutSinkFindings } from './uncutSink'
import { underCutoutFindings } from './underCutout'

/** A cabinet that is built, where it stands. */
type Placed = Pick<Checked, 'cabinet' | 'mark' | 'parts' | 'fronts'>

/** What depends on where a cabinet stands and on what is beside it. */
export function placeFindings(
  project: Project,
  cabinets: readonly Placed[],
  ones: readonly Placed[] = cabinets,
): Finding[] {
  const standing = cabinets.map(({ cabinet, mark, fronts, parts }) => {
    const method = methodOf(cabinet, project)
    const thickness = project.materials[method.frontMaterial]?.thickness ?? 0
    // The doors of a corner open into the corner, away from what is beside it.
    const beside = cabinet.corner ? [] : fronts
    const frontThickness = areFrontsInset(method) || fronts.length === 0 ? 0 : thickness
    return { cabinet, mark, fronts: beside, frontThickness, drawerOut: drawerOut(parts, method) }
  })
  const boxes = ones.map(({ cabinet }) => cabinet)
  const asked = ones === cabinets ? standing : standing.filter(({ cabinet }) => boxes.includes(cabinet))
  return [
    ...besideFindings(project, standing, asked),
    ...standingFindings(project, boxes),
    ...drawerFindings(project, ones),
    ...freeFindings(project, boxes),
    ...cornerFindings(project, boxes),
    ...insideCornerFindings(project, standing, asked),
    ...acrossFindings(project, standing, asked),
    ...blindMeasureFindings(project, asked),
    ...seenScrewFindings(project, boxes),
  ]
}

/** What lies in the countertops, hangs over them, stands behind and under them, and in spaces between them. */
export function topFindings(project: Project, runs: readonly BuiltRun[], cabinets: readonly Placed[]): Finding[] {
  const free = [...hobFindings(project, runs), ...spaceFindings(project, runs)]
  if (!areTopsMade(project)) return free
  const boardsOf = (id: CabinetId) => cabinets.find(({ cabinet }) => cabinet.id === id)?.parts ?? []
  return [
    ...free,
    ...bareTopFindings(project, runs),
    ...overhangFindings(project, runs),
    ...underCutoutFindings(project, runs, boardsOf),
    ...lostCutoutFindings(project),
    ...uncutSinkFindings(project),
    ...landingFindings(project, runs),
    ...triangleFindings(project, runs),
    ...overTopFindings(project, runs),
    ...partedTopFindings(project, runs),
    ...partedCornerFindings(project, runs),
    ...sillFindings(project, runs),
    ...seatBoardFindings(project, runs, boardsOf),
  ]
}
