import type { Interval } from '../geometry/interval'
import type { Cabinet } from '../project/document'
import { markOf } from '../project/mark'
import { asMeasured, measuredPlace, openingOf, openingsOf } from './asBuilt'
import { backOf } from './back'
import { rearAt } from './bay'
import { besideOf } from './beside'
import type { Board, FrontFace } from './board'
import { holesIn } from './boring'
import { bottomOf } from './bottom'
import type { CabinetBuild, Rules } from './build'
import { buildCorner } from './buildCorner'
import { buildSpace } from './buildSpace'
import { type Carcass, carcassOf } from './carcass'
import { boxNumbers, boxStretch, type DrawerPlace, drawerBoxOf } from './drawerBox'
import { faceFrameOf } from './faceFrame'
import { endNotch } from './finishedEnd'
import { frontsScrewed } from './frontScrew'
import { facesOf, frontsOf } from './fronts'
import { frameHeld, held } from './held'
import { hung } from './hingeBoring'
import { type Interior, interiorOf } from './interior'
import { joined } from './joinery'
import { type Leaf, leafWeight } from './leaf'
import { onLegs } from './leg'
import { lidOf } from './lid'
import { NAILERS, nailersOf } from './nailer'
import { hasNailersBehind } from './nailersBehind'
import { windowsIn } from './niche'
import { type Cell, cellsOf } from './openings'
import type { Notch } from './operation'
import { boardInCabinet, inCabinet } from './past'
import { type Piece, UNBANDED } from './piece'
import { pipesIn, tellCrossed } from './pipes'
import { pulled } from './pull'
import { nameOf, refitted } from './refit'
import { type Report, reportOn, SILENT } from './report'
import { withSeenEnds } from './seenEnds'
import { kickNotch, sidesOf } from './side'
import { slidden } from './slideBoring'
import { canBeCut, tellTightness } from './sound'
import { stretchersOf } from './stretcher'
import { toeKickOf } from './toeKick'
import { topOf } from './top'

/**
 * A cabinet resolved against its rules: first the room of every board, then what the boards cut into each other, then
 * the holes. A cabinet that cannot be built comes back with what can be, and with its problems; nothing is thrown.
 */
export function buildCabinet(cabinet: Cabinet, rules: Rules): CabinetBuild {
  if (cabinet.space) return buildSpace(cabinet, cabinet.space, rules)
  return cabinet.corner ? buildCorner(cabinet, cabinet.corner, rules) : buildStraight(cabinet, rules)
}

function buildStraight(cabinet: Cabinet, rules: Rules): CabinetBuild {
  const mark = markOf(cabinet)
  const report = reportOn(cabinet.id, mark, rules.display)
  const carcass = carcassOf(cabinet, rules, report)
  if (!carcass) return { cabinet, mark, boards: [], fronts: [], openings: [], problems: report.problems }
  tellTightness(carcass, report)
  const cells = cellsOf(cabinet.front, carcass, report)
  const shell = shellOf(carcass, cells.flatMap(filledHeight), report)
  const obstacles = hasNailersBehind(carcass) ? shell.filter(isBackStretcher) : shell.filter(isInTheWay)
  const interior = interiorOf(
    cabinet,
    cells,
    obstacles.filter((piece) => isBefore(piece, carcass)),
    carcass,
    report,
  )
  const faces = facesOf(cells, carcass)
  const places = [...interior.drawers, ...interior.rollOuts]
  const numbers = boxNumbers(places)
  const boxAt = (place: DrawerPlace, at: number, told: Report) =>
    drawerBoxOf(numbers[at]!, place, rearAt(boxStretch(place, carcass), obstacles, carcass), carcass, told)
  const drawers = places.flatMap((place, at) => boxAt(place, at, report))
  const how = { isGrainRunning: cabinet.isGrainRunning && !cabinet.isGrainAcross, hasBoxes: drawers.length > 0 }
  const drawn = frontsOf(faces, how, carcass, report)
  const beside = besideOf(cabinet, carcass, rules.materials, report)
  const frame = faceFrameOf(cabinet.front, carcass, report)
  const pieces = [...shell, ...interior.pieces, ...frame, ...drawn, ...drawers, ...beside].map((piece) => {
    const banded = isHiddenByFrame(piece, carcass) ? { ...piece, banded: UNBANDED } : piece
    return withSeenEnds(banded, cabinet, carcass)
  })
  const { pipes } = cabinet.interior
  if (pipes && interior.niches.length === 0) tellCrossed(pipes, interior.pieces, carcass, report)
  const pipesThrough = (back: Board) => (pipes ? pipesIn(back, pipes, carcass, report) : [])
  const boards = joined(
    pieces.filter((piece) => canBeCut(piece, report)),
    carcass.method,
  ).map((one) => {
    return worked(one, cabinet, interior, pipesThrough, carcass)
  })
  const visible = faces.filter(({ rect }) => rect.width > 0 && rect.height > 0)
  const openings = openingsOf(cells, interior.pieces, cabinet.asBuilt ?? {}, report)
  const measured = cells.flatMap((cell) => {
    const isMade = openingOf(cell, openings)?.isMade ?? false
    return facesOf([asMeasured(cell, openings)], carcass).map((face) => ({ face, isMade }))
  })
  const fronts = measured.filter((_, at) => visible.includes(faces[at]!))
  const weightOf = (leaf: Pick<Leaf, 'boards'>) =>
    leafWeight(leaf, ({ material }) => rules.materials[material]?.density ?? 0)
  const anew = measured.some(({ isMade }) => isMade)
    ? frontsOf(
        measured.map(({ face }) => face),
        { ...how, drawn: faces },
        carcass,
        SILENT,
      )
    : []
  const refits = fronts.map(({ face, isMade }, at) => ({ drawn: visible[at]!, measured: isMade ? face : null }))
  const drilled = refitted(
    hung(slidden(boards, carcass), visible, carcass, weightOf),
    refits,
    new Map(joined(anew).map((board) => [nameOf(board), board])),
  )
  const boxed = withBoxes(
    drilled,
    places.flatMap((place, at) => {
      const own = measuredPlace(place, openings)
      return own ? [boxAt(own, at, own === place ? SILENT : report)] : []
    }),
  )
  const made = fronts.map(({ face }) => face)
  const corners = held(fitted(boxed, made, carcass, { of: cabinet.kind, report }), carcass, report)
  const done = frameHeld(corners, carcass, report)
  return {
    cabinet,
    mark,
    boards: done.map((board) => boardInCabinet(board, carcass)),
    fronts: made.map((face) => ({ ...face, rect: inCabinet(face.rect, carcass) })),
    openings,
    problems: report.problems,
  }
}

