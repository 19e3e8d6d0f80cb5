import { type Box, boxAround, boxesOverlap } from '../geometry/box'
import type { Interval } from '../geometry/interval'
import { toCabinet } from '../geometry/placement'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import {
  aroundSlant,
  centresOf,
  type EdgeSlot,
  type HoleRow,
  isEdgeSlot,
  isLongAlong,
  isSlantedCut,
  mouthLength,
  type Notch,
  type Recess,
  radians,
  type Slant,
  wayOf,
} from './operation'

/** The room that a recess, a notch or a slot takes out of a board; null where it misses the board. */
export function removedBy(operation: Recess | Notch | EdgeSlot, board: Board): Box | null {
  return within(isEdgeSlot(operation) ? slotBox(operation, board) : sunkBox(operation, board), board)
}

function slotBox({ edge, x, length, up, width, depth }: EdgeSlot, board: Board): Box {
  const [from, to] = edge === 'low' ? [0, depth] : [settle(board.width - depth), board.width]
  return { min: { x, y: from, z: up }, max: { x: settle(x + length), y: to, z: settle(up + width) } }
}

function sunkBox(operation: Recess | Notch, board: Board): Box {
  const depth = operation.kind === 'notch' ? board.thickness : Math.min(operation.depth, board.thickness)
  const isOutside = operation.kind !== 'notch' && operation.face === 'outside'
  return {
    min: { x: operation.x, y: operation.y, z: isOutside ? 0 : settle(board.thickness - depth) },
    max: {
      x: operation.x + operation.length,
      y: operation.y + operation.width,
      z: isOutside ? depth : board.thickness,
    },
  }
}

function within({ min, max }: Box, board: Board): Box | null {
  const box = {
    min: { x: Math.max(0, settle(min.x)), y: Math.max(0, settle(min.y)), z: Math.max(0, settle(min.z)) },
    max: {
      x: Math.min(board.length, settle(max.x)),
      y: Math.min(board.width, settle(max.y)),
      z: Math.min(board.thickness, settle(max.z)),
    },
  }
  const isEmpty = box.max.x <= box.min.x || box.max.y <= box.min.y || box.max.z <= box.min.z
  return isEmpty ? null : box
}

/** The boxes in which the holes of a row are, each as wide as its head; in the board's frame. */
export function boredBy(row: HoleRow, board: Board): Box[] {
  if (row.slant) return slantedIn(row, row.slant, board)
  const { diameter, oval = 0, countersink = 0, along } = row
  const across = Math.max(diameter, countersink) / 2
  const lengthwise = Math.max(across, oval / 2)
  const [x, y] = along === 'width' ? [across, lengthwise] : [lengthwise, across]
  const { axis, from, to } = depthOf(row, board)
  const up = row.up ?? 0
  return centresOf(row).map((centre) => {
    const min = { x: centre.x - x, y: centre.y - y, z: up - across }
    const max = { x: centre.x + x, y: centre.y + y, z: up + across }
    min[axis] = from
    max[axis] = to
    return { min, max }
  })
}

/**
 * The boxes around holes that are bored aslant, with the way of their screws to the end or the edge: as deep as the lower
 * side of the bore is there.
 */
function slantedIn(row: HoleRow, slant: Slant, board: Board): Box[] {
  const [sin, cos] = [Math.sin(radians(slant.angle)), Math.cos(radians(slant.angle))]
  const [half, radius] = [mouthLength(row) / 2, row.diameter / 2]
  const way = wayOf(slant)
  const axis = isLongAlong(row) ? 'x' : 'y'
  const size = axis === 'x' ? board.length : board.width
  return centresOf(row).map((centre) => {
    const away = slant.away ?? (way[axis] > 0 ? size - centre[axis] : centre[axis])
    const deep = (away * sin) / cos + radius * cos
    const [x, y] = (['x', 'y'] as const).map((side) => {
      const [from, to] = [centre[side] - half * way[side], centre[side] + away * way[side]]
      const aside = radius * Math.abs(way[side === 'x' ? 'y' : 'x'])
      return { from: Math.min(from, to) - aside, to: Math.max(from, to) + aside }
    }) as [Interval, Interval]
    const [low, high] = row.face === 'inside' ? [board.thickness - deep, board.thickness] : [0, deep]
    return { min: { x: x.from, y: y.from, z: low }, max: { x: x.to, y: y.to, z: high } }
  })
}

/** How far a row reaches into its board, from its face. */
function depthOf({ face, depth }: HoleRow, { length, width, thickness }: Board) {
  const into = (axis: 'x' | 'y' | 'z', size: Mm, isHigh: boolean) => {
    return isHigh ? { axis, from: size - depth, to: size } : { axis, from: 0, to: depth }
  }
  if (face === 'start' || face === 'end') return into('x', length, face === 'end')
  if (face === 'low' || face === 'high') return into('y', width, face === 'high')
  return into('z', thickness, face === 'inside')
}

/** All that is worked on a board already, as boxes in the cabinet's frame. */
export function roomsIn(board: Board): Box[] {
  return workedOn(board).map(({ min, max }) => {
    const { placement } = board
    return boxAround(toCabinet(placement, min.x, min.y, min.z), toCabinet(placement, max.x, max.y, max.z))
  })
}

/** The same in the board's own frame. */
export function workedOn(board: Board): Box[] {
  return board.operations.flatMap((one): Box[] => {
    if (one.kind === 'holeRow') return boredBy(one, board)
    const room = removedBy(isSlantedCut(one) ? aroundSlant(one, board) : one, board)
    return room ? [room] : []
  })
}

/** Whether a row has a size, lies on its board and meets nothing that is worked on it already. */
export function fitsOn(board: Board, row: HoleRow): boolean {
  if (!(row.diameter > 0 && row.depth > 0)) return false
  const there = workedOn(board)
  const half = row.diameter / 2
  const isInside = ({ x, y }: { readonly x: Mm; readonly y: Mm }) =>
    x >= half && y >= half && x <= board.length - half && y <= board.width - half
  const own = boredBy(row, board)
  return centresOf(row).every(isInside) && !own.some((box) => there.some((other) => boxesOverlap(box, other)))
}
