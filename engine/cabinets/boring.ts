import { gapsIn, type Interval } from '../geometry/interval'
import { type Mm, settle } from '../units/length'
import { gridWithin, panelGrid } from './balance'
import type { Bay } from './bay'
import type { Board } from './board'
import { backFront, type Carcass, clearBottom, clearTop, insideFront, sideRear } from './carcass'
import { LEAST_WOOD } from './hinge'
import { boreDepth } from './holes'
import { centreOf, type Face, type HoleRow, type Notch } from './operation'

/** Equal rows of pin holes up both uprights of a bay, in the cabinet's frame. */
export interface PinRows {
  readonly bay: Pick<Bay, 'left' | 'right'>
  /** Height of the first hole's centre. */
  readonly first: Mm
  readonly count: number
}

/** Holes that overlap would tear out; rows closer than this are one row. */
const LEAST_BETWEEN_ROWS = 32

/**
 * The holes in a height: the first at its distance from the floor, the last no nearer to the ceiling than that. On a
 * balanced panel they are those of its grid; over its whole height as far from its upper end as from its lower one.
 */
export function holeGrid({ from, to }: Interval, carcass: Carcass): { first: Mm; count: number } {
  const { shelves } = carcass.method
  const grid = panelGrid(carcass)
  if (grid) {
    const isWhole = from === clearBottom(carcass) && to === clearTop(carcass) && grid.first <= grid.last
    const [least, most] = isWhole ? [grid.first, grid.last] : [from + shelves.firstHole, to - shelves.firstHole]
    return gridWithin(grid, least, most)
  }
  const first = settle(from + shelves.firstHole)
  const count = Math.floor((to - shelves.firstHole - first) / shelves.pitch + 1e-6) + 1
  return { first, count: shelves.pitch > 0 ? Math.max(0, count) : 0 }
}

/** Holes all the way up for adjustable shelves. */
export function pinsUp(region: Interval, bay: Bay, carcass: Carcass): PinRows {
  return { bay, ...holeGrid(region, carcass) }
}

/** One pin in each corner under a pinned shelf, which rests on them. */
export function pinsUnder(underside: Mm, bay: PinRows['bay'], { method: { shelves } }: Carcass): PinRows {
  return { bay, first: settle(underside - shelves.pinDiameter / 2), count: 1 }
}

/**
 * The distance of the rows from the wall: one behind the front edge (or inset front), one before the back. On a balanced
 * panel the rear row is as far from its rear edge, where the back leaves room for it, or so far from the front row as the
 * greatest multiple of the pitch that keeps this. Source: dalrun.com, '32mm Cabinetmaking'.
 */
export function rowsFromWall(carcass: Carcass): Mm[] {
  const { rowSetback, balance, pitch } = carcass.method.shelves
  const front = settle(insideFront(carcass) - rowSetback)
  const least = balance ? balancedRear(carcass) : settle(backFront(carcass) + rowSetback)
  const isOnGrid = balance?.rows === 'multiple' && pitch > 0
  const rear = isOnGrid ? settle(front - Math.floor((front - least) / pitch + 1e-6) * pitch) : least
  return front - rear >= LEAST_BETWEEN_ROWS ? [rear, front] : [settle((insideFront(carcass) + backFront(carcass)) / 2)]
}

function balancedRear(carcass: Carcass): Mm {
  const { rowSetback, pinDiameter } = carcass.method.shelves
  const rear = settle(sideRear(carcass) + rowSetback)
  return rear - pinDiameter / 2 - LEAST_WOOD >= backFront(carcass) ? rear : settle(backFront(carcass) + rowSetback)
}

/** The rows of holes of one upright, in its own frame. */
export function holesIn(board: Board, pins: readonly PinRows[], carcass: Carcass): HoleRow[] {
  const { shelves } = carcass.method
  const diameter = shelves.pinDiameter
  const depth = boreDepth(shelves.pinDepth, board)
  return pins.flatMap(({ bay, first, count }) => {
    const face = faceOf(board, bay)
    const x = settle(first - board.placement.origin.y)
    if (!face || count === 0 || !(depth > 0) || !(diameter > 0) || x < diameter / 2) return []
    return rowsFromWall(carcass).flatMap((z): HoleRow[] => {
      const { origin, width } = board.placement
      const y = settle(width === '+z' ? z - origin.z : origin.z - z)
      if (y < diameter / 2 || y > board.width - diameter / 2) return []
      const step = shelves.pitch
      return besideNotches({ kind: 'holeRow', purpose: 'shelfPin', face, x, y, step, count, diameter, depth }, board)
    })
  })
}

/** A row without the holes that would break out into a notch of their board, as into one for a nailer behind a rear row. */
function besideNotches(row: HoleRow, { operations }: Board): HoleRow[] {
  const lost = operations.flatMap((one) => (one.kind === 'notch' ? lostBeside(one, row) : []))
  return gapsIn({ from: 0, to: row.count }, lost).map(({ from, to }) => ({
    ...row,
    x: centreOf(row, from).x,
    count: to - from,
  }))
}

/** Which holes of a row along its board a notch takes, by their numbers from 0, up to the first that it leaves; none are counted one by one. */
function lostBeside(notch: Notch, { x, y, step, count, diameter }: HoleRow): Interval[] {
  const least = diameter / 2 + LEAST_WOOD
  const across = Math.max(0, notch.y - y, y - notch.y - notch.width)
  if (across >= least) return []
  const along = Math.sqrt(least ** 2 - across ** 2)
  const from = Math.max(0, Math.floor((notch.x - along - x) / step) + 1)
  const to = Math.min(count, Math.ceil((notch.x + notch.length + along - x) / step))
  return from < to ? [{ from, to }] : []
}

/** The inside of a partition looks right, into the bay it is the left upright of. */
function faceOf({ role, number }: Board, { left, right }: PinRows['bay']): Face | null {
  if (role === left.role && number === left.number) return 'inside'
  if (role === right.role && number === right.number) return role === 'partition' ? 'outside' : 'inside'
  return null
}
