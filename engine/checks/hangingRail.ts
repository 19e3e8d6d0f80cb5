import { boxOf } from '../cabinets/boardBox'
import { buildCabinet } from '../cabinets/buildCabinet'
import type { Part } from '../parts/part'
import { type Mm, settle } from '../units/length'
import { withRole } from './boards'
import { about, type Checked, FIXING_DEFERS, type Finding, type Remedy, withRemedy } from './finding'
import { sayIn } from './say'

/** A thinner back needs strips for the screws, and they are at least so wide. */
const STOUT_BACK: Mm = 12.7
const STRIP: Mm = 63.5
const SOURCE = 'AWS 2009, 4.4.18: anchor strips of 12.7 x 63.5 mm (1/2 x 2 1/2 in), or a back of 12.7 mm'

/** Whether the screws that a cabinet hangs by go through something at its top. */
export function hangingRailFindings(checked: Checked): Finding[] {
  if (withRole(checked.parts, 'back').some(({ thickness }) => thickness >= STOUT_BACK)) return []
  const rails = topRails(checked.parts)
  return rails.length === 0 ? [missing(checked)] : narrow(rails, checked)
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
  const heightOf = (part: Part) => settle(boxOf(part).max.y - boxOf(part).min.y)
  const width = Math.max(...rails.map(heightOf))
  if (width >= STRIP) return []
  const say = sayIn(checked.display)
  const message = `the rail it hangs by is ${say.length(width)} wide; ${say.length(STRIP)} is the least. ${FIXING_DEFERS}`
  return [
    about(checked, { weight: 'mind', message, measure: say.length(width), limit: say.length(STRIP), source: SOURCE }),
  ]
}
