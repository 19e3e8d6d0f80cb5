import { forward, WAYS } from '../cabinets/apart'
import type { Board } from '../cabinets/board'
import { mirrored } from '../cabinets/cornerLegs'
import { type FacePlane, stoodIn } from '../cabinets/facePlane'
import { bandedOn, boardOf, type Piece, room, UNBANDED } from '../cabinets/piece'
import type { Corner } from '../project/corner'
import type { Cabinet, Wall } from '../project/document'
import { meetingsOf } from '../runs/reach'
import { type Mm, settle } from '../units/length'
import { cabinetsAt } from './runsAlong'
import {
  levelOf,
  longPieces,
  type Mitre,
  mitreBehind,
  NEITHER,
  RETURNS,
  type TrimmedKind,
  type TrimRun,
  trimFace,
  trimPieces,
} from './trim'
import { cornerEndsAt, goesOnFrom, halfTangent, isTrimmed, ownEnd, type PutUp, returnAt, slantOf } from './trimEnds'

/** How trim before the face of a corner cabinet ends: met by the trim along the wall, or with a return so far back, or none. */
type CornerTrimEnd = { readonly isMet: true } | { readonly isMet: false; readonly rear: Mm | null }

/** The trim before the face of a corner cabinet that no straight run goes along, in plain measures. */
export interface CornerTrim {
  readonly size: Pick<Cabinet, 'width' | 'depth'>
  readonly corner: Corner
  readonly ends: { readonly own: CornerTrimEnd; readonly other: CornerTrimEnd }
}

/** What goes across a diagonal, and whether it is met by the like of it along either wall. */
export type SlantFace = Pick<CornerTrim, 'size' | 'corner'> & {
  readonly ends: { readonly own: { readonly isMet: boolean }; readonly other: { readonly isMet: boolean } }
}

/** A corner cabinet with the trim before its slanting face, or before the other leg of an L. */
export interface CornerTrimmed {
  readonly cabinet: Cabinet
  readonly bottom: Mm
  readonly made: CornerTrim
}

/** What corner cabinets at a wall have of a trim besides what goes along it. */
export function cornerTrims(putUp: PutUp, wall: Wall): CornerTrimmed[] {
  const { project, kind, trim } = putUp
  return cabinetsAt(project, wall).flatMap((cabinet): CornerTrimmed[] => {
    const { corner, width, depth } = cabinet
    if (!corner || !isTrimmed(cabinet, kind)) return []
    const level = levelOf(cabinet, kind)
    const bottom = kind === 'crown' ? level : settle(level - trim.height)
    const ends = { own: endAtOwn(cabinet, putUp, wall), other: endAtOther(cabinet, putUp, wall) }
    return [{ cabinet, bottom, made: { size: { width, depth }, corner, ends } }]
  })
}

function endAtOwn(cabinet: Cabinet, putUp: PutUp, wall: Wall): CornerTrimEnd {
  const end = ownEnd(cabinet, putUp.kind, putUp.trim)
  if (!end || goesOnFrom(end, putUp, wall)) return { isMet: true }
  // The face ends where the trim beside it begins: its right end is that one's left.
  const side = end.side === 'left' ? 'right' : 'left'
  return { isMet: false, rear: returnAt({ ...putUp, wall, own: new Set([cabinet.id]) }, { ...end, side }) }
}

function endAtOther(cabinet: Cabinet, putUp: PutUp, wall: Wall): CornerTrimEnd {
  const meeting = meetingsOf(putUp.project, wall).find(({ side }) => side === cabinet.corner?.hand)
  const end = meeting && cornerEndsAt(putUp, meeting.wall).find((one) => one.cabinet === cabinet.id)
  if (!meeting || !end) return { isMet: false, rear: 0 }
  if (goesOnFrom(end, putUp, meeting.wall)) return { isMet: true }
  const side = end.side === 'left' ? 'right' : 'left'
  return {
    isMet: false,
    rear: returnAt({ ...putUp, wall: meeting.wall, own: new Set([cabinet.id]) }, { ...end, side }),
  }
}

/** What a trim is made by, wherever it goes. */
export type TrimRules = Pick<TrimRun, 'trim' | 'thickness' | 'band' | 'longest'> & { readonly kind: TrimmedKind }

/** The boards in the frame of the cabinet, with its lower edge where the trim has its own. */
export function cornerTrimBoards(made: CornerTrim, rules: TrimRules): Board[] {
  const { trim, thickness } = rules
  const least = Math.min(made.size.depth, made.corner.otherDepth) + trim.forward
  if (least < thickness) return []
  return made.corner.kind === 'L' ? legBoards(made, rules) : slantBoards(made, rules)
}

/** Before the other leg of an L: from its free end to the face of the trim that runs through before its own leg. */
function legBoards({ size, corner, ends }: CornerTrim, rules: TrimRules): Board[] {
  const { hand, other, otherDepth } = corner
  const inner = trimFace({ front: size.depth, trim: rules.trim })
  const length = settle(other - inner)
  if (!(length > 0)) return []
  const free = ends.other.isMet ? null : ends.other.rear
  const isLeft = hand === 'left'
  const returns = { left: isLeft ? free : null, right: isLeft ? null : free }
  const plane: FacePlane = isLeft
    ? { x: 0, z: other, turn: { cos: 0, sin: 1 } }
    : { x: size.width, z: inner, turn: { cos: 0, sin: -1 } }
  const run: TrimRun = { ...rules, edges: [0, length], front: otherDepth, returns, mitres: NEITHER }
  return trimPieces(run).map((piece) => stoodIn(boardOf(piece), plane))
}

