import { valuesOf } from '../basics/id'
import type { Interval } from '../geometry/interval'
import type { Cabinet, Opening, Project } from '../project/document'
import { find } from '../project/references'
import { type Mm, settle } from '../units/length'
import { fitOf } from './fit'
import { footprintOf, roomBeside } from './footprint'
import { rightEdge } from './lane'
import { othersBeside } from './neighbours'
import { reachingIn } from './reach'

/** A narrower cabinet is a gap. Common practice, no source. */
const NARROWEST: Mm = 150

/** Where along its wall a cabinet of its size fits, nearest to where it stands; null where it fits nowhere. */
export function nearestPlace(project: Project, cabinet: Cabinet): Cabinet | null {
  const { width } = cabinet
  const [atLeft, atRight] = roomsBeside(project, cabinet)
  const lefts = edgesAlong(project, cabinet).flatMap(({ from, to }) => [
    settle(from + atLeft),
    settle(to - atRight - width),
  ])
  const nearest = lefts
    .sort((a, b) => Math.abs(a - cabinet.left) - Math.abs(b - cabinet.left) || a - b)
    .map((left) => ({ ...cabinet, left }))
  return nearest.find((one) => fitOf(project, one).fits) ?? null
}

/** The cabinet as wide as the widest room that its middle stands in, between the things beside it; null where none is worth it. */
export function narrowedInPlace(project: Project, cabinet: Cabinet): Cabinet | null {
  const [atLeft, atRight] = roomsBeside(project, cabinet)
  const middle = cabinet.left + cabinet.width / 2
  const edges = edgesAlong(project, cabinet)
  const ways = edges.flatMap(({ from }) =>
    edges.flatMap(({ to }): Cabinet[] => {
      const width = settle(to - from - atLeft - atRight)
      if (from > middle || to < middle || width >= cabinet.width || width < NARROWEST) return []
      return [{ ...cabinet, left: settle(from + atLeft), width }]
    }),
  )
  const widest = ways.sort(
    (a, b) => b.width - a.width || Math.abs(a.left - cabinet.left) - Math.abs(b.left - cabinet.left),
  )
  return widest.find((one) => fitOf(project, one).fits) ?? null
}

function roomsBeside(project: Project, cabinet: Cabinet): readonly [Mm, Mm] {
  return [roomBeside(cabinet, 'left', project), roomBeside(cabinet, 'right', project)]
}

/** Where something could begin (`from`) and end (`to`) along its wall: at the ends of the wall, and beside all that is there. */
function edgesAlong(project: Project, cabinet: Cabinet): Interval[] {
  const wall = find(project.walls, cabinet.wall)
  if (!wall) return []
  const there = [
    ...othersBeside(project, cabinet).map((one) => footprintOf(one, project)),
    ...reachingIn(project, wall).filter((body) => body.cabinet.id !== cabinet.id),
    ...valuesOf<Opening>(wall.openings),
  ]
  return [{ from: 0, to: wall.length }, ...there.map((one) => ({ from: rightEdge(one), to: one.left }))]
}
