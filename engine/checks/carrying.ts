import type { Corner } from '../project/corner'
import { type Mm, settle } from '../units/length'
import { about, type Checked, type Finding } from './finding'
import { sayIn } from './say'

const GEOMETRY = 'worked out from the measures of the house'

/** Whether the assembled box gets to its wall: through the narrowest way, and upright under the ceiling. */
export function carryingFindings(checked: Checked): Finding[] {
  return [...doorwayFinding(checked), ...tiltFinding(checked)]
}

type Sizes = readonly [width: Mm, height: Mm, depth: Mm]

/**
 * The boxes that the carcass is carried in: without a plinth or legs, which come off, and without its fronts. A corner is
 * carried square to one of its walls or to the line between the ends of its fronts; the one with the least depth is first.
 */
export function carriedBoxes({ cabinet, rules }: Pick<Checked, 'cabinet' | 'rules'>): readonly [Sizes, ...Sizes[]] {
  const { floor } = rules.method
  const isLoose = cabinet.kind !== 'upper' && (floor.kind === 'plinth' || floor.kind === 'legs')
  const height = settle(cabinet.height - (isLoose ? floor.height : 0))
  const { width, depth, corner } = cabinet
  if (!corner) return [[width, height, depth]]
  const square: Sizes = [Math.max(width, corner.other), height, Math.min(width, corner.other)]
  const slant = slantBox(width, depth, corner, height)
  if (slant === null) return [square]
  return slant[2] < square[2] ? [slant, square] : [square, slant]
}

/**
 * The box round a corner that is square to the line between the front ends of its legs. Seen from above, an L takes as much
 * of it as a diagonal does. No plan with straight edges has a least width that is not square to one of them.
 *
 *      +------------- width
 *      |            |  depth
 *      |           /
 *      |         /      the line
 *      |_______/
 *    other   otherDepth
 */
function slantBox(width: Mm, depth: Mm, { other, otherDepth }: Corner, height: Mm): Sizes | null {
  const [along, out] = [width - otherDepth, other - depth]
  if (along <= 0 || out <= 0) return null
  const line = Math.hypot(along, out)
  return [settle((width * along + other * out) / line), height, settle((width * out + depth * along) / line)]
}

/** Its longest edge goes first, so that what must pass is as small as it can be, upright or on its side. */
export function doesPass(box: readonly Mm[], way: { readonly width: Mm; readonly height: Mm }): boolean {
  const [least, middle] = [...box].sort((a, b) => a - b) as [Mm, Mm, Mm]
  return (least <= way.width && middle <= way.height) || (middle <= way.width && least <= way.height)
}

function doorwayFinding(checked: Checked): Finding[] {
  const { doorway } = checked.house
  const boxes = carriedBoxes(checked)
  if (!doorway || boxes.some((box) => doesPass(box, doorway))) return []
  const [least, middle] = [...boxes[0]].sort((a, b) => a - b) as [Mm, Mm, Mm]
  const say = sayIn(checked.display)
  const measure = `${say.length(least)} x ${say.length(middle)}`
  const limit = `${say.length(doorway.width)} x ${say.length(doorway.height)}`
  const turning = turningOf(checked)
  const canTurn = turning !== null && doesPass([turning, boxes[0][1], Number.POSITIVE_INFINITY], doorway)
  const message =
    `assembled, its smallest side is ${measure}; the doorway is ${limit}. Assemble it in the room, or make two of it` +
    (canTurn ? `; turned in leg by leg it takes ${say.length(turning)}, where the jambs are thin.` : '.')
  return [about(checked, { weight: canTurn ? 'know' : 'mind', message, measure, limit, source: GEOMETRY })]
}

/** What an L takes of a doorway while it is turned about its inside corner: from there to the corner of the room. */
function turningOf({ cabinet: { corner, depth } }: Checked): Mm | null {
  return corner?.kind === 'L' ? settle(Math.hypot(depth, corner.otherDepth)) : null
}

/**
 * A box that is raised on its lower edge is highest when its diagonal is upright.
 *
 *        /\
 *       /  \        it turns about the edge it stands on, over its depth or, if that is less, over its width
 *       \  /
 *        \/______
 */
export function raisedHeight([width, height, depth]: Sizes): Mm {
  return Math.hypot(height, Math.min(width, depth))
}

function tiltFinding(checked: Checked): Finding[] {
  const { cabinet, wallHeight } = checked
  if (cabinet.kind !== 'tall' || wallHeight === null) return []
  const diagonal = raisedHeight(carriedBoxes(checked)[0])
  if (diagonal <= wallHeight) return []
  const [measure, limit] = sayIn(checked.display).apart(diagonal, wallHeight)
  const message = `its diagonal is ${measure} when it is raised; the ceiling is at ${limit}. Assemble it standing, or carry it in upright if every way is high enough.`
  return [about(checked, { weight: 'mind', message, measure, limit, source: GEOMETRY })]
}
