import { listed } from '../basics/listed'
import type { BoardRole } from '../cabinets/board'
import { methodOf } from '../cabinets/build'
import type { Operation } from '../cabinets/operation'
import { DRAWER_BOX, FIVE_PARTS, INSERT, SLAB_FRONTS } from '../cabinets/role'
import { isCutLate } from '../parts/late'
import type { Part } from '../parts/part'
import { isHung, standsFree } from '../project/builtBy'
import type { Cabinet, Project } from '../project/document'
import type { CutLate } from '../project/late'
import { formatFine } from '../units/format'
import { inch, type LengthDisplay, type Mm } from '../units/length'
import { carcassSteps, isOfCarcass } from './carcassSteps'
import { machiningOf, type WorkOrder } from './machining'
import { assemblyOrder } from './order'
import { type AssemblyStep, stepOf } from './step'

export interface AssemblyInput {
  readonly cabinet: Pick<Cabinet, 'kind' | 'bottom' | 'space'>
  /** Whether it stands away from the walls. */
  readonly isFree: boolean
  readonly parts: readonly Part[]
  readonly late: CutLate
  readonly work: WorkOrder
  readonly display: LengthDisplay
}

const PLINTH: readonly BoardRole[] = ['plinthFront', 'plinthBack', 'plinthEnd']
const FRAME: readonly BoardRole[] = ['stile', 'topRail', 'bottomRail', 'midRail', 'mullion']
const BESIDE: readonly BoardRole[] = ['leftEnd', 'rightEnd', 'filler', 'fillerReturn', 'cornerFiller']

const KICK_BETWEEN = 'Screw the kick board between the sides when the cabinet stands.'
const KICK_BEFORE = 'Fit the kick board before the appliance last, so that it comes off again to reach what is behind.'
const BESIDE_IT = 'Scribe what closes to the wall and to its neighbour, and screw it on from inside.'
const PANEL_ALONE =
  'Stand the panel plumb, scribe it to the floor and the wall, hold it there by cleats, and lay the countertop on it before the appliance goes in.'

/** From the saw to the wall: what is done to the boards of a cabinet, in an order in which nothing is in the way. */
export function assemblyOf({ cabinet, isFree, parts, late, work, display }: AssemblyInput): AssemblyStep[] {
  const of = (...roles: readonly BoardRole[]) => parts.filter(({ role }) => roles.includes(role))
  const lateOnes = parts.filter(({ role }) => isCutLate(role, late))
  const early = parts.filter((part) => !lateOnes.includes(part))
  const fits = (text: string, ...roles: readonly BoardRole[]) => stepOf('fitting', text, of(...roles))
  const steps = [
    ...machiningOf(early, work),
    ...carcassSteps(parts, display),
    ...frameSteps(of(...FRAME), parts.filter(isOfCarcass)),
    stepOf(
      'standing',
      'Glue the plinth together, square, and clamp it: nothing is bored to hold it besides. Level it where it stands, and set the carcass on it.',
      of(...PLINTH),
    ),
    stepOf('standing', standWords(cabinet, isFree, lateOnes.length > 0), parts.filter(isOfCarcass)),
    stepOf('standing', cabinet.space ? KICK_BEFORE : KICK_BETWEEN, of('kickBoard')),
    ...machiningOf(lateOnes, work),
    ...boxSteps(of(...DRAWER_BOX), display),
    fits(
      'Glue the stiles and rails of five-part fronts round their panels, square and flat. No glue in the groove: a panel of solid wood must move.',
      ...FIVE_PARTS,
    ),
    fits(
      'Glue and screw the strip on at the wall, and hang the lid to it: the strip lets it up past upright.',
      'lidStrip',
      'lid',
    ),
    fits(cabinet.space ? PANEL_ALONE : BESIDE_IT, ...BESIDE),
    fits('Put in what is loose: it goes in from the front.', 'adjustableShelf'),
    fits('Put the boxes on their slides, all the way in and out.', ...DRAWER_BOX),
    fits('Glue each insert square, its dividers into its ends, and lay it loose in its drawer.', ...INSERT),
    fits(frontWords(parts), ...SLAB_FRONTS, ...FIVE_PARTS),
  ]
  return steps.filter(({ marks, stage }) => marks.length > 0 || stage === 'carcass')
}

/** What there is of fronts, and how it is put on. */
function frontWords(parts: readonly Part[]): string {
  const has = (...roles: readonly BoardRole[]) => parts.some(({ role }) => roles.includes(role))
  const hasBoxes = has(...DRAWER_BOX)
  const isFixed = has('falseFront', 'blindPanel') || (has('drawerStile') && !hasBoxes)
  const put = [
    ...(has('door', 'flap', 'doorStile') ? [`hang the doors${hangWords(has(...FRAME))}`] : []),
    ...(hasBoxes ? ['screw drawer fronts to their boxes'] : []),
    ...(isFixed ? ['screw what does not open on from inside'] : []),
    'make all gaps equal',
  ]
  return `Fronts last: ${listed(put)}.`
}

/** The hinges of a face frame come with their plates. */
function hangWords(isFramed: boolean): string {
  return isFramed ? ' (their hinges are screwed to the frame where the cups are: nothing is bored in it)' : ''
}

