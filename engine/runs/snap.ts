import { valuesOf } from '../basics/id'
import type { Rect } from '../geometry/rect'
import type { Cabinet, Opening, Project, Wall } from '../project/document'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { inch, type Mm, settle } from '../units/length'
import { footprintOf, roomBeside } from './footprint'
import { rightEdge, topEdge } from './lane'
import { inLanesOf } from './neighbours'
import { type Body, faceFrom, inTheWay } from './reach'

/** A line that something was snapped to, and what it belongs to: `the right side of B2`. */
export interface Guide {
  readonly axis: 'x' | 'y'
  readonly at: Mm
  readonly to: string
}

export type Edge = 'left' | 'right' | 'top' | 'bottom'

/**
 * Where a cabinet comes to rest that is wanted at a place. First pass: on each axis by itself, the smallest nudge within
 * reach that brings one of its edges to a line. Second pass: every line that its edges lie on where it then is. What
 * stands stays on the floor.
 */
export function snapMove(
  project: Project,
  cabinet: Cabinet,
  wanted: { readonly left: Mm; readonly bottom: Mm },
  reach: Mm,
  ignore: readonly string[] = [],
): { readonly left: Mm; readonly bottom: Mm; readonly guides: readonly Guide[] } {
  const { width, height } = cabinet
  const lines = linesAround(project, cabinet, ignore)
  const x = lines.filter(({ axis }) => axis === 'x')
  const hangs = cabinet.kind === 'upper'
  const y = hangs ? lines.filter(({ axis }) => axis === 'y') : []
  const [before, after] = [roomBeside(cabinet, 'left', project), roomBeside(cabinet, 'right', project)]
  const left = atRest(project, wanted.left, nudge([wanted.left - before, wanted.left + width + after], x, reach))
  const bottom = hangs
    ? atRest(project, wanted.bottom, nudge([wanted.bottom, wanted.bottom + height], y, reach))
    : cabinet.bottom
  const guides = [
    ...heldBy([settle(left - before), settle(left + width + after)], x),
    ...heldBy([bottom, settle(bottom + height)], y),
  ]
  return { left, bottom, guides }
}

/**
 * Where an edge comes to rest that is stretched to a place: lines around, and sizes in steps of the grid or equal to
 * another cabinet's.
 */
export function snapEdge(
  project: Project,
  cabinet: Cabinet,
  edge: Edge,
  wanted: Mm,
  reach: Mm,
): { readonly at: Mm; readonly guides: readonly Guide[] } {
  const axis = edge === 'left' || edge === 'right' ? 'x' : 'y'
  // What stands beside the edge comes to rest at a line, and the edge before it.
  const beside = edge === 'left' || edge === 'right' ? roomBeside(cabinet, edge, project) : 0
  const back = edge === 'left' ? beside : -beside
  const lines = linesAround(project, cabinet, [])
    .filter((line) => line.axis === axis)
    .map((line) => (back === 0 ? line : { ...line, at: settle(line.at + back) }))
  const sizes = sizeLines(project, cabinet, edge, wanted)
  const at = atRest(project, wanted, nudge([wanted], [...lines, ...sizes], reach))
  return { at, guides: heldBy([at], [...lines, ...sizes]) }
}

/** The least that a hand moves by: what a tape shows. */
export function handStep({ display }: Pick<Project, 'display'>): Mm {
  return display.unit === 'mm' ? 1 : inch(1 / 16)
}

/** On the line that caught an edge; where none did, at a place that a tape can find. */
function atRest(project: Project, wanted: Mm, way: Mm | null): Mm {
  if (way !== null) return settle(wanted + way)
  const step = handStep(project)
  return settle(Math.round(wanted / step) * step)
}

