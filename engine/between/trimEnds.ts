import type { CabinetId } from '../basics/id'
import type { Rect } from '../geometry/rect'
import type { Corner } from '../project/corner'
import type { Cabinet, Project, Side, Trim, Wall } from '../project/document'
import { footprintOf } from '../runs/footprint'
import { rightEdge, sharedBy } from '../runs/lane'
import { meetingsOf } from '../runs/reach'
import { type Mm, settle } from '../units/length'
import { cabinetsAt } from './runsAlong'
import { levelOf, type TrimmedKind, trimFace, trimStepOf } from './trim'

/** A trim that is put up in a project. */
export interface PutUp {
  readonly project: Project
  readonly kind: TrimmedKind
  readonly trim: Trim
}

/** Where the face of a corner cabinet ends at a wall, as the trim that goes on from there sees it. */
export interface CornerEnd {
  readonly cabinet: CabinetId
  readonly of: 'own' | 'other'
  /** The end of the trim that goes on along the wall. */
  readonly side: Side
  /** Along the wall. */
  readonly at: Mm
  /** From the wall to the front edge there. */
  readonly front: Mm
  readonly level: Mm
  /** How far past it the faces of the two trims meet: less than 0 where that is before it. */
  readonly shift: Mm
  /** The tangent of the angle that both are mitred at there, half of that between them; 0 where one is butted. */
  readonly tangent: number
}

/** A diagonal from above as `Legs` draws it, the corner at its left: how far its face goes along its own wall and out. */
export function slantOf({ width, depth }: Pick<Cabinet, 'width' | 'depth'>, { other, otherDepth }: Corner) {
  const along = settle(width - otherDepth)
  const out = settle(other - depth)
  return { along, out, long: Math.hypot(along, out) }
}

/** Of the corner cabinets at a wall and at those that meet it, the ends of their faces at this wall. */
export function cornerEndsAt({ project, kind, trim }: PutUp, wall: Wall): CornerEnd[] {
  const own = cabinetsAt(project, wall).flatMap((cabinet) => ownEnd(cabinet, kind, trim) ?? [])
  const others = meetingsOf(project, wall).flatMap((meeting) => {
    // The corner at the left end of this wall is at the right end of the other.
    const hand = meeting.side === 'left' ? 'right' : 'left'
    return cabinetsAt(project, meeting.wall).flatMap((cabinet): CornerEnd[] => {
      const { corner } = cabinet
      if (corner?.hand !== hand || !isInCorner(cabinet, meeting.wall) || !isTrimmed(cabinet, kind)) return []
      const { along, out, long } = slantOf(cabinet, corner)
      const tangent = corner.kind === 'L' ? 0 : halfTangent(long, out, along)
      const at = meeting.side === 'left' ? corner.other : settle(wall.length - corner.other)
      const front = corner.otherDepth
      const meets = { shift: settle(trim.forward * tangent), tangent }
      return [
        { cabinet: cabinet.id, of: 'other', side: meeting.side, at, front, level: levelOf(cabinet, kind), ...meets },
      ]
    })
  })
  return [...own, ...others]
}

/** The end of a diagonal's face at its own wall; the trim of an L goes on along its own leg as along any cabinet. */
export function ownEnd(cabinet: Cabinet, kind: TrimmedKind, trim: Trim): CornerEnd | null {
  const { corner, depth } = cabinet
  if (corner?.kind !== 'diagonal' || !isTrimmed(cabinet, kind)) return null
  const { along, out, long } = slantOf(cabinet, corner)
  const tangent = halfTangent(long, along, out)
  const at = corner.hand === 'left' ? rightEdge(cabinet) : cabinet.left
  return {
    ...{ cabinet: cabinet.id, of: 'own', side: corner.hand, at, front: depth },
    ...{ level: levelOf(cabinet, kind), shift: settle(trim.forward * tangent), tangent },
  }
}

/**
 * The tangent of half the angle between a slanting face and what lies along the wall that it goes so far beside, and so far
 * away from: tan(a / 2) = (1 - cos a) / sin a. A face that does not go out from both walls has none.
 */
export function halfTangent(long: Mm, beside: Mm, across: Mm): number {
  return beside > 0 && across > 0 ? (long - beside) / across : 0
}

export function isTrimmed({ kind: of }: Pick<Cabinet, 'kind'>, kind: TrimmedKind): boolean {
  return of === 'upper' || (kind === 'crown' && of === 'tall')
}

/** Whether a corner cabinet stands in the corner that its hand says. */
function isInCorner(cabinet: Cabinet, wall: Wall): boolean {
  return cabinet.corner?.hand === 'left' ? cabinet.left === 0 : rightEdge(cabinet) === wall.length
}

/** Whether trim that ends somewhere goes on from the end of a corner's face. */
export function isEndOf(corner: CornerEnd, end: Pick<CornerEnd, 'at' | 'front' | 'level'>): boolean {
  return corner.at === end.at && corner.front === end.front && corner.level === end.level
}

/** Whether trim along a wall goes on from the end of a corner's face. */
export function goesOnFrom(corner: CornerEnd, { project, kind }: PutUp, wall: Wall): boolean {
  return cabinetsAt(project, wall).some((cabinet) => {
    const step = trimStepOf(cabinet, kind, project)
    return step !== null && isEndOf(corner, { ...step, at: corner.side === 'left' ? step.from : step.to })
  })
}

/** Whether a run of trim ends in the inside corner of an L, where the trim of its other leg is. */
export function endsInCorner({ corner, left, width }: Cabinet, at: Mm, side: Side): boolean {
  return corner?.kind === 'L' && corner.hand === side && at > left && at < settle(left + width)
}

/** A free end gets a return to the wall; beside something as high it goes back to the face of that; none at a wall's end. */
export function returnAt(
  { project, wall, kind, trim, own }: PutUp & { readonly wall: Wall; readonly own: ReadonlySet<CabinetId> },
  { at: end, side, level }: { readonly at: Mm; readonly side: Side; readonly level: Mm },
): Mm | null {
  if (end <= 0 || end >= wall.length) return null
  const band = {
    left: end,
    width: 0,
    bottom: kind === 'crown' ? level : settle(level - trim.height),
    height: trim.height,
  }
  const faces = cabinetsAt(project, wall)
    .filter(({ id }) => !own.has(id))
    .filter((other) => isBeside(footprintOf(other, project), end, side))
    .flatMap((other) => {
      if (sharedBy(band, other).y > 0) return [other.depth]
      const step = trimStepOf(other, kind, project)
      return step?.level === level ? [trimFace({ front: step.front, trim })] : []
    })
  const corners = cornerEndsAt({ project, kind, trim }, wall)
    .filter((one) => !own.has(one.cabinet) && one.side === side && one.at === end && one.level === level)
    .map(({ front }) => trimFace({ front, trim }))
  return Math.max(0, ...faces, ...corners)
}

function isBeside(there: Rect, end: Mm, side: Side) {
  return side === 'left' ? rightEdge(there) === end : there.left === end
}
