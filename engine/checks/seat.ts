import { boxOf } from '../cabinets/boardBox'
import type { Box } from '../geometry/box'
import type { Part } from '../parts/part'
import { isSeatHigh } from '../project/underTop'
import { type Mm, settle } from '../units/length'
import { NEWTON_PER_KG } from '../units/weight'
import { withRole } from './boards'
import { builtWith, type Changed, ofThicker, withPartition } from './changed'
import { grainWords, legsOfSeat, stiffnessIn } from './cornerSeat'
import { about, type Checked, type Finding, PRACTICE, type Remedy, withRemedy } from './finding'
import { HOUSED_RULE, inertiaOf, type PointEnds, pointSagOf } from './sag'
import { sayIn } from './say'

/** Of a seated person, in newtons, on one spot. EN 12520, domestic seating, from memory. */
export const SEATED = 1300
export const SEATED_SOURCE = 'load: EN 12520 for domestic seating, from memory'

/** Nothing is published of how far a seat may give: what is asked of shelves is asked of it. */
export const PART = 144
export const LIMIT_SOURCE = 'limit of shelves: Architectural Woodwork Standards (2009), section 10, 1.2.21.3'

/**
 * A board that is sat on, over what bears it, and the rail under the front edge of a lid that goes down with it. Of a top
 * through a corner it is one leg by itself.
 */
interface Seat {
  readonly board: 'lid' | 'top' | 'leg'
  readonly span: Mm
  readonly ends: PointEnds
  readonly boards: readonly { readonly stiffness: number; readonly inertia: number }[]
  /** What is said of a leg that spans across its grain. */
  readonly grain?: string
}

/** The lid of a bench, or the fixed top of a low base, under somebody who sits in the middle between two things that bear it. */
export function seatFindings(checked: Checked): Finding[] {
  const seat = seatOf(checked)
  if (!seat || !doesGive(seat)) return []
  const say = sayIn(checked.display)
  const [sag, limit] = say.apart(givesBy(seat), seat.span / PART)
  const isHoused = seat.ends === 'housed'
  const alone = `, borne by it alone${isHoused ? ` and housed, so judged ${HOUSED_RULE}` : ''}`
  const how = {
    lid: ', with the stretcher under its front',
    top: alone,
    leg: `, either leg of it taken to be borne by its side and the corner post and by nothing between${seat.grain ?? ''}`,
  }[seat.board]
  const name = seat.board === 'leg' ? 'top' : seat.board
  const message =
    `its ${name} of ${say.length(seat.span)} between what bears it would give ${sag} under ${say.weight(SEATED / NEWTON_PER_KG)} ` +
    `of somebody who sits in its middle${how}; ${limit} (1/${PART} of the span) is the limit. ` +
    `${say.length(greatestSeat(seat))} is the greatest span that holds.`
  const ofLeg = seat.board === 'leg' ? 'what bears a leg' : null
  const judged = seat.board === 'lid' ? 'that lid and stretcher bear together' : isHoused ? 'housed ends' : ofLeg
  const source = `${LIMIT_SOURCE}; ${SEATED_SOURCE}${judged ? `; ${judged}: ${PRACTICE}` : ''}`
  return [
    withRemedy(about(checked, { weight: 'mind', message, measure: sag, limit, source }), () =>
      remedyFor(checked, seat.board),
    ),
  ]
}

function givesBy({ span, boards, ends }: Seat): Mm {
  return pointSagOf(span, boards, SEATED, ends)
}

function doesGive(seat: Seat): boolean {
  return givesBy(seat) > seat.span / PART
}

/** The sag grows with the third power of the span, and the limit with the span. */
function greatestSeat(seat: Seat): Mm {
  return seat.span * Math.sqrt(seat.span / PART / givesBy(seat))
}