/** The smallest way from any edge to any line within reach, the first line of equals; null where none is. */
function nudge(edges: readonly Mm[], lines: readonly Guide[], reach: Mm): Mm | null {
  let best: Mm | null = null
  for (const edge of edges) {
    for (const { at } of lines) {
      const way = at - edge
      if (Math.abs(way) <= reach && (best === null || Math.abs(way) < Math.abs(best))) best = way
    }
  }
  return best
}

/** The lines that edges lie on, one for each place. */
function heldBy(edges: readonly Mm[], lines: readonly Guide[]): Guide[] {
  const held = lines.filter(({ at }) => edges.includes(at))
  return held.filter((line, at) => held.findIndex((other) => other.at === line.at) === at)
}

/** Nearest things first, so that of equals the nearer neighbour gives its name. */
function linesAround(project: Project, cabinet: Cabinet, ignore: readonly string[]): Guide[] {
  const wall = find(project.walls, cabinet.wall)
  if (!wall) return []
  const usual = project.newCabinets[cabinet.kind]
  const inLane = new Set(inLanesOf(project, cabinet).map(({ id }) => id))
  const others = valuesOf<Cabinet>(project.cabinets)
    .filter(({ id, wall: on }) => id !== cabinet.id && on === wall.id && !ignore.includes(id))
    .sort((a, b) => Number(inLane.has(b.id)) - Number(inLane.has(a.id)) || a.left - b.left || (a.id < b.id ? -1 : 1))
  return [
    ...others.flatMap((other) => edgeLines(footprintOf(other, project), markOf(other))),
    ...inTheWay(project, wall, faceFrom(cabinet, project)).flatMap((body) => endLines(body, wall)),
    { axis: 'x', at: 0, to: 'the left wall end' },
    { axis: 'x', at: wall.length, to: 'the right wall end' },
    { axis: 'y', at: wall.height, to: 'the ceiling' },
    { axis: 'y', at: usual.bottom, to: 'the usual height' },
    { axis: 'y', at: settle(usual.bottom + usual.height), to: 'the usual top' },
    ...valuesOf<Opening>(wall.openings).flatMap((opening) => edgeLines(opening, `the ${opening.kind}`)),
  ]
}

/** Where what reaches in from another wall ends along this one: nobody comes to rest at its other side, in the corner. */
function endLines(body: Body, wall: Wall): Guide[] {
  const isAtLeft = body.left + body.width / 2 < wall.length / 2
  const to = `the ${body.isLeg ? 'other leg' : 'front'} of ${markOf(body.cabinet)}`
  return [{ axis: 'x', at: isAtLeft ? rightEdge(body) : body.left, to }]
}

function edgeLines(rect: Rect, of: string): Guide[] {
  return [
    { axis: 'x', at: rect.left, to: `the left side of ${of}` },
    { axis: 'x', at: rightEdge(rect), to: `the right side of ${of}` },
    { axis: 'y', at: topEdge(rect), to: `the top of ${of}` },
    { axis: 'y', at: rect.bottom, to: `the underside of ${of}` },
  ]
}

/** Where the edge would be at a size of the grid, or at the width or height of another cabinet. */
function sizeLines(project: Project, cabinet: Cabinet, edge: Edge, wanted: Mm): Guide[] {
  const axis = edge === 'left' || edge === 'right' ? 'x' : 'y'
  const size = axis === 'x' ? 'width' : 'height'
  const start = axis === 'x' ? cabinet.left : cabinet.bottom
  const fixed = edge === 'left' || edge === 'bottom' ? start + cabinet[size] : start
  const sign = edge === 'left' || edge === 'bottom' ? -1 : 1
  const stepped = Math.round(Math.abs(wanted - fixed) / project.grid) * project.grid
  const line = (length: Mm, to: string): Guide => ({ axis, at: settle(fixed + sign * length), to })
  const same = inLanesOf(project, cabinet).map((other) => line(other[size], `the ${size} of ${markOf(other)}`))
  return stepped > 0 ? [...same, line(stepped, 'the grid')] : same
}
