import { valuesOf } from '../basics/id'
import { APPLIANCE } from '../basics/source'
import type { BuiltRun } from '../between/run'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { type Appliance, type ApplianceSpace, applianceName } from '../project/space'
import { areTopsMade, hasTopOver } from '../project/topOver'
import { isUnderTop } from '../project/underTop'
import { fitOf } from '../runs/fit'
import { footprintOf } from '../runs/footprint'
import { rightEdge, topEdge } from '../runs/lane'
import { gapsBeside } from '../runs/neighbours'
import { inch, type Mm, settle } from '../units/length'
import { about, type Finding, GEOMETRY, PRACTICE, type Remedy, withRemedy } from './finding'
import { sayIn } from './say'
import { toSinkFindings } from './toSink'
import { countertops, letInto } from './worktop'

/** A cabinet that is a space for an appliance. */
type Space = Cabinet & { readonly space: ApplianceSpace }

export function spacesIn({ cabinets }: Project): Space[] {
  return valuesOf<Cabinet>(cabinets).filter((one): one is Space => one.space !== undefined)
}

/** Whether appliances go into their spaces, stand well among what is beside them, and what they want besides. */
export function spaceFindings(
  project: Project,
  runs: readonly BuiltRun[],
  asked: readonly Space[] = spacesIn(project),
): Finding[] {
  return asked.flatMap((one) => [
    ...sizeFindings(one, project),
    ...levelFinding(one, project),
    ...landingFinding(one, project, runs),
    ...toSinkFindings(one, project, runs),
    ...tradesFinding(one),
  ])
}

const SIZES = [
  ['width', 'wide', 'stop'],
  ['height', 'high', 'stop'],
  ['depth', 'deep', 'mind'],
] as const

/** What is too little by what its maker asks for; in a space that is not deep enough it stands out before the fronts. */
function sizeFindings(one: Space, project: Project): Finding[] {
  const { space } = one
  const say = sayIn(project.display)
  return SIZES.filter(([size]) => one[size] < space[size]).map(([size, word, weight]) => {
    const [measure, limit] = say.apart(one[size], space[size])
    const after = size === 'depth' ? ` It would stand out by ${say.between(space.depth, one.depth)}.` : ''
    const message = `the space is ${measure} ${word}; the ${applianceName(space.of)} asks for ${limit}.${after}`
    const told = { weight, message, measure, limit, source: APPLIANCE } as const
    return withRemedy(about({ cabinet: one, mark: markOf(one) }, told), () =>
      size === 'width' ? widened(one, project) : null,
    )
  })
}

function widened(one: Space, project: Project): Remedy | null {
  const { width } = one.space
  const lefts = [one.left, settle(rightEdge(one) - width)]
  const left = lefts.find((at) => fitOf(project, { ...one, left: at, width }).fits)
  if (left === undefined) return null
  const label = `Widen ${markOf(one)} to ${sayIn(project.display).length(width)}`
  return { label, edit: { kind: 'shapeCabinets', shapes: [{ id: one.id, left, width }] } }
}

/** Under a countertop a space is as high as the bases that it touches, or the top is parted there. */
function levelFinding(one: Space, project: Project): Finding[] {
  if (!hasTopOver(one, project)) return []
  const { left, right } = gapsBeside(project, one)
  const touching = [left, right].flatMap(({ gap, to }) => (gap === 0 ? [to] : []))
  const other = valuesOf<Cabinet>(project.cabinets).find(
    (base) =>
      touching.includes(markOf(base)) &&
      base.wall === one.wall &&
      !base.space &&
      hasTopOver(base, project) &&
      topEdge(base) !== topEdge(one),
  )
  if (!other) return []
  const say = sayIn(project.display)
  const [measure, limit] = say.apart(topEdge(one), topEdge(other))
  const message = `its space is ${measure} high and ${markOf(other)} beside it ${limit}: the countertop cannot go on level over both.`
  const told = { weight: 'mind', message, measure, limit, source: GEOMETRY } as const
  return [
    withRemedy(about({ cabinet: one, mark: markOf(one) }, told), () => {
      const height = settle(topEdge(other) - one.bottom)
      if (!fitOf(project, { ...one, height }).fits) return null
      const label = `Make ${markOf(one)} as high as ${markOf(other)}`
      return { label, edit: { kind: 'shapeCabinets', shapes: [{ id: one.id, height }] } }
    }),
  ]
}

/** Countertop to put things down on: at one side, and at the other or not at all. */
const LANDINGS: Readonly<
  Partial<Record<Appliance, { readonly wide: Mm; readonly narrow: Mm; readonly source: string }>>
