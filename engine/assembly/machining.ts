import { listed } from '../basics/listed'
import type { BoardRole } from '../cabinets/board'
import { type HolePurpose, isEdgeSlot, isMitre, isOpening, type Recess } from '../cabinets/operation'
import type { Part } from '../parts/part'
import type { BuildMethod } from '../project/method'
import { settle } from '../units/length'
import type { AssemblyStep } from './step'
import { stepOf } from './step'

/** What of a method settles in which order boards are worked. */
export type WorkOrder = Pick<BuildMethod, 'banding' | 'dadoFront'>

/**
 * What is done to boards after the saw and before anything is put together: band, then dado, then bore. An edge that is
 * bevelled is banded after that, and a board on which the band goes over the ends of dados after those are cut. Ends are
 * mitred when the edges are banded, and have no band.
 */
export function machiningOf(parts: readonly Part[], { banding, dadoFront }: WorkOrder): AssemblyStep[] {
  const banded = parts.filter(isBanded)
  const covered = dadoFront?.kind === 'covered' ? parts.filter(isCovered) : []
  const recesses = parts.map((part) => {
    return {
      part,
      cut: covered.includes(part) ? recessesOf(part).filter((one) => runsToEndBand(one, part)) : recessesOf(part),
    }
  })
  const recessed = recesses.filter(({ cut }) => cut.length > 0)
  const short = parts.filter(({ operations }) => operations.some(isBeforeStop))
  const stopped = dadoFront?.kind === 'stopped' ? short : []
  const sawnAslant = (part: Part, asMitre: boolean) =>
    part.operations.some((one) => one.kind === 'bevel' && isMitre(one) === asMitre)
  const bevelled = parts.filter((part) => sawnAslant(part, false))
  const mitred = parts.filter((part) => sawnAslant(part, true))
  const before = bevelled.filter(isBandedOnBevel)
  const notched = parts.filter((part) => isCutInto(part))
  const opened = parts.filter((part) => part.operations.some((one) => one.kind === 'notch' && isOpening(one, part)))
  const jointed = parts.filter((part) => isTenoned(part) || part.operations.some(isEdgeSlot))
  const bored = parts.filter(({ operations }) => operations.some(({ kind }) => kind === 'holeRow'))
  return [
    stepOf('machining', `${BEVEL} These are banded after it, on the slanting edge.`, before),
    stepOf('machining', COVERED, covered),
    stepOf('machining', bandWords(banding.isInFinishedSize, recessed.length > 0), banded),
    stepOf(
      'machining',
      recessWords(recessed, stopped.length > 0),
      recessed.map(({ part }) => part),
    ),
    stepOf('machining', STOPPED, stopped),
    stepOf('machining', BEHIND_BAND, dadoFront?.kind === 'covered' ? short : []),
    stepOf('machining', 'Cut out notches and corners, and try each against the board that passes through it.', notched),
    stepOf(
      'machining',
      BEVEL,
      bevelled.filter((part) => !isBandedOnBevel(part)),
    ),
    stepOf(
      'machining',
      'Mitre the ends that are drawn so, with the blade tilted as it is said beside the cuts: until then they are as long as their long points.',
      mitred,
    ),
    stepOf(
      'machining',
      'Saw the openings out of the boards: bore a hole in each corner, then along the lines.',
      opened,
    ),
    stepOf('machining', 'Groove the edges for panels and cut mortises and tenons; try each joint dry.', jointed),
    stepOf('machining', boreWords(bored), bored),
  ].filter(({ marks }) => marks.length > 0)
}

const COVERED =
  'Cut the dados, grooves and rabbets of these boards before they are banded: the band of the front edge goes over the ends. What goes into them there is banded between its shoulders only, and comes flush with that band.'
const STOPPED =
  'Notch the front corners of what goes into stopped dados, as they are drawn, so that the front edges come flush.'

const BEHIND_BAND =
  'Notch the front corners of what goes in behind the band of a slanting edge, or ends slantwise behind one, as they are drawn; what they go into is squared there with a chisel.'

/** Cut off where a dado that it goes into stops. */
function isBeforeStop(one: Part['operations'][number]): boolean {
  return one.kind === 'notch' && one.for === 'stop'
}

const BEVEL = 'Bevel the edges that are drawn so, with the blade tilted as it is said beside the cuts.'

/** A bevel that is sawn later would take the band off. */
function isBandedOnBevel({ operations, banding }: Part): boolean {
  return operations.some((one) => one.kind === 'bevel' && banding[one.edge] > 0)
}

function isBanded({ banding, insideBanding }: Part): boolean {
  return insideBanding !== undefined || Object.values(banding).some((thickness) => thickness > 0)
}

