import { counted } from '../basics/counted'
import { type Hanging, hangingsOf } from '../cabinets/hanging'
import { armFor, cupCentre, hingeRoom, hingesFor, overlayOf } from '../cabinets/hinge'
import { roomForHinges } from '../cabinets/hingeBoring'
import { cupsIn, type Leaf, leafWeight, leavesOf } from '../cabinets/leaf'
import type { Operation } from '../cabinets/operation'
import type { Part } from '../parts/part'
import { type Mm, settle } from '../units/length'
import { about, type Checked, type Finding, GEOMETRY, PRACTICE } from './finding'
import { sayIn } from './say'

const OVERLAY_SOURCE = "a hinge maker's quick reference: overlay = fixed distance + boring distance - plate height"

/** What is left of a door behind its cups at least. Common practice, no source. */
const LEAST_BEHIND_CUP: Mm = 3

/**
 * Hinges whose doors would not cover what they should, cups that are too deep, cups in the groove of a panel, and hinges that find
 * no place.
 */
export function hingeFindings(checked: Checked): Finding[] {
  const { cupDiameter, plateDiameter } = checked.rules.method.hinge
  if (!(cupDiameter > 0 && plateDiameter > 0)) return []
  return [
    ...overlayFinding(checked),
    ...depthFinding(checked),
    ...grooveFinding(checked),
    ...loneFinding(checked),
    ...placeFinding(checked),
    ...plateFinding(checked),
  ]
}

/** How far a door is from where its hinge holds it, as the best arm does. */
function offBy({ overlay }: Hanging, { rules }: Checked): Mm {
  const { hinge } = rules.method
  return settle(overlay - overlayOf(armFor(overlay, hinge), hinge))
}

function overlayFinding(checked: Checked): Finding[] {
  const { hinge } = checked.rules.method
  const off = hangingsOf(checked.parts, checked.fronts)
    .map((hanging) => ({ hanging, by: offBy(hanging, checked) }))
    .filter(({ by }) => Math.abs(by) > hinge.sideAdjustment)
  const worst = off.reduce<(typeof off)[number] | null>((a, b) => (a && Math.abs(a.by) >= Math.abs(b.by) ? a : b), null)
  if (!worst) return []
  const say = sayIn(checked.display)
  const [is, gives] = [say.length(worst.hanging.overlay), say.length(worst.hanging.overlay - worst.by)]
  const message =
    `${counted(off.length, 'door')} would cover an edge by ${is}; the hinges of the build method give ${gives}, and can be set by ${say.length(hinge.sideAdjustment)}. ` +
    'Change how far the cup is from the edge, the height of the plate, or the reveals.'
  return [
    about(checked, {
      weight: 'mind',
      message,
      measure: say.length(Math.abs(worst.by)),
      limit: say.length(hinge.sideAdjustment),
      source: OVERLAY_SOURCE,
    }),
  ]
}

function depthFinding(checked: Checked): Finding[] {
  const { cupDepth } = checked.rules.method.hinge
  const thin = leavesOf(checked.parts, checked.fronts)
    .map(({ hung }) => hung)
    .filter(({ thickness }) => thickness - cupDepth < LEAST_BEHIND_CUP)
  const thinnest = Math.min(...thin.map(({ thickness }) => thickness))
  if (thin.length === 0) return []
  const say = sayIn(checked.display)
  const message = `cups ${say.length(cupDepth)} deep leave less than ${say.length(LEAST_BEHIND_CUP)} of a door that is ${say.length(thinnest)} thick. Bore shallower hinges, or make thicker doors.`
  return [
    about(checked, {
      weight: 'mind',
      message,
      measure: say.length(thinnest - cupDepth),
      limit: say.length(LEAST_BEHIND_CUP),
      source: PRACTICE,
    }),
  ]
}

/** Cups of five-part doors that are bored into the groove of the panel. */
function grooveFinding(checked: Checked): Finding[] {
  const { frontBuild, hinge } = checked.rules.method
  if (frontBuild.kind !== 'fivePart') return []
  const far = settle(cupCentre(hinge) + hinge.cupDiameter / 2)
  const members = leavesOf(checked.parts, checked.fronts)
    .map(({ hung }) => hung)
    .filter((hung) => cupsIn(hung) > 0 && (hung.role === 'doorStile' || hung.role === 'doorRail'))
  const narrow = members.filter(({ width }) => far > width - frontBuild.groove)
  const [first] = narrow
  if (!first) return []
  const say = sayIn(checked.display)
  const [measure, limit] = say.apart(far, settle(first.width - frontBuild.groove))
  const message = `the cups of ${counted(narrow.length, 'door')} reach ${measure} in from the edge, into the groove of the panel, which begins at ${limit}. Make wider stiles, or a shallower groove.`
  return [about(checked, { weight: 'mind', message, measure, limit, source: GEOMETRY })]
}

