import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../engine/basics/random'
import type { Board } from '../../engine/cabinets/board'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { centresOf, type HoleRow, isInEdge } from '../../engine/cabinets/operation'
import { boredBy, roomsIn } from '../../engine/cabinets/removed'
import { type Box, boxesOverlap } from '../../engine/geometry/box'
import { toCabinet } from '../../engine/geometry/placement'
import type { Vec3 } from '../../engine/geometry/vector'
import { type Fixing, USUAL_FIXINGS } from '../../engine/project/fixing'
import { anyCabinet } from '../helpers/cabinets'

const CABINETS = 600
const PURPOSES = ['screw', 'pilot', 'dowel', 'looseTenon']

/** The fixings by turns, with other figures than the usual ones. */
const FIXINGS: readonly Fixing[] = [
  USUAL_FIXINGS.screws,
  USUAL_FIXINGS.dowels,
  USUAL_FIXINGS.looseTenons,
  { ...USUAL_FIXINGS.dowels, diameter: 6, fromEdge: 12, spacing: 64 },
  { ...USUAL_FIXINGS.looseTenons, across: 40, fromEdge: 20, spacing: 90 },
  { ...USUAL_FIXINGS.screws, fromEdge: 8, spacing: 100, head: 4 },
]

function built(seed: number) {
  const { cabinet, rules } = anyCabinet(randomFrom(seed))
  const fixing = FIXINGS[seed % FIXINGS.length]!
  return buildCabinet(cabinet, { ...rules, method: { ...rules.method, fixing } })
}

interface Hole {
  readonly board: Board
  readonly row: HoleRow
  /** On its face, in the cabinet's frame. */
  readonly at: Vec3
}

function fixingsIn(boards: readonly Board[]): Hole[] {
  return boards.flatMap((board) =>
    board.operations.flatMap((row) => {
      if (row.kind !== 'holeRow' || !PURPOSES.includes(row.purpose)) return []
      const z = row.up ?? (row.face === 'inside' ? board.thickness : 0)
      return centresOf(row).map(({ x, y }) => ({ board, row, at: toCabinet(board.placement, x, y, z) }))
    }),
  )
}

/** Both on one axis through the board's thickness: what is left between them lies along one direction of the cabinet. */
function isOnAxis(face: Hole, end: Hole): boolean {
  const through = face.board.placement.thickness[1] as 'x' | 'y' | 'z'
  const off = (['x', 'y', 'z'] as const).filter((axis) => Math.abs(face.at[axis] - end.at[axis]) > 1e-6)
  return (
    off.every((axis) => axis === through) && Math.abs(face.at[through] - end.at[through]) <= face.board.thickness + 1e-6
  )
}

describe('the fixings of any cabinet', () => {
  it('are bored in the face of one board and the end of another, on one axis', () => {
    let count = 0
    for (let seed = 0; seed < CABINETS; seed++) {
      const holes = fixingsIn(built(seed).boards)
      const faces = holes.filter(({ row }) => !isInEdge(row))
      const ends = holes.filter(({ row }) => isInEdge(row))
      expect(faces.length, `seed ${seed}`).toBe(ends.length)
      for (const end of ends) {
        expect(faces.filter((face) => face.board !== end.board && isOnAxis(face, end)).length, `seed ${seed}`).toBe(1)
      }
      count += ends.length
    }
    expect(count).toBeGreaterThan(5000)
  })

  it('keep their wood: inside their boards, and clear of all else that is worked on them', () => {
    for (let seed = 0; seed < CABINETS; seed++) {
      for (const board of built(seed).boards) {
        const blank: Box = { min: { x: 0, y: 0, z: 0 }, max: { x: board.length, y: board.width, z: board.thickness } }
        const rows = board.operations.filter(
          (one): one is HoleRow => one.kind === 'holeRow' && PURPOSES.includes(one.purpose),
        )
        for (const row of rows) {
          const others = roomsIn({ ...board, operations: board.operations.filter((one) => one !== row) })
          const own = roomsIn({ ...board, operations: [row] })
          const outside = boredBy(row, board).filter((box) => !isWithin(box, blank))
          expect(outside, `seed ${seed}, ${board.role}`).toEqual([])
          const met = own.filter((box) => others.some((other) => boxesOverlap(box, other, 1e-6)))
          expect(met, `seed ${seed}, ${board.role} ${row.purpose}`).toEqual([])
        }
      }
    }
  })

  it('are mirrored in a left side and a right side where nothing inside tells them apart', () => {
    let seen = 0
    for (let seed = 0; seed < CABINETS; seed++) {
      const { cabinet, boards } = built(seed)
      if (cabinet.front.kind !== 'open' || cabinet.interior.partition) continue
      const [left, right] = (['leftSide', 'rightSide'] as const).map((role) =>
        fixingsIn(boards.filter((board) => board.role === role)).map(({ at }) => at),
      )
      const mirrored = right!.map((at) => ({ ...at, x: cabinet.width - at.x }))
      expect(mirrored.map(key).sort(), `seed ${seed}`).toEqual(left!.map(key).sort())
      seen += left!.length
    }
    expect(seen).toBeGreaterThan(100)
  })
})

function isWithin(box: Box, blank: Box): boolean {
  return (['x', 'y', 'z'] as const).every(
    (axis) => box.min[axis] >= blank.min[axis] - 1e-6 && box.max[axis] <= blank.max[axis] + 1e-6,
  )
}

function key({ x, y, z }: Vec3): string {
  return [x, y, z].map((one) => one.toFixed(3)).join(',')
}
