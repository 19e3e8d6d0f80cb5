import { listed } from '../basics/listed'
import { type HolePurpose, isEdgeSlot, isOpening, type Recess } from '../cabinets/operation'
import type { Part } from '../parts/part'
import type { AssemblyStep } from './step'
import { stepOf } from './step'

/** What is done to boards after the saw and before anything is put together: band, then dado, then bore. An edge that is bevelled is banded after that. */
export function machiningOf(parts: readonly Part[], isBandInSize: boolean): AssemblyStep[] {
  const banded = parts.filter(isBanded)
  const recessed = parts.filter((part) => recessesOf(part).length > 0)
  const bevelled = parts.filter(({ operations }) => operations.some(({ kind }) => kind === 'bevel'))
  const before = bevelled.filter(isBandedOnBevel)
  const notched = parts.filter((part) => isCutInto(part))
  const opened = parts.filter((part) => part.operations.some((one) => one.kind === 'notch' && isOpening(one, part)))
  const slotted = parts.filter(({ operations }) => operations.some(isEdgeSlot))
  const bored = parts.filter(({ operations }) => operations.some(({ kind }) => kind === 'holeRow'))
  return [
    stepOf('machining', `${BEVEL} These are banded after it, on the slanting edge.`, before),
    stepOf('machining', bandWords(isBandInSize, recessed.length > 0), banded),
    stepOf('machining', recessWords(recessed), recessed),
    stepOf('machining', 'Cut out notches and corners, and try each against the board that passes through it.', notched),
    stepOf(
      'machining',
      BEVEL,
      bevelled.filter((part) => !isBandedOnBevel(part)),
    ),
    stepOf(
      'machining',
      'Saw the openings out of the boards: bore a hole in each corner, then along the lines.',
      opened,
    ),
    stepOf('machining', 'Groove the edges for panels and cut mortises and tenons; try each joint dry.', slotted),
    stepOf('machining', boreWords(bored), bored),
  ].filter(({ marks }) => marks.length > 0)
}

const BEVEL = 'Bevel the edges that are drawn so, with the blade tilted as it is said beside the cuts.'

/** A bevel that is sawn later would take the band off. */
function isBandedOnBevel({ operations, banding }: Part): boolean {
  return operations.some((one) => one.kind === 'bevel' && banding[one.edge] > 0)
}

function isBanded({ banding, insideBanding }: Part): boolean {
  return insideBanding !== undefined || Object.values(banding).some((thickness) => thickness > 0)
}

function isCutInto(part: Part): boolean {
  return part.operations.some((one) => one.kind === 'clip' || (one.kind === 'notch' && !isOpening(one, part)))
}

function recessesOf({ operations }: Part): Recess[] {
  return operations.filter(
    (one): one is Recess => one.kind === 'dado' || one.kind === 'groove' || one.kind === 'rabbet',
  )
}

function bandWords(isInSize: boolean, hasRecesses: boolean): string {
  const order = hasRecesses ? ' before dados and grooves are cut' : ''
  return isInSize
    ? `Band the edges${order}: everything is measured on the finished size, and boards are sawn less their banding.`
    : `Band the edges${order}: the banding comes on top of the sawn size.`
}

function recessWords(parts: readonly Part[]): string {
  const kinds = new Set(parts.flatMap((part) => recessesOf(part).map(({ kind }) => kind)))
  const words = (['dado', 'groove', 'rabbet'] as const).filter((kind) => kinds.has(kind)).map((kind) => `${kind}s`)
  const banded = parts.filter(isBanded)
  const through = banded.filter((part) => recessesOf(part).some((recess) => runsThroughBand(recess, part)))
  const cut = `Cut ${listed(words)}`
  if (banded.length === 0) return `${cut}; none of these boards is banded.`
  if (through.length === 0) return `${cut} after banding: all of them stop before a banded edge.`
  const marks = listed(through.map(({ mark }) => mark))
  return `${cut} after banding. In ${marks} they run out through the banding, and what sits in them closes the end; where that must not show, stop them short and notch the tongue.`
}

/** Whether a recess reaches an edge that wears a band. Source: AWS 2009 4.4.4.5, dados shall not run through the edgeband. */
export function runsThroughBand({ x, y, length, width }: Recess, part: Part): boolean {
  const { low, high, start, end } = part.banding
  return (
    (low > 0 && y <= low) ||
    (high > 0 && y + width >= part.width - high) ||
    (start > 0 && x <= start) ||
    (end > 0 && x + length >= part.length - end)
  )
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
