import { counted } from '../basics/counted'
import { weightOf } from '../breakdown/lift'
import { boxOf } from '../cabinets/boardBox'
import type { Part } from '../parts/part'
import { SLIDE_CLASSES } from '../project/machining'
import { settle } from '../units/length'
import { KG_PER_POUND, NEWTON_PER_KG } from '../units/weight'
import { withRole } from './boards'
import { about, type Checked, type Finding, PRACTICE, type Remedy, withRemedy } from './finding'
import { PSF } from './load'
import { sayIn } from './say'

/** An even load on the bottom of a drawer. Source: ANSI/KCMA A161.1, 7.1, as reproduced by a panel trader. */
const DRAWER_LOAD = 15 * PSF
const LOAD_SOURCE = 'load: ANSI/KCMA A161.1, 7.1, as reproduced by a panel trader'

const CLASSES = SLIDE_CLASSES.map((pounds) => pounds * KG_PER_POUND)
const CLASS_SOURCE = 'classes of slides: Architectural Woodwork Standards (2009), appendix B, p. 584'

/** Whether the slides of a cabinet's drawers carry them, and are long enough for how wide they are. */
export function drawerFindings(checked: Checked): Finding[] {
  return [...classFinding(checked), ...rackingFinding(checked)]
}

/** The class of slides that the heaviest drawer asks for, where the one of the build method will not do. */
function classFinding(checked: Checked): Finding[] {
  const drawers = withRole(checked.parts, 'drawerBottom').map((bottom) => drawerWeight(bottom, checked))
  const carries = checked.rules.method.slides.loadClass * KG_PER_POUND
  const heavy = drawers.filter(({ whole }) => whole > carries)
  if (heavy.length === 0) return []
  const { whole, held } = heavy.reduce((a, b) => (b.whole > a.whole ? b : a))
  const say = sayIn(checked.display)
  const kind = CLASSES.find((most) => whole <= most)
  const most = say.weight(kind ?? Math.max(carries, CLASSES.at(-1)!))
  const isOne = heavy.length === 1
  const weighs = isOne
    ? `1 drawer with ${say.weight(held)} in it, ${say.weight(whole)} with its boards`
    : `${heavy.length} drawers, the heaviest with ${say.weight(held)} in it, ${say.weight(whole)} with its boards`
  const way = kind
    ? `slides of the class for ${most} at least, not the one for ${say.weight(carries)}.`
    : `the strongest usual class carries ${most}. Ask for slides that are rated for ${isOne ? 'it' : 'that'}, or make two of ${isOne ? 'it' : 'each'}.`
  const finding = about(checked, {
    weight: kind ? 'know' : 'mind',
    message: `${weighs}: ${way}`,
    measure: say.weight(whole),
    limit: most,
    source: `${LOAD_SOURCE}; ${CLASS_SOURCE}`,
  })
  const loadClass = SLIDE_CLASSES.find((pounds) => whole <= pounds * KG_PER_POUND)
  return [loadClass === undefined ? finding : withRemedy(finding, () => strongerFor(loadClass, most, checked))]
}

function strongerFor(loadClass: number, carries: string, { cabinet, mark }: Checked): Remedy {
  const edit = { kind: 'override', ids: [cabinet.id], choices: { slides: { loadClass } } } as const
  return { label: `Take slides for ${carries} in ${mark}`, edit }
}

/**
 * A box that is much wider than its slides are long runs askew when it is pulled at one end, and jams. Twice is where
 * shops begin to tie both slides together. Common practice, no source.
 *
 *      |--------- width ---------|
 *      |                         |  length
 *      |_________________________|
 */
const WIDEST_FOR_LENGTH = 2

function rackingFinding(checked: Checked): Finding[] {
  const boxes = withRole(checked.parts, 'drawerBottom').flatMap(({ number }) => {
    const sides = withRole(checked.parts, 'drawerSide').filter((side) => Math.ceil(side.number / 2) === number)
    const [left, right] = sides.map(boxOf)
    if (!left || !right) return []
    const width = settle(Math.max(left.max.x, right.max.x) - Math.min(left.min.x, right.min.x))
    return [{ width, length: sides[0]!.length }]
  })
  const wide = boxes.filter(({ width, length }) => width > WIDEST_FOR_LENGTH * length)
  if (wide.length === 0) return []
  const { width, length } = wide.reduce((a, b) => (b.width / b.length > a.width / a.length ? b : a))
  const say = sayIn(checked.display)
  const [is, limit] = say.apart(width, WIDEST_FOR_LENGTH * length)
  const message =
    `${counted(wide.length, 'drawer box', 'drawer boxes')} of up to ${is} on slides of ${say.length(length)}: wider than twice their length ` +
    `(${limit}) a box runs askew when it is pulled at one end. Take slides that are tied together, pull it in the middle, or make two of it.`
  return [about(checked, { weight: 'know', message, measure: is, limit, source: PRACTICE })]
}

/** In kg: what lies in the drawer, and that with its box, its front and its insert. */
function drawerWeight(bottom: Part, { parts, rules }: Checked): { readonly held: number; readonly whole: number } {
  const { number } = bottom
  const boards = [
    ...withRole(parts, 'drawerBottom', 'drawerBoxFront', 'drawerBoxBack', 'drawerFront', 'drawerPanel').filter(
      (part) => part.number === number,
    ),
    ...withRole(parts, 'drawerSide', 'drawerStile', 'drawerRail').filter(
      (part) => Math.ceil(part.number / 2) === number,
    ),
    ...withRole(parts, 'insertEnd', 'insertDivider').filter((part) => liesOn(part, bottom)),
  ]
  const held = (DRAWER_LOAD * bottom.length * bottom.width) / NEWTON_PER_KG
  const own = weightOf(boards, rules.materials)
  return { held, whole: held + own }
}

/** Dividers are numbered on through all drawers of a cabinet, so that what lies in one is told by where it lies. */
function liesOn(part: Part, bottom: Part): boolean {
  const [own, under] = [boxOf(part), boxOf(bottom)]
  const isOver = (axis: 'x' | 'z') => own.min[axis] >= under.min[axis] && own.max[axis] <= under.max[axis]
  return settle(own.min.y - under.max.y) === 0 && isOver('x') && isOver('z')
}
