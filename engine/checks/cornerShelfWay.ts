import { counted } from '../basics/counted'
import { boxOf } from '../cabinets/boardBox'
import { aroundClip } from '../cabinets/operation'
import type { Part } from '../parts/part'
import type { Corner } from '../project/corner'
import { type Mm, settle } from '../units/length'
import { withRole } from './boards'
import { about, type Checked, type Finding, GEOMETRY } from './finding'
import { leastAcross, longestThrough, passes } from './passing'
import { sayIn } from './say'

/** Shelves go round a corner in one board, up to the sides. */
export function cornerShelfWay(checked: Checked, { kind }: Corner): Finding[] {
  if (kind === 'diagonal') return slantWay(checked)
  const stuck = pastStiles(checked)
  return stuck.length > 0 ? stuck : pastSides(checked)
}

/** An L is open round its inside corner: only stiles that stand before its sides are in the way. */
function pastStiles(checked: Checked): Finding[] {
  const { faceFrame, carcassMaterial } = checked.rules.method
  const shelves = withRole(checked.parts, 'adjustableShelf').length
  const thickness = checked.rules.materials[carcassMaterial]?.thickness ?? 0
  if (!faceFrame || shelves === 0) return []
  const before = settle(faceFrame.stile - Math.min(faceFrame.pastLeft, faceFrame.pastRight) - thickness)
  if (before <= 0) return []
  const say = sayIn(checked.display)
  const message =
    `${counted(shelves, 'loose shelf', 'loose shelves')} of one board round the corner cannot be put in past the stiles of its face frame, which stand ${say.length(before)} before the inside of its sides. ` +
    'Loose shelves go in before the frame, or are made in two.'
  return [
    about(checked, { weight: 'mind', message, measure: say.length(before), limit: say.length(0), source: GEOMETRY }),
  ]
}

/**
 * With no stile in the way, the shelf of an L is stood on edge before one of the fronts, goes sideways into the other leg,
 * then back to its wall, and is lowered there. Seen along the shelf, it must fit in the opening of the leg that it goes into:
 * between the front of the one leg and the side of the other, and from below up, tilted if need be.
 *
 *      |      |
 *      |   ===|===>     the shelf on edge, from above
 *      |      |__________
 *      |                 |
 */
function pastSides(checked: Checked): Finding[] {
  const stuck = withRole(checked.parts, 'adjustableShelf').filter((shelf) => {
    const ways = legWays(shelf, checked)
    return (
      ways.length > 0 &&
      !ways.some(({ across, opening }) => passes({ length: across, thickness: shelf.thickness }, opening))
    )
  })
  const [shelf] = stuck
  if (!shelf) return []
  const say = sayIn(checked.display)
  const most = (way: LegWay) => longestThrough(shelf.thickness, way.opening)
  const best = legWays(shelf, checked).reduce((a, b) => (most(b) - b.across > most(a) - a.across ? b : a))
  const [measure, limit] = say.apart(best.across, most(best))
  const them = stuck.length === 1 ? 'it' : 'them'
  const message =
    `${counted(stuck.length, 'loose shelf', 'loose shelves')} of one board round the corner, ${measure} from front to back of a leg, cannot be put in on edge, not even tilted, through the opening of a leg of ${say.length(best.opening.width)} by ${say.length(best.opening.height)}: ` +
    `${limit} is the most that passes. Put ${them} in before the last side is on, or make ${them} in two.`
  return [about(checked, { weight: 'mind', message, measure, limit, source: GEOMETRY })]
}

/** Into one of the legs: how wide the shelf is square to the way it goes, and what is open there. */
interface LegWay {
  readonly across: Mm
  readonly opening: { readonly width: Mm; readonly height: Mm }
}

function legWays(shelf: Part, { parts, rules }: Checked): LegWay[] {
  const { min, max } = boxOf(shelf)
  const ends = endsOf(parts)
  if (!ends) return []
  const { across, along, isAtLeft } = ends
  // A frame stands before the front of one leg and so into the opening of the other.
  const before = rules.method.faceFrame ? (withRole(parts, 'stile')[0]?.thickness ?? 0) : 0
  const rails = withRole(parts, 'topRail', 'bottomRail').map(boxOf)
  const level = [...withRole(parts, 'bottom', 'top', 'fixedShelf').map(boxOf), ...rails]
  const low = Math.max(...level.filter((box) => box.max.y <= min.y).map((box) => box.max.y))
  const high = Math.min(...level.filter((box) => box.min.y >= max.y).map((box) => box.min.y))
  const height = settle(high - low)
  const [intoOwn, intoOther] = [
    isAtLeft ? across.min.x - along.max.x : along.min.x - across.max.x,
    along.min.z - across.max.z,
  ]
  return [
    { across: settle(max.x - min.x), opening: { width: settle(intoOwn - before), height } },
    { across: settle(max.z - min.z), opening: { width: settle(intoOther - before), height } },
  ].filter(({ opening }) => opening.width > 0 && Number.isFinite(opening.height))
}

