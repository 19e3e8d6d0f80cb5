import { counted } from '../basics/counted'
import type { FrontFace } from '../cabinets/board'
import { boxOf } from '../cabinets/boardBox'
import type { Box } from '../geometry/box'
import { rightOf, topOf } from '../geometry/rect'
import type { Part } from '../parts/part'
import { type Mm, settle } from '../units/length'
import { withRole } from './boards'
import { builtWith, withShelvesFixed } from './changed'
import { cornerShelfWay } from './cornerShelfWay'
import { about, type Checked, type Finding, GEOMETRY, type Remedy, withRemedy } from './finding'
import { lidShelfWay } from './lidShelfWay'
import { longestThrough, passes } from './passing'
import { sayIn } from './say'

/** What is open before a shelf, seen from the room, and the fixed front that closes it for good. */
interface Way {
  readonly width: Mm
  readonly height: Mm
  readonly closedBy: FrontFace['kind'] | null
}

/** From the left, from below. */
interface Stretch {
  readonly left: Mm
  readonly right: Mm
  readonly low: Mm
  readonly high: Mm
}

/** Fronts that do not move: what is behind one is reached past it. */
const FIXED: Readonly<Partial<Record<FrontFace['kind'], string>>> = {
  blindPanel: 'blind panel',
  cornerFiller: 'blind panel',
  falseFront: 'false front',
}

/** Loose shelves that cannot be put in through what stays open before them: once for each cabinet. */
export function shelfWayFindings(checked: Checked): Finding[] {
  return stuckFindings(checked).map((finding) => withRemedy(finding, () => fixedRemedy(checked)))
}

/** Fixed shelves go in with the other boards. */
function fixedRemedy(checked: Checked): Remedy | null {
  const fixed = withShelvesFixed(checked)
  const after = builtWith(fixed, checked)
  if (!after || checked.cabinet.interior.adjustableShelves === 0 || stuckFindings(after).length > 0) return null
  return { label: `Fix the shelves of ${checked.mark}`, edit: fixed.edit }
}

function stuckFindings(checked: Checked): Finding[] {
  if (checked.cabinet.corner) return cornerShelfWay(checked, checked.cabinet.corner)
  if (withRole(checked.parts, 'lid').length > 0) return lidShelfWay(checked)
  const stuck = withRole(checked.parts, 'adjustableShelf').flatMap((shelf) => {
    const ways = waysTo(shelf, checked)
    const isIn = ways.some((way) => way.closedBy === null && passes(shelf, way))
    return isIn || ways.length === 0 ? [] : [{ shelf, ways }]
  })
  const [first] = stuck
  return first ? [findingOf(first, stuck.length, checked)] : []
}

function findingOf(
  { shelf, ways }: { readonly shelf: Part; readonly ways: readonly Way[] },
  count: number,
  checked: Checked,
): Finding {
  const say = sayIn(checked.display)
  const { faceFrame } = checked.rules.method
  const longest = (way: Way) => longestThrough(shelf.thickness, way)
  const open = ways.filter(({ closedBy }) => closedBy === null)
  const best = open.reduce<Way | null>((a, b) => (a && longest(a) >= longest(b) ? a : b), null)
  const earlier = ways.find((way) => way.closedBy !== null && passes(shelf, way))
  const panel = FIXED[(earlier ?? ways.find(({ closedBy }) => closedBy))?.closedBy ?? 'door']
  const where = faceFrame ? 'an opening of its face frame' : 'what stays open'
  const [measure, limit] = best ? say.apart(shelf.length, longest(best)) : [say.length(shelf.length), 'no opening']
  const through = best
    ? `through ${where} that is ${say.length(best.width)} wide and ${say.length(best.height)} high: ${limit} is the longest that passes with its long edge first`
    : `for ${panel ? `a ${panel}` : 'nothing'} is before it`
  const before = earlier ? `the ${panel} is on` : faceFrame ? 'the frame' : 'the carcass is closed'
  const them = count === 1 ? 'it' : 'them'
  const message =
    `${counted(count, 'loose shelf', 'loose shelves')} ${measure} long cannot be put in, not even tilted, ${through}. ` +
    `Put ${them} in before ${before}, make ${them} in two, or try ${them} end first, standing on an edge.`
  // Without a frame a panel is screwed on last, and comes off again.
  const weight = faceFrame || !earlier ? 'mind' : 'know'
  return about(checked, { weight, message, measure, limit, source: GEOMETRY })
}

