import type { Corner } from '../project/corner'
import { type Cabinet, type Front, NOTHING_BESIDE } from '../project/document'
import { markOf } from '../project/mark'
import type { BuildMethod } from '../project/method'
import { type Mm, settle } from '../units/length'
import { besideOf } from './beside'
import type { Board } from './board'
import { holesIn, type PinRows } from './boring'
import type { CabinetBuild, Rules } from './build'
import { carcassOf, hasNailersBehind } from './carcass'
import { withSlantDoor } from './cornerDoor'
import { feetInCorner } from './cornerFeet'
import { cornerFloor, slantKick } from './cornerFloor'
import { withLeaves } from './cornerLeaves'
import { type Legs, legsOf, mirrored, turnedLeg } from './cornerLegs'
import { cornerBottom, cornerTop } from './cornerLevels'
import { cornerRear } from './cornerRear'
import { cornerShelves, postPins } from './cornerShelves'
import { endNotch } from './finishedEnd'
import { held } from './fixing'
import { joined } from './joinery'
import { type Foot, withPlates } from './leg'
import { boardOf, type Piece } from './piece'
import { type Report, reportOn, SILENT } from './report'
import { kickNotch, sidesOf } from './side'
import { mirroredSlant } from './slantBoard'
import { canBeCut, tellTightness } from './sound'

/** The narrowest leaf of an L and the least that a diagonal goes on past either side. Common practice, no source. */
const LEAST_LEAF: Mm = 150

/**
 * A cabinet in a corner of the room, with everything through the corner in one board that can be. It has a full top
 * whatever its method says, for stretchers would meet nothing in the inside corner. Whatever else stands in a straight
 * carcass, drawers and partitions, is left out.
 */
export function buildCorner(cabinet: Cabinet, corner: Corner, rules: Rules): CabinetBuild {
  const mark = markOf(cabinet)
  const report = reportOn(cabinet.id, mark, rules.display)
  const nothing = { cabinet, mark, boards: [], fronts: [], openings: [], problems: report.problems }
  const plain = plainCabinet(cabinet, report)
  const asked = cornerRules(corner, rules, report)
  const own = carcassOf(plain, asked, report)
  if (!own) return nothing
  const legs = legsOf(own, corner)
  for (const leg of [legs.own, legs.other]) tellTightness(leg, report)
  if (!isRoomy(legs, report)) return nothing
  const { boards, fronts } = builtCorner(plain, legs, corner, asked, { report, isKickLong: rules.kick === 'inLengths' })
  return {
    cabinet,
    mark,
    boards: held(
      withPlates(boards, own, () => feetOf(legs, corner)),
      asked.method.fixing,
      report,
    ),
    fronts,
    openings: [],
    problems: report.problems,
  }
}

function feetOf(legs: Legs, { hand }: Corner): Foot[] {
  const { rear, front } = feetInCorner(legs)
  const { width } = legs.own
  return [...rear, ...front].map(({ x, z }) => ({ x: hand === 'right' ? settle(width - x) : x, z }))
}

/** How many legs a corner cabinet stands on, and how many of them carry its kick; null where it cannot be built. */
export function countedFeet(cabinet: Cabinet, rules: Rules): { readonly all: number; readonly front: number } | null {
  const own = cabinet.corner && carcassOf(cabinet, cornerRules(cabinet.corner, rules, SILENT), SILENT)
  if (!cabinet.corner || !own) return null
  const { rear, front } = feetInCorner(legsOf(own, cabinet.corner))
  return { all: rear.length + front.length, front: front.length }
}

/** What a corner can have of what is asked: shelves, and doors or none. */
function plainCabinet(cabinet: Cabinet, report: Report): Cabinet {
  const { front, interior } = cabinet
  if (front.kind !== 'open' && front.kind !== 'door') {
    report.mind('a corner is closed by a door or stays open; it gets a door.')
  }
  const { fixedShelves, adjustableShelves } = interior
  const isMore = interior.partition || (interior.rollOuts?.count ?? 0) > 0 || (interior.dividers ?? 0) > 0
  if (isMore) report.mind('in a corner there are shelves and nothing else, so the rest of its inside is left out.')
  return {
    ...cabinet,
    front: front.kind === 'open' || front.kind === 'door' ? front : DOOR,
    interior: { fixedShelves, adjustableShelves, partition: null },
  }
}

const DOOR: Front = { kind: 'door', hinge: 'left' }

function cornerRules({ kind }: Corner, rules: Rules, report: Report): Rules {
  const isInset = kind === 'diagonal' && rules.method.frontMount === 'inset'
  if (isInset) report.mind('the door of a diagonal is laid over the front edges, also where others are inset.')
  if (rules.method.faceFrame) report.mind('a corner is built without a face frame.')
  const method: BuildMethod = {
    ...rules.method,
    faceFrame: null,
    baseTop: { kind: 'full' },
    ...(isInset ? { frontMount: 'fullOverlay' } : {}),
  }
  return { ...rules, method, kick: 'perCabinet' }
}

