import { METHOD } from '../basics/source'
import type { Box } from '../geometry/box'
import { type Rect, rightOf, topOf } from '../geometry/rect'
import type { Front } from '../project/document'
import { childrenOf } from '../project/frontTree'
import { type Mm, settle } from '../units/length'
import { forward, WAYS } from './apart'
import type { BoardRole, Explode } from './board'
import type { Carcass, Frame } from './carcass'
import { betweenFramed, coverOf, frameArea, frameOpening, openingBehind } from './frameRects'
import { rectsWithin } from './frontRects'
import { innerOff, memberApart, type Off, outerSteps } from './membersApart'
import { frontArea } from './openings'
import { type Piece, room, UNBANDED } from './piece'
import type { Report } from './report'
import { sharedRoom } from './rooms'
import { tenonsOf } from './tenon'

/** A member of a face frame as it is seen, without its tenons. */
export interface Member {
  readonly role: Extract<BoardRole, 'stile' | 'topRail' | 'bottomRail' | 'midRail' | 'mullion'>
  readonly rect: Rect
  readonly off: Off
  /** The end of a rail that is butted in the inside corner of a cabinet, and has no tenon. */
  readonly butted?: 'left' | 'right'
}

/** Stiles run the whole height of the frame. */
export function stileLength(carcass: Carcass, frame: Frame): Mm {
  return frameArea(carcass, frame).height
}

/** A rail is as long as the frame is wide, less both stiles, and longer by a tenon at each end. */
export function railLength(carcass: Carcass, frame: Frame): Mm {
  return settle(frameArea(carcass, frame).width - 2 * frame.rules.stile + 2 * frame.tenon)
}

/**
 * The face frame of a cabinet, glued up before it goes on the carcass.
 *
 *      |S|====== top rail ======|S|
 *      |S|      |M|             |S|
 *      |S|      |M|== mid rail =|S|
 *      |S|      |M|             |S|
 *      |S|==== bottom rail =====|S|
 */
export function faceFrameOf(front: Front, carcass: Carcass, report: Report): Piece[] {
  const { frame } = carcass
  if (!frame) return []
  const inner = membersWithin(front, frontArea(carcass), null, carcass, frame)
  tellFronts(frame, inner.length > 0, carcass, report)
  const members = outerMembers(front, carcass, frame)
  for (const one of inner) if (findsRoom(one, members, carcass, frame, report)) members.push(one)
  return framePieces(members, carcass, frame, forward(WAYS.frame))
}

/** The boards of the members of a frame, joined to one another; `whole` is the way that the frame goes as it is. */
export function framePieces(
  members: readonly Member[],
  carcass: Carcass,
  frame: Frame,
  whole: Explode,
  first: Partial<Record<Member['role'], number>> = {},
): Piece[] {
  const counts = new Map<Member['role'], number>()
  const pieces = members.map((member): Piece => {
    const number = (counts.get(member.role) ?? first[member.role] ?? 0) + 1
    counts.set(member.role, number)
    return pieceFor(member, number, carcass, frame, whole)
  })
  return frame.tenon === 0 ? pieces : mortised(pieces, members, frame)
}

function outerMembers(front: Front, carcass: Carcass, frame: Frame): Member[] {
  const area = frameArea(carcass, frame)
  const { stile, topRail, bottomRail } = frame.rules
  const between = { left: settle(area.left + stile), width: settle(area.width - 2 * stile) }
  const off = (along: 'stiles' | 'rails', to: -1 | 1): Off => ({ along, steps: to * outerSteps(front, along) })
  const [left, low] = [settle(rightOf(area) - stile), settle(topOf(area) - topRail)]
  return [
    { role: 'stile', rect: { ...area, width: stile }, off: off('stiles', -1) },
    { role: 'stile', rect: { ...area, width: stile, left }, off: off('stiles', 1) },
    { role: 'topRail', rect: { ...between, bottom: low, height: topRail }, off: off('rails', 1) },
    { role: 'bottomRail', rect: { ...between, bottom: area.bottom, height: bottomRail }, off: off('rails', -1) },
  ]
}

/**
 * A mullion between each column and the next, a mid rail between each row and the next, however deep they are divided.
 * `withPart` is the way of the part of the whole front that they stand in; null for the whole.
 */
function membersWithin(front: Front, rect: Rect, withPart: Off | null, carcass: Carcass, frame: Frame): Member[] {
  const { method } = carcass
  const rects = rectsWithin(front, rect, !withPart, carcass).map((part) => flushIn(rect, part))
  const whole = openingBehind(rect, frame, method)
  const cover = coverOf(frame, method)
  const between = rects.slice(1).map((next, at): Member => {
    const before = rects[at]!
    const off = withPart ?? innerOff(front, at + 0.5)
    if (front.kind === 'columns') {
      const left = settle(rightOf(before) - cover)
      return { role: 'mullion', rect: { ...whole, left, width: settle(next.left + cover - left) }, off }
    }
    const bottom = settle(topOf(next) - cover)
    return { role: 'midRail', rect: { ...whole, bottom, height: settle(before.bottom + cover - bottom) }, off }
  })
  const inside = childrenOf(front).flatMap(({ front: inner }, at) =>
    membersWithin(inner, rects[at]!, withPart ?? innerOff(front, at), carcass, frame),
  )
  return [...between, ...inside]
}