/** Through a slanting front a shelf goes on its edge, by its narrowest way across. */
function slantWay(checked: Checked): Finding[] {
  const shelves = withRole(checked.parts, 'adjustableShelf')
  const opening = slantOpening(checked)
  if (!opening) return []
  const stuck = shelves.filter((shelf) => acrossOf(shelf) > longestThrough(shelf.thickness, opening))
  const [shelf] = stuck
  if (!shelf) return []
  const say = sayIn(checked.display)
  const [measure, limit] = say.apart(acrossOf(shelf), longestThrough(shelf.thickness, opening))
  const before = checked.rules.method.faceFrame ? 'the frame is on' : 'the carcass is closed'
  const message =
    `${counted(stuck.length, 'loose shelf', 'loose shelves')} of one board, ${measure} across where narrowest, cannot be put in on edge, not even tilted, through its slanting opening of ${say.length(opening.width)} by ${say.length(opening.height)}: ` +
    `${limit} is the most that passes. Put ${stuck.length === 1 ? 'it' : 'them'} in before ${before}, or make ${stuck.length === 1 ? 'it' : 'them'} in two.`
  return [about(checked, { weight: 'mind', message, measure, limit, source: GEOMETRY })]
}

/** Without the notch for the post in the corner, which may be turned any way. */
function acrossOf({ length, width, operations }: Part): Mm {
  const clip = operations.find((one) => one.kind === 'clip')
  const whole = [
    { x: 0, y: 0 },
    { x: length, y: 0 },
    { x: length, y: width },
    { x: 0, y: width },
  ]
  if (!clip) return leastAcross(whole)
  const cut = aroundClip(clip, { length, width })
  const far = { x: cut.x === 0 ? cut.length : cut.x, y: cut.y === 0 ? cut.width : cut.y }
  return leastAcross(
    whole.flatMap((corner, at) => {
      const isCut = (corner.x === 0) === (cut.x === 0) && (corner.y === 0) === (cut.y === 0)
      if (!isCut) return [corner]
      const [along, across] = [
        { x: far.x, y: corner.y },
        { x: corner.x, y: far.y },
      ]
      // Going round, every other corner is come to along the length.
      return at % 2 === 1 ? [along, across] : [across, along]
    }),
  )
}

/** The side that stands across the own wall, at its free end, and that which stands along it, at the end of the other leg. */
function endsOf(parts: readonly Part[]) {
  const ends = withRole(parts, 'leftSide', 'rightSide').map(boxOf)
  const [across] = ends.filter(({ min, max }) => max.x - min.x < max.z - min.z)
  const [along] = ends.filter(({ min, max }) => max.x - min.x > max.z - min.z)
  // The front end of a side along the other wall is the one nearer the side that is along none.
  return across && along ? { across, along, isAtLeft: along.min.x < across.min.x } : null
}

/** From side to side, or from stile to stile, along the slant, and from below up. */
function slantOpening({ parts, rules }: Checked): { readonly width: Mm; readonly height: Mm } | null {
  const { faceFrame } = rules.method
  const [rail] = withRole(parts, 'topRail')
  const [below] = withRole(parts, 'bottomRail')
  if (faceFrame && rail && below) {
    const tenons = faceFrame.joint.kind === 'tenon' ? 2 * faceFrame.joint.length : 0
    return { width: settle(rail.length - tenons), height: settle(boxOf(rail).min.y - boxOf(below).max.y) }
  }
  const ends = endsOf(parts)
  const [top] = withRole(parts, 'top')
  const [bottom] = withRole(parts, 'bottom')
  if (!ends || !top || !bottom) return null
  const { across, along, isAtLeft } = ends
  const x = isAtLeft ? across.min.x - along.max.x : along.min.x - across.max.x
  const width = Math.hypot(x, along.min.z - across.max.z)
  return { width: settle(width), height: settle(boxOf(top).min.y - boxOf(bottom).max.y) }
}
