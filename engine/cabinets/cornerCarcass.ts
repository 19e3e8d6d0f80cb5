import { PRACTICE } from '../basics/source'
import { type Corner, LEAST_LEAF } from '../project/corner'
import type { Cabinet, Front } from '../project/document'
import { baysOf } from '../project/interior'
import { type Mm, settle } from '../units/length'
import type { Rules } from './build'
import { carcassOf, outerFront } from './carcass'
import { feetInCorner } from './cornerFeet'
import { type Legs, legsOf } from './cornerLegs'
import { pastRight } from './past'
import { type Report, SILENT } from './report'

/** What a corner can have of what is asked: shelves, and doors or none. */
export function plainCabinet(cabinet: Cabinet, report: Report): Cabinet {
  const { front, interior } = cabinet
  if (front.kind !== 'open' && front.kind !== 'door') {
    report.mind('a corner is closed by a door or stays open; it gets a door.')
  }
  const { fixedShelves, adjustableShelves, fixedAt } = interior
  const isMore = baysOf(interior).length > 0 || (interior.rollOuts?.count ?? 0) > 0 || (interior.dividers ?? 0) > 0
  if (isMore) report.mind('in a corner there are shelves and nothing else, so the rest of its inside is left out.')
  return {
    ...cabinet,
    front: front.kind === 'open' || front.kind === 'door' ? front : DOOR,
    interior: { fixedShelves, adjustableShelves, ...(fixedAt && { fixedAt }), partition: null },
  }
}

const DOOR: Front = { kind: 'door', hinge: 'left' }

export function cornerRules(rules: Rules): Rules {
  return { ...rules, method: { ...rules.method, baseTop: { kind: 'full' } }, kick: 'perCabinet' }
}

/**
 * The legs of a corner cabinet, or null when there is nothing to work from; what is wrong is told. A face frame stands past
 * the free end of each leg by what is chosen for that side, seen from the room, and not past the corner.
 */
export function cornerCarcass(cabinet: Cabinet, corner: Corner, rules: Rules, report: Report): Legs | null {
  // First as it is chosen, so that what is wrong with it is told.
  if (!carcassOf(cabinet, rules, report)) return null
  const { faceFrame } = rules.method
  const pasts = { left: faceFrame?.pastLeft ?? 0, right: faceFrame?.pastRight ?? 0 }
  const [past, pastOther] = corner.hand === 'left' ? [pasts.right, pasts.left] : [pasts.left, pasts.right]
  const atCorner = faceFrame && { ...faceFrame, pastLeft: 0, pastRight: past }
  const own = carcassOf(cabinet, { ...rules, method: { ...rules.method, faceFrame: atCorner } }, SILENT)
  return own && legsOf(own, corner, pastOther)
}

/** How many legs a corner cabinet stands on, and how many of them carry its kick; null where it cannot be built. */
export function countedFeet(cabinet: Cabinet, rules: Rules): { readonly all: number; readonly front: number } | null {
  const { corner } = cabinet
  const legs = corner && cornerCarcass(cabinet, corner, cornerRules(rules), SILENT)
  if (!legs) return null
  const { rear, front } = feetInCorner(legs)
  return { all: rear.length + front.length, front: front.length }
}

/** Whether both legs go on far enough: to the side, or to the stile of an L whose opening ends there. */
export function isRoomy(legs: Legs, report: Report): boolean {
  const short = roomsOf(legs).filter(({ left }) => left < LEAST_LEAF)
  for (const { way, name, left, across } of short) {
    report.stop(
      `${name} goes on ${report.left(left)} between the ${report.say(across)} of the leg across it and its ${framed(legs) ? 'stile' : 'side'}; ${report.say(LEAST_LEAF)} is the least.`,
      { is: report.left(left), limit: LEAST_LEAF, source: PRACTICE, way },
    )
  }
  return short.length === 0
}

function framed({ kind, own }: Legs) {
  return kind === 'L' ? own.frame : null
}

/** How far either leg goes on past the front of the leg across it. */
function roomsOf(legs: Legs) {
  const { own, other } = legs
  const frame = framed(legs)
  const [depth, deepOther] = frame ? [outerFront(own), outerFront(other)] : [own.depth, other.depth]
  const end = (width: Mm, past: Mm) =>
    frame ? settle(width + past - frame.rules.stile) : settle(width - own.thickness)
  const ends = [end(own.width, pastRight(own)), end(other.width, other.frame?.rules.pastLeft ?? 0)] as const
  return [
    { way: 'ownLeg', name: 'its own leg', left: settle(ends[0] - deepOther), across: deepOther },
    { way: 'otherLeg', name: 'the other leg', left: settle(ends[1] - depth), across: depth },
  ] as const
}

/** What each leg of a corner cabinet lacks of going on far enough, 0 where it does; null where there is nothing to work from. */
export function lackingOfLegs(cabinet: Cabinet, rules: Rules): { readonly own: Mm; readonly other: Mm } | null {
  const { corner } = cabinet
  const legs = corner && cornerCarcass(cabinet, corner, cornerRules(rules), SILENT)
  if (!legs) return null
  const [own, other] = roomsOf(legs).map(({ left }) => settle(Math.max(0, LEAST_LEAF - left))) as [Mm, Mm]
  return { own, other }
}
