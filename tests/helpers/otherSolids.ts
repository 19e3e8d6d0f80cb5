import Module, { type Manifold } from 'manifold-3d'
import type { Board } from '../../engine/cabinets/board'
import { type Bevel, type Clip, type HoleRow, isEdgeSlot, type Operation } from '../../engine/cabinets/operation'
import { turned } from '../../engine/geometry/placement'
import { type Axis, unit, type Vec3 } from '../../engine/geometry/vector'

/*
 * The boards worked a second time by manifold-3d, a library for exact solids: a blank, less a block or a drill for all
 * that is worked on it, laid where the board lies.
 */

/** Few sides drill quickly, and what they leave is known to the last bit whatever their number. */
const SEGMENTS = 16
/** What a drill with flat sides leaves of a round hole. */
export const ROUND = ((SEGMENTS / 2) * Math.sin((2 * Math.PI) / SEGMENTS)) / Math.PI

const solids = await Module()
solids.setup()

/** Keeps a solid until all is done. */
export type Keep = (solid: Manifold) => Manifold

/** Everything made while `work` runs is given back, for its memory is not the garbage collector's. */
export function withCare<Answer>(work: (keep: Keep) => Answer): Answer {
  const kept: Manifold[] = []
  try {
    return work((solid) => {
      kept.push(solid)
      return solid
    })
  } finally {
    for (const solid of kept) solid.delete()
  }
}

/** A corner cut off is a block with a triangle as its foot. */
function wedgeFor(clip: Clip, { length, width, thickness }: Board, keep: Keep) {
  const x = clip.end === 'start' ? [0, clip.length] : [length, length - clip.length]
  const y = clip.edge === 'low' ? [0, clip.width] : [width, width - clip.width]
  const corners = [
    [x[0]!, y[0]!],
    [x[1]!, y[0]!],
    [x[0]!, y[1]!],
  ] as [number, number][]
  // Either way round is one of the two, and the other has no inside.
  const foot = new solids.CrossSection([corners], 'NonZero')
  const wedge = keep(foot.extrude(thickness))
  foot.delete()
  return wedge
}

function blockFor(operation: Exclude<Operation, HoleRow | Clip | Bevel>, { thickness, width }: Board, keep: Keep) {
  if (isEdgeSlot(operation)) {
    const { edge, x, length, up, width: wide, depth } = operation
    const slot = keep(solids.Manifold.cube([length, depth, wide]))
    return keep(slot.translate([x, edge === 'low' ? 0 : width - depth, up]))
  }
  const depth = operation.kind === 'notch' ? thickness : operation.depth
  const low = operation.kind !== 'notch' && operation.face === 'inside' ? thickness - depth : 0
  const block = keep(solids.Manifold.cube([operation.length, operation.width, depth]))
  return keep(block.translate([operation.x, operation.y, low]))
}

/** The wedge along an edge or an end between the whole face and the other one. */
function bevelFor({ edge, face, by }: Bevel, { length, width, thickness }: Board, keep: Keep): Manifold {
  const isEnd = edge === 'start' || edge === 'end'
  const [far, long] = isEnd ? [length, width] : [width, length]
  const [at, inner] = edge === 'low' || edge === 'start' ? [0, by] : [far, far - by]
  const [narrow, whole] = face === 'outside' ? [0, thickness] : [thickness, 0]
  const corners = [0, long].flatMap((along) =>
    [
      [at, narrow],
      [inner, narrow],
      [at, whole],
    ].map(([across, z]): [number, number, number] => (isEnd ? [across!, along, z!] : [along, across!, z!])),
  )
  return keep(solids.Manifold.hull(corners))
}

/** A drill, or a mortising bit that is drawn along, with its head at z = 0 and its point at the depth of the hole. */
function bitFor({ diameter, depth, oval = diameter, countersink = diameter, along }: HoleRow, keep: Keep): Manifold {
  const drill = keep(solids.Manifold.cylinder(depth, diameter / 2, diameter / 2, SEGMENTS))
  const way = (by: number): [number, number, number] => (along === 'width' ? [0, by, 0] : [by, 0, 0])
  const half = (oval - diameter) / 2
  const shaft =
    half > 0 ? keep(solids.Manifold.hull([keep(drill.translate(way(-half))), keep(drill.translate(way(half)))])) : drill
  const sunk = (countersink - diameter) / 2
  if (!(sunk > 0)) return shaft
  const cone = keep(solids.Manifold.cylinder(sunk, countersink / 2, diameter / 2, SEGMENTS))
  return keep(shaft.add(cone))
}

