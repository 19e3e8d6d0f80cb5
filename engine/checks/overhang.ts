import { counted } from '../basics/counted'
import type { BuiltRun } from '../between/run'
import { boxOf } from '../cabinets/boardBox'
import { isTopBoard } from '../cabinets/role'
import type { Cabinet, Material, OwnTop, Project } from '../project/document'
import type { Edit } from '../project/edit'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { eachTop } from '../project/topOver'
import { footprintOf } from '../runs/footprint'
import { rightEdge } from '../runs/lane'
import { faceFrom } from '../runs/reach'
import { inch, type Mm, settle } from '../units/length'
import { NEWTON_PER_KG } from '../units/weight'
import { about, type Finding, withRemedy } from './finding'
import { CASEWORK_LOADS, MOST_ON_A_SHELF, SHELF_LOADS } from './load'
import { sayIn } from './say'
import { countertopOf, countertops, surfaceOf, topChanged } from './worktop'

/** How much of what stands out a board may give at its edge. */
const SHARE = 144
const SOURCE = `${CASEWORK_LOADS}: the most on any one shelf, here on the edge; limit: 1.2.21.3`

/** One sits at so much of an edge, and leans on it. */
const SEAT = inch(24)
/** Knee space by the height of the surface. */
const KNEES: readonly { readonly height: Mm; readonly depth: Mm }[] = [
  { height: inch(30), depth: inch(18) },
  { height: inch(36), depth: inch(15) },
  { height: inch(42), depth: inch(12) },
]
const KNEES_SOURCE = 'NKBA planning guideline 9'
/** From the edge that one sits at to what stands behind: where nobody passes, where others edge past, where they walk past. */
const BEHIND = { nobody: inch(32), edging: inch(36), walking: inch(44), source: 'NKBA planning guideline 8' } as const
/** Less than this is an edge, and nobody sits at it. Common practice, no source. */
const LEAST_SEAT: Mm = 150

/** A board that is held behind and free at its edge. */
export interface Cantilever {
  /** Along the edge, as much as carries together. */
  readonly width: Mm
  readonly thickness: Mm
  /** In newtons per square millimetre, the way that it stands out. */
  readonly stiffness: number
}

/**
 * How far the edge of a board goes down that stands out by `length`, in mm, under a force on its edge, in newtons, and an
 * even pressure, in newtons per square millimetre: P L^3 / (3 E I) + w L^4 / (8 E I) with I = b t^3 / 12. General mechanics,
 * and a published sheet of formulas.
 */
export function edgeGives(length: Mm, board: Cantilever, force: number, pressure: number): Mm {
  const { width, thickness, stiffness } = board
  const bending = stiffness * ((width * thickness ** 3) / 12)
  return (force * length ** 3) / (3 * bending) + (pressure * width * length ** 4) / (8 * bending)
}

/** Halving ten metres so often leaves far less than a tick. */
const HALVINGS = 40

/** The most that a board stands out, in mm, and gives no more than its share of that. */
export function greatestOverhang(board: Cantilever, force: number, pressure: number): Mm {
  let [holds, fails] = [0, 10_000]
  for (let halving = 0; halving < HALVINGS; halving++) {
    const length = (holds + fails) / 2
    if (edgeGives(length, board, force, pressure) <= length / SHARE) holds = length
    else fails = length
  }
  return holds
}

interface Overhang {
  readonly words: string
  readonly length: Mm
  /** What makes it no longer than that. */
  readonly shortened: (to: Mm) => Edit
}

/** What stands out further past what it lies on than its board holds by itself, and what one can sit at. */
export function overhangFindings(project: Project, runs: readonly BuiltRun[]): Finding[] {
  return countertops(runs).flatMap((top) => {
    const board = project.materials[countertopOf(top, project).material]!
    const cabinets = top.cabinets.flatMap((id) => find(project.cabinets, id) ?? [])
    const cabinet = cabinets[0]!
    return [
      ...overhangsOf(top, cabinets, project).flatMap((one) => overhangFinding(one, { cabinet, top, board }, project)),
      ...seatFinding(cabinet, top, project),
    ]
  })
}