> = {
  range: { wide: inch(15), narrow: inch(12), source: 'a list after the NKBA planning guidelines' },
  fridge: { wide: inch(15), narrow: 0, source: 'LSU AgCenter, Kitchen Design and Space Guidelines' },
}
/** A top that ends nearer than this is at hand beside it. */
const BESIDE: Mm = 10

/** What interrupts the countertop wants some of it beside it. */
function landingFinding(one: Space, project: Project, runs: readonly BuiltRun[]): Finding[] {
  const { space } = one
  const landing = LANDINGS[space.of]
  const doesGoOn = isUnderTop(one, project)
  if (!landing || doesGoOn || !areTopsMade(project)) return []
  const { wide, narrow, source } = landing
  const beside = topsBeside(one, project, runs)
  const [less, more] = [...beside].sort((a, b) => a - b) as [Mm, Mm]
  if (less >= narrow && more >= wide) return []
  const say = sayIn(project.display)
  const isOther = less >= narrow
  const [measure, limit] = isOther ? say.apart(more, wide) : say.apart(less, narrow)
  const asked =
    narrow > 0
      ? `cooks ask for ${say.length(narrow)} at one side and ${say.length(wide)} at the other.`
      : `cooks ask for ${say.length(wide)} at the side that its door opens to, or across from it within ${say.length(inch(48))}.`
  const message = `its ${applianceName(space.of)} has ${say.length(less)} and ${say.length(more)} of countertop beside it; ${asked}`
  return [about({ cabinet: one, mark: markOf(one) }, { weight: 'know', message, measure, limit, source })]
}

/** Free countertop at the left and at the right of it, as far as the next thing that is let into it. */
function topsBeside(one: Space, project: Project, runs: readonly BuiltRun[]): readonly [Mm, Mm] {
  const face = footprintOf(one, project)
  const [from, to] = [face.left, rightEdge(face)]
  const tops = countertops(runs).filter(({ place }) => place.wall === one.wall)
  const all = letInto(project, runs)
  const left = tops.find(({ place }) => Math.abs(rightEdge(place) - from) <= BESIDE)
  const right = tops.find(({ place }) => Math.abs(place.left - to) <= BESIDE)
  const letIn = (top: BuiltRun) => all.filter((other) => other.top === top)
  const atLeft = left
    ? rightEdge(left.place) - Math.max(left.place.left, ...letIn(left).map((other) => other.right))
    : 0
  const atRight = right
    ? Math.min(rightEdge(right.place), ...letIn(right).map((other) => other.left)) - right.place.left
    : 0
  return [settle(atLeft), settle(atRight)]
}

const WANTS: Readonly<Record<Appliance, { readonly words: string; readonly measure: string }>> = {
  dishwasher: {
    words:
      'wants water, a drain and a socket that can be reached, beside it rather than behind, and steam rises from its door: seal or shield the edges of boards over it',
    measure: 'water, drain, socket, steam',
  },
  washingMachine: {
    words:
      'wants water, a drain and a socket that can be reached, beside it rather than behind, and shakes: leave it play all round and a floor that carries it',
    measure: 'water, drain, socket, play',
  },
  fridge: {
    words: 'wants air to come in and go out as its maker draws it, and a socket that can be reached',
    measure: 'air, socket',
  },
  range: {
    words:
      'wants its gas or its own circuit, air for what it burns, and the room to what burns beside, behind and over it that its maker says',
    measure: 'gas or circuit, air, room',
  },
}

/** What no drawing of cabinets settles. */
function tradesFinding(one: Space): Finding[] {
  const { of } = one.space
  const { words, measure } = WANTS[of]
  const message = `its ${applianceName(of)} ${words}. Its maker's instructions and local codes come first; water, gas and electricity are for licensed trades.`
  return [
    about(
      { cabinet: one, mark: markOf(one) },
      { weight: 'know', message, measure, limit: "its maker's instructions", source: PRACTICE },
    ),
  ]
}

/** What a range is to what hangs over it and rises beside it: as wide as its maker says, in the middle of its space. */
export function rangesIn(project: Project) {
  return spacesIn(project)
    .filter(({ space }) => space.of === 'range')
    .map((cabinet) => {
      const { left, width, space, bottom } = cabinet
      const middle = left + width / 2
      const half = Math.min(width, space.width) / 2
      const along = { left: settle(middle - half), right: settle(middle + half) }
      return {
        cabinet,
        mark: markOf(cabinet),
        ...along,
        surface: settle(bottom + space.height),
        what: 'range' as const,
      }
    })
}
