import type { Corner } from '../project/corner'
import { type Cabinet, NOTHING_BESIDE } from '../project/document'
import { markOf } from '../project/mark'
import { settle } from '../units/length'
import { besideOf } from './beside'
import type { Board } from './board'
import type { PinRows } from './boring'
import type { CabinetBuild, Rules } from './build'
import type { Carcass } from './carcass'
import { cornerCarcass, cornerRules, isRoomy, plainCabinet } from './cornerCarcass'
import { withSlantDoor } from './cornerDoor'
import { feetInCorner } from './cornerFeet'
import { cornerFloor, slantKick } from './cornerFloor'
import { cornerFrame } from './cornerFrame'
import { withLeaves } from './cornerLeaves'
import { type Legs, mirrored } from './cornerLegs'
import { cornerBottom, cornerTop } from './cornerLevels'
import { cornerRear } from './cornerRear'
import { cornerShelves, postPins } from './cornerShelves'
import { cornerSides, workedSide } from './cornerSide'
import { countsOf } from './filledBay'
import { endNotch } from './finishedEnd'
import { cornerFrameHeld, held } from './held'
import { joined } from './joinery'
import { type Foot, withPlates } from './leg'
import { NAILERS } from './nailer'
import { hasNailersBehind } from './nailersBehind'
import { type Piece, UNBANDED } from './piece'
import { type Report, reportOn } from './report'
import { withSeenEnds } from './seenEnds'
import { mirroredSlant } from './slantBoard'
import { canBeCut, tellTightness } from './sound'

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
  const asked = cornerRules(rules)
  const legs = cornerCarcass(plain, corner, asked, report)
  if (!legs) return nothing
  for (const leg of [legs.own, legs.other]) tellTightness(leg, report)
  if (!isRoomy(legs, report)) return nothing
  const { boards, fronts } = builtCorner(plain, legs, corner, asked, { report, isKickLong: rules.kick === 'inLengths' })
  const standing = withPlates(boards, legs.own, () => feetOf(legs, plain, corner))
  const doors = { hand: corner.hand, width: settle(plain.width) }
  const done = cornerFrameHeld(held(standing, legs.own, report), legs, doors, report)
  return { cabinet, mark, boards: done, fronts, openings: [], problems: report.problems }
}

function feetOf(legs: Legs, cabinet: Cabinet, { hand }: Corner): Foot[] {
  const { rear, front } = feetInCorner(legs)
  return [...rear, ...front].map(({ x, z }) => ({ x: hand === 'right' ? settle(cabinet.width - x) : x, z }))
}

function builtCorner(
  cabinet: Cabinet,
  legs: Legs,
  corner: Corner,
  rules: Rules,
  { report, isKickLong }: { readonly report: Report; readonly isKickLong: boolean },
): Pick<CabinetBuild, 'boards' | 'fronts'> {
  const isRight = corner.hand === 'right'
  const width = settle(cabinet.width)
  const rear = cornerRear(legs, report)
  const nailers = hasNailersBehind(legs.own) ? [] : rear.filter(isOwnNailer)
  const shelving = cornerShelves(countsOf(cabinet.interior), nailers, legs, report)
  const pieces = [
    ...cornerSides(legs),
    cornerBottom(legs),
    cornerTop(legs),
    ...rear,
    ...cornerFloor(legs, isKickLong),
    ...shelving.pieces,
    ...besideFree(cabinet, legs, corner, rules, report),
  ]
    .filter((piece) => canBeCut(piece, report))
    .map((piece) => (isHiddenByFrame(piece, legs) ? { ...piece, banded: UNBANDED } : piece))
    .map((piece) => withSeenEnds(piece, cabinet, legs.own))
  const lying = joined(isRight ? pieces.map((piece) => mirrored(piece, width)) : pieces, rules.method)
  const boards = lying.map((board) => workedOn(board, cabinet, shelving.pins, legs, corner))
  const slanted = (board: Board) => (isRight ? mirroredSlant(board, width) : board)
  const before = [...slantKick(legs).map(slanted), ...cornerFrame(legs, { hand: corner.hand, width, report })]
  const { front } = cabinet
  if (front.kind === 'open') return { boards: [...boards, ...before], fronts: [] }
  const densityOf = ({ material }: Board) => rules.materials[material]?.density ?? 0
  const doors = { hand: corner.hand, width, of: cabinet.kind, report, densityOf }
  const hinge = front.kind === 'door' && front.hinge === 'right' ? 'right' : 'left'
  const hung = legs.kind === 'L' ? withLeaves(boards, legs, doors) : withSlantDoor(boards, legs, hinge, doors)
  return { boards: [...hung.boards, ...before], fronts: hung.fronts }
}

function isOwnNailer({ role, number }: Piece): boolean {
  return number === 1 && NAILERS.some((nailer) => nailer === role)
}

/** Front edges that a face frame is glued on are not banded; those of shelves behind it are seen. */
function isHiddenByFrame({ role }: Piece, { own }: Legs): boolean {
  return own.frame !== null && ['leftSide', 'rightSide', 'bottom', 'top'].includes(role)
}

/**
 * What stands beside the free end of the own leg, as deep as that is beside what stands next to it; in the corner nothing
 * can. It leaves first, since doors and frames leave the corner past it.
 */
function besideFree(cabinet: Cabinet, legs: Legs, { hand }: Corner, rules: Rules, report: Report): Piece[] {
  const { beside } = cabinet
  if (beside[hand].kind !== 'none')
    report.mind(`in the corner nothing stands beside it; the ${beside[hand].kind} is left out.`)
  const free = { left: NOTHING_BESIDE.left, right: beside[hand === 'left' ? 'right' : 'left'] }
  const pieces = besideOf({ ...cabinet, beside: free }, endOfOwn(legs), rules.materials, report)
  return pieces.map((piece) => ({ ...piece, explode: { ...piece.explode, from: 0, to: 0.3 } }))
}

/** The own leg as a straight cabinet beside it sees it: the carcass behind a slanting frame is shallower. */
function endOfOwn({ own, ends }: Legs): Carcass {
  return { ...own, depth: settle(ends.own.z - (own.frame?.thickness ?? 0)) }
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
          ...endNotch(board, beside[board.role === 'leftEnd' ? 'left' : 'right'], endOfOwn(legs)),
          ...board.operations,
        ],
      }
    case 'leftSide':
    case 'rightSide':
      return workedSide(board, pins, legs, (board.role === 'rightSide') === (hand === 'left') ? 'own' : 'other')
    default:
      return board
  }
}