/** The widest span of the lid, or of the fixed top; null without either, or where the stiffness of its board is not known. */
function seatOf(checked: Pick<Checked, 'cabinet' | 'parts' | 'rules' | 'isUnderTop'>): Seat | null {
  if (checked.cabinet.corner) return cornerSeat(checked)
  const { parts, rules } = checked
  const [lid] = withRole(parts, 'lid')
  const board = lid ?? fixedSeat(checked)
  const stiffness = board && rules.materials[board.material]?.stiffness
  if (!board || !stiffness) return null
  const under = boxOf(board).min.y
  // Partitions that end lower do not bear it.
  const uprights = withRole(parts, 'leftSide', 'rightSide', 'partition')
    .map(boxOf)
    .filter(({ max }) => max.y >= under - REACH)
    .sort((a, b) => a.min.x - b.min.x)
  const spans = uprights.slice(1).map(({ min }, at) => settle(min.x - uprights[at]!.max.x))
  if (spans.length === 0) return null
  const span = Math.max(...spans)
  const own = { stiffness, inertia: inertiaOf({ depth: board.width, thickness: board.thickness }) }
  if (!lid) return { board: 'top', span, ends: isHousedAtEnds(board, uprights) ? 'housed' : 'resting', boards: [own] }
  const rails = withRole(parts, 'frontStretcher').map((rail) => ({
    stiffness: rules.materials[rail.material]?.stiffness ?? 0,
    inertia: inertiaOf(sectionOf(rail)),
  }))
  return { board: 'lid', span, ends: 'resting', boards: [own, ...rails] }
}

/** The leg of a top through a corner that gives the most for its span. */
function cornerSeat(checked: Pick<Checked, 'cabinet' | 'parts' | 'rules' | 'isUnderTop'>): Seat | null {
  const top = fixedSeat(checked)
  const board = top && checked.rules.materials[top.material]
  if (!top || !board?.stiffness) return null
  const seats = legsOfSeat(top, checked.parts).map((leg): Seat => {
    const { span, depth } = leg
    const own = { stiffness: stiffnessIn(leg, board), inertia: inertiaOf({ depth, thickness: top.thickness }) }
    return { board: 'leg', span, ends: 'resting', boards: [own], grain: grainWords(leg, board) }
  })
  return seats.sort((a, b) => givesBy(b) / b.span - givesBy(a) / a.span)[0] ?? null
}

/** The full top of a base that is low enough to be sat on, under no seat board. */
function fixedSeat({
  cabinet,
  parts,
  isUnderTop,
}: Pick<Checked, 'cabinet' | 'parts' | 'isUnderTop'>): Part | undefined {
  const isJudged = cabinet.kind === 'base' && isSeatHigh(cabinet) && !isUnderTop
  return isJudged ? withRole(parts, 'top')[0] : undefined
}

/** Whether a top ends in its sides; one that lies over them goes on to their outsides. */
function isHousedAtEnds(top: Part, uprights: readonly Box[]): boolean {
  const { min, max } = boxOf(top)
  const [first, last] = [uprights[0]!, uprights.at(-1)!]
  return min.x > first.min.x && min.x < first.max.x && max.x > last.min.x && max.x < last.max.x
}

/** A board that ends nearer than this under the lid bears it. */
export const REACH: Mm = 1

/** From front to back, and up. */
export function sectionOf(rail: Part): { readonly depth: Mm; readonly thickness: Mm } {
  const { min, max } = boxOf(rail)
  return { depth: max.z - min.z, thickness: max.y - min.y }
}

/** A partition, or a thicker board that the project has, where nothing of the seat gives too much then. */
function remedyFor(checked: Checked, board: Seat['board']): Remedy | null {
  const { mark } = checked
  const holds = (change: Changed) => {
    const after = builtWith(change, checked)
    const seat = after && seatOf(after)
    return !!seat && !doesGive(seat)
  }
  const parted = withPartition(checked)
  if (parted && holds(parted)) return { label: `Put a partition into ${mark}`, edit: parted.edit }
  const [choice, what] =
    board === 'lid'
      ? (['frontMaterial', 'the fronts and the lid'] as const)
      : (['carcassMaterial', 'the carcass'] as const)
  const thicker = ofThicker(checked, choice).find(holds)
  return thicker ? { label: `Make ${what} of ${mark} of ${thicker.name}`, edit: thicker.edit } : null
}
