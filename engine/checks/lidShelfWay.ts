import { counted } from '../basics/counted'
import { boxOf } from '../cabinets/boardBox'
import { settle } from '../units/length'
import { withRole } from './boards'
import { about, type Checked, type Finding, GEOMETRY } from './finding'
import { longestThrough, passes } from './passing'
import { sayIn } from './say'

/**
 * Loose shelves in a box with a lid go in from above, between its stretchers, and lie down under them: tilted from front to
 * back, a shelf must fit in what is between the stretchers across, and in what is below them up, over the others that lie
 * there already.
 *
 *      |##          ##|   stretchers
 *      |##     /    ##|
 *      |     /        |
 *      |___/__________|
 */
export function lidShelfWay(checked: Checked): Finding[] {
  const { parts } = checked
  const shelves = withRole(parts, 'adjustableShelf')
  const [front] = withRole(parts, 'frontStretcher').map(boxOf)
  const [behind] = withRole(parts, 'backStretcher').map(boxOf)
  const [bottom] = withRole(parts, 'bottom').map(boxOf)
  const [shelf] = shelves
  if (!shelf || !front || !bottom) return []
  const others = shelves.slice(1).reduce((sum, { thickness }) => sum + thickness, 0)
  const rear = behind?.max.z ?? boxOf(shelf).min.z
  const height = settle(Math.min(front.min.y, behind?.min.y ?? front.min.y) - bottom.max.y - others)
  const way = { width: settle(front.min.z - rear), height }
  const deepest = shelves.reduce((a, b) => (b.width > a.width ? b : a))
  const { width: across, thickness } = deepest
  if (across <= way.width || passes({ length: across, thickness }, way)) return []
  const say = sayIn(checked.display)
  const [measure, limit] = say.apart(across, longestThrough(thickness, way))
  const them = shelves.length === 1 ? 'it' : 'them'
  const message =
    `${counted(shelves.length, 'loose shelf', 'loose shelves')} ${measure} deep cannot be put in from above past its stretchers, not even tilted: ` +
    `${say.length(way.width)} are between them and ${say.length(height)} below, and ${limit} is the most that passes. ` +
    `Put ${them} in before the front stretcher is on, or make ${them} shallower.`
  return [about(checked, { weight: 'mind', message, measure, limit, source: GEOMETRY })]
}
