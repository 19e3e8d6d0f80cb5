import { counted } from '../basics/counted'
import type { Board } from '../cabinets/board'
import { LEAST_WOOD } from '../cabinets/hinge'
import { withHoles } from '../cabinets/holes'
import type { Operation, Recess } from '../cabinets/operation'
import { roomsIn } from '../cabinets/removed'
import { isTopBoard } from '../cabinets/role'
import { placesAlong, rowsOfPoints } from '../cabinets/spacing'
import { type Box, boxesOverlap } from '../geometry/box'
import type { SeamBolts } from '../project/between'
import { type Mm, settle } from '../units/length'
import type { TopRun } from './countertop'

/** Of the top over a bore. Common practice, no source. */
const LEAST_OVER: Mm = 6

/** Where bolts cross a seam, from the wall of the top that ends at it: more in a deeper top. */
export function boltsAcross(depth: Mm, { fromEdge, spacing }: SeamBolts): Mm[] {
  return placesAlong({ from: 0, to: depth }, { fromEdge, spacing })
}

/** How deep the bores and slots are: as is said, but never so that they come near the upper face. */
export function boltDepth(thickness: Mm, { depth }: SeamBolts): Mm {
  return settle(Math.min(depth, thickness - LEAST_OVER))
}

export interface Bolted {
  readonly boards: readonly Board[]
  /** What the rule asks for and what finds no place. */
  readonly missing: number
}

/**
 * The boards of a top with what is routed in their undersides for the bolts of seams: at every splice, where it stops at the
 * front edge of another top, and in its own front edge where another stops at it.
 *
 *            seam
 *      ()======|======()     a bore for the nut, a slot for the bolt; from below
 */
export function bolted(boards: readonly Board[], run: TopRun): Bolted {
  const { seamBolts } = run.countertop
  const tops = boards.filter(({ role }) => isTopBoard(role))
  if (!seamBolts || !(boltDepth(run.thickness, seamBolts) > 0)) return { boards, missing: 0 }
  const works = new Map<Board, Operation[]>()
  let missing = 0
  const bolt = (sides: readonly Side[], places: readonly Mm[]) => {
    const free = places.filter((place) => sides.every((side) => isFree(side, place, seamBolts)))
    missing += places.length - free.length
    for (const side of sides)
      works.set(side.board, [...(works.get(side.board) ?? []), ...workFor(side, free, seamBolts)])
  }
  for (const [at, board] of tops.entries()) {
    const next = tops[at + 1]
    const places = boltsAcross(board.width, seamBolts)
    if (at === 0 && run.stopped.left) bolt([{ board, at: 'start' }], places)
    if (next)
      bolt(
        [
          { board, at: 'end' },
          { board: next, at: 'start' },
        ],
        places,
      )
    else if (run.stopped.right) bolt([{ board, at: 'end' }], places)
    const { x } = board.placement.origin
    const joined = run.joined.filter((place) => place > x && place <= x + board.length)
    if (joined.length > 0)
      bolt(
        [{ board, at: 'front' }],
        joined.map((place) => settle(place - x)),
      )
  }
  const done = boards.map((board) => {
    const work = works.get(board) ?? []
    return work.length === 0 ? board : { ...board, operations: [...board.operations, ...work] }
  })
  return { boards: done, missing }
}

export function missingWords(missing: number): string {
  return `${counted(missing, 'bolt')} of the seams of its countertop find no place: a cut-out or another seam is in the way.`
}

/** An end of a board, or its front edge. */
interface Side {
  readonly board: Board
  readonly at: 'start' | 'end' | 'front'
}

function isFree(side: Side, place: Mm, bolts: SeamBolts): boolean {
  const { board } = side
  const radius = bolts.bore / 2 + LEAST_WOOD
  const across = side.at === 'front' ? board.length : board.width
  if (place - radius < 0 || place + radius > across) return false
  const own = roomsIn({ ...board, operations: workFor(side, [place], bolts) }).map((box) => widened(box))
  const others = roomsIn(board)
  return !own.some((box) => others.some((other) => boxesOverlap(box, other)))
}

function widened({ min, max }: Box): Box {
  return {
    min: { x: min.x - LEAST_WOOD, y: min.y, z: min.z - LEAST_WOOD },
    max: { x: max.x + LEAST_WOOD, y: max.y, z: max.z + LEAST_WOOD },
  }
}

function workFor({ board, at }: Side, places: readonly Mm[], bolts: SeamBolts): Operation[] {
  const { bore, slot, fromSeam } = bolts
  const depth = boltDepth(board.thickness, bolts)
  // The slot ends where its corners are in the bore.
  const reach = settle(fromSeam - Math.sqrt(Math.max(0, (bore / 2) ** 2 - (slot / 2) ** 2)))
  const hole = { purpose: 'seamBolt', face: 'inside', diameter: bore, depth } as const
  const recess = (kind: 'groove' | 'dado', x: Mm, y: Mm, length: Mm, width: Mm): Recess => {
    return { kind, face: 'inside', x: settle(x), y: settle(y), length: settle(length), width: settle(width), depth }
  }
  if (at === 'front') {
    const y = settle(board.width - fromSeam)
    return [
      ...rowsOfPoints(
        places.map((x) => ({ x, y })),
        false,
        hole,
      ),
      ...places.map((x) => recess('dado', x - slot / 2, board.width - reach, slot, reach)),
    ]
  }
  const x = at === 'start' ? fromSeam : settle(board.length - fromSeam)
  const from = at === 'start' ? 0 : board.length - reach
  const rows = rowsOfPoints(
    places.map((y) => ({ x, y })),
    true,
    hole,
  )
  return [
    ...withHoles({ ...board, operations: [] }, rows).operations,
    ...places.map((y) => recess('groove', from, y - slot / 2, reach, slot)),
  ]
}
