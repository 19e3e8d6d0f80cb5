import { valuesOf } from '../basics/id'
import type { BuiltRun } from '../between/run'
import type { Cabinet, Cutout, Project, Side } from '../project/document'
import { find } from '../project/references'
import { rightEdge } from '../runs/lane'
import { type Meeting, meetingsOf } from '../runs/reach'
import { inch, type Mm, settle } from '../units/length'
import { about, type Finding } from './finding'
import { sayIn } from './say'
import { countertops, type LetIn, letInto, surfaceOf } from './worktop'

/** Countertop to put things down on: at one side of it, and at the other. */
const LANDINGS: Readonly<Record<Cutout['of'], { readonly wide: Mm; readonly narrow: Mm; readonly source: string }>> = {
  sink: { wide: inch(24), narrow: inch(18), source: 'LSU AgCenter, Kitchen Design and Space Guidelines' },
  hob: { wide: inch(15), narrow: inch(12), source: 'a list after the NKBA planning guidelines' },
}

/**
 * Sinks and hobs with less countertop beside them than cooks ask for, and kitchens with none to work on next to a sink. Nobody
 * cooks at the basin of a bathroom: nothing is said of one.
 */
export function landingFindings(project: Project, runs: readonly BuiltRun[]): Finding[] {
  const all = letInto(project, runs).filter((one, _, others) => !isBasin(one, others, project))
  const told = all.flatMap((one) => landingFinding(one, all, project))
  // A sink with less than it takes to put things down is told that first.
  const isTold = ({ cabinet }: LetIn) =>
    told.some(({ about: of }) => of.kind === 'cabinet' && of.cabinet === cabinet.id)
  const sinks = all.filter(({ of }) => of === 'sink')
  return [...told, ...(sinks.some(isTold) ? [] : preparationFinding(sinks, all, project, runs))]
}

/** Tops of wash stands are 19 to 22 in deep, of kitchens 24 and more. Common practice, no source. */
const SHALLOW: Mm = inch(22)

/** A sink in a top that is less deep than a kitchen has it, in a project where nothing cooks, is kept cool or washes dishes. */
function isBasin({ of, top }: LetIn, all: readonly LetIn[], project: Project): boolean {
  if (of !== 'sink' || top.place.depth > SHALLOW || all.some((one) => one.of === 'hob')) return false
  return valuesOf<Cabinet>(project.cabinets).every(({ space }) => !space || space.of === 'washingMachine')
}

/** Countertop to work on, in one piece and next to a sink. Metric tops of 600 mm count as 24 in deep; common practice. */
const PREPARATION = { width: inch(36), depth: inch(24), least: 600, source: 'NKBA planning guideline 12' } as const

/** No sink that has so much countertop next to it, told of the one that has most. */
function preparationFinding(
  sinks: readonly LetIn[],
  all: readonly LetIn[],
  project: Project,
  runs: readonly BuiltRun[],
): Finding[] {
  const { width, depth, least, source } = PREPARATION
  const places = sinks.map((sink) => ({ sink, free: Math.max(...toWorkOn(sink, all, project, runs)) }))
  const isEnough = ({ sink, free }: (typeof places)[number]) => free >= width && sink.top.place.depth >= least
  const [best] = [...places].sort((a, b) => b.free - a.free)
  if (!best || places.some(isEnough)) return []
  const { sink, free } = best
  const deep = sink.top.place.depth
  const say = sayIn(project.display)
  const [measure, limit] = free < width ? say.apart(free, width) : say.apart(deep, depth)
  const message =
    `next to its sink are ${say.length(free)} of countertop, ${say.length(deep)} deep, to prepare food on; ${say.length(width)} in one ` +
    `piece, ${say.length(depth)} deep, are asked for next to one sink.`
  return [about(sink, { weight: 'know', message, measure, limit, source })]
}

/** Free countertop to the left and to the right: into the corner where the top of the other wall goes on there. */
function toWorkOn(sink: LetIn, all: readonly LetIn[], project: Project, runs: readonly BuiltRun[]): [Mm, Mm] {
  const [left, right] = besideIt(sink, all)
  const { place } = sink.top
  const wall = find(project.walls, place.wall)
  const meetings = wall ? meetingsOf(project, wall) : []
  const more = (side: Side, free: Mm): Mm => {
    const end = side === 'left' ? place.left : settle((wall?.length ?? 0) - rightEdge(place))
    const isToEnd = free === (side === 'left' ? settle(sink.left - place.left) : settle(rightEdge(place) - sink.right))
    const there = meetings.find((one) => one.side === side)
    const goesOn = there && countertops(runs).some((top) => isRoundFrom(sink, end, top, there, all, project))
    return isToEnd && goesOn ? settle(free + end) : free
  }
  return [more('left', left), more('right', right)]
}

/** Whether a top of the other wall goes through the corner at so far from it, level with that of a sink and free there. */
function isRoundFrom(
  sink: LetIn,
  end: Mm,
  top: BuiltRun,
  { wall, side }: Meeting,
  all: readonly LetIn[],
  project: Project,
): boolean {
  if (top.place.wall !== wall.id || top.place.depth !== end || surfaceOf(top, project) !== sink.surface) return false
  // A corner at the left of one wall is at the right end of the other.
  const fromCorner = (at: Mm) => (side === 'left' ? settle(wall.length - at) : at)
  const begins = Math.min(fromCorner(top.place.left), fromCorner(rightEdge(top.place)))
  const isFree = all
    .filter((one) => one.top === top)
    .every(({ left, right }) => Math.min(fromCorner(left), fromCorner(right)) >= sink.top.place.depth)
  return begins === 0 && isFree
}

function landingFinding(one: LetIn, all: readonly LetIn[], project: Project): Finding[] {
  const { wide, narrow, source } = LANDINGS[one.of]
  const [less, more] = besideIt(one, all).sort((a, b) => a - b) as [Mm, Mm]
  if (less >= narrow && more >= wide) return []
  const say = sayIn(project.display)
  const isOther = less >= narrow
  const [measure, limit] = isOther ? say.apart(more, wide) : say.apart(less, narrow)
  const message =
    `its ${one.of} has ${say.length(less)} and ${say.length(more)} of countertop beside it; cooks ask for ` +
    `${say.length(narrow)} at one side and ${say.length(wide)} at the other.`
  return [about(one, { weight: 'know', message, measure, limit, source })]
}

/** Free countertop to the left and to the right, as far as the next thing that is let into it. */
function besideIt({ left, right, top }: LetIn, all: readonly LetIn[]): [Mm, Mm] {
  const others = all.filter((other) => other.top === top)
  const from = Math.max(top.place.left, ...others.filter((other) => other.right <= left).map((other) => other.right))
  const to = Math.min(rightEdge(top.place), ...others.filter((other) => other.left >= right).map((other) => other.left))
  return [settle(left - from), settle(to - right)]
}
