import { valuesOf } from '../basics/id'
import { gapsIn, type Interval } from '../geometry/interval'
import type { Rect } from '../geometry/rect'
import type { Cabinet, CabinetKind, Project, Wall } from '../project/document'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { openingsAcross } from '../site/wall'
import { type Mm, settle } from '../units/length'
import { footprintOf } from './footprint'
import { doLanesMeet, type Lane, lanesOf, rightEdge, sharedBy, topEdge } from './lane'
import { faceFrom, inTheWay, meetingsOf, reachingIn } from './reach'

export interface Gap {
  readonly gap: Mm
  /** What is at the other side of it: `B2`, `the wall end`. */
  readonly to: string
}

/** Cabinets that touch side by side in a lane, from left to right. A tall belongs to a run in either lane. */
export interface Run {
  readonly lane: Lane
  readonly cabinets: readonly Cabinet[]
}

/**
 * The free space beside a cabinet, up to the next cabinet at its height or the end of the wall; less than 0 is overlap.
 * What hangs above or below it is not beside it; what reaches in from a wall that meets its own is.
 */
export function gapsBeside(project: Project, cabinet: Cabinet): { readonly left: Gap; readonly right: Gap } {
  const face = footprintOf(cabinet, project)
  const middle = face.left + face.width / 2
  const wall = find(project.walls, cabinet.wall)
  const wallLength = wall?.length ?? 0
  const besides = [
    ...inLanesOf(project, cabinet).map((one) => ({ there: footprintOf(one, project), to: markOf(one) })),
    ...(wall ? inTheWay(project, wall, faceFrom(cabinet, project)) : []).map((body) => {
      return { there: body, to: markOf(body.cabinet) }
    }),
  ]
  let left: Gap = { gap: face.left, to: 'the wall end' }
  let right: Gap = { gap: settle(wallLength - rightEdge(face)), to: 'the wall end' }
  for (const { there, to } of besides) {
    if (sharedBy(face, there).y <= 0) continue
    if (there.left + there.width / 2 < middle) {
      const gap = settle(face.left - rightEdge(there))
      if (gap < left.gap) left = { gap, to }
    } else {
      const gap = settle(there.left - rightEdge(face))
      if (gap < right.gap) right = { gap, to }
    }
  }
  return { left, right }
}

/**
 * The free space at the end of the leg that a corner cabinet has along the other wall, up to what stands there; null where
 * no wall meets its own in its corner.
 */
export function gapAtLeg(project: Project, { id, wall, corner, kind }: Cabinet): Gap | null {
  const own = find(project.walls, wall)
  const meeting = own && meetingsOf(project, own).find(({ side }) => side === corner?.hand)
  const leg = meeting && reachingIn(project, meeting.wall).find(({ cabinet, isLeg }) => isLeg && cabinet.id === id)
  if (!leg) return null
  // A corner at the right of its own wall is at the left of the other.
  const isAtLeft = meeting.side === 'right'
  const away = ({ left, width }: Rect) => settle(isAtLeft ? left - rightEdge(leg) : leg.left - left - width)
  const beside = valuesOf<Cabinet>(project.cabinets)
    .filter((one) => one.wall === meeting.wall.id && doLanesMeet(one.kind, kind))
    .map((one) => ({ there: footprintOf(one, project), to: markOf(one) }))
    .filter(({ there }) => sharedBy(leg, there).y > 0)
    .map(({ there, to }): Gap => ({ gap: away(there), to }))
  const end = isAtLeft ? settle(meeting.wall.length - rightEdge(leg)) : leg.left
  return beside.reduce((nearest, one) => (one.gap < nearest.gap ? one : nearest), { gap: end, to: 'the wall end' })
}

/** The other cabinets on its wall that share a lane with it, from left to right. */
export function inLanesOf(project: Project, cabinet: Pick<Cabinet, 'id' | 'wall' | 'kind'>): Cabinet[] {
  return othersBeside(project, cabinet).filter(({ kind }) => doLanesMeet(kind, cabinet.kind))
}

/** The other cabinets on its wall in any lane, from left to right. */
export function othersBeside(project: Project, cabinet: Pick<Cabinet, 'id' | 'wall'>): Cabinet[] {
  return valuesOf<Cabinet>(project.cabinets)
    .filter(({ id, wall }) => id !== cabinet.id && wall === cabinet.wall)
    .sort(fromLeftToRight)
}

function fromLeftToRight(a: Cabinet, b: Cabinet): number {
  return a.left - b.left || (a.id < b.id ? -1 : 1)
}

/** The runs of a wall, those of the low lane first, each lane from left to right. */
export function runsOf(project: Project, wall: Wall): Run[] {
  const all = valuesOf<Cabinet>(project.cabinets)
    .filter((cabinet) => cabinet.wall === wall.id)
    .sort(fromLeftToRight)
  return (['low', 'high'] as const).flatMap((lane) => {
    const runs: Cabinet[][] = []
    for (const cabinet of all.filter(({ kind }) => lanesOf(kind).includes(lane))) {
      const { left } = footprintOf(cabinet, project)
      const touched = runs.find((run) =>
        run.some((one) => rightEdge(footprintOf(one, project)) === left && sharedBy(one, cabinet).y > 0),
      )
      if (touched) touched.push(cabinet)
      else runs.push([cabinet])
    }
    return runs.map((cabinets): Run => ({ lane, cabinets }))
  })
}

/** Where along a wall a new cabinet of a kind, at its usual height, finds nothing in its way. */
export function freeStretches(project: Project, wall: Wall, kind: CabinetKind): Interval[] {
  const { bottom, height, depth } = project.newCabinets[kind]
  const band = { from: bottom, to: settle(bottom + height) }
  if (band.to > wall.height) return []
  const cabinets = valuesOf<Cabinet>(project.cabinets).filter(
    (cabinet) => cabinet.wall === wall.id && cabinet.bottom < band.to && band.from < topEdge(cabinet),
  )
  const method = project.methods[project.method]!
  const fronts = find(project.materials, method.frontMaterial)?.thickness ?? 0
  const round = inTheWay(project, wall, settle(depth + fronts)).filter((body) => {
    return body.bottom < band.to && band.from < topEdge(body)
  })
  const taken = [...cabinets.map((one) => footprintOf(one, project)), ...round, ...openingsAcross(wall, band)].map(
    (one) => ({
      from: one.left,
      to: rightEdge(one),
    }),
  )
  return gapsIn({ from: 0, to: wall.length }, taken)
}