function isRoomy({ own, other }: Legs, report: Report): boolean {
  const room = [
    ['its own leg', settle(own.width - own.thickness - other.depth), other.depth],
    ['the other leg', settle(other.width - own.thickness - own.depth), own.depth],
  ] as const
  for (const [name, left, depth] of room) {
    if (left >= LEAST_LEAF) continue
    report.stop(
      `${name} goes on ${report.say(left)} between the ${report.say(depth)} of the leg across it and its side; ${report.say(LEAST_LEAF)} is the least.`,
    )
  }
  return room.every(([, left]) => left >= LEAST_LEAF)
}

function builtCorner(
  cabinet: Cabinet,
  legs: Legs,
  corner: Corner,
  rules: Rules,
  { report, isKickLong }: { readonly report: Report; readonly isKickLong: boolean },
): Pick<CabinetBuild, 'boards' | 'fronts'> {
  const isRight = corner.hand === 'right'
  const { width } = legs.own
  const rear = cornerRear(legs, report)
  const nailers = hasNailersBehind(legs.own) ? [] : rear.filter(isOwnNailer)
  const { fixedShelves: fixed, adjustableShelves: adjustable } = cabinet.interior
  const shelving = cornerShelves({ fixed, adjustable }, nailers, legs, report)
  const pieces = [
    ...cornerSides(legs),
    cornerBottom(legs),
    cornerTop(legs),
    ...rear,
    ...cornerFloor(legs, isKickLong),
    ...shelving.pieces,
    ...besideFree(cabinet, legs, corner, rules, report),
  ].filter((piece) => canBeCut(piece, report))
  const lying = joined(isRight ? pieces.map((piece) => mirrored(piece, width)) : pieces)
  const boards = lying.map((board) => workedOn(board, cabinet, shelving.pins, legs, corner))
  const slanted = (board: Board) => (isRight ? mirroredSlant(board, width) : board)
  const kicks = slantKick(legs, isKickLong).map(slanted)
  const { front } = cabinet
  if (front.kind === 'open') return { boards: [...boards, ...kicks], fronts: [] }
  const densityOf = ({ material }: Board) => rules.materials[material]?.density ?? 0
  const doors = { hand: corner.hand, width, of: cabinet.kind, report, densityOf }
  const hinge = front.kind === 'door' && front.hinge === 'right' ? 'right' : 'left'
  const hung = legs.kind === 'L' ? withLeaves(boards, legs, doors) : withSlantDoor(boards, legs, hinge, doors)
  return { boards: [...hung.boards, ...kicks], fronts: hung.fronts }
}

function isOwnNailer({ role, number }: Piece): boolean {
  return number === 1 && (role === 'topNailer' || role === 'bottomNailer')
}

/** One at the free end of each leg. */
function cornerSides(legs: Legs): Piece[] {
  const [, right] = sidesOf(legs.own)
  const [left] = sidesOf(legs.other)
  return [turnedLeg(left!, legs), right!]
}

/** What stands beside the free end of the own leg; in the corner nothing can. */
function besideFree(cabinet: Cabinet, { own }: Legs, { hand }: Corner, rules: Rules, report: Report): Piece[] {
  const { beside } = cabinet
  if (beside[hand].kind !== 'none')
    report.mind(`in the corner nothing stands beside it; the ${beside[hand].kind} is left out.`)
  const free = { left: NOTHING_BESIDE.left, right: beside[hand === 'left' ? 'right' : 'left'] }
  return besideOf({ ...cabinet, beside: free }, own, rules.materials, report)
}

function workedOn(board: Board, { beside }: Cabinet, pins: readonly PinRows[], legs: Legs, { hand }: Corner): Board {
  switch (board.role) {
    case 'cornerPost':
      return postPins(board, pins, legs)
    case 'leftEnd':
    case 'rightEnd':
      return {
        ...board,
        operations: [
          ...endNotch(board, beside[board.role === 'leftEnd' ? 'left' : 'right'], legs.own),
          ...board.operations,
        ],
      }
    case 'leftSide':
    case 'rightSide': {
      // A side is worked as the side of its own leg, as it stands along the wall of that leg.
      const isOwn = (board.role === 'rightSide') === (hand === 'left')
      const leg = isOwn ? legs.own : legs.other
      const straight = boardOf(sidesOf(leg)[board.role === 'leftSide' ? 0 : 1]!)
      const notch = kickNotch(leg, board.role)
      const holes = holesIn({ ...board, placement: straight.placement }, pins, leg)
      return { ...board, operations: [...(notch ? [notch] : []), ...board.operations, ...holes] }
    }
    default:
      return board
  }
}
