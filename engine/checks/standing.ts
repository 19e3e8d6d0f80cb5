import { weightOf } from '../breakdown/lift'
import { isHung, methodOf, standsFree } from '../project/builtBy'
import type { Cabinet, Front, Project } from '../project/document'
import { childrenOf } from '../project/frontTree'
import { markOf } from '../project/mark'
import { gapsBeside } from '../runs/neighbours'
import { inch, type Mm } from '../units/length'
import { KG_PER_POUND } from '../units/weight'
import { about, type Checked, FIXING_DEFERS, type Finding, PRACTICE } from './finding'
import { sayIn } from './say'

/** Wider gaps than this are no neighbour to be screwed to. Common practice, no source. */
const NEAR: Mm = 5

/** An island is pushed, leant on and pulled at from all sides, and no wall holds it. */
export function freeFindings(project: Project, cabinets: readonly Cabinet[]): Finding[] {
  return cabinets
    .filter((cabinet) => !cabinet.space && !isHung(cabinet) && standsFree(methodOf(cabinet, project)))
    .map((cabinet) => {
      const message =
        'stands at no wall: screw it to cleats that are fixed to the floor, and to the cabinets beside it, before its top ' +
        'is laid and anything is put into it. Find cables, pipes and floor heating first. Local codes and licensed trades come first.'
      return about(
        { cabinet, mark: markOf(cabinet) },
        { weight: 'mind', message, measure: 'at no wall', limit: 'fixed to the floor', source: PRACTICE },
      )
    })
}

/** Talls want to be fixed to the wall, those that stand alone the more so: what is pulled open can bring one down. */
export function standingFindings(project: Project, cabinets: readonly Cabinet[]): Finding[] {
  const say = sayIn(project.display)
  return cabinets
    .filter(({ kind, space }) => kind === 'tall' && !space)
    .map((cabinet) => {
      const isAlone = standsAlone(project, cabinet)
      const measure = say.length(cabinet.height)
      // So high and roomy they all weigh more than the rule asks.
      const isTipping = isAlone && hasDrawer(cabinet.front) && roomIn(cabinet, project) >= TIPPING.room
      const message =
        `${isAlone ? 'stands alone, with no cabinet beside it to be screwed to. It is' : 'is'} ${measure} high: fix it to the ` +
        `wall at its top before anything is put into it, and keep what is heavy low. ` +
        `${isTipping ? `${TIPPING_SCOPE} ${TIPPING_DEATHS} ` : ''}${FIXING_DEFERS}`
      const weight = isAlone ? 'mind' : 'know'
      const source = isTipping ? `${PRACTICE}; ${TIPPING_SOURCE}` : PRACTICE
      return about(
        { cabinet, mark: markOf(cabinet) },
        { weight, message, measure, limit: 'fixed, however high', source },
      )
    })
}

/** Whether no cabinet beside it is near enough to be screwed to. */
function standsAlone(project: Project, cabinet: Cabinet): boolean {
  const { left, right } = gapsBeside(project, cabinet)
  return [left, right].every(({ gap, to }) => to === 'the wall end' || gap > NEAR)
}

/**
 * From where on clothing storage units must not tip over: so high, so heavy and with so much room, in mm, kg and mm3, all
 * three at once. Built-in units that are fixed to the building are outside it.
 */
const TIPPING = { height: inch(27), mass: 30 * KG_PER_POUND, room: 3.2 * inch(12) ** 3 } as const
const TIPPING_SOURCE =
  '16 CFR 1261 (ASTM F2057-23), in force since 1 September 2023: clothing storage units from 27 in high, 30 lb and 3.2 cu ft; ' +
  'not units that are permanently attached to the building (CPSC, questions and answers)'

/** Why there is such a rule. Source: figures of the CPSC in a note of a test laboratory. */
const TIPPING_DEATHS =
  'From 2000 to April 2022, 234 people, 199 of them children, died in the US under clothing storage that tipped over.'

/** Whom the rule is about, and who is outside it. */
const TIPPING_SCOPE =
  'The US rule against tipping is for free-standing clothing storage of this size; what is permanently attached to the building is outside it.'

/** A base of drawers that stands alone comes down on who pulls them all out, as a tall does. */
export function drawerFindings(
  project: Project,
  cabinets: readonly Pick<Checked, 'cabinet' | 'mark' | 'parts'>[],
): Finding[] {
  const say = sayIn(project.display)
  return cabinets
    .filter(({ cabinet, parts }) => {
      if (cabinet.kind !== 'base' || isHung(cabinet) || !hasDrawer(cabinet.front)) return false
      if (standsFree(methodOf(cabinet, project)) || !standsAlone(project, cabinet)) return false
      return (
        cabinet.height >= TIPPING.height &&
        roomIn(cabinet, project) >= TIPPING.room &&
        weightOf(parts, project.materials) >= TIPPING.mass
      )
    })
    .map((one) => {
      const [height, limit] = say.apart(one.cabinet.height, TIPPING.height)
      const message =
        `stands alone with drawers, ${height} high, and can tip over when they are pulled out: fix it to the wall before ` +
        `anything is put into it. ${TIPPING_SCOPE} ${TIPPING_DEATHS} ${FIXING_DEFERS}`
      return about(one, {
        weight: 'mind',
        message,
        measure: height,
        limit: `fixed from ${limit}`,
        source: TIPPING_SOURCE,
      })
    })
}

function hasDrawer(front: Front): boolean {
  return front.kind === 'drawer' || childrenOf(front).some((child) => hasDrawer(child.front))
}

/** Within its boards, in mm3; drawers take of it what they are made of, so that it is a little too much rather than too little. */
function roomIn(cabinet: Cabinet, project: Project): number {
  const { floor, carcassMaterial } = methodOf(cabinet, project)
  const thickness = project.materials[carcassMaterial]?.thickness ?? 0
  const foot = floor.kind === 'none' ? 0 : floor.height
  const [across, up] = [cabinet.width - 2 * thickness, cabinet.height - foot - 2 * thickness]
  return Math.max(0, across) * Math.max(0, up) * cabinet.depth
}
