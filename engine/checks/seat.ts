import { boxOf } from '../cabinets/boardBox'
import type { Part } from '../parts/part'
import { type Mm, settle } from '../units/length'
import { NEWTON_PER_KG } from '../units/weight'
import { withRole } from './boards'
import { builtWith, type Changed, ofThicker, withPartition } from './changed'
import { about, type Checked, type Finding, PRACTICE, type Remedy, withRemedy } from './finding'
import { inertiaOf, pointSagOf } from './sag'
import { sayIn } from './say'

/** Of a seated person, in newtons, on one spot. EN 12520, domestic seating, from memory. */
const SEATED = 1300
const SEATED_SOURCE = 'load: EN 12520 for domestic seating, from memory'

/** Nothing is published of how far a seat may give: what is asked of shelves is asked of it. */
const PART = 144
const LIMIT_SOURCE = 'limit of shelves: Architectural Woodwork Standards (2009), section 10, 1.2.21.3'

/** A lid over what bears it, and the rail under its front edge that goes down with it. */
interface Seat {
  readonly span: Mm
  readonly boards: readonly { readonly stiffness: number; readonly inertia: number }[]
}

/** The lid of a bench under somebody who sits in the middle between two things that bear it. */
export function seatFindings(checked: Checked): Finding[] {
  const seat = seatOf(checked)
  if (!seat || !doesGive(seat)) return []
  const say = sayIn(checked.display)
  const [sag, limit] = say.apart(pointSagOf(seat.span, seat.boards, SEATED), seat.span / PART)
  const message =
    `its lid of ${say.length(seat.span)} between what bears it would give ${sag} under ${say.weight(SEATED / NEWTON_PER_KG)} ` +
    `of somebody who sits in its middle, with the stretcher under its front; ${limit} (1/${PART} of the span) is the limit. ` +
    `${say.length(greatestSeat(seat))} is the greatest span that holds.`
  const source = `${LIMIT_SOURCE}; ${SEATED_SOURCE}; that lid and stretcher bear together: ${PRACTICE}`
  return [
    withRemedy(about(checked, { weight: 'mind', message, measure: sag, limit, source }), () => remedyFor(checked)),
  ]
}

function doesGive({ span, boards }: Seat): boolean {
  return pointSagOf(span, boards, SEATED) > span / PART
}

/** P L^3 / (48 E I) is L / 144 there. */
function greatestSeat({ boards }: Seat): Mm {
  const stiff = boards.reduce((sum, { stiffness, inertia }) => sum + stiffness * inertia, 0)
  return Math.sqrt((48 * stiff) / (PART * SEATED))
}

/** The widest of its spans; null without a lid, or where the stiffness of its board is not known. */
function seatOf({ parts, rules }: Pick<Checked, 'parts' | 'rules'>): Seat | null {
  const [lid] = withRole(parts, 'lid')
  const stiffness = lid && rules.materials[lid.material]?.stiffness
  if (!lid || !stiffness) return null
  const under = boxOf(lid).min.y
  // Partitions that end lower do not bear it.
  const uprights = withRole(parts, 'leftSide', 'rightSide', 'partition')
    .map(boxOf)
    .filter(({ max }) => max.y >= under - REACH)
    .sort((a, b) => a.min.x - b.min.x)
  const spans = uprights.slice(1).map(({ min }, at) => settle(min.x - uprights[at]!.max.x))
  if (spans.length === 0) return null
  const own = { stiffness, inertia: inertiaOf({ depth: lid.width, thickness: lid.thickness }) }
  const rails = withRole(parts, 'frontStretcher').map((rail) => ({
    stiffness: rules.materials[rail.material]?.stiffness ?? 0,
    inertia: inertiaOf(sectionOf(rail)),
  }))
  return { span: Math.max(...spans), boards: [own, ...rails] }
}

/** A board that ends nearer than this under the lid bears it. */
const REACH: Mm = 1

/** From front to back, and up. */
function sectionOf(rail: Part): { readonly depth: Mm; readonly thickness: Mm } {
  const { min, max } = boxOf(rail)
  return { depth: max.z - min.z, thickness: max.y - min.y }
}

/** A partition, or a thicker board that the project has, where nothing of the seat gives too much then. */
function remedyFor(checked: Checked): Remedy | null {
  const { mark } = checked
  const holds = (change: Changed) => {
    const after = builtWith(change, checked)
    const seat = after && seatOf(after)
    return !!seat && !doesGive(seat)
  }
  const parted = withPartition(checked)
  if (parted && holds(parted)) return { label: `Put a partition into ${mark}`, edit: parted.edit }
  const thicker = ofThicker(checked, 'frontMaterial').find(holds)
  return thicker ? { label: `Make the fronts and the lid of ${mark} of ${thicker.name}`, edit: thicker.edit } : null
}
