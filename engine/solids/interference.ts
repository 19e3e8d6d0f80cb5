import { once } from '../basics/remember'
import { type Board, explodedBy } from '../cabinets/board'
import { type Box, boxesOverlap, boxVolume } from '../geometry/box'
import type { Mm } from '../units/length'
import { boxAroundConvex, type Convex, convexVolume, sharedBy } from './convex'
import { bodiesInCabinet, isSlanted } from './slant'
import { blankInCabinet, boxesInCabinet, movedBox } from './solid'

/** Two boards in one place, and how much of it, in mm3. */
export interface Interference<Of extends Board> {
  readonly a: Of
  readonly b: Of
  readonly volume: number
}

/** Coordinates are sums of settled lengths: less than this is the dust of adding them. */
const DUST: Mm = 1e-6

/** Every two boards of a cabinet that take the same room, together (0) or taken apart so far (up to 1). */
export function interferences<Of extends Board>(boards: readonly Of[], apart = 0): Interference<Of>[] {
  const places = boards.map((board) => {
    const by = explodedBy(board.explode, apart)
    const blank = movedBox(blankInCabinet(board), by)
    return { board, by, blank, bodies: once(() => bodiesInCabinet(board, by).map(boxed)) }
  })
  return places.flatMap((one, at) =>
    places.slice(at + 1).flatMap((other): Interference<Of>[] => {
      if (!boxesOverlap(one.blank, other.blank, DUST)) return []
      if (isSlanted(one.board) || isSlanted(other.board)) {
        const volume = slantVolume(one.bodies(), other.bodies())
        return volume > SLANT_DUST ? [{ a: one.board, b: other.board, volume }] : []
      }
      const theirs = boxesInCabinet(other.board).map((box) => movedBox(box, other.by))
      const volume = boxesInCabinet(one.board).reduce(
        (sum, box) => sum + sharedVolume(movedBox(box, one.by), theirs),
        0,
      )
      return volume > 0 ? [{ a: one.board, b: other.board, volume }] : []
    }),
  )
}

/**
 * Where boards touch along a slant, the corner of one, the place of the other and its bevel are on the grid of lengths: each
 * up to half a tick off. Half of 1/3200 mm three times over an edge of 40 by 1000 mm is 19 mm3; a hundredth of a millimetre
 * too much along a stile of 20 by 700 would be 140.
 */
const SLANT_DUST = 19

/** A body with the least box around it: what does not meet by boxes need not be cut to see what it shares. */
interface Boxed {
  readonly body: Convex
  readonly box: Box
}

function boxed(body: Convex): Boxed {
  return { body, box: boxAroundConvex(body) }
}

function slantVolume(bodies: readonly Boxed[], others: readonly Boxed[]): number {
  let sum = 0
  for (const one of bodies) {
    for (const other of others) {
      if (boxesOverlap(one.box, other.box)) sum += convexVolume(sharedBy(one.body, other.body))
    }
  }
  return sum
}

function sharedVolume(box: Box, others: readonly Box[]): number {
  return others.reduce((sum, other) => sum + (boxesOverlap(box, other, DUST) ? boxVolume(shared(box, other)) : 0), 0)
}

function shared(a: Box, b: Box): Box {
  return {
    min: { x: Math.max(a.min.x, b.min.x), y: Math.max(a.min.y, b.min.y), z: Math.max(a.min.z, b.min.z) },
    max: { x: Math.min(a.max.x, b.max.x), y: Math.min(a.max.y, b.max.y), z: Math.min(a.max.z, b.max.z) },
  }
}
