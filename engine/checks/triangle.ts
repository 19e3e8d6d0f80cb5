import { valuesOf, type WallId } from '../basics/id'
import type { BuiltRun } from '../between/run'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { rightEdge } from '../runs/lane'
import { rowsOfWalls } from '../site/wall'
import { inch, type Mm, settle } from '../units/length'
import { about, type Finding } from './finding'
import { sayIn } from './say'
import { type LetIn, letInto } from './worktop'

/** From the middle of one front to that of the next: each way, and all three. */
const LEG = { least: inch(4 * 12), most: inch(9 * 12) } as const
const TOTAL: Mm = inch(26 * 12)
const SOURCE = 'NKBA planning guideline 3: the work triangle'

/** The middle of the front of what is worked at, on the floor of its row of walls, seen from above, in mm. */
interface Corner {
  readonly cabinet: Cabinet
  readonly what: string
  readonly row: number
  readonly x: Mm
  readonly y: Mm
}

/** One way of a triangle. */
interface Way {
  readonly words: string
  readonly long: Mm
}

/**
 * The ways between sink, hob and fridge of a kitchen that has all three, where any of them is shorter or longer than is asked
 * for, or all together are: told once, of the triangle that comes nearest, about its sink. What stands at walls that meet
 * nowhere is at no known way from the others, and nothing is said of it.
 */
export function triangleFindings(project: Project, runs: readonly BuiltRun[]): Finding[] {
  const onFloor = placesIn(project)
  const inTops = letInto(project, runs)
  const cut = (of: LetIn['of']) =>
    inTops.filter((one) => one.of === of).flatMap(({ cabinet, left, right }) => onFloor(cabinet, left, right, of))
  const spaces = (of: 'fridge' | 'range') =>
    valuesOf<Cabinet>(project.cabinets)
      .filter(({ space }) => space?.of === of)
      .flatMap((one) => onFloor(one, one.left, rightEdge(one), of))
  const hobs = [...cut('hob'), ...spaces('range')]
  const triangles = cut('sink').flatMap((sink) =>
    hobs.flatMap((hob) => spaces('fridge').flatMap((fridge) => triangleOf(sink, hob, fridge) ?? [])),
  )
  const [best] = triangles.sort((a, b) => a.away - b.away)
  return best && best.away > 0 ? [triangleFinding(best, project)] : []
}

interface Triangle {
  readonly sink: Corner
  readonly ways: readonly Way[]
  readonly total: Mm
  /** How far its ways are from what is asked for, in all. */
  readonly away: Mm
}

function triangleOf(sink: Corner, hob: Corner, fridge: Corner): Triangle | null {
  if (hob.row !== sink.row || fridge.row !== sink.row) return null
  const way = (one: Corner, other: Corner): Way => {
    return { words: `from ${one.what} to ${other.what}`, long: settle(Math.hypot(one.x - other.x, one.y - other.y)) }
  }
  const ways = [way(sink, hob), way(hob, fridge), way(fridge, sink)]
  const total = settle(ways.reduce((sum, { long }) => sum + long, 0))
  return { sink, ways, total, away: ways.reduce((sum, one) => sum + offBy(one), Math.max(0, total - TOTAL)) }
}

function offBy({ long }: Way): Mm {
  return Math.max(0, LEG.least - long, long - LEG.most)
}

function triangleFinding({ sink, ways, total }: Triangle, project: Project): Finding {
  const say = sayIn(project.display)
  const worst = ways.reduce((a, b) => (offBy(b) > offBy(a) ? b : a))
  const isTotal = offBy(worst) === 0
  const bound = worst.long < LEG.least ? LEG.least : LEG.most
  const [measure, limit] = isTotal ? say.apart(total, TOTAL) : say.apart(worst.long, bound)
  const all = ways.map(({ words, long }) => `${say.length(long)} ${words}`).join(', ')
  const message =
    `between the middles of their fronts it is ${all}, ${say.length(total)} in all; ${say.length(LEG.least)} to ` +
    `${say.length(LEG.most)} each and ${say.length(TOTAL)} at most in all are asked for.`
  const one = { cabinet: sink.cabinet, mark: markOf(sink.cabinet) }
  return about(one, { weight: 'know', message, measure, limit, source: SOURCE })
}

/**
 * Where fronts stand, row by row: the first wall of a row runs along x, its room at y above it, and each other one a quarter
 * turn on from the end of the one before it.
 */
function placesIn(project: Project): (one: Cabinet, left: Mm, right: Mm, what: string) => Corner[] {
  const frames = new Map<WallId, { row: number; x: Mm; y: Mm; turns: number }>()
  for (const [row, walls] of rowsOfWalls(project).entries()) {
    let [x, y] = [0, 0]
    for (const [turns, wall] of walls.entries()) {
      frames.set(wall.id, { row, x, y, turns })
      x += wall.length * COS[turns % 4]!
      y += wall.length * COS[(turns + 3) % 4]!
    }
  }
  return (cabinet, left, right, what) => {
    const frame = frames.get(cabinet.wall)
    if (!frame) return []
    const [cos, sin] = [COS[frame.turns % 4]!, COS[(frame.turns + 3) % 4]!]
    const [along, out] = [(left + right) / 2, cabinet.depth]
    return [
      { cabinet, what, row: frame.row, x: frame.x + along * cos - out * sin, y: frame.y + along * sin + out * cos },
    ]
  }
}

/** Of quarter turns; the sine of one is the cosine of that three on. */
const COS = [1, 0, -1, 0] as const
