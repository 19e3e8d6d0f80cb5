import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../engine/basics/random'
import { once } from '../../engine/basics/remember'
import type { Board } from '../../engine/cabinets/board'
import { boxOf } from '../../engine/cabinets/boardBox'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { centresOf, type HoleRow, isInEdge } from '../../engine/cabinets/operation'
import { boredBy, roomsIn } from '../../engine/cabinets/removed'
import { type Box, boxesOverlap } from '../../engine/geometry/box'
import { toCabinet } from '../../engine/geometry/placement'
import type { Vec3 } from '../../engine/geometry/vector'
import type { Cabinet } from '../../engine/project/document'
import { biscuits, type Fixing, USUAL_DOOR_PULLS, USUAL_DRAWER_PULLS, USUAL_FIXINGS } from '../../engine/project/fixing'
import { anyCabinet, anyCorner } from '../helpers/diced'

const CABINETS = 600
const PURPOSES = ['screw', 'pilot', 'dowel', 'looseTenon', 'biscuit']

/** The fixings by turns, with other figures than the usual ones. */
const FIXINGS: readonly Fixing[] = [
  USUAL_FIXINGS.screws,
  USUAL_FIXINGS.dowels,
  USUAL_FIXINGS.looseTenons,
  { ...USUAL_FIXINGS.dowels, diameter: 6, fromEdge: 12, spacing: 64 },
  { ...USUAL_FIXINGS.looseTenons, across: 40, fromEdge: 20, spacing: 90 },
  { ...USUAL_FIXINGS.screws, fromEdge: 8, spacing: 100, head: 4 },
  { ...biscuits('20'), spacing: 90 },
  { ...biscuits('0'), fromEdge: 30, spacing: 65 },
]

function built(seed: number, changes: Partial<Cabinet> = {}, anyOf = anyCabinet) {
  const { cabinet: any, rules } = anyOf(randomFrom(seed))
  const cabinet = { ...any, ...changes }
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

describe.each([
  ['cabinet', anyCabinet, 5000, 500],
  ['corner cabinet', anyCorner, 4000, 350],
] as const)('the fixings of any %s', (_, anyOf, least, leastPulls) => {
  const all = once(() => Array.from({ length: CABINETS }, (_, seed) => built(seed, {}, anyOf).boards))

  it('are bored in the face of one board and the end of another, on one axis', () => {
    let count = 0
    for (const [seed, boards] of all().entries()) {
      const holes = fixingsIn(boards)
      const faces = holes.filter(({ row }) => !isInEdge(row))
      const ends = holes.filter(({ row }) => isInEdge(row))
      expect(faces.length, `seed ${seed}`).toBe(ends.length)
      for (const end of ends) {
        expect(faces.filter((face) => face.board !== end.board && isOnAxis(face, end)).length, `seed ${seed}`).toBe(1)
      }
      count += ends.length
    }
    expect(count).toBeGreaterThan(least)
  })

  it('keep their wood: inside their boards, and clear of all else that is worked on them', () => {
    for (const [seed, boards] of all().entries()) {
      for (const board of boards) {
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

  it('are bored from outside only where they are screws, and all others not through', () => {
    let inserted = 0
    for (const [seed, boards] of all().entries()) {
      const holes = fixingsIn(boards)
      for (const { board, row } of holes.filter((one) => !isInEdge(one.row))) {
        const isScrew = row.purpose === 'screw'
        if (!isScrew) inserted++
        expect([row.face, row.depth >= board.thickness - 1e-6], `seed ${seed}`).toEqual(
          isScrew ? ['outside', expect.any(Boolean)] : ['inside', false],
        )
      }
    }
    expect(inserted).toBeGreaterThan(100)
  })

  it('have pulls beside them that are bored clear of the cups and of one another', () => {
    let pulls = 0
    for (let seed = 0; seed < CABINETS; seed++) {
      const { cabinet, rules } = anyOf(randomFrom(seed))
      const kind = seed % 2 === 0 ? 'bar' : 'knob'
      const changes = { doorPull: USUAL_DOOR_PULLS[kind], drawerPull: USUAL_DRAWER_PULLS[kind] }
      for (const board of buildCabinet(cabinet, { ...rules, method: { ...rules.method, ...changes } }).boards) {
        const rows = board.operations.filter((one): one is HoleRow => one.kind === 'holeRow')
        const own = rows.filter(({ purpose }) => purpose === 'pull')
        pulls += own.length
        for (const row of own) {
          const others = rows.filter((one) => one !== row).flatMap((one) => boredBy(one, board))
          const met = boredBy(row, board).filter((box) => others.some((other) => boxesOverlap(box, other, 1e-6)))
          expect(met, `seed ${seed}, ${board.role}`).toEqual([])
        }
      }
    }
    expect(pulls).toBeGreaterThan(leastPulls)
  })
})

describe('the fixings of any cabinet', () => {
  it('are mirrored in a left side and a right side where nothing between tells them apart', () => {
    let seen = 0
    for (let seed = 0; seed < CABINETS + 100; seed++) {
      const interior = { fixedShelves: 1, adjustableShelves: 1, partition: null }
      const { boards } = built(seed, { front: { kind: 'open' }, interior })
      const [left, right] = (['leftSide', 'rightSide'] as const).map((role) =>
        fixingsIn(boards.filter((board) => board.role === role)).map(({ at }) => at),
      )
      expect(right!.length, `seed ${seed}`).toBe(left!.length)
      // A face frame may stand past the carcass by more at one side than at the other.
      const ends = boards.filter(({ role }) => role === 'leftSide' || role === 'rightSide').map(boxOf)
      const across = Math.min(...ends.map(({ min }) => min.x)) + Math.max(...ends.map(({ max }) => max.x))
      const alone = left!.filter((at) => !right!.some((other) => isNear({ ...at, x: across - at.x }, other)))
      expect(alone, `seed ${seed}`).toEqual([])
      seen += left!.length
    }
    expect(seen).toBeGreaterThan(4000)
  })
})

function isWithin(box: Box, blank: Box): boolean {
  return (['x', 'y', 'z'] as const).every(
    (axis) => box.min[axis] >= blank.min[axis] - 1e-6 && box.max[axis] <= blank.max[axis] + 1e-6,
  )
}

function isNear(a: Vec3, b: Vec3): boolean {
  return Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y), Math.abs(a.z - b.z)) < 1e-6
}
