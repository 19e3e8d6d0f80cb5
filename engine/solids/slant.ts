import { remember } from '../basics/remember'
import type { Board } from '../cabinets/board'
import { type Bevel, type Clip, isMitre, isSlantedCut } from '../cabinets/operation'
import { toCabinet } from '../geometry/placement'
import { plus, type Vec3 } from '../geometry/vector'
import { type Convex, convexOfBox, cutBy, type Plane } from './convex'
import { solidOf } from './solid'

/** Whether a board has an edge that is square to none of its cabinet's: a corner cut off, an edge bevelled, an end mitred, or the board turned. */
export function isSlanted({ operations, placement }: Board): boolean {
  return placement.turn !== undefined || operations.some(isSlantedCut)
}

/** The planes, in the board's frame, beyond which its corners are cut off, its edges bevelled and its ends mitred. */
export function clipPlanes(board: Board): Plane[] {
  return board.operations.flatMap((one) => {
    if (one.kind === 'bevel') return [bevelPlane(one, board)]
    return one.kind === 'clip' ? [clipPlane(one, board)] : []
  })
}

/** From the edge or the end of the face that stays whole to that of the other one. */
function bevelPlane({ edge, face, by }: Bevel, { length, width, thickness }: Board): Plane {
  const long = Math.hypot(by, thickness)
  const isNear = edge === 'low' || edge === 'start'
  const out = ((isNear ? -1 : 1) * thickness) / long
  const z = ((face === 'outside' ? -1 : 1) * by) / long
  const far = isMitre({ edge }) ? length : width
  // It goes through the edge of the whole face.
  return {
    normal: isMitre({ edge }) ? { x: out, y: 0, z } : { x: 0, y: out, z },
    at: out * (isNear ? 0 : far) + z * (face === 'outside' ? thickness : 0),
  }
}

/** Square to the line from one end of the cut to the other, towards the corner. */
function clipPlane(clip: Clip, board: Board): Plane {
  const long = Math.hypot(clip.length, clip.width)
  const x = ((clip.end === 'start' ? -1 : 1) * clip.width) / long
  const y = ((clip.edge === 'low' ? -1 : 1) * clip.length) / long
  const from = clip.end === 'start' ? clip.length : board.length - clip.length
  const edge = clip.edge === 'low' ? 0 : board.width
  return { normal: { x, y, z: 0 }, at: x * from + y * edge }
}

/** A board as it is worked, but for its holes, in its own frame: bodies that touch and never overlap. */
export const bodiesOf: (board: Board) => readonly Convex[] = remember((board: Board) => {
  const planes = clipPlanes(board)
  return solidOf(board)
    .map((box) => planes.reduce((body, plane) => (body.length === 0 ? body : cutBy(body, plane)), convexOfBox(box)))
    .filter((body) => body.length > 0)
})

/** The same bodies in the cabinet's frame, moved by so much. */
export function bodiesInCabinet(board: Board, by: Vec3): Convex[] {
  return bodiesOf(board).map((body) =>
    body.map((face) => face.map(({ x, y, z }) => plus(toCabinet(board.placement, x, y, z), by))),
  )
}
