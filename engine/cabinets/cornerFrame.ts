import { type Rect, rightOf, topOf } from '../geometry/rect'
import { type Mm, settle } from '../units/length'
import { forward, WAYS } from './apart'
import type { Board, Explode } from './board'
import { type Carcass, type Frame, outerFront } from './carcass'
import { type Doors, otherWall, slantCarcass, slantPlane } from './cornerDoor'
import type { Legs } from './cornerLegs'
import { faceFrameOf, framePieces, type Member, tellFronts } from './faceFrame'
import { stoodIn } from './facePlane'
import { frameArea } from './frameRects'
import { frameHeld } from './held'
import { joined } from './joinery'
import type { Bevel } from './operation'
import type { Piece } from './piece'
import type { Report } from './report'
import { canBeCut } from './sound'

/** The face frame of a corner cabinet: one across a diagonal, or one before either leg of an L. */
export function cornerFrame(legs: Legs, doors: Pick<Doors, 'hand' | 'width' | 'report'>): Board[] {
  if (!legs.own.frame) return []
  return legs.kind === 'L' ? framesOfL(legs, legs.own.frame, doors) : slantFrame(legs, legs.own.frame, doors)
}

/**
 * Before an L there are two frames. In the inside corner is no stile, for the door folds out of both openings at once: the
 * rails before the own leg run into it, and those of the other leg are butted against them.
 *
 *        |r|
 *      o |a|
 *      t |i|
 *      h |l|
 *      e +-+----------+--
 *      r |___ rail ___| stile
 */
function framesOfL(
  legs: Legs,
  frame: Frame,
  { hand, width, report }: Pick<Doors, 'hand' | 'width' | 'report'>,
): Board[] {
  const { own, other } = legs
  tellFronts(frame, false, own, report)
  const away = hand === 'left' ? 'right' : 'left'
  const area = frameArea(own, frame)
  const long = settle(rightOf(area) - other.depth)
  const first = { ...area, width: long, left: hand === 'left' ? other.depth : settle(width - rightOf(area)) }
  const before = frameArea(other, other.frame!)
  const end = settle(other.width - outerFront(own))
  const second = {
    ...before,
    width: settle(end - before.left),
    left: hand === 'left' ? before.left : settle(other.width - end),
  }
  const plane = otherWall(legs, { hand, width })
  return [
    ...joined(sound(framePieces(membersUpTo(hand, first, frame), own, frame, outOfCorner(hand)), report)),
    ...joined(
      sound(framePieces(membersUpTo(away, second, frame), other, frame, outOfCorner(away), SECOND), report),
    ).map((board) => stoodIn(board, plane)),
  ]
}

/** The members of the second frame are numbered after those of the first. */
const SECOND = { stile: 1, topRail: 1, bottomRail: 1 } as const

function sound(pieces: readonly Piece[], report: Report): Piece[] {
  return pieces.filter((piece) => canBeCut(piece, report))
}

/** Both frames leave together, when inset doors are out of them. */
function outOfCorner(corner: 'left' | 'right'): Explode {
  return { ...forward(0), by: { x: corner === 'left' ? WAYS.frame : -WAYS.frame, y: 0, z: WAYS.frame }, from: 0.25 }
}

/** A stile at the free end, and two rails from it into the corner. */
function membersUpTo(corner: 'left' | 'right', area: Rect, { rules }: Frame): Member[] {
  const { stile, topRail, bottomRail } = rules
  const isAtLeft = corner === 'left'
  const outer = { ...area, width: stile, left: isAtLeft ? settle(rightOf(area) - stile) : area.left }
  const between = {
    left: isAtLeft ? area.left : settle(area.left + stile),
    width: settle(area.width - stile),
  }
  const rail = (role: 'topRail' | 'bottomRail', bottom: Mm, height: Mm, steps: number): Member => {
    return { role, rect: { ...between, bottom, height }, off: { along: 'rails', steps }, butted: corner }
  }
  return [
    { role: 'stile', rect: outer, off: { along: 'stiles', steps: isAtLeft ? 1 : -1 } },
    rail('topRail', settle(topOf(area) - topRail), topRail, 1),
    rail('bottomRail', area.bottom, bottomRail, -1),
  ]
}

/**
 * Across a diagonal the frame is as long at its face as it is from end to end. Its stiles are wider behind, with their outer
 * edges ripped so that they are in line with the ends of the cabinet, where the frames beside it are butted against them.
 *
 *      |_____ frame beside it
 *      |____
 *      |\   \      the end of the cabinet runs up here
 *        \   \
 */
function slantFrame(legs: Legs, frame: Frame, doors: Pick<Doors, 'hand' | 'width' | 'report'>): Board[] {
  const carcass = slantCarcass(legs)
  const own = stilesWidened(slantMembers(carcass, doors.report), legs, frame, doors.hand)
  const plane = slantPlane(legs, doors)
  const bevelled = joined(own.map(({ piece }) => piece)).map((board, at): Board => {
    const { bevel } = own[at]!
    return bevel ? { ...board, operations: [...board.operations, bevel] } : board
  })
  return frameHeld(bevelled, carcass, doors.report).map((board) => stoodIn(board, plane))
}

function slantMembers(carcass: Carcass, report: Report): Piece[] {
  return sound(faceFrameOf({ kind: 'door', hinge: 'left' }, carcass, report), report)
}

/** The stiles with the wood of their bevels, and the bevels, with their edges as an upright that looks in has them. */
function stilesWidened(
  pieces: readonly Piece[],
  { ends }: Legs,
  { thickness }: Frame,
  hand: 'left' | 'right',
): { readonly piece: Piece; readonly bevel?: Bevel }[] {
  const [along, out] = [settle(ends.own.x - ends.other.x), settle(ends.other.z - ends.own.z)]
  const byOwn = settle((thickness * out) / along)
  const byOther = settle((thickness * along) / out)
  const [left, right] = hand === 'left' ? [byOther, byOwn] : [byOwn, byOther]
  return pieces.map((piece) => {
    if (piece.role !== 'stile') return { piece }
    const isLeft = piece.number === 1
    const by = isLeft ? left : right
    const { min, max } = piece.box
    const box = isLeft
      ? { min: { ...min, x: settle(min.x - by) }, max }
      : { min, max: { ...max, x: settle(max.x + by) } }
    return { piece: { ...piece, box }, bevel: { kind: 'bevel', edge: isLeft ? 'low' : 'high', face: 'outside', by } }
  })
}
