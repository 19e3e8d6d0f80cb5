import type { Interval } from '../geometry/interval'
import type { BuildMethod } from '../project/method'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import { boxOf } from './boardBox'
import { type Carcass, insideFront } from './carcass'
import { slideSetback } from './drawerBox'
import { LEAST_WOOD } from './hinge'
import { holesBetween, withHoles } from './holes'
import { type Face, type HoleRow, isEdgeSlot, isSlantedCut } from './operation'

/** Screws of a slide are no nearer to its rear end than this. Common practice, no source. */
const FROM_REAR: Mm = 20

/**
 * How far behind the front the screws of a slide are: the first at its distance, the last as far back as the grid and the
 * slide allow, and one in the middle where four steps or more are between them.
 */
export function slideScrews(length: Mm, { method }: Carcass): Mm[] {
  const { firstFromFront, pitch } = method.slides
  const setback = slideSetback(method)
  const steps = Math.floor((length - FROM_REAR - firstFromFront) / pitch + 1e-6)
  if (!(steps >= 0)) return []
  const at = steps >= 4 ? [0, Math.floor(steps / 2), steps] : steps > 0 ? [0, steps] : [0]
  return at.map((step) => settle(setback + firstFromFront + step * pitch))
}

/** What a slide may stand off an upright beside its clearance; farther off it is packed out, and screwed to the packing. */
const PLAY: Mm = 1

/** The sides of drawer boxes that are too far from any upright, so that their slides are screwed to packing. */
export function packedOut(boards: readonly Board[], method: Pick<BuildMethod, 'slide'>): Board[] {
  const uprights = boards.filter(({ role }) => role === 'leftSide' || role === 'rightSide' || role === 'partition')
  return boards.filter((side) => {
    if (side.role !== 'drawerSide') return false
    const { min, max } = boxOf(side)
    const height = { from: min.y, to: max.y }
    return uprights.every((board) => faceBeside(board, min.x, max.x, height, { method }) === null)
  })
}

/** The boards with the screw holes of slides: on both uprights of each drawer box, on one line at its height. */
export function slidden(boards: readonly Board[], carcass: Carcass): readonly Board[] {
  const boxes = boards.filter(({ role }) => role === 'drawerSide').map((side) => ({ side, box: boxOf(side) }))
  return boards.map((board) => {
    if (board.role !== 'leftSide' && board.role !== 'rightSide' && board.role !== 'partition') return board
    const rows = boxes.flatMap(({ side, box }) => {
      const face = faceBeside(board, box.min.x, box.max.x, { from: box.min.y, to: box.max.y }, carcass)
      return face ? screwsFor(board, face, settle(box.min.y + carcass.method.slides.lineUp), side.length, carcass) : []
    })
    return withHoles(board, rows)
  })
}

/** The face of an upright that is within reach of a slide from the side of a drawer box. */
function faceBeside(
  board: Board,
  left: Mm,
  right: Mm,
  height: Interval,
  { method }: { readonly method: Pick<BuildMethod, 'slide'> },
): Face | null {
  const { min, max } = boxOf(board)
  if (height.to <= min.y || height.from >= max.y) return null
  const { slide } = method
  const reach = settle((slide.kind === 'side' ? slide.clearance : slide.insideDeduction / 2) + PLAY)
  const isLeftOf = left >= max.x && settle(left - max.x) < reach
  const isRightOf = right <= min.x && settle(min.x - right) < reach
  if (board.role === 'partition') return isLeftOf ? 'inside' : isRightOf ? 'outside' : null
  return isLeftOf || isRightOf ? 'inside' : null
}

function screwsFor(board: Board, face: Face, y: Mm, length: Mm, carcass: Carcass): HoleRow[] {
  const { holeDiameter: diameter, holeDepth: depth } = carcass.method.slides
  const bore = { purpose: 'slide', diameter, depth } as const
  const { min } = boxOf(board)
  return slideScrews(length, carcass).flatMap((back) => {
    const at = { ...min, y, z: settle(insideFront(carcass) - back) }
    return holesBetween(board, face, at, at, bore).filter((row) => isClear(row, board))
  })
}

/** Whether a hole breaks into nothing that is worked on its face already. */
function isClear({ face, x, y, diameter }: HoleRow, { operations }: Board): boolean {
  const around = diameter / 2 + LEAST_WOOD
  return !operations.some((one) => {
    if (one.kind === 'holeRow' || isSlantedCut(one) || isEdgeSlot(one)) return false
    if (one.kind !== 'notch' && one.face !== face) return false
    const isBeside = x + around <= one.x || x - around >= one.x + one.length
    return !isBeside && y + around > one.y && y - around < one.y + one.width
  })
}
