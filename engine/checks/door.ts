import { counted } from '../basics/counted'
import type { FrontFace } from '../cabinets/board'
import { hingesFor } from '../cabinets/hinge'
import { leafWeight, leavesOf } from '../cabinets/leaf'
import type { Rect } from '../geometry/rect'
import { chartOf, hingesOfRow, USUAL_CHART } from '../project/hingeChart'
import { isSame } from '../project/settled'
import { type Mm, settle } from '../units/length'
import { about, type Checked, type Finding, PRACTICE, type Remedy } from './finding'
import { sayIn } from './say'

const HINGE_CHART = "a hinge maker's chart of hinges by door height and weight"
const OWN_CHART = 'the chart of hinges of the build method'

/** Higher doors of sheet goods bow with the seasons, the more the narrower they are. Common practice, no source. */
const BOWS_OVER: Mm = 1600
const SLENDER = 4

const FLAP = 'A flap hangs better.'

/** Doors that are too much for their hinges, and doors that will not stay flat: one finding of each kind. */
export function doorFindings(checked: Checked): Finding[] {
  const doors = leavesOf(checked.parts, checked.fronts)
    .filter(({ hinge }) => hinge !== 'top')
    .map((leaf): Door => {
      const { width, height: length } = leaf.rect
      const kg = leafWeight(leaf, ({ material }) => checked.rules.materials[material]?.density ?? 0)
      const isOfPair = checked.fronts.some(
        (other) => isBeside(other.rect, leaf.rect) && other.hinge === facing(leaf.hinge),
      )
      return { part: { length, width }, kg, isSlab: leaf.boards.length === 1, isOfPair }
    })
  return [...hingeFinding(doors, checked), ...spreadFinding(doors, checked), ...bowFinding(doors, checked)]
}

interface Door {
  readonly part: { readonly length: Mm; readonly width: Mm }
  readonly kg: number
  /** One board of sheet goods, which bows where stiles would hold it. */
  readonly isSlab: boolean
  /** Whether it meets another that is hinged at the far side. */
  readonly isOfPair: boolean
}

function facing(hinge: FrontFace['hinge']): FrontFace['hinge'] {
  return hinge === 'left' ? 'right' : 'left'
}

/** Whether one front stands beside another, as high as it. */
function isBeside(a: Rect, b: Rect): boolean {
  return a.bottom === b.bottom && a.height === b.height && a.left !== b.left
}

/** Off the chart is too much; a weight that asks for more hinges than the height does is good to know. */
function hingeFinding(doors: readonly Door[], checked: Checked): Finding[] {
  const heaviest = doors.reduce<Door | null>((most, door) => (most && most.kg >= door.kg ? most : door), null)
  if (!heaviest) return []
  const { part, kg } = heaviest
  const say = sayIn(checked.display)
  const { hinge } = checked.rules.method
  const chart = chartOf(hinge)
  const most = hingesOfRow(chart.length - 1)
  const hinges = hingesFor(part.length, kg, hinge)
  const door = `a door of ${say.length(part.length)} x ${say.length(part.width)} weighs ${say.weight(kg)}`
  const common = { measure: say.weight(kg), source: isSame(chart, USUAL_CHART) ? HINGE_CHART : OWN_CHART }
  if (hinges > most) {
    const message = `${door}; no number of hinges on the chart carries it: ${most} are the most. Divide it, or make it lighter.`
    return [about(checked, { ...common, weight: 'stop', message, limit: `${most} hinges` })]
  }
  const byHeight = hingesFor(part.length, 0, hinge)
  if (hinges <= byHeight) return []
  const message = `${door}, so it takes ${hinges} hinges; by its height ${byHeight} would do.`
  return [about(checked, { ...common, weight: 'know', message, limit: `${hinges} hinges` })]
}