/** Flaps and doors whose board is too short for two hinges, so that they would hang on one. */
function loneFinding(checked: Checked): Finding[] {
  const { hinge } = checked.rules.method
  const lone = hungLeaves(checked).filter((leaf) => isTooShort(leaf, checked))
  const [first] = lone
  if (!first) return []
  const say = sayIn(checked.display)
  const [measure, limit] = say.apart(roomForHinges(first, checked.rules.method), 2 * hingeRoom(hinge))
  const isFlap = first.hinge === 'top'
  const what = counted(lone.length, isFlap ? 'flap' : 'door')
  const verb = lone.length === 1 ? 'has' : 'have'
  const wayOut = isFlap ? 'Make it wider, or hang it at a side.' : 'Make it higher, or lift it as a flap.'
  // A flap has its one in the middle, so that it hangs level; where a plate finds no place there, it has none.
  const none =
    cupsIn(first.hung) === 0 ? `${isFlap ? 'The middle of it' : 'Its place'} is taken too, so that none is bored. ` : ''
  const message = `${what} ${verb} no room for two hinges: they take ${limit} of the board that their cups are in, which gives ${measure}. ${none}${wayOut}`
  return [about(checked, { weight: 'mind', message, measure, limit, source: GEOMETRY })]
}

function isTooShort(leaf: Leaf<Part>, checked: Checked): boolean {
  return (
    roomForHinges(leaf, checked.rules.method) < settle(2 * hingeRoom(checked.rules.method.hinge)) &&
    cupsIn(leaf.hung) < 2
  )
}

/** All but the folding leaf of a corner, which hangs on the other leaf; that one, and a diagonal door, have its cups. */
function hungLeaves(checked: Checked): Leaf<Part>[] {
  const leaves = leavesOf(checked.parts, checked.fronts)
  return checked.cabinet.corner ? leaves.filter((leaf) => leaf.hung.number === 1) : leaves
}

/** Hinges that a door asks for and that are not bored, since no board is beside it or nothing on that is free. */
function placeFinding(checked: Checked): Finding[] {
  const hung = hungLeaves(checked).filter((leaf) => !isTooShort(leaf, checked))
  const missing = hung.reduce((sum, leaf) => sum + Math.max(0, wanted(leaf, checked) - cupsIn(leaf.hung)), 0)
  if (missing === 0) return []
  const message = `${counted(missing, 'hinge')} of its doors ${missing === 1 ? 'finds' : 'find'} no place: there is no board beside, or shelves and other boards leave no room for the plates. Nothing is bored for them.`
  return [
    about(checked, {
      weight: 'mind',
      message,
      measure: counted(missing, 'hinge'),
      limit: 'none',
      source: GEOMETRY,
    }),
  ]
}

/** Plates whose line is so far from the front edge that it is not on the board that the door hangs on. */
function plateFinding(checked: Checked): Finding[] {
  const { plateFromFront } = checked.rules.method.hinge
  const off = hangingsOf(checked.parts, checked.fronts).filter(
    ({ leaf, carrier, also = [] }) =>
      cupsIn(leaf) > 0 && ![carrier, ...also].some(({ operations }) => operations.some(isForPlate)),
  )
  const [first] = off
  if (!first) return []
  const say = sayIn(checked.display)
  const [measure, limit] = say.apart(plateFromFront, first.carrier.width)
  const message = `the plates of ${counted(off.length, 'door')} are to be screwed on ${measure} behind the front edge, where their boards, ${limit} wide, leave no room for the holes. Nothing is bored for the plates.`
  return [about(checked, { weight: 'mind', message, measure, limit, source: GEOMETRY })]
}

function isForPlate(one: Operation): boolean {
  return one.kind === 'holeRow' && one.purpose === 'hingePlate'
}

function wanted(leaf: Leaf<Part>, { rules }: Checked): number {
  const kg = leafWeight(leaf, ({ material }) => rules.materials[material]?.density ?? 0)
  return hingesFor(leaf.hinge === 'top' ? leaf.rect.width : leaf.rect.height, kg, rules.method.hinge)
}