/** Front edges that a face frame is glued on are not banded; those of loose shelves behind it are seen. */
function isHiddenByFrame({ banded, box }: Piece, { frame, depth }: Carcass): boolean {
  return frame !== null && banded.edges === 'front' && box.max.z === depth
}

/** The boards with some drawer boxes made to measured openings in place of those that were drawn. */
function withBoxes(boards: readonly Board[], boxes: readonly (readonly Piece[])[]): readonly Board[] {
  const made = new Map(boxes.flatMap((box) => joined(box)).map((board) => [nameOf(board), board] as const))
  if (made.size === 0) return boards
  return boards.map((board) => {
    const fresh = made.get(nameOf(board))
    return fresh ? { ...fresh, isMeasured: true } : board
  })
}

/** The boards with the holes for pulls, for the screws of drawer fronts and for legs. */
function fitted(
  boards: readonly Board[],
  fronts: readonly FrontFace[],
  carcass: Carcass,
  { of, report }: { readonly of: Cabinet['kind']; readonly report: Report },
): readonly Board[] {
  const { method } = carcass
  const withPulls = pulled(boards, fronts, { method, of, report })
  return onLegs(frontsScrewed(withPulls, fronts, method.frontScrews, report), carcass)
}

/** The carcass itself, from the floor up. */
function shellOf(carcass: Carcass, taken: readonly Interval[], report: Report): Piece[] {
  const back = backOf(carcass)
  return [
    ...sidesOf(carcass),
    bottomOf(carcass),
    ...(carcass.top === 'full' ? [topOf(carcass)] : stretchersOf(carcass, report)),
    ...(back ? [back] : []),
    ...nailersOf(carcass, report, taken),
    ...lidOf(carcass),
    ...toeKickOf(carcass),
  ]
}

const isBackStretcher = ({ role }: Piece) => role === 'backStretcher'
const isInTheWay = (piece: Piece) => isBackStretcher(piece) || NAILERS.some((role) => role === piece.role)

/** A niche and a drawer use their height to the back, and shelves do not. */
function filledHeight({ front, opening }: Cell): Interval[] {
  return front.kind === 'appliance' || front.kind === 'drawer' || front.kind === 'pullOut' ? [opening] : []
}

/** A flat stretcher lies above every opening; only what stands before the back is in the way inside. */
function isBefore({ role }: Piece, carcass: Carcass): boolean {
  return role !== 'backStretcher' || carcass.top === 'onEdge'
}

function worked(
  board: Board,
  { beside }: Cabinet,
  { pins, niches }: Interior,
  pipesThrough: (back: Board) => Notch[],
  carcass: Carcass,
): Board {
  if (board.role === 'back') {
    const windows = windowsIn(board, niches, carcass)
    // Behind an appliance there is a window already.
    const pipes = windows.length > 0 ? [] : pipesThrough(board)
    return { ...board, operations: [...board.operations, ...windows, ...pipes] }
  }
  if (board.role === 'leftEnd' || board.role === 'rightEnd') {
    const side = board.role === 'leftEnd' ? 'left' : 'right'
    return { ...board, operations: [...endNotch(board, beside[side], carcass), ...board.operations] }
  }
  if (board.role !== 'leftSide' && board.role !== 'rightSide' && board.role !== 'partition') return board
  const notch = board.role === 'partition' ? null : kickNotch(carcass, board.role)
  const holes = holesIn(board, pins, carcass)
  return { ...board, operations: [...(notch ? [notch] : []), ...board.operations, ...holes] }
}
