import { weightOf } from '../breakdown/lift'
import { boxOf } from '../cabinets/boardBox'
import { isHung } from '../cabinets/build'
import { NAILERS } from '../cabinets/nailer'
import { inch, type Mm, settle } from '../units/length'
import { KG_PER_POUND, NEWTON_PER_KG } from '../units/weight'
import { withRole } from './boards'
import { about, type Checked, FIXING_DEFERS, type Finding, PRACTICE } from './finding'
import { hangingRailFindings } from './hangingRail'
import { loadOfShelf, SHELF_LOADS } from './load'
import { sayIn } from './say'

/** Higher wall cabinets are tested with more. */
const HIGH_OVER: Mm = inch(24)
const TESTED = { high: 600 * KG_PER_POUND, low: 500 * KG_PER_POUND }
const TEST_SOURCE = 'ANSI/KCMA A161.1-2012, static load of wall cabinets, by a trade paper'

const STUDS_SOURCE = 'thehonestcarpenter.com, on hanging wall cabinets'

/** Two of the four screws at least are in the top rail, which takes the pull. Source: thehonestcarpenter.com. */
const TOP_SCREWS = 2

/**
 * What a screw in the side grain of a stud may be pulled with, in lb for each inch of thread: 2850 G^2 D. Source: an
 * engineering reference in the form of the US timber code, whose example is this one: G 0.45, D 0.190 in (a number 10).
 */
const PULL_PER_INCH = 2850 * 0.45 ** 2 * 0.19
/** A 2 1/2 in screw behind a nailer, a back and a wallboard. Common practice, no source. */
const THREAD_IN_STUD_INCHES = 1
const PULL_OF_SCREW = PULL_PER_INCH * THREAD_IN_STUD_INCHES * KG_PER_POUND

/** What hangs on the wall: what it weighs with all that it is to carry, its screws and the studs behind it; what talls are fixed by. */
export function hangingFindings(checked: Checked): Finding[] {
  if (checked.parts.length === 0) return []
  if (!isHung(checked.cabinet)) return checked.cabinet.kind === 'tall' ? hangingRailFindings(checked) : []
  return [...hangingRailFindings(checked), ...loadFinding(checked), ...studFinding(checked), ...pullFinding(checked)]
}

/** In kg, with its doors and everything on its shelves and its bottom. */
export function hangingWeight({ parts, rules, house }: Checked): number {
  const { pressure } = SHELF_LOADS[house.shelfLoad]
  const own = weightOf(parts, rules.materials)
  const borne = withRole(parts, 'bottom', 'fixedShelf', 'adjustableShelf')
  return own + borne.reduce((sum, { length, width }) => sum + loadOfShelf(length, width, pressure), 0) / NEWTON_PER_KG
}

function loadFinding(checked: Checked): Finding[] {
  const weight = hangingWeight(checked)
  const tested = checked.cabinet.height > HIGH_OVER ? TESTED.high : TESTED.low
  if (weight <= tested) return []
  const say = sayIn(checked.display)
  const message =
    `full, it weighs ${say.weight(weight)}; wall cabinets of its height are tested with ${say.weight(tested)}. ` +
    `Make two of it, or stand it on something. ${FIXING_DEFERS}`
  const source = `${TEST_SOURCE}; load: ${SHELF_LOADS[checked.house.shelfLoad].source}`
  return [about(checked, { weight: 'mind', message, measure: say.weight(weight), limit: say.weight(tested), source })]
}

/** Screws go through the nailer or the back between the sides. */
function screwedWidth({ parts, cabinet }: Checked): Mm {
  const nailers = withRole(parts, ...NAILERS)
  const sides = withRole(parts, 'leftSide', 'rightSide').reduce((sum, { thickness }) => sum + thickness, 0)
  return nailers.length > 0 ? Math.max(...nailers.map(({ length }) => length)) : settle(cabinet.width - sides)
}

/** The least and the most studs that can lie behind a width, wherever it hangs. */
export function studsBehind(width: Mm, spacing: Mm): { readonly least: number; readonly most: number } {
  const least = Math.floor(width / spacing)
  return { least, most: least + 1 }
}

function studFinding(checked: Checked): Finding[] {
  const { studSpacing } = checked.house
  if (!studSpacing || studSpacing <= 0) return []
  const width = screwedWidth(checked)
  const { most } = studsBehind(width, studSpacing)
  if (most >= 2) return []
  const say = sayIn(checked.display)
  const message = `one stud at most lies behind its ${say.length(width)} between the sides, with studs ${say.length(studSpacing)} apart; two are wanted. Put blocking in the wall or a rail across the studs first. ${FIXING_DEFERS}`
  return [
    about(checked, { weight: 'know', message, measure: '1 stud at most', limit: '2 studs', source: STUDS_SOURCE }),
  ]
}

/**
 * The box would tip out about its lower edge: its weight at half its depth pulls at the screws in the top rail.
 *
 *      screws <--|######|      pull x height = weight x depth / 2
 *                |######|
 *                |######|
 */
export function pullAtTop(weight: number, depth: Mm, height: Mm): number {
  return (weight * depth) / 2 / height
}

function pullFinding(checked: Checked): Finding[] {
  if (checked.house.studSpacing === null) return []
  const { cabinet, parts } = checked
  const top = withRole(parts, 'topNailer').map((part) => (boxOf(part).min.y + boxOf(part).max.y) / 2)
  const height = top[0] ?? cabinet.height
  const pull = pullAtTop(hangingWeight(checked), cabinet.depth, height) / TOP_SCREWS
  if (pull <= PULL_OF_SCREW) return []
  const say = sayIn(checked.display)
  const screws = Math.ceil((pull * TOP_SCREWS) / PULL_OF_SCREW)
  const message =
    `full, it pulls with ${say.weight(pull)} at each of ${TOP_SCREWS} screws in its top rail; ${say.weight(PULL_OF_SCREW)} is what one ` +
    `in a stud is let hold. ${screws} of them in the top rail hold it. ${FIXING_DEFERS}`
  const source = `withdrawal 2850 G² D, an engineering reference in the form of the US timber code; length of thread: ${PRACTICE}`
  return [
    about(checked, { weight: 'mind', message, measure: say.weight(pull), limit: say.weight(PULL_OF_SCREW), source }),
  ]
}
