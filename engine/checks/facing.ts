import type { FrontFace } from '../cabinets/board'
import type { Rect } from '../geometry/rect'
import type { Front, Project, Side } from '../project/document'
import { childrenOf } from '../project/frontTree'
import { find } from '../project/references'
import type { ApplianceSpace } from '../project/space'
import { rightEdge, sharedBy } from '../runs/lane'
import { type Body, meetingsOf, reachingFrom } from '../runs/reach'
import { type Mm, settle } from '../units/length'
import { HANDLE_OUT, type Standing } from './beside'

/** Something of the meeting wall that stands out before a cabinet's face, near to it in the corner. */
export interface Facing {
  readonly side: Side
  /** From the nearest of what moves, or the side of an appliance, to the face of what stands there; less than 0 is behind it. */
  readonly gap: Mm
  readonly body: Body
  readonly other: Standing
}

/** What moves out of a cabinet, or has an appliance behind it, along the wall and up it; how far it comes out. */
export interface Moving {
  readonly rect: Rect
  readonly out: Mm
  /** Of a door that swings about one of its sides. */
  readonly hinge?: Side
  /** A drawer, whose pull goes out before it. */
  readonly isDrawn?: true
}

/** Doors come out by their width, drawers by the length of their slides, or without a box by the depth of their cabinet. */
export function movingIn({ cabinet, fronts, drawerOut }: Standing): Moving[] {
  return fronts.filter(doesMove).map(({ kind, hinge, rect }) => {
    const out = kind === 'drawer' ? drawerOut || cabinet.depth : hinge === 'top' ? rect.height : rect.width
    const along = { ...rect, left: settle(cabinet.left + rect.left), bottom: settle(cabinet.bottom + rect.bottom) }
    if (kind === 'drawer') return { rect: along, out, isDrawn: true }
    return hinge === 'left' || hinge === 'right' ? { rect: along, out, hinge } : { rect: along, out }
  })
}

/** An oven or a dishwasher opens down and out by its height, as wide as its cabinet. */
export function appliancesIn({ cabinet }: Standing): Moving[] {
  const { left, bottom, width, height, space } = cabinet
  const rect = { left, bottom, width, height }
  if (space) return [{ rect, out: opensDown(space) ? space.height : space.width }]
  return nichesIn(cabinet.front).map((niche) => ({ rect, out: niche.height }))
}

/** The others open to a side, by their width. */
function opensDown({ of }: ApplianceSpace): boolean {
  return of === 'dishwasher' || of === 'range'
}

function nichesIn(front: Front): Extract<Front, { kind: 'appliance' }>[] {
  return front.kind === 'appliance' ? [front] : childrenOf(front).flatMap((child) => nichesIn(child.front))
}

export function doesMove({ kind }: FrontFace): boolean {
  return kind === 'door' || kind === 'drawer'
}

/** What the pulls of a cabinet take before its face; its appliances have handles too. */
export function pullsOf(one: Standing): Mm {
  return one.fronts.some(doesMove) || appliancesIn(one).length > 0 ? HANDLE_OUT : 0
}

export const THE_WALL = 'the wall opposite'

/** What stands across the room, and what its pulls take before its face. */
export function facedAcross({ cabinet: { id } }: Body, standing: readonly Standing[]) {
  const other = standing.find(({ cabinet }) => cabinet.id === id)
  return other ? { words: other.mark, pulls: pullsOf(other) } : { words: THE_WALL, pulls: 0 }
}

/** The nearest of what stands in the way at the meeting walls, for each side; what nothing comes out to is none. */
export function facingsOf(
  one: Standing,
  moving: readonly Moving[],
  project: Project,
  standing: readonly Standing[],
): Facing[] {
  const wall = find(project.walls, one.cabinet.wall)
  if (!wall || moving.length === 0 || one.cabinet.corner) return []
  const face = settle(one.cabinet.depth + one.frontThickness)
  return meetingsOf(project, wall).flatMap((meeting) => {
    const { side } = meeting
    const all = reachingFrom(project, meeting).flatMap((body): Facing[] => {
      const other = standing.find(({ cabinet }) => cabinet.id === body.cabinet.id)
      if (!other || body.isLeg || body.front <= face) return []
      const met = moving.filter(({ rect, out }) => sharedBy(rect, body).y > 0 && body.rear < settle(face + out))
      return met.map(({ rect }) => {
        const gap = settle(side === 'left' ? rect.left - rightEdge(body) : body.left - rightEdge(rect))
        return { side, gap, body, other }
      })
    })
    return all.length === 0 ? [] : [all.reduce((a, b) => (b.gap < a.gap ? b : a))]
  })
}
