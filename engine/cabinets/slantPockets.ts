import { toCabinet, turned } from '../geometry/placement'
import { plus, type Vec3 } from '../geometry/vector'
import { pocketsOf } from '../project/fixing'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import { boxOf } from './boardBox'
import { type Doors, slantPlane } from './cornerDoor'
import type { Legs } from './cornerLegs'
import { type FacePlane, undone } from './facePlane'
import { inBoard } from './frame'
import { carcassJoints, isMember } from './framePockets'
import { withHoles } from './holes'
import { type Clip, centresOf, type HoleRow, isSlantedCut, type Notch } from './operation'
import { boardOf, room, UNBANDED } from './piece'
import { pocketed, pocketIn } from './pocket'
import { boredBy, removedBy } from './removed'
import type { FixedBoards } from './spacing'

/** A bottom or a top with its corner cut off along the rear of a slanting frame. */
interface Level {
  readonly board: Board
  readonly clip: Clip
  /** What of it lies behind that line, as if the line were its front edge and the frame stood at no slant. */
  readonly strip: Board
}

/** How much of a level board is looked at behind the line: more than any pocket is long. */
const BEHIND: Mm = 200

/**
 * The boards of a diagonal with the pocket holes towards its slanting frame: in the underside of the bottom and on the top,
 * square to the line that both are cut along. The sides meet the frame at too slanting an angle for pockets, and are glued.
 */
export function withSlantPockets(
  boards: readonly Board[],
  legs: Legs,
  doors: Pick<Doors, 'hand' | 'width'>,
): FixedBoards {
  const { frame, method } = legs.own
  const { frameFixing } = method
  if (!frame || legs.kind === 'L' || frameFixing?.kind !== 'pocketScrews') return { boards, missing: 0 }
  const plane = slantPlane(legs, doors)
  const levels = boards.flatMap((board) => levelOf(board, plane) ?? [])
  const members = boards.filter(isMember).map((board) => laidFlat(board, plane))
  const flat = [...members, ...levels.map(({ strip }) => strip)]
  const rules = pocketsOf(method)
  const done = pocketed(flat, carcassJoints(flat, 0, frameFixing), rules)
  const bored = new Map(
    levels.map((level, at) => {
      const strip = done.boards[members.length + at]!
      const rows = strip.operations.filter((one): one is HoleRow => one.kind === 'holeRow')
      const { fromEnd } = pocketIn(level.board.thickness, rules)
      return [level.board, rows.flatMap((row) => inLevel(row, strip, level, plane, fromEnd))]
    }),
  )
  return { boards: boards.map((board) => withHoles(board, bored.get(board) ?? [])), missing: done.missing }
}

function levelOf(board: Board, plane: FacePlane): Level | null {
  const clip = board.operations.find((one) => one.kind === 'clip')
  if ((board.role !== 'bottom' && board.role !== 'top') || !clip) return null
  const x = lineOf(clip, board).map((point) => flatPoint(point, plane).x)
  const { min, max } = boxOf(board)
  const plain = boardOf({
    ...{ role: board.role, number: 1, material: board.material, banded: UNBANDED, explode: board.explode },
    lie: board.role === 'bottom' ? 'levelLookingUp' : 'levelLookingDown',
    box: room([Math.min(...x), Math.max(...x)], [min.y, max.y], [-BEHIND, 0]),
  })
  return { board, clip, strip: { ...plain, operations: takenIn(board, plain, plane) } }
}

/** Both ends of the line that a corner is cut off along, in the cabinet's frame. */
function lineOf({ end, edge, length, width }: Clip, board: Board): readonly [Vec3, Vec3] {
  const [far, x] = end === 'end' ? [board.length, board.length - length] : [0, length]
  const [outer, y] = edge === 'high' ? [board.width, board.width - width] : [0, width]
  return [toCabinet(board.placement, far, y, 0), toCabinet(board.placement, x, outer, 0)]
}

/** The rooms of what is worked on a board already, on its strip. */
function takenIn(board: Board, strip: Board, plane: FacePlane): Notch[] {
  const rooms = board.operations.flatMap((one) => {
    if (one.kind === 'holeRow') return boredBy(one, board)
    const taken = isSlantedCut(one) ? null : removedBy(one, board)
    return taken ? [taken] : []
  })
  return rooms.map(({ min, max }): Notch => {
    const points = [min.x, max.x].flatMap((x) =>
      [min.y, max.y].map((y) => {
        const point = flatPoint(toCabinet(board.placement, x, y, 0), plane)
        return inBoard(strip, { min: point, max: point }).min
      }),
    )
    const [x, y] = [points.map((point) => point.x), points.map((point) => point.y)]
    const [left, low] = [Math.min(...x), Math.min(...y)]
    return {
      ...{ kind: 'notch', x: left, y: low },
      ...{ length: settle(Math.max(...x) - left), width: settle(Math.max(...y) - low) },
    }
  })
}

/** A member of the frame, or a point, as it is before they are stood up in their plane. */
function laidFlat(board: Board, plane: FacePlane): Board {
  const { turn: _, ...placement } = board.placement
  return { ...board, placement: { ...placement, origin: flatPoint(board.placement.origin, plane) } }
}

function flatPoint({ x, y, z }: Vec3, plane: FacePlane): Vec3 {
  const back = undone(plane)
  const at = plus(turned({ x, y, z }, back.turn), { x: back.x, y: 0, z: back.z })
  return { x: settle(at.x), y: settle(at.y), z: settle(at.z) }
}

/** The holes of a strip where they are in its board, each by itself. */
function inLevel(row: HoleRow, strip: Board, { board, clip }: Level, plane: FacePlane, away: Mm): HoleRow[] {
  const side = clip.edge === 'high' ? 1 : -1
  const aside = (side * Math.atan2(clip.length, clip.width) * 180) / Math.PI
  return centresOf(row).map(({ x, y }): HoleRow => {
    const flat = toCabinet(strip.placement, x, y, 0)
    const point = plus(turned(flat, plane.turn), { x: plane.x, y: 0, z: plane.z })
    const at = inBoard(board, { min: point, max: point }).min
    const slant = { ...row.slant!, towards: clip.end, aside, away }
    return { ...row, x: at.x, y: at.y, step: 0, count: 1, slant }
  })
}
