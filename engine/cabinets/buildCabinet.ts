import type { Cabinet } from '../project/document'
import { markOf } from '../project/mark'
import { asMeasured, measuredPlace, openingsOf } from './asBuilt'
import { backOf } from './back'
import { rearAt } from './bay'
import { besideOf } from './beside'
import type { Board, BoardRole } from './board'
import { holesIn } from './boring'
import { bottomOf } from './bottom'
import type { CabinetBuild, Rules } from './build'
import {
  backFront,
  type Carcass,
  carcassOf,
  clearBottom,
  clearTop,
  clearWidth,
  hasNailersBehind,
  insideFront,
} from './carcass'
import { type DrawerPlace, drawerBoxOf } from './drawerBox'
import { endNotch } from './finishedEnd'
import { facesOf, frontsOf } from './fronts'
import { hung } from './hingeBoring'
import { type Interior, interiorOf } from './interior'
import { joined } from './joinery'
import { lidOf } from './lid'
import { nailersOf } from './nailer'
import { windowsIn } from './niche'
import { cellsOf } from './openings'
import type { Notch } from './operation'
import { boardOf, type Piece } from './piece'
import { pipesIn } from './pipes'
import { refitted } from './refit'
import { type Report, reportOn } from './report'
import { ROLE_NAMES } from './role'
import { kickNotch, sidesOf, sideWidth } from './side'
import { slidden } from './slideBoring'
import { stretchersOf } from './stretcher'
import { toeKickOf } from './toeKick'
import { topOf } from './top'

/**
 * A cabinet resolved against its rules: first the room of every board, then what the boards cut into each other, then
 * the holes. A cabinet that cannot be built comes back with what can be, and with its problems; nothing is thrown.
 */
export function buildCabinet(cabinet: Cabinet, rules: Rules): CabinetBuild {
  const mark = markOf(cabinet)
  const report = reportOn(cabinet.id, mark, rules.display)
  const carcass = carcassOf(cabinet, rules, report)
  if (!carcass) return { cabinet, mark, boards: [], fronts: [], openings: [], problems: report.problems }
  tellTightness(carcass, report)
  const shell = shellOf(carcass, report)
  const cells = cellsOf(cabinet.front, carcass, report)
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
  const boxAt = (place: DrawerPlace, at: number) =>
    drawerBoxOf(at + 1, place, rearAt(place.opening, obstacles, carcass), carcass, report)
  const drawers = places.flatMap(boxAt)
  const drawn = frontsOf(
    faces,
    { isGrainRunning: cabinet.isGrainRunning, hasBoxes: drawers.length > 0 },
    carcass,
    report,
  )
  const beside = besideOf(cabinet, carcass, rules.materials, report)
  const pieces = [...shell, ...interior.pieces, ...drawn, ...drawers, ...beside]
  const { pipes } = cabinet.interior
  const pipesThrough = (back: Board) => (pipes ? pipesIn(back, pipes, carcass, report) : [])
  const boards = joined(pieces.filter((piece) => canBeCut(piece, report))).map((one) => {
    return worked(one, cabinet, interior, pipesThrough, carcass)
  })
  const visible = faces.filter(({ rect }) => rect.width > 0 && rect.height > 0)
  const openings = openingsOf(cells, interior.pieces, cabinet.asBuilt ?? {}, report)
  const fronts = facesOf(
    cells.map((cell) => asMeasured(cell, openings)),
    carcass,
  ).filter((_, at) => visible.includes(faces[at]!))
  const density = rules.materials[carcass.method.frontMaterial]?.density ?? 0
  return {
    cabinet,
    mark,
    boards: withBoxes(
      refitted(hung(slidden(boards, carcass), visible, carcass, density), visible, fronts),
      places.flatMap((place, at) => {
        const measured = measuredPlace(place, openings)
        return measured ? [boxAt(measured, at)] : []
      }),
    ),
    fronts,
    openings,
    problems: report.problems,
  }
}

/** The boards with some drawer boxes made to measured openings in place of those that were drawn. */
function withBoxes(boards: readonly Board[], boxes: readonly (readonly Piece[])[]): readonly Board[] {
  const made = new Map(
    boxes.flatMap((box) => joined(box)).map((board) => [`${board.role} ${board.number}`, board] as const),
  )
  if (made.size === 0) return boards
  return boards.map((board) => {
    const fresh = made.get(`${board.role} ${board.number}`)
    return fresh ? { ...fresh, isMeasured: true } : board
  })
}

/** The carcass itself, from the floor up. */
function shellOf(carcass: Carcass, report: Report): Piece[] {
  const back = backOf(carcass)
  return [
    ...sidesOf(carcass),
    bottomOf(carcass),
    ...(carcass.top === 'full' ? [topOf(carcass)] : stretchersOf(carcass, report)),
    ...(back ? [back] : []),
    ...nailersOf(carcass),
    ...lidOf(carcass),
    ...toeKickOf(carcass),
  ]
}

const isBackStretcher = ({ role }: Piece) => role === 'backStretcher'
const isInTheWay = ({ role }: Piece) => role === 'topNailer' || role === 'bottomNailer' || role === 'backStretcher'

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

function tellTightness(carcass: Carcass, report: Report): void {
  if (clearWidth(carcass) <= 0) {
    report.stop(
      `two sides of ${report.say(carcass.thickness)} leave nothing clear in a width of ${report.say(carcass.width)}.`,
    )
  }
  if (clearTop(carcass) <= clearBottom(carcass)) {
    const clear = report.say(clearTop(carcass) - clearBottom(carcass))
    report.stop(
      `between its bottom and its top there would be ${clear} clear in a height of ${report.say(carcass.height)}.`,
    )
  }
  const { floor } = carcass.method
  if (carcass.floorHeight > 0 && floor.kind !== 'none' && floor.setback >= sideWidth(carcass)) {
    report.stop(
      `its kick is set back ${report.say(floor.setback)}; its sides are ${report.say(sideWidth(carcass))} wide.`,
    )
  }
  if (backFront(carcass) >= insideFront(carcass)) {
    const front = report.say(insideFront(carcass))
    report.stop(
      `the front of the back would be ${report.say(backFront(carcass))} from the wall; the inside ends at ${front}.`,
    )
  }
}

/** The narrowest panel that is cut at a rail. Common practice, no source. */
const LEAST_WIDTH = 60
const PANELS: readonly BoardRole[] = ['leftSide', 'rightSide', 'bottom', 'top', 'fixedShelf', 'adjustableShelf', 'door']

function canBeCut(piece: Piece, report: Report): boolean {
  const { length, width, thickness } = boardOf(piece)
  const name = `the ${ROLE_NAMES[piece.role]}`
  const sizes = [
    [length, 'long'],
    [width, 'wide'],
    [thickness, 'thick'],
  ] as const
  const missing = sizes.find(([size]) => !(size > 0 && Number.isFinite(size)))
  if (missing) {
    report.stop(`${name} would be ${report.say(missing[0])} ${missing[1]}; it is left out.`)
    return false
  }
  if (thickness > width) {
    report.stop(`${name} would be ${report.say(width)} wide; its sheet is ${report.say(thickness)} thick.`)
  } else if (PANELS.includes(piece.role) && width < LEAST_WIDTH) {
    report.stop(`${name} would be ${report.say(width)} wide; ${report.say(LEAST_WIDTH)} is the least that can be cut.`)
  }
  return true
}