/** Equal shares are equal to the tick, so that the last part of a front may end some ticks off its edge. */
const NEAR: Mm = 0.01

/** A part that reaches the edges of the whole it is a part of, where it all but does: what stands there is let in to the full. */
function flushIn(whole: Rect, part: Rect): Rect {
  const isAt = (a: Mm, b: Mm) => Math.abs(a - b) < NEAR
  const bottom = isAt(part.bottom, whole.bottom) ? whole.bottom : part.bottom
  const right = isAt(rightOf(part), rightOf(whole)) ? rightOf(whole) : rightOf(part)
  return { left: part.left, bottom, width: right - part.left, height: topOf(part) - bottom }
}

/** Rows and columns of fixed sizes may not fill the front, and their members then stand where others are. */
function findsRoom(
  { role, rect }: Member,
  others: readonly Member[],
  carcass: Carcass,
  frame: Frame,
  report: Report,
): boolean {
  const isGood =
    rect.width > 0 &&
    rect.height > 0 &&
    isWithin(rect, frameOpening(carcass, frame)) &&
    !others.some((other) => isOver(rect, other.rect))
  if (!isGood) {
    const name = role === 'mullion' ? 'mullion' : 'mid rail'
    report.stop(`a ${name} finds no room of its own in the opening of its face frame; it is left out.`, {
      is: 'no room',
      limit: 'room of its own',
    })
  }
  return isGood
}

function isWithin(rect: Rect, whole: Rect): boolean {
  return (
    rect.left >= whole.left &&
    rect.bottom >= whole.bottom &&
    settle(rightOf(rect)) <= settle(rightOf(whole)) &&
    settle(topOf(rect)) <= settle(topOf(whole))
  )
}

/** Whether they share area: sums of settled lengths that only touch do not. */
function isOver(a: Rect, b: Rect): boolean {
  const isAcross = a.left < settle(rightOf(b)) && b.left < settle(rightOf(a))
  return isAcross && a.bottom < settle(topOf(b)) && b.bottom < settle(topOf(a))
}

function pieceFor(
  { role, rect, off, butted }: Member,
  number: number,
  carcass: Carcass,
  frame: Frame,
  whole: Explode,
): Piece {
  const isUpright = role === 'stile' || role === 'mullion'
  const tenon = role === 'stile' ? 0 : frame.tenon
  const [x, y] = [isUpright ? 0 : tenon, isUpright ? tenon : 0]
  const box = room(
    [rect.left - (butted === 'left' ? 0 : x), rightOf(rect) + (butted === 'right' ? 0 : x)],
    [rect.bottom - y, topOf(rect) + y],
    [carcass.depth, carcass.depth + frame.thickness],
  )
  return {
    role,
    number,
    material: carcass.method.frameMaterial,
    box,
    lie: isUpright ? 'uprightLookingIn' : 'onEdgeLookingIn',
    banded: UNBANDED,
    explode: memberApart(whole, off, frame),
  }
}

/** The members with their tenons cut, and mortises where tenons of others come in. */
function mortised(pieces: readonly Piece[], members: readonly Member[], frame: Frame): Piece[] {
  const tenons = pieces.map((piece, at) => {
    const butted = members[at]!.butted
    const ends = !butted ? 'both ends' : butted === 'left' ? 'high end' : 'low end'
    return piece.role === 'stile' ? null : tenonsOf(piece, frame.tenon, ends)
  })
  return pieces.map((piece, at) => {
    const mortises = tenons.flatMap((one, of): Box[] => {
      if (!one || of === at) return []
      return one.tenons.flatMap((tenon) => sharedRoom(piece.box, tenon) ?? [])
    })
    const cuts = [...(tenons[at]?.cheeks ?? []), ...mortises]
    return cuts.length > 0 ? { ...piece, cuts } : piece
  })
}

/** Whether fronts that cover the frame leave room for each other and end on it, and inset ones are flush with it. */
export function tellFronts(
  frame: Frame,
  isDivided: boolean,
  { method, frontThickness }: Carcass,
  report: Report,
): void {
  const { fronts, stile, topRail, bottomRail } = frame.rules
  if (fronts.kind === 'inset') {
    const proud = settle(frontThickness - frame.thickness)
    if (proud > 0)
      report.mind(`its inset fronts stand ${report.say(proud)} out from its face frame: they are thicker than it is.`, {
        is: frontThickness,
        limit: frame.thickness,
      })
    return
  }
  const between = betweenFramed(frame, method)
  if (isDivided && between < method.fronts.gap) {
    report.stop(
      `fronts ${report.say(fronts.by)} over its face frame would be ${report.say(between)} apart; ${report.say(method.fronts.gap)} is the gap of its build method.`,
      { is: between, limit: method.fronts.gap, source: METHOD },
    )
  }
  const narrowest = Math.min(stile, topRail, bottomRail)
  if (fronts.by > narrowest) {
    report.stop(
      `fronts would cover its face frame by ${report.say(fronts.by)}; its narrowest member is ${report.say(narrowest)}.`,
      { is: fronts.by, limit: narrowest, source: METHOD },
    )
  }
}