/** What is cut off their ends leaves tenons. */
const RAILS: readonly BoardRole[] = ['topRail', 'bottomRail', 'midRail', 'mullion', 'doorRail', 'drawerRail']

function isTenoned({ role, operations }: Part): boolean {
  return RAILS.includes(role) && operations.some(({ kind }) => kind === 'rabbet')
}

function isCutInto(part: Part): boolean {
  if (isTenoned(part)) return false
  return part.operations.some(
    (one) =>
      one.kind === 'clip' ||
      (one.kind === 'notch' && one.for !== 'stop' && one.for !== 'band' && !isOpening(one, part)),
  )
}

function recessesOf(part: Part): Recess[] {
  return part.operations.filter(
    (one): one is Recess => one.kind === 'dado' || one.kind === 'groove' || (one.kind === 'rabbet' && !isTenoned(part)),
  )
}

function bandWords(isInSize: boolean, hasRecesses: boolean): string {
  const order = hasRecesses ? ' before dados and grooves are cut' : ''
  return isInSize
    ? `Band the edges${order}: everything is measured on the finished size, and boards are sawn less their banding.`
    : `Band the edges${order}: the banding comes on top of the sawn size.`
}

/** The boards that are sunk into, each with what is cut in it then. */
type Recessed = readonly { readonly part: Part; readonly cut: readonly Recess[] }[]

function recessWords(recessed: Recessed, areStopped: boolean): string {
  const kinds = new Set(recessed.flatMap(({ cut }) => cut.map(({ kind }) => kind)))
  const words = (['dado', 'groove', 'rabbet'] as const).filter((kind) => kinds.has(kind)).map((kind) => `${kind}s`)
  const banded = recessed.filter(({ part }) => isBanded(part))
  const square = areStopped ? SQUARE : ''
  const through = banded.filter(({ part, cut }) => cut.some((recess) => runsThroughBand(recess, part)))
  const cut = `Cut ${listed(words)}`
  if (banded.length === 0) return `${cut}; none of these boards is banded.${square}`
  if (through.length === 0) return `${cut} after banding: all of them stop before a banded edge.${square}`
  const marks = listed(through.map(({ part }) => part.mark))
  return `${cut} after banding. In ${marks} they run out through the banding, and what sits in them closes the end; where that must not show, band after, or stop them short and notch the tongue: a build method has either.${square}`
}

const SQUARE = ' Square the front ends of those that stop there with a chisel.'

/** Whether something that is sunk into a board runs out at a band along an edge of it. */
function isCovered(part: Part): boolean {
  const recesses = recessesOf(part)
  // Round an inside corner what houses the sides ends at the band too.
  const isRound = part.insideBanding !== undefined && recesses.some(({ kind }) => kind !== 'groove')
  return isRound || recesses.some((recess) => runsToLongBand(recess, part))
}

function runsToLongBand({ y, width }: Recess, { banding: { low, high }, width: across }: Part): boolean {
  return (low > 0 && y <= low) || (high > 0 && settle(y + width) >= settle(across - high))
}

function runsToEndBand({ x, length }: Recess, { banding: { start, end }, length: long }: Part): boolean {
  return (start > 0 && x <= start) || (end > 0 && settle(x + length) >= settle(long - end))
}

/** Whether a recess reaches an edge that wears a band. Source: AWS 2009 4.4.4.5, dados shall not run through the edgeband. */
function runsThroughBand(recess: Recess, part: Part): boolean {
  return runsToLongBand(recess, part) || runsToEndBand(recess, part)
}

const BORED: Readonly<Record<HolePurpose, string>> = {
  shelfPin: 'shelf pins',
  hingePlate: 'hinge plates',
  slide: 'slides',
  hingeCup: 'hinge cups',
  hingeScrew: 'the screws of hinges',
  screw: 'screws',
  pilot: 'pilot holes',
  dowel: 'dowels',
  looseTenon: 'loose tenons',
  biscuit: 'biscuits',
  pocketScrew: 'pocket screws',
  pull: 'pulls',
  pullBolt: 'the bolts of pulls',
  frontScrew: 'the screws of drawer fronts',
  frontPilot: 'the points of these',
  legPlate: 'the plates of legs',
  seamBolt: 'the bolts of seams',
}

function boreWords(parts: readonly Part[]): string {
  const purposes = new Set(
    parts.flatMap(({ operations }) => operations.flatMap((one) => (one.kind === 'holeRow' ? [one.purpose] : []))),
  )
  const what = (Object.keys(BORED) as HolePurpose[]).filter((one) => purposes.has(one)).map((one) => BORED[one])
  return `Bore for ${listed(what)} while the boards lie flat, before anything is glued.`
}
