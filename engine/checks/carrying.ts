import { type Mm, settle } from '../units/length'
import { about, type Checked, type Finding } from './finding'
import { sayIn } from './say'

const GEOMETRY = 'worked out from the measures of the house'

/** Whether the assembled box gets to its wall: through the narrowest way, and upright under the ceiling. */
export function carryingFindings(checked: Checked): Finding[] {
  return [...doorwayFinding(checked), ...tiltFinding(checked)]
}

/** The box as it is carried: without a plinth or legs, which come off, and without its fronts. */
export function carriedBox({ cabinet, rules }: Pick<Checked, 'cabinet' | 'rules'>): readonly [Mm, Mm, Mm] {
  const { floor } = rules.method
  const isLoose = cabinet.kind !== 'upper' && (floor.kind === 'plinth' || floor.kind === 'legs')
  return [cabinet.width, settle(cabinet.height - (isLoose ? floor.height : 0)), cabinet.depth]
}

/** Its longest edge goes first, so that what must pass is as small as it can be, upright or on its side. */
export function doesPass(box: readonly Mm[], way: { readonly width: Mm; readonly height: Mm }): boolean {
  const [least, middle] = [...box].sort((a, b) => a - b) as [Mm, Mm, Mm]
  return (least <= way.width && middle <= way.height) || (middle <= way.width && least <= way.height)
}

function doorwayFinding(checked: Checked): Finding[] {
  const { doorway } = checked.house
  const box = carriedBox(checked)
  if (!doorway || doesPass(box, doorway)) return []
  const [least, middle] = [...box].sort((a, b) => a - b) as [Mm, Mm, Mm]
  const say = sayIn(checked.display)
  const measure = `${say.length(least)} x ${say.length(middle)}`
  const limit = `${say.length(doorway.width)} x ${say.length(doorway.height)}`
  const message = `assembled, its smallest side is ${measure}; the doorway is ${limit}. Assemble it in the room, or make two of it.`
  return [about(checked, { weight: 'mind', message, measure, limit, source: GEOMETRY })]
}

/**
 * A box that is raised on its lower edge is highest when its diagonal is upright.
 *
 *        /\
 *       /  \        it turns about the edge it stands on, over its depth or, if that is less, over its width
 *       \  /
 *        \/______
 */
export function raisedHeight([width, height, depth]: readonly [Mm, Mm, Mm]): Mm {
  return Math.hypot(height, Math.min(width, depth))
}

function tiltFinding(checked: Checked): Finding[] {
  const { cabinet, wallHeight } = checked
  if (cabinet.kind !== 'tall' || wallHeight === null) return []
  const diagonal = raisedHeight(carriedBox(checked))
  if (diagonal <= wallHeight) return []
  const [measure, limit] = sayIn(checked.display).apart(diagonal, wallHeight)
  const message = `its diagonal is ${measure} when it is raised; the ceiling is at ${limit}. Assemble it standing, or carry it in upright if every way is high enough.`
  return [about(checked, { weight: 'mind', message, measure, limit, source: GEOMETRY })]
}
