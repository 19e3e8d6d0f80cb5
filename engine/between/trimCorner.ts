import type { Problem } from '../basics/problem'
import { GEOMETRY } from '../basics/source'
import { forward, WAYS } from '../cabinets/apart'
import type { Board } from '../cabinets/board'
import { mirrored } from '../cabinets/cornerLegs'
import { type FacePlane, stoodIn } from '../cabinets/facePlane'
import { bandedOn, boardOf, type Piece, room, UNBANDED } from '../cabinets/piece'
import { ROLE_NAMES } from '../cabinets/role'
import type { Corner } from '../project/corner'
import type { Cabinet, Project, Wall } from '../project/document'
import { meetingsOf } from '../runs/reach'
import { formatWithUnit } from '../units/format'
import { type Mm, settle } from '../units/length'
import type { RunName } from './run'
import { cabinetsAt } from './runsAlong'
import { levelOf, RETURNS, seenEdges, type TrimmedKind, type TrimRun, trimFace, trimPieces } from './trim'
import { cornerEndsAt, goesOnFrom, isTrimmed, ownEnd, type PutUp, returnAt, slantOf } from './trimEnds'

/** How trim before the face of a corner cabinet ends: met by the trim along the wall, or with a return so far back, or none. */
type CornerTrimEnd = { readonly isMet: true } | { readonly isMet: false; readonly rear: Mm | null }

/** The trim before the face of a corner cabinet that no straight run goes along, in plain measures. */
export interface CornerTrim {
  readonly size: Pick<Cabinet, 'width' | 'depth'>
  readonly corner: Corner
  readonly ends: { readonly own: CornerTrimEnd; readonly other: CornerTrimEnd }
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
  const run: TrimRun = { ...rules, edges: [0, length], front: otherDepth, returns }
  return trimPieces(run).map((piece) => stoodIn(boardOf(piece), plane))
}

/**
 * Across a diagonal, as far before its face as the trim beside it is before the front edges. It is as long at its face as it is
 * from where its face meets those of its neighbours, or from end to end of the cabinet where there are none. Its ends are
 * square, so that at a neighbour's a wedge is open behind the faces:
 *
 *      \  \
 *       \  \ _________
 *        \/|  neighbour
 *           |_________
 */
function slantBoards(made: CornerTrim, rules: TrimRules): Board[] {
  const { size, corner, ends } = made
  const { kind, trim, thickness, band } = rules
  const { along, out, long } = slantOf(size, corner)
  if (!(along > 0 && out > 0)) return []
  const { own, other } = slantEnds(made, trim.forward)
  const length = settle(Math.hypot(own.x - other.x, other.z - own.z))
  const isLeft = corner.hand === 'left'
  const start = isLeft ? other : { x: settle(size.width - own.x), z: own.z }
  const plane: FacePlane = { ...start, turn: { cos: along / long, sin: ((isLeft ? 1 : -1) * out) / long } }
  const rear = (end: CornerTrimEnd) => (end.isMet ? null : end.rear)
  const returns = isLeft
    ? { left: rear(ends.other), right: rear(ends.own) }
    : { left: rear(ends.own), right: rear(ends.other) }
  const y = [0, trim.height] as const
  const board = { material: trim.material, explode: forward(WAYS.kick) }
  const seen = seenEdges({ ...rules, edges: [0, length], front: size.depth, returns }, true, true)
  const face: Piece = {
    ...{ ...board, role: kind, number: 1, lie: 'onEdgeLookingIn' },
    banded: bandedOn(seen, band, trim.height),
    box: room([0, length], y, [-thickness, 0]),
  }
  const banded = kind === 'lightRail' ? bandedOn(['low'], band, trim.height) : UNBANDED
  const tail = { ...board, banded, role: RETURNS[kind] }
  const pieces: Piece[] = []
  const [rearOwn, rearOther] = [rear(ends.own), rear(ends.other)]
  // Each goes as far as the rear corner of the slanting board's end.
  const [ownTo, otherTo] = [settle(own.z - (thickness * along) / long), settle(other.x - (thickness * out) / long)]
  if (rearOther !== null && rearOther < otherTo) {
    const box = room([rearOther, otherTo], y, [corner.other - thickness, corner.other])
    pieces.push({ ...tail, number: 1, lie: 'onEdgeLookingIn', box })
  }
  if (rearOwn !== null && rearOwn < ownTo) {
    const box = room([size.width - thickness, size.width], y, [rearOwn, ownTo])
    pieces.push({ ...tail, number: pieces.length + 1, lie: 'onEdgeLookingLeft', box })
  }
  const turned = pieces.map((piece) => (isLeft ? piece : mirrored(piece, size.width)))
  return [stoodIn(boardOf(face), plane), ...turned.map((piece) => boardOf(piece))]
}

/** Where the face of a slanting trim ends, the corner at the left. */
function slantEnds({ size, corner, ends }: CornerTrim, before: Mm) {
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

/** That the wedges behind the joints of a slanting trim want mitres, which no length here has wood for. */
export function mitreProblems(
  { cabinet, made: { size, corner, ends } }: CornerTrimmed,
  { kind, thickness }: TrimRules,
  { mark }: RunName,
  project: Project,
): Problem[] {
  const { along, out } = slantOf(size, corner)
  if (corner.kind === 'L' || !(along > 0 && out > 0)) return []
  const angles = [
    ...(ends.own.isMet ? [Math.atan2(out, along) / 2] : []),
    ...(ends.other.isMet ? [Math.atan2(along, out) / 2] : []),
  ]
  return [...new Set(angles.map((angle) => ((angle * 180) / Math.PI).toFixed(1)))].map((degrees): Problem => {
    const more = formatWithUnit(settle(thickness * Math.tan((Number(degrees) * Math.PI) / 180)), project.display)
    return {
      ...{ weight: 'mind', about: { kind: 'cabinet', cabinet: cabinet.id }, measure: more, source: GEOMETRY },
      message: `The ${ROLE_NAMES[kind]} ${mark}: where it meets the one beside it both ends are drawn square, and the joint is open behind its face. To close it, mitre both at ${degrees}° and leave each board ${more} longer at its rear.`,
    }
  })
}
