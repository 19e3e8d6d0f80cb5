import { boxesOverlap } from '../geometry/box'
import { type Rect, rightOf, topOf } from '../geometry/rect'
import type { CabinetKind } from '../project/document'
import type { DoorPull, DrawerPull } from '../project/fixing'
import type { BuildMethod } from '../project/method'
import { type Mm, settle } from '../units/length'
import type { Board, FrontFace } from './board'
import { boxOf } from './boardBox'
import { LEAST_WOOD } from './hinge'
import { holesBetween, withHoles } from './holes'
import { centreOf, type HoleRow } from './operation'
import { boredBy } from './removed'
import type { Report } from './report'
import { ROLE_NAMES } from './role'

/** Both screws of a pull, or twice the one of a knob; in the cabinet's frame, seen from the room. */
export interface Pull {
  readonly from: Point
  readonly to: Point
}

interface Point {
  readonly x: Mm
  readonly y: Mm
}

/** The height over the floor at which a hand takes the door of a tall cabinet. Common practice, no source. */
const HAND: Mm = 1050

/** The pulls of a front, by the rules of its method; none where nothing of it moves or it is too small for one. */
export function pullsOf(
  { kind, hinge, rect }: FrontFace,
  { doorPull, drawerPull }: BuildMethod,
  of: CabinetKind,
): Pull[] {
  const wanted =
    kind === 'drawer' ? drawerPulls(rect, drawerPull) : kind === 'door' ? doorPulls(rect, hinge, doorPull, of) : []
  return wanted.filter((pull) => isWithin(pull, rect))
}

/** In the middle of the height; one in the middle of the width, or one in the middle of each half. */
function drawerPulls({ left, bottom, width, height }: Rect, pull: DrawerPull): Pull[] {
  if (pull.kind === 'none') return []
  const isWide = pull.twoFrom > 0 && width >= pull.twoFrom
  const y = settle(bottom + height / 2)
  return (isWide ? [width / 4, (3 * width) / 4] : [width / 2]).map((x) => level(settle(left + x), y, spreadOf(pull)))
}

function doorPulls(rect: Rect, hinge: FrontFace['hinge'], pull: DoorPull, of: CabinetKind): Pull[] {
  if (pull.kind === 'none') return []
  const spread = spreadOf(pull)
  // A flap is lifted at its lower edge.
  if (hinge === 'top') return [level(settle(rect.left + rect.width / 2), settle(rect.bottom + pull.fromEdge), spread)]
  const x = settle(hinge === 'left' ? rightOf(rect) - pull.fromEdge : rect.left + pull.fromEdge)
  const [lowest, highest] = [rect.bottom + pull.fromCorner, topOf(rect) - pull.fromCorner - spread]
  const hand = HAND - spread / 2
  const y = settle(of === 'base' ? highest : of === 'upper' ? lowest : Math.max(lowest, Math.min(hand, highest)))
  return [{ from: { x, y }, to: { x, y: settle(y + spread) } }]
}

function spreadOf(pull: Exclude<DoorPull | DrawerPull, { kind: 'none' }>): Mm {
  return pull.kind === 'bar' ? pull.spread : 0
}

function level(x: Mm, y: Mm, spread: Mm): Pull {
  return { from: { x: settle(x - spread / 2), y }, to: { x: settle(x + spread / 2), y } }
}

function isWithin({ from, to }: Pull, rect: Rect): boolean {
  return (
    from.x >= rect.left + LEAST_WOOD &&
    to.x <= rightOf(rect) - LEAST_WOOD &&
    from.y >= rect.bottom + LEAST_WOOD &&
    to.y <= topOf(rect) - LEAST_WOOD
  )
}

/** The boards with the holes of pulls, right through their fronts. A pull that would meet a hinge is left out and told. */
export function pulled(
  boards: readonly Board[],
  fronts: readonly FrontFace[],
  { method, of, report }: { readonly method: BuildMethod; readonly of: CabinetKind; readonly report: Report },
): readonly Board[] {
  if (method.doorPull.kind === 'none' && method.drawerPull.kind === 'none') return boards
  return boards.map((board) => {
    const face = FRONTS.includes(board.role) ? fronts.find(({ rect }) => isAt(board, rect)) : undefined
    if (!face) return board
    const wanted = pullsOf(face, method, of).flatMap((pull) => holesFor(pull, board, face, method))
    const rows = wanted.filter((row) => isClear(row, board))
    if (rows.length === 0 && isWanted(face, method)) {
      report.mind(`a ${ROLE_NAMES[board.role]} is too small for its pull, or its hinges are in the way; none is bored.`)
    }
    return withHoles(board, rows)
  })
}

function isWanted({ kind }: FrontFace, { doorPull, drawerPull }: BuildMethod): boolean {
  return (kind === 'drawer' ? drawerPull : doorPull).kind !== 'none'
}

/** Whether a row meets none of the holes that are there. */
function isClear(row: HoleRow, board: Board): boolean {
  const there = board.operations.flatMap((one) => (one.kind === 'holeRow' ? boredBy(one, board) : []))
  return !boredBy(row, board).some((box) => there.some((other) => boxesOverlap(box, other)))
}

const FRONTS: readonly Board['role'][] = ['door', 'flap', 'drawerFront']

function isAt(board: Board, { left, bottom }: Rect): boolean {
  const { min } = boxOf(board)
  return min.x === settle(left) && min.y === settle(bottom)
}

function holesFor({ from, to }: Pull, board: Board, { kind }: FrontFace, method: BuildMethod): HoleRow[] {
  const pull = kind === 'drawer' ? method.drawerPull : method.doorPull
  if (pull.kind === 'none') return []
  const { z } = boxOf(board).min
  const bore = { purpose: 'pull', diameter: pull.diameter, depth: 'through' } as const
  return holesBetween(board, 'outside', { ...from, z }, { ...to, z }, bore)
}

/** The pulls that a front is bored for, in its own frame. */
export function pullsIn({ operations }: Board): Pull[] {
  return operations.flatMap((one) => {
    if (one.kind !== 'holeRow' || one.purpose !== 'pull') return []
    return [{ from: centreOf(one, 0), to: centreOf(one, one.count - 1) }]
  })
}