function standWords(cabinet: Pick<Cabinet, 'kind' | 'bottom'>, isFree: boolean, hasLate: boolean): string {
  const how = isHung(cabinet)
    ? 'Hang the carcass'
    : cabinet.kind === 'tall'
      ? 'Stand the carcass up with two people'
      : 'Stand the carcass'
  const measure = hasLate
    ? ' Measure its openings, type them in, and cut what is left to cut.'
    : ' Measure its openings before fronts are fitted.'
  const hold = isFree ? 'screw it to cleats on the floor, and to the cabinets beside it' : 'fix it to the wall'
  return `${how} level and plumb, and ${hold}.${measure}`
}

/** The same of a cabinet of a project. */
export function assemblyOfCabinet(
  { cabinet, parts }: Pick<AssemblyInput, 'parts'> & { readonly cabinet: Cabinet },
  project: Project,
): AssemblyStep[] {
  const method = methodOf(cabinet, project)
  const { display, shop } = project
  const isFree = !isHung(cabinet) && standsFree(method)
  return assemblyOf({ cabinet, isFree, parts, late: shop.late, work: method, display })
}

/** A box so much too wide does not run. Source: a drawer maker's page, 'even a small error of 1/16 of an inch'. */
const BINDS: Mm = inch(1 / 16)

/** Every box by itself; a bottom that all four boards hold goes in before the last of them. */
function boxSteps(parts: readonly Part[], display: LengthDisplay): AssemblyStep[] {
  const binds = formatFine(BINDS, display)
  const boxes = new Map<number, Part[]>()
  for (const part of parts) {
    const box = part.role === 'drawerSide' ? Math.ceil(part.number / 2) : part.number
    boxes.set(box, [...(boxes.get(box) ?? []), part])
  }
  return [...boxes.values()].map((box) => {
    const order = assemblyOrder(box).map(({ board }) => board)
    const last = order.at(-1)
    const bottom = order.find(({ role }) => role === 'drawerBottom')
    const isHeld = bottom !== undefined && bottom !== last
    const words = listed(order.map(({ name }) => name))
    const held = isHeld ? ' The bottom slides into its grooves before the last board closes them, without glue.' : ''
    return stepOf(
      'drawer boxes',
      `Glue the box in this order: ${words}.${held} Measure its diagonals, and its width: ${binds} too much and its slides bind.`,
      order,
    )
  })
}

/** What holds for the assembly of all cabinets. None of it replaces local codes, and what the makers of glue and screws say. */
export const ASSEMBLY_CAUTIONS: readonly string[] = [
  'Local codes, the makers of glue, screws and fittings, and licensed trades come first; where this list says otherwise, follow them.',
  'Put every carcass together dry before there is glue on it.',
  'Screws are shorter than the boards they join are thick together; bore before them near an edge.',
  'Tall and heavy cabinets are lifted by two people and held until they are fixed.',
  'Glue is not loaded before it is dry, as long as its maker says.',
]

function isPocket(one: Operation): boolean {
  return one.kind === 'holeRow' && one.purpose === 'pocketScrew'
}

/** The front edges of sides and bottoms are bored towards it where it is screwed on. */
function isTowardsFrame(one: Operation): boolean {
  if (one.kind !== 'holeRow' || !one.slant) return false
  const { towards, away } = one.slant
  return towards === 'low' || towards === 'high' || away !== undefined
}

function frameSteps(frame: readonly Part[], carcass: readonly Part[]): AssemblyStep[] {
  if (frame.length === 0) return []
  return [stepOf('carcass', frameWords(frame, carcass), frame)]
}

/** Before an L there are two frames, before a diagonal one with bevelled stiles. */
function frameWords(frame: readonly Part[], carcass: readonly Part[]): string {
  const isScrewedOn = carcass.some(({ operations }) => operations.some(isTowardsFrame))
  const isScrewed = frame.some(({ operations }) => operations.some(isPocket))
  const how = isScrewed ? 'flat, clamped at each joint while its pocket screws are driven' : 'flat'
  const rails = frame.filter(({ role }) => role === 'topRail')
  if (rails.length > 1) {
    const [first, second] = rails.map(({ mark }) => mark)
    return `Glue up both face frames ${how}, each of a stile and two rails, square, with a batten across the free ends of the rails. Glue them to the front of the carcass: the one with ${first} first, which runs into the inside corner, then the one with ${second}, butted against it and glued and screwed to it from behind.${isScrewedOn ? ' Drive the screws of the sides, the bottom and the top into their members.' : ` ${CLAMPED}`}`
  }
  const isBevelled = frame.some(({ operations }) => operations.some(({ kind }) => kind === 'bevel'))
  const words = `Glue up the face frame ${how}, with equal diagonals, then glue it to the front of the carcass${isScrewedOn ? ' and drive the screws of the carcass into it' : ''}`
  if (!isBevelled) return isScrewedOn ? `${words}.` : `${words}. ${CLAMPED}`
  const glued = carcass.filter(({ role }) => role === 'leftSide' || role === 'rightSide').map(({ mark }) => mark)
  const held = isScrewedOn
    ? `Its stiles are only glued to ${listed(glued)}, which meet them too slantwise for screws: the screws of the bottom and the top hold the frame there until the glue is dry, and ${DRAWN_UP}, where it stays as long.`
    : `Nothing but glue holds it: ${DRAWN_UP}, and leave it so until the glue is dry.`
  return `${words}: its bevels are in line with the two ends, and the frames beside it are butted against them and screwed through their stiles. ${held}`
}

const CLAMPED = 'Clamp what is glued to the carcass until the glue is dry: nothing is bored to hold it besides.'

/** Bars would slip off a slant. Common practice, no source. */
const DRAWN_UP = 'draw its stiles up with a band clamp round the carcass, or with bars onto blocks cut to its angle'
