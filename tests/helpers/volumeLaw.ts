import type { Board } from '../../engine/cabinets/board'
import { type HoleRow, isSlantedCut, type Operation } from '../../engine/cabinets/operation'
import { boredBy, removedBy } from '../../engine/cabinets/removed'
import { type Box, boxesOverlap, boxOver } from '../../engine/geometry/box'
import { rowVolume } from '../../engine/solids/bores'
import { volumeOf } from '../../engine/solids/volume'
import type { Law } from './judge'
import { ROUND, roundIn, withCare, worked } from './otherSolids'

/** By so much of it two volumes may differ that are reckoned in another order. */
const SUMS = 1e-9

const areEqual = (ours: number, theirs: number) => Math.abs(ours - theirs) <= SUMS * Math.abs(theirs)

/** The volume that the blocks of another library leave of each board, without its holes. */
export const hasTheirVolume: Law = ({ boards }) =>
  boards.flatMap((board) => {
    const unbored = { ...board, operations: board.operations.filter(({ kind }) => kind !== 'holeRow') }
    const [ours, theirs] = [volumeOf(unbored), theirVolume(unbored)]
    return areEqual(ours, theirs) ? [] : [`${board.role} ${board.number} has ${ours} mm3, theirs ${theirs}`]
  })

/** By shape: theirs are reckoned once, ours each time. */
const known = new Map<string, number>()

function theirVolume(board: Board): number {
  const { length, width, thickness, operations } = board
  if (operations.length === 0) return length * width * thickness
  const shape = shapeOf(board)
  const before = known.get(shape)
  if (before !== undefined) return before
  const volume = withCare((keep) => worked(board, keep).volume())
  known.set(shape, volume)
  return volume
}

/** The grid of lengths: in so many parts of a millimetre a shape is written. */
const PER_MM = 3200

/** Equal for boards of which one is the other, turned over or seen in a mirror: these have one volume. */
function shapeOf(board: Board): string {
  const { length, width, thickness, operations } = board
  const sizes = [length, width, thickness].map(onGrid)
  if (operations.some(isSlantedCut)) return JSON.stringify([sizes, operations])
  const rooms = operations.flatMap((one) => (one.kind === 'holeRow' || isSlantedCut(one) ? [] : [roomIn(board, one)]))
  const seen = Array.from({ length: 8 }, (_, way) => {
    return rooms
      .map((sides) => sides.map((side, axis) => ((way >> axis) & 1 ? fromOtherEnd(side, sizes[axis]!) : side).join()))
      .map((sides) => sides.join(';'))
      .sort()
      .join('|')
  })
  return `${sizes} ${seen.sort()[0]}`
}

type Side = readonly [from: number, to: number]

const onGrid = (length: number) => Math.round(length * PER_MM)
const fromOtherEnd = ([from, to]: Side, size: number): Side => [size - to, size - from]

function roomIn(board: Board, one: Parameters<typeof removedBy>[0]): Side[] {
  const room = removedBy(one, board)
  if (!room) return []
  const { min, max } = room
  return (['x', 'y', 'z'] as const).map((axis) => [onGrid(min[axis]), onGrid(max[axis])])
}

/**
 * The volume that the drills of another library take of each board: each hole for itself what its bit takes, and clear of
 * all else that is worked on the board. What is not clear of it by boxes is bored there as a whole.
 */
export const hasTheirHoles: Law = ({ boards }) =>
  boards.flatMap((board) => {
    const name = `${board.role} ${board.number}`
    const rows = board.operations.filter((one): one is HoleRow => one.kind === 'holeRow')
    const wrong = rows.filter((row) => !areEqual(rowVolume(row), row.count * bitVolume(row)))
    const isWrongAsWhole = !areApart(board, rows) && !isBoredAsTheirs(board)
    return [
      ...wrong.map((row) => `${row.purpose} in ${name} takes ${rowVolume(row)} mm3`),
      ...(isWrongAsWhole ? [`${name} has ${volumeOf(board)} mm3 with its holes`] : []),
    ]
  })