function waysTo(shelf: Part, checked: Checked): Way[] {
  const stretch = stretchOf(shelf, checked.parts)
  const ways = checked.rules.method.faceFrame ? framed(checked) : pastFixed(stretch, checked)
  return ways
    .filter((way) => meets(way, stretch))
    .map(({ left, right, low, high, closedBy }) => {
      return { width: settle(right - left), height: settle(high - low), closedBy }
    })
}

function meets(a: Stretch, b: Stretch): boolean {
  return a.left < b.right && a.right > b.left && a.low < b.high && a.high > b.low
}

/** The room that a shelf is in, between the boards beside, below and above it that do not come out. */
function stretchOf(shelf: Part, parts: readonly Part[]): Stretch {
  const { min, max } = boxOf(shelf)
  const [x, y] = [(min.x + max.x) / 2, (min.y + max.y) / 2]
  const uprights = withRole(parts, 'leftSide', 'rightSide', 'partition').map(boxOf)
  const beside = uprights.filter((box) => box.min.y < max.y && min.y < box.max.y)
  const level = withRole(parts, 'bottom', 'fixedShelf', 'top', 'frontStretcher').map(boxOf)
  const over = level.filter((box) => box.min.x < x && x < box.max.x)
  return {
    left: Math.max(...beside.filter((box) => box.max.x <= x).map((box) => box.max.x)),
    right: Math.min(...beside.filter((box) => box.min.x >= x).map((box) => box.min.x)),
    low: Math.max(...over.filter((box) => box.max.y <= y).map((box) => box.max.y)),
    high: Math.min(...over.filter((box) => box.min.y >= y).map((box) => box.min.y)),
  }
}

/** What fronts that do not move leave open of the room before a shelf; nothing where there is none of them. */
function pastFixed(room: Stretch, { fronts }: Checked): (Stretch & Pick<Way, 'closedBy'>)[] {
  const fixed = fronts.filter(({ kind, rect }) => FIXED[kind] && meets(ofRect(rect), room))
  if (fixed.length === 0 || !Object.values(room).every(Number.isFinite)) return []
  const rects = fixed.map(({ rect }) => ofRect(rect))
  const [left, right] = [Math.min(...rects.map((one) => one.left)), Math.max(...rects.map((one) => one.right))]
  const [low, high] = [Math.min(...rects.map((one) => one.low)), Math.max(...rects.map((one) => one.high))]
  const open = [
    { ...room, right: left },
    { ...room, left: right },
    { ...room, high: low },
    { ...room, low: high },
  ].filter((one) => one.right > one.left && one.high > one.low)
  return [...open.map((one) => ({ ...one, closedBy: null })), { ...room, closedBy: fixed[0]!.kind }]
}

function ofRect(rect: FrontFace['rect']): Stretch {
  return { left: rect.left, right: rightOf(rect), low: rect.bottom, high: topOf(rect) }
}

/** What stiles, rails, mullions and mid rails leave open, and the fixed front in it. */
function framed({ parts, fronts }: Checked): (Stretch & Pick<Way, 'closedBy'>)[] {
  const members = withRole(parts, 'stile', 'mullion').map(boxOf)
  const rails = withRole(parts, 'topRail', 'midRail', 'bottomRail').map(boxOf)
  return rails.flatMap((below) => {
    const uprights = members.filter(({ max }) => max.y > below.max.y).sort((a, b) => a.min.x - b.min.x)
    return uprights.slice(1).flatMap((upright, at) => {
      const between = { left: uprights[at]!.max.x, right: upright.min.x, low: below.max.y }
      const isOver = below.min.x < between.right && below.max.x > between.left
      const opening = { ...between, high: undersideOver(between, rails) }
      if (!isOver || !Number.isFinite(opening.high) || opening.high <= opening.low || opening.right <= opening.left) {
        return []
      }
      const fixed = fronts.find(({ kind, rect }) => FIXED[kind] && meets(ofRect(rect), opening))
      return [{ ...opening, closedBy: fixed?.kind ?? null }]
    })
  })
}

function undersideOver({ left, right, low }: Omit<Stretch, 'high'>, rails: readonly Box[]): Mm {
  const above = rails.filter(({ min, max }) => min.y > low && min.x < right && max.x > left)
  return Math.min(...above.map(({ min }) => min.y))
}
