import { counted } from '../basics/counted'
import { METHOD } from '../basics/source'
import { boxesOverlap } from '../geometry/box'
import { type Rect, rightOf, topOf } from '../geometry/rect'
import type { CabinetKind } from '../project/document'
import type { DoorPull, DrawerPull } from '../project/fixing'
import type { BuildMethod } from '../project/method'
import { type Mm, settle } from '../units/length'
import type { Board, FrontFace } from './board'
import { boxOf } from './boardBox'
import { boxFrontBehind } from './boxFront'
import { LEAST_WOOD } from './hinge'
import { holesBetween, withHoles } from './holes'
import { centreOf, type HoleRow } from './operation'
import { boltsThrough, type Pull } from './pullBolt'
import { boredBy, workedOn } from './removed'
import type { Report } from './report'

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

/**
 * The boards with the holes of pulls, right through their fronts; of a front of five parts, through the one that is there;
 * and for their bolts, right through the front of a drawer box behind them. A pull that would meet a hinge or a joint is left out and told.
 */
export function pulled(
  boards: readonly Board[],
  fronts: readonly FrontFace[],
  { method, of, report }: { readonly method: BuildMethod; readonly of: CabinetKind; readonly report: Report },
): readonly Board[] {
  const rowsOf = new Map<Board, HoleRow[]>()
  const bore = (board: Board, rows: readonly HoleRow[]) => rowsOf.set(board, [...(rowsOf.get(board) ?? []), ...rows])
  let missing = 0
  for (const face of fronts.filter((one) => isWanted(one, method))) {
    const bored = pullsOf(face, method, of).flatMap((pull) => boredFor(pull, face, boards, method))
    const boxFront = face.kind === 'drawer' ? boxFrontBehind(boards, face) : undefined
    for (const { board, rows, pull } of bored) {
      bore(board, rows)
      if (!boxFront) continue
      const bolts = boltsThrough(boxFront, pull, rows[0]!.diameter)
      bore(boxFront, bolts.rows)
      missing += bolts.missing
    }
    if (bored.length === 0) {
      const name = face.kind === 'drawer' ? 'drawer front' : face.hinge === 'top' ? 'flap' : 'door'
      report.mind(`a ${name} is too small for its pull, or its hinges are in the way; none is bored.`, {
        is: 'no pull',
        limit: '1 pull',
        source: METHOD,
      })
    }
  }
  if (missing > 0) {
    report.mind(
      `${counted(missing, 'bolt')} of its drawer pulls would meet the edge of a box front or the groove for its bottom; nothing is bored for them in the box.`,
      { is: `${missing} missing`, limit: 'none' },
    )
  }
  return rowsOf.size === 0 ? boards : boards.map((board) => withHoles(board, rowsOf.get(board) ?? []))
}

function isWanted({ kind }: FrontFace, { doorPull, drawerPull }: BuildMethod): boolean {
  return (kind === 'door' && doorPull.kind !== 'none') || (kind === 'drawer' && drawerPull.kind !== 'none')
}

/** The board of a front that a pull is on, with its holes; nothing where it is on none, or on two. */
function boredFor(pull: Pull, face: FrontFace, boards: readonly Board[], method: BuildMethod) {
  const board = boards.find((one) => FRONTS.includes(one.role) && isOf(one, face) && isOn(one, pull))
  const rows = board ? holesFor(pull, board, face, method) : []
  return board && rows.length > 0 && rows.every((row) => isClear(row, board)) ? [{ board, rows, pull }] : []
}

/** Whether a row meets none of the holes that are there, and no tongue, groove or mortise. */
function isClear(row: HoleRow, board: Board): boolean {
  const there = workedOn(board)
  return !boredBy(row, board).some((box) => there.some((other) => boxesOverlap(box, other)))
}

const FRONTS: readonly Board['role'][] = [
  'door',
  'flap',
  'drawerFront',
  'doorStile',
  'doorRail',
  'drawerStile',
  'drawerRail',
  'drawerPanel',
]

function isOf(board: Board, { rect }: FrontFace): boolean {
  const { min, max } = boxOf(board)
  return (
    min.x >= settle(rect.left) &&
    max.x <= settle(rightOf(rect)) &&
    min.y >= settle(rect.bottom) &&
    max.y <= settle(topOf(rect))
  )
}

function isOn(board: Board, { from, to }: Pull): boolean {
  const { min, max } = boxOf(board)
  return from.x >= min.x && to.x <= max.x && from.y >= min.y && to.y <= max.y
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
