import { counted } from '../basics/counted'
import { listed } from '../basics/listed'
import { boxOf } from '../cabinets/boardBox'
import { isHung } from '../cabinets/build'
import { buildCabinet } from '../cabinets/buildCabinet'
import { MIDDLE_FROM } from '../cabinets/nailer'
import type { Part } from '../parts/part'
import { standsFree } from '../project/builtBy'
import type { Nailers } from '../project/method'
import { type Mm, settle } from '../units/length'
import { withRole } from './boards'
import { boringFindings } from './boring'
import { builtWith, withChoices } from './changed'
import { about, type Checked, FIXING_DEFERS, type Finding, type Remedy, withRemedy } from './finding'
import { sayIn } from './say'

/** A thinner back needs strips for the screws, and they are at least so wide. */
const STOUT_BACK: Mm = 12.7
const STRIP: Mm = 63.5
const SOURCE =
  'AWS 2009, 4.4.18: anchor strips of 12.7 x 63.5 mm (1/2 x 2 1/2 in), one between over 60 in high, or a back of 12.7 mm'

/** Whether the screws that a cabinet hangs by, or a tall is fixed by, go through something at its wall side. */
export function hangingRailFindings(checked: Checked): Finding[] {
  const { cabinet, parts } = checked
  if (withRole(parts, 'back').some(({ thickness }) => thickness >= STOUT_BACK)) return []
  const rails = topRails(parts)
  if (isHung(cabinet) && rails.length === 0) return [missing(checked)]
  return standsFree(checked.rules.method) ? [] : [...narrow(rails, checked), ...strips(rails, checked)]
}

/** The strips that a thin back asks for: one at the top, one at the bottom, and a third between where it is high. */
function strips(rails: readonly Part[], checked: Checked): Finding[] {
  const { cabinet, parts } = checked
  const isHigh = cabinet.height > MIDDLE_FROM
  const asked = [
    { name: 'top', isThere: rails.length > 0 },
    { name: 'bottom', isThere: withRole(parts, 'bottomNailer').length > 0 },
    ...(isHigh ? [{ name: 'middle', isThere: withRole(parts, 'middleNailer').length > 0 }] : []),
  ]
  const lacking = asked.filter(({ isThere }) => !isThere).map(({ name }) => name)
  if (lacking.length === 0) return []
  const say = sayIn(checked.display)
  const [height, from] = say.apart(cabinet.height, MIDDLE_FROM)
  const third = isHigh ? `, and a third between, since it is ${height} high and not ${from} at most` : ''
  const finding = about(checked, {
    // What carries is the upper one; without any a tall has nothing to be fixed by.
    weight: lacking.length === asked.length ? 'mind' : 'know',
    message:
      `its wall side has no anchor strip at its ${listed(lacking)}: before or behind a back under ${say.length(STOUT_BACK)} ` +
      `there is to be one at the top and one at the bottom${third}. ${FIXING_DEFERS}`,
    measure: counted(asked.length - lacking.length, 'strip'),
    limit: counted(asked.length, 'strip'),
    source: SOURCE,
  })
  return [withRemedy(finding, () => stripsFor(lacking, checked))]
}

/** Where the method has them, else behind the back: a strip before it is in the way of shelves that can be put there now. */
function stripsFor(lacking: readonly string[], checked: Checked): Remedy | null {
  const { cabinet, mark, rules } = checked
  const { nailers: own } = rules.method
  const isHigh = cabinet.height > MIDDLE_FROM
  const asked = { ...own, top: true, bottom: true, ...(isHigh && { middle: true }) }
  const ways: readonly Nailers[] = own.where === 'behind' ? [asked] : [asked, { ...asked, where: 'behind' }]
  const nailers = ways.find((one) => areWellPlaced(one, lacking, checked))
  if (!nailers) return null
  const where = nailers.where === own.where ? '' : ', behind the back'
  const label = `Put ${lacking.length === 1 ? `a ${lacking[0]} nailer` : `${listed(lacking)} nailers`} into ${mark}${where}`
  return { label, edit: { kind: 'override', ids: [cabinet.id], choices: { nailers } } }
}

/** Whether all that lack are there, and no more is told of the build and of its pin holes than before. */
function areWellPlaced(nailers: Nailers, lacking: readonly string[], checked: Checked): boolean {
  const built = builtWith(withChoices(checked, { nailers }), checked)
  if (!built || boringFindings(built).length > boringFindings(checked).length) return false
  return lacking.every((name) => built.parts.some(({ role }) => role === `${name}Nailer`))
}

/** The nailers at the top, and stretchers on edge at the rear, which serve as one. */
function topRails(parts: readonly Part[]): Part[] {
  const onEdge = withRole(parts, 'backStretcher').filter((part) => {
    const { min, max } = boxOf(part)
    return max.y - min.y > max.z - min.z
  })
  return [...withRole(parts, 'topNailer'), ...onEdge]
}

function missing(checked: Checked): Finding {
  const say = sayIn(checked.display)
  const back = withRole(checked.parts, 'back')[0]
  const behind = back ? `its back is ${say.length(back.thickness)} thick` : 'it has no back'
  const message = `its screws have nothing to hold it by at its top: it has no nailer there, and ${behind}. ${FIXING_DEFERS}`
  const finding = about(checked, {
    weight: 'stop',
    message,
    measure: back ? say.length(back.thickness) : 'no back',
    limit: say.length(STOUT_BACK),
    source: SOURCE,
  })
  return withRemedy(finding, () => nailerFor(checked))
}

function nailerFor({ cabinet, mark, rules }: Checked): Remedy | null {
  const nailers = { ...rules.method.nailers, top: true }
  const { boards } = buildCabinet(cabinet, { ...rules, method: { ...rules.method, nailers } })
  if (!boards.some(({ role }) => role === 'topNailer')) return null
  return { label: `Put a nailer into ${mark}`, edit: { kind: 'override', ids: [cabinet.id], choices: { nailers } } }
}

function narrow(rails: readonly Part[], checked: Checked): Finding[] {
  if (rails.length === 0) return []
  const heightOf = (part: Part) => settle(boxOf(part).max.y - boxOf(part).min.y)
  const width = Math.max(...rails.map(heightOf))
  if (width >= STRIP) return []
  const say = sayIn(checked.display)
  const message = `the rail it hangs by is ${say.length(width)} wide; ${say.length(STRIP)} is the least. ${FIXING_DEFERS}`
  return [
    about(checked, { weight: 'mind', message, measure: say.length(width), limit: say.length(STRIP), source: SOURCE }),
  ]
}