/** A door hangs on a lever as long as it is wide, and its hinges hold it the better the farther apart they are. */
function spreadFinding(doors: readonly Door[], checked: Checked): Finding[] {
  const spreadOf = ({ length }: Door['part']) => settle(length - 2 * checked.rules.method.hinge.firstFromEnd)
  const wide = doors.filter(({ part }) => spreadOf(part) <= part.width)
  const [first] = wide
  if (!first) return []
  const { part: worst, isOfPair } = first
  const say = sayIn(checked.display)
  const [spread, width] = say.apart(Math.max(0, spreadOf(worst)), worst.width)
  const ends = say.length(checked.rules.method.hinge.firstFromEnd)
  const [of, it] = wide.length === 1 ? ['a door', 'it'] : [counted(wide.length, 'door'), 'a door']
  const tooLow = `the hinges of ${of} do not fit one above another: ${it} is ${say.length(worst.length)} high, and each hinge is to be ${ends} from an end. ${FLAP}`
  const isBetter = !isOfPair && spreadOf(worst) > (worst.width - checked.rules.method.fronts.gap) / 2
  const apart =
    `the hinges of ${of} would be ${spread} apart, from the top one to the bottom one; ` +
    `they must be farther apart than ${it} is wide, ${width}. ` +
    (isOfPair
      ? pairWords(spreadOf(worst), worst.width, say.length)
      : isBetter
        ? 'A pair, or a flap, hangs better.'
        : FLAP)
  const message = spreadOf(worst) > 0 ? apart : tooLow
  const isFlapBetter = !isBetter && (!isOfPair || spreadOf(worst) < LEAST_DOOR)
  const remedy = isBetter ? pairRemedy(checked) : isFlapBetter ? flapRemedy(first, checked) : null
  return [
    about(checked, {
      ...{ weight: 'mind', message, measure: spread, limit: width, source: HINGE_CHART },
      ...(remedy ? { remedy } : {}),
    }),
  ]
}

/** Where one door is all of the front; a corner has its own. */
function pairRemedy({ cabinet: { id, front, corner }, mark }: Checked): Remedy | null {
  if (front.kind !== 'door' || corner) return null
  return { label: `Hang a pair on ${mark}`, edit: { kind: 'setFront', ids: [id], front: { kind: 'pair' } } }
}

/** Where a door or a pair is all of the front, and the hinges along its top are farther apart than it is high. */
function flapRemedy({ part, isOfPair }: Door, { cabinet: { id, front, corner }, mark, rules }: Checked): Remedy | null {
  const { fronts, hinge } = rules.method
  const width = isOfPair ? 2 * part.width + fronts.gap : part.width
  const isWhole = !corner && (front.kind === 'door' || front.kind === 'pair')
  if (!isWhole || settle(width - 2 * hinge.firstFromEnd) <= part.length) return null
  const flap = { kind: 'door', hinge: 'top' } as const
  return { label: `Hang a flap on ${mark}`, edit: { kind: 'setFront', ids: [id], front: flap } }
}

/** Narrower than this a door is hardly hung. Common practice, no source. */
const LEAST_DOOR: Mm = 200

/** Each door of a pair may be as wide as its hinges are apart; where that is too narrow for a door, none hangs well. */
function pairWords(spread: Mm, width: Mm, say: (length: Mm) => string): string {
  return spread < LEAST_DOOR
    ? 'They are a pair already, and too low for their width: a flap, or drawers, hang better.'
    : `They are a pair already: in a cabinet narrower by more than ${say(2 * (width - spread))} they hang better.`
}

function bowFinding(doors: readonly Door[], checked: Checked): Finding[] {
  const slender = doors.filter(
    ({ part, isSlab }) => isSlab && part.length > BOWS_OVER && part.length > SLENDER * part.width,
  )
  const tallest = slender.reduce((most, { part }) => Math.max(most, part.length), 0)
  if (slender.length === 0) return []
  const say = sayIn(checked.display)
  const message =
    `${counted(slender.length, 'door')} of up to ${say.length(tallest)} high and more than ${SLENDER} times as high as wide: ` +
    `over ${say.length(BOWS_OVER)} a door of sheet goods often bows. Let a straightener in, or divide it.`
  const limit = say.length(BOWS_OVER)
  return [about(checked, { weight: 'know', message, measure: say.length(tallest), limit, source: PRACTICE })]
}