/**
 * Across a diagonal, as far before its face as the trim beside it is before the front edges. Its ends are mitred, half of
 * the angle each: behind its face it is longer where it meets a neighbour in an inside corner, and shorter where a return
 * goes back from it.
 *
 *      \  \
 *       \  \ _________
 *        \ /  neighbour
 *         /___________
 */
function slantBoards(made: CornerTrim, rules: TrimRules): Board[] {
  const { size, corner, ends } = made
  const { kind, trim, thickness } = rules
  const { along, out, long } = slantOf(size, corner)
  if (!(along > 0 && out > 0)) return []
  const { own, other } = slantEnds(made, trim.forward)
  const isLeft = corner.hand === 'left'
  const mitreAt = (end: CornerTrimEnd, at: Mm, beside: Mm, across: Mm): Mitre | null => {
    if (end.isMet) return mitreBehind(thickness, halfTangent(long, beside, across))
    const by = settle(thickness * halfTangent(long, across, beside))
    return end.rear !== null && end.rear < settle(at - by) ? { face: 'inside', by } : null
  }
  const atOwn = mitreAt(ends.own, own.z, along, out)
  const atOther = mitreAt(ends.other, other.x, out, along)
  const [left, right] = isLeft ? [atOther, atOwn] : [atOwn, atOther]
  const behind = (mitre: Mitre | null) => (mitre?.face === 'outside' ? mitre.by : 0)
  const inFront = (mitre: Mitre | null) => (mitre?.face === 'inside' ? mitre.by : 0)
  const face = settle(Math.hypot(own.x - other.x, other.z - own.z))
  if (own.x <= other.x || face <= inFront(left) + inFront(right)) return []
  const rear = (end: CornerTrimEnd) => (end.isMet ? null : end.rear)
  const [leftEnd, rightEnd] = isLeft ? [ends.other, ends.own] : [ends.own, ends.other]
  const run: TrimRun = {
    ...rules,
    edges: [0, settle(face + behind(left) + behind(right))],
    front: size.depth,
    returns: { left: rear(leftEnd), right: rear(rightEnd) },
    mitres: { left, right },
  }
  const start = isLeft ? other : { x: settle(size.width - own.x), z: own.z }
  const plane: FacePlane = { ...start, turn: { cos: along / long, sin: ((isLeft ? 1 : -1) * out) / long } }
  const boards = longPieces(run, settle(-behind(left)), [-thickness, 0]).map((piece) => stoodIn(boardOf(piece), plane))
  const returns = slantReturns(made, rules, { own: { ...own, mitre: atOwn }, other: { ...other, mitre: atOther } })
  return [...boards, ...returns.map((one, at) => boardOf({ ...one, role: RETURNS[kind], number: at + 1 }))]
}

type SlantEnd = { readonly x: Mm; readonly z: Mm; readonly mitre: Mitre | null }

/** From the free ends of a slanting trim back to the wall, or to a neighbour, mitred as its ends are. */
function slantReturns(
  { size, corner, ends }: CornerTrim,
  { kind, trim, thickness, band }: TrimRules,
  { own, other }: { readonly own: SlantEnd; readonly other: SlantEnd },
): Omit<Piece, 'role' | 'number'>[] {
  const y = [0, trim.height] as const
  const banded = kind === 'lightRail' ? bandedOn(['low'], band, trim.height) : UNBANDED
  const tail = { material: trim.material, explode: forward(WAYS.kick), banded } as const
  const pieces: Omit<Piece, 'role' | 'number'>[] = []
  if (!ends.other.isMet && ends.other.rear !== null && other.mitre) {
    const box = room([ends.other.rear, other.x], y, [corner.other - thickness, corner.other])
    const bevels = [{ kind: 'bevel', edge: 'start', ...other.mitre }] as const
    pieces.push({ ...tail, lie: 'onEdgeLookingIn', box, bevels })
  }
  if (!ends.own.isMet && ends.own.rear !== null && own.mitre) {
    const box = room([size.width - thickness, size.width], y, [ends.own.rear, own.z])
    const bevels = [{ kind: 'bevel', edge: 'end', ...own.mitre }] as const
    pieces.push({ ...tail, lie: 'onEdgeLookingLeft', box, bevels })
  }
  if (corner.hand === 'left') return pieces
  return pieces.map((piece) => mirrored({ ...piece, role: RETURNS[kind], number: 1 }, size.width))
}

/** Where the face of a slanting trim ends that stands so far before the fronts, the corner at the left. */
export function slantEnds({ size, corner, ends }: SlantFace, before: Mm) {
  const { along, out, long } = slantOf(size, corner)
  return {
    own: ends.own.isMet
      ? { x: settle(size.width + (before * (long - along)) / out), z: settle(size.depth + before) }
      : { x: size.width, z: settle(size.depth + (before * long) / along) },
    other: ends.other.isMet
      ? { x: settle(corner.otherDepth + before), z: settle(corner.other + (before * (long - out)) / along) }
      : { x: settle(corner.otherDepth + (before * long) / out), z: corner.other },
  }
}
