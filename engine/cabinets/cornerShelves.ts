import { settle } from '../units/length'
import { RIGHT_SIDE, rearAt, wholeBay } from './bay'
import type { Board } from './board'
import type { PinRows } from './boring'
import { clearBottom, clearTop } from './carcass'
import type { Legs } from './cornerLegs'
import { frontSetback, levelBoard, shelfSetback } from './cornerLevels'
import { boreDepth, withHoles } from './holes'
import type { HoleRow } from './operation'
import type { Piece } from './piece'
import type { Report } from './report'
import { type ShelfCounts, type Shelving, shelfSink, shelvesOf } from './shelf'

/**
 * Shelves at the heights that they have in a straight cabinet, through the corner in one board. The fixed shelves of a
 * diagonal reach to the line of its front, so that they fill what is cut for them in the sides, or to the rear of an inset
 * door, where what is cut goes on to the front edges.
 */
export function cornerShelves(counts: ShelfCounts, nailers: readonly Piece[], legs: Legs, report: Report): Shelving {
  const { own, other, kind } = legs
  const stretch = { from: clearBottom(own), to: clearTop(own) }
  const { pieces, pins, levels } = shelvesOf(counts, stretch, wholeBay(own), nailers, own, report)
  const numbers = { fixedShelf: 0, adjustableShelf: 0 }
  const through = pieces.map((piece): Piece => {
    const role = piece.role === 'fixedShelf' ? 'fixedShelf' : 'adjustableShelf'
    const isFixed = role === 'fixedShelf'
    const reach = isFixed ? shelfSink(RIGHT_SIDE, own) : -own.method.shelves.sideClearance / 2
    const ends = [settle(own.width - own.thickness + reach), settle(other.width - own.thickness + reach)] as const
    const { min, max } = piece.box
    const rear = rearAt({ from: min.y, to: max.y }, nailers, own)
    const setback = isFixed && kind === 'diagonal' ? frontSetback(legs) : shelfSetback(legs)
    numbers[role]++
    return { ...levelBoard(piece, [min.y, max.y], rear, ends, setback, legs), number: numbers[role] }
  })
  return { pieces: through, pins, levels }
}

/** The pins that shelves rest on in the corner: a row up the middle of the post. */
export function postPins(post: Board, pins: readonly PinRows[], { own }: Legs): Board {
  const { pinDiameter: diameter, pinDepth, pitch: step } = own.method.shelves
  const depth = boreDepth(pinDepth, post)
  if (!(depth > 0) || !(diameter > 0)) return post
  const rows = pins.flatMap(({ first, count }): HoleRow[] => {
    const x = settle(first - post.placement.origin.y)
    if (count === 0 || x < diameter / 2) return []
    const y = settle(post.width / 2)
    return [{ kind: 'holeRow', purpose: 'shelfPin', face: 'inside', x, y, step, count, diameter, depth }]
  })
  return withHoles(post, rows)
}