/** A bit turned so that it goes into the face that is bored. */
function aimed(bit: Manifold, { face }: HoleRow, keep: Keep): Manifold {
  switch (face) {
    case 'inside':
      return keep(bit.mirror([0, 0, 1]))
    case 'outside':
      return bit
    case 'start':
      return keep(bit.rotate([0, 90, 0]))
    case 'end':
      return keep(bit.rotate([0, -90, 0]))
    case 'low':
      return keep(bit.rotate([-90, 0, 0]))
    case 'high':
      return keep(bit.rotate([90, 0, 0]))
  }
}

/** A drill that goes in aslant, long enough to stand out of the face; its point is at the depth of the hole along it. */
function aslant({ face, depth, diameter, slant }: HoleRow, keep: Keep): Manifold {
  const { towards, angle, aside = 0 } = slant!
  const stands = 10 * diameter
  const drill = keep(solids.Manifold.cylinder(depth + stands, diameter / 2, diameter / 2, SEGMENTS))
  const set = keep(drill.translate([0, 0, -stands]))
  const into = (face === 'inside' ? -1 : 1) * Math.sin((angle * Math.PI) / 180)
  const along = (towards === 'start' || towards === 'low' ? -1 : 1) * Math.cos((angle * Math.PI) / 180)
  const degrees = (Math.atan2(along, into) * 180) / Math.PI
  const tilted = keep(set.rotate(towards === 'start' || towards === 'end' ? [0, degrees, 0] : [-degrees, 0, 0]))
  return keep(tilted.rotate([0, 0, towards === 'end' || towards === 'low' ? aside : -aside]))
}

function drillsFor(row: HoleRow, { thickness }: Board, keep: Keep) {
  const bit = row.slant ? aslant(row, keep) : aimed(bitFor(row, keep), row, keep)
  const z = row.up ?? (row.face === 'inside' ? thickness : 0)
  return Array.from({ length: row.count }, (_, at) => {
    const [along, across] = row.along === 'width' ? [0, at * row.step] : [at * row.step, 0]
    return keep(bit.translate([row.x + along, row.y + across, z]))
  })
}

/** A blank, less a block or a drill for all that is worked on it. */
export function worked(board: Board, keep: Keep, isDrilled = true): Manifold {
  const tools = board.operations.flatMap((operation) => {
    if (operation.kind === 'clip') return [wedgeFor(operation, board, keep)]
    if (operation.kind === 'bevel') return [bevelFor(operation, board, keep)]
    if (operation.kind !== 'holeRow') return [blockFor(operation, board, keep)]
    return isDrilled ? drillsFor(operation, board, keep) : []
  })
  const blank = keep(solids.Manifold.cube([board.length, board.width, board.thickness]))
  return tools.length === 0 ? blank : keep(solids.Manifold.difference([blank, ...tools]))
}

/** A board where it lies in its cabinet. */
export function laid(board: Board, solid: Manifold, keep: Keep): Manifold {
  const { origin, length, width, thickness, turn } = board.placement
  const column = (axis: Axis) => numbers(turn ? turned(unit(axis), turn) : unit(axis))
  return keep(
    solid.transform([
      ...[...column(length), 0],
      ...[...column(width), 0],
      ...[...column(thickness), 0],
      ...[...numbers(origin), 1],
    ] as Parameters<Manifold['transform']>[0]),
  )
}

function numbers({ x, y, z }: Vec3): [number, number, number] {
  return [x, y, z]
}

/** What of the holes is round, and so larger than what their drills take, in mm3. */
export function roundIn(board: Board): number {
  return board.operations.reduce((sum, operation) => {
    if (operation.kind !== 'holeRow') return sum
    const { count, depth, diameter, countersink = diameter } = operation
    const [narrow, wide] = [diameter / 2, countersink / 2]
    const cone = ((wide - narrow) * (wide ** 2 + wide * narrow + narrow ** 2)) / 3 - (wide - narrow) * narrow ** 2
    return sum + count * Math.PI * (depth * narrow ** 2 + cone)
  }, 0)
}