function overhangsOf(top: BuiltRun, cabinets: readonly Cabinet[], project: Project): Overhang[] {
  const own = cabinets.filter(({ wall }) => wall === top.place.wall)
  if (own.length === 0) return []
  const put = (change: OwnTop) => topChanged(top, project, change)
  const faces = own.map((one) => settle(top.place.depth - faceFrom(one, project)))
  const footprints = own.map((one) => footprintOf(one, project))
  const [left, right] = [
    settle(Math.min(...footprints.map((one) => one.left)) - top.place.left),
    settle(rightEdge(top.place) - Math.max(...footprints.map(rightEdge))),
  ]
  const ends = Math.min(countertopOf(top, project).ends, Math.max(left, right))
  return [
    {
      words: 'behind',
      length: rearOf(top),
      shortened: (rear) => eachTop(own, (top) => ({ ...top, rear })),
    },
    { words: 'before its fronts', length: Math.max(...faces), shortened: (overhang) => put({ overhang }) },
    { words: 'past its free end', length: ends, shortened: (to) => put({ ends: to }) },
  ]
}

/** From the backs to the rear edge. */
function rearOf({ parts }: BuiltRun): Mm {
  const tops = parts.filter(({ role }) => isTopBoard(role)).map((part) => boxOf(part))
  return Math.max(0, settle(0 - Math.min(0, ...tops.map(({ min }) => min.z))))
}

interface Lying {
  readonly cabinet: Cabinet
  readonly top: BuiltRun
  readonly board: Material
}

function overhangFinding({ words, length, shortened }: Overhang, lying: Lying, project: Project): Finding[] {
  const { cabinet, top, board } = lying
  if (!(length > 0)) return []
  const width = Math.min(SEAT, words === 'past its free end' ? top.place.depth : top.place.width)
  const { pressure } = SHELF_LOADS[project.house.shelfLoad]
  const held = { width, thickness: board.thickness, stiffness: board.stiffness }
  const gives = edgeGives(length, held, MOST_ON_A_SHELF, pressure)
  const most = length / SHARE
  if (gives <= most) return []
  const say = sayIn(project.display)
  const holds = Math.floor(greatestOverhang(held, MOST_ON_A_SHELF, pressure))
  const [measure, limit] = say.apart(gives, most)
  const message =
    `its countertop stands out ${say.length(length)} ${words} with nothing under it and would give ${measure} at its edge under ` +
    `${say.weight(MOST_ON_A_SHELF / NEWTON_PER_KG)} on ${say.length(width)} of it; ${limit} (1/${SHARE}) is the limit, which ${say.length(holds)} would keep. ` +
    'Put brackets, legs or a frame under it, or make it of a thicker board; across its grain it gives more.'
  const mark = markOf(cabinet)
  const finding = about({ cabinet, mark }, { weight: 'mind', message, measure, limit, source: SOURCE })
  return [
    withRemedy(finding, () => ({
      label: `Let the countertop of ${mark} stand out ${say.length(holds)} ${words}`,
      edit: shortened(holds),
    })),
  ]
}

/**
 * Where a top stands out behind an island somebody may sit: for how many there is room, and for their knees. What stands
 * behind them in the room is in no project, so what is asked for there is said and not judged.
 */
function seatFinding(cabinet: Cabinet, top: BuiltRun, project: Project): Finding[] {
  const rear = rearOf(top)
  if (rear < LEAST_SEAT) return []
  const say = sayIn(project.display)
  const surface = surfaceOf(top, project)
  const knee = KNEES.reduce((a, b) => (Math.abs(b.height - surface) < Math.abs(a.height - surface) ? b : a))
  const [measure, limit] = say.apart(rear, knee.depth)
  const message =
    `its countertop, ${say.length(surface)} high, stands out ${measure} behind, over ${counted(Math.floor(top.place.width / SEAT), 'seat')} of ${say.length(SEAT)}; ` +
    `${limit} for the knees is asked for at ${say.length(knee.height)} high. Behind who sits there keep ${say.length(BEHIND.nobody)} from its edge, ` +
    `${say.length(BEHIND.edging)} where others edge past and ${say.length(BEHIND.walking)} where they walk past.`
  const source = `${KNEES_SOURCE}; behind seats: ${BEHIND.source}`
  const told = { weight: 'know', message, measure, limit, source } as const
  return [about({ cabinet, mark: markOf(cabinet) }, told)]
}