/** A block that is larger than any hole is deep. */
const BLOCK = 400
const bits = new Map<string, number>()

/** What one hole takes there, its roundness made good. */
function bitVolume(row: HoleRow): number {
  const { face, along, diameter, depth, oval, countersink, slant } = row
  const bit = JSON.stringify([face, along, diameter, depth, oval, countersink, slant])
  const before = bits.get(bit)
  if (before !== undefined) return before
  const at = (low: typeof face, high: typeof face) => (face === low ? 0 : face === high ? BLOCK : BLOCK / 2)
  const one: HoleRow = { ...row, count: 1, x: at('start', 'end'), y: at('low', 'high') }
  const operations: readonly Operation[] = [row.up === undefined ? one : { ...one, up: BLOCK / 2 }]
  const block = { length: BLOCK, width: BLOCK, thickness: BLOCK, operations } as Board
  const left = withCare((keep) => worked(block, keep).volume())
  const volume = BLOCK ** 3 - left + roundIn(block) * (1 - ROUND)
  bits.set(bit, volume)
  return volume
}

/** The holes of a row, each in its own box, and the box around all of them. */
interface Bored {
  readonly row: HoleRow
  readonly holes: readonly Box[]
  readonly around: Box
}

/** Whether every hole is in its board, and clear of the cuts and of all other holes. */
function areApart(board: Board, rows: readonly HoleRow[]): boolean {
  const cuts = board.operations.flatMap((one): Box[] => {
    if (one.kind === 'holeRow' || isSlantedCut(one)) return []
    const room = removedBy(one, board)
    return room ? [room] : []
  })
  const own = rows.map((row): Bored => {
    const holes = boredBy(row, board)
    return { row, holes, around: holes.reduce(boxOver) }
  })
  const blank = { min: { x: 0, y: 0, z: 0 }, max: { x: board.length, y: board.width, z: board.thickness } }
  return own.every((one, at) => {
    const { holes, around } = one
    const isAlone = holes.every((hole, next) => next === 0 || !boxesOverlap(holes[next - 1]!, hole))
    const isClear = !cuts.some((cut) => boxesOverlap(around, cut))
    return isAlone && isClear && isWithin(around, blank) && own.slice(at + 1).every((other) => doMiss(one, other))
  })
}

function doMiss(one: Bored, other: Bored): boolean {
  if (!boxesOverlap(one.around, other.around)) return true
  const away = [one.row, other.row].every(isUpright) ? (radiusOf(one.row) + radiusOf(other.row)) ** 2 : null
  return one.holes.every((a) =>
    other.holes.every((b) => !boxesOverlap(a, b) || (away !== null && squareBetween(a, b) >= away)),
  )
}

/** Round, and square to a face. */
function isUpright({ face, oval, slant }: HoleRow): boolean {
  return (face === 'inside' || face === 'outside') && oval === undefined && !slant
}

const radiusOf = ({ diameter, countersink = 0 }: HoleRow) => Math.max(diameter, countersink) / 2

/** From the middle of a hole to that of another, along their face: its square, in mm2. */
function squareBetween(a: Box, b: Box): number {
  return ((a.min.x + a.max.x - b.min.x - b.max.x) / 2) ** 2 + ((a.min.y + a.max.y - b.min.y - b.max.y) / 2) ** 2
}

function isWithin({ min, max }: Box, blank: Box): boolean {
  return (['x', 'y', 'z'] as const).every((axis) => min[axis] >= blank.min[axis] && max[axis] <= blank.max[axis])
}

function isBoredAsTheirs(board: Board): boolean {
  const theirs = withCare((keep) => worked(board, keep).volume())
  const expected = theirs - roundIn(board) * (1 - ROUND)
  return Math.abs(volumeOf(board) - expected) / expected < 1e-6
}
