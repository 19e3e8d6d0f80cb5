import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../engine/basics/random'
import type { Board } from '../../engine/cabinets/board'
import { boxOf } from '../../engine/cabinets/boardBox'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { centresOf, type HolePurpose, type HoleRow } from '../../engine/cabinets/operation'
import { boredBy, roomsIn } from '../../engine/cabinets/removed'
import { type Box, boxesOverlap } from '../../engine/geometry/box'
import { toCabinet } from '../../engine/geometry/placement'
import type { Vec3 } from '../../engine/geometry/vector'
import { USUAL_DRAWER_PULLS, USUAL_FIXINGS, USUAL_FRONT_SCREWS } from '../../engine/project/fixing'
import { USUAL_FIVE_PART } from '../../engine/project/frames'
import type { MethodChoices } from '../../engine/project/method'
import { interferences } from '../../engine/solids/interference'
import { anyCabinet } from '../helpers/diced'
import { FRAME } from '../helpers/frames'

const RUNS = { numRuns: 250, seed: 1 }

/** Any cabinet by any method, with some choices besides. */
function built(seed: number, choices: Partial<MethodChoices>): readonly Board[] {
  const { cabinet, rules } = anyCabinet(randomFrom(seed))
  return buildCabinet(cabinet, { ...rules, method: { ...rules.method, ...choices } }).boards
}

function rowsOf({ operations }: Board, purposes: readonly HolePurpose[]): HoleRow[] {
  return operations.filter((one): one is HoleRow => one.kind === 'holeRow' && purposes.includes(one.purpose))
}

/** Holes that leave their board, or meet what else is worked on it; pockets may come near to one another, since boxes around them are wider than they are. */
function wrongIn(board: Board, purposes: readonly HolePurpose[]): string[] {
  const blank = { min: { x: 0, y: 0, z: 0 }, max: { x: board.length, y: board.width, z: board.thickness } }
  return rowsOf(board, purposes).flatMap((row) => {
    const others = roomsIn({ ...board, operations: board.operations.filter((one) => one !== row) })
    const isOut = boredBy(row, board).some((box) => !isWithin(box, blank))
    const isMet = roomsIn({ ...board, operations: [row] }).some((box) =>
      others.some((other) => boxesOverlap(box, other, 1e-3)),
    )
    return isOut || isMet
      ? [`${board.role} ${board.number}: ${row.purpose} ${isOut ? 'out of its board' : 'in other work'}`]
      : []
  })
}

function isWithin(box: Box, blank: Box): boolean {
  return (['x', 'y', 'z'] as const).every(
    (axis) => box.min[axis] >= blank.min[axis] - 1e-3 && box.max[axis] <= blank.max[axis] + 1e-3,
  )
}

describe('pocket holes of any cabinet', () => {
  it('stay in their boards, clear of joints and of all other holes', () => {
    let seen = 0
    fc.assert(
      fc.property(fc.nat(100_000), fc.boolean(), (seed, isFramed) => {
        const boards = built(seed, {
          fixing: USUAL_FIXINGS.pocketScrews,
          frameFixing: USUAL_FIXINGS.pocketScrews,
          ...(isFramed ? { faceFrame: FRAME } : {}),
        })
        seen += boards.reduce((sum, board) => sum + rowsOf(board, ['pocketScrew']).length, 0)
        expect(boards.flatMap((board) => wrongIn(board, ['pocketScrew']))).toEqual([])
      }),
      RUNS,
    )
    expect(seen).toBeGreaterThan(1500)
  })

  it('run to an end or an edge at which another board begins', () => {
    fc.assert(
      fc.property(fc.nat(100_000), (seed) => {
        const boards = built(seed, { fixing: USUAL_FIXINGS.pocketScrews, frameFixing: USUAL_FIXINGS.pocketScrews })
        for (const board of boards) {
          for (const row of rowsOf(board, ['pocketScrew'])) {
            const axis = row.slant!.towards === 'start' || row.slant!.towards === 'end' ? 'length' : 'width'
            const across = board.placement[axis][1] as 'x' | 'y' | 'z'
            const own = boxOf(board)
            const met = boards.filter((other) => {
              const { min, max } = boxOf(other)
              const isBeside = min[across] === own.max[across] || max[across] === own.min[across]
              return other !== board && isBeside
            })
            expect(met.length, `${board.role}, seed ${seed}`).toBeGreaterThan(0)
          }
        }
      }),
      RUNS,
    )
  })
})

describe('drawer fronts of any cabinet', () => {
  it('are screwed clear of pulls, grooves and joints, hole before spot', () => {
    let seen = 0
    const purposes = ['frontScrew', 'frontPilot'] as const
    fc.assert(
      fc.property(fc.nat(100_000), fc.constantFrom('bar', 'knob'), (seed, pull) => {
        const boards = built(seed, { frontScrews: USUAL_FRONT_SCREWS.screws, drawerPull: USUAL_DRAWER_PULLS[pull] })
        expect(boards.flatMap((board) => wrongIn(board, purposes))).toEqual([])
        const points = (purpose: HolePurpose) =>
          boards.flatMap((board) => rowsOf(board, [purpose]).flatMap((row) => centresIn(row, board)))
        const [holes, spots] = [points('frontScrew'), points('frontPilot')]
        expect(spots.length).toBe(holes.length)
        const alone = spots.filter((spot) => !holes.some(({ x, y }) => Math.hypot(x - spot.x, y - spot.y) < 1e-3))
        expect(alone).toEqual([])
        seen += holes.length
      }),
      RUNS,
    )
    expect(seen).toBeGreaterThan(500)
  })
})

/** In the cabinet's frame. */
function centresIn(row: HoleRow, { placement }: Board): Vec3[] {
  return centresOf(row).map(({ x, y }) => toCabinet(placement, x, y, 0))
}

describe('fronts of any cabinet made to openings that were measured narrower and lower', () => {
  it('share no room with anything, and keep their holes in their wood', () => {
    let seen = 0
    fc.assert(
      fc.property(
        fc.nat(100_000),
        fc.integer({ min: 0, max: 32 }),
        fc.integer({ min: 0, max: 32 }),
        (seed, wide, high) => {
          const { cabinet, rules } = anyCabinet(randomFrom(seed))
          const method = { ...rules.method, frontBuild: { ...USUAL_FIVE_PART, areDrawersToo: true } }
          const drawn = buildCabinet(cabinet, { ...rules, method })
          const asBuilt = Object.fromEntries(
            drawn.openings.map(({ key, drawn: { width, height } }) => [
              key,
              { width: width - wide / 8, height: height - high / 8 },
            ]),
          )
          const { boards } = buildCabinet({ ...cabinet, asBuilt }, { ...rules, method })
          expect(boards.length).toBe(drawn.boards.length)
          expect(interferences(boards).map(({ a, b }) => `${a.role} in ${b.role}`)).toEqual([])
          expect(boards.flatMap((board) => outOf(board))).toEqual([])
          seen += boards.filter(({ isMeasured }) => isMeasured).length
        },
      ),
      { numRuns: 60, seed: 1 },
    )
    expect(seen).toBeGreaterThan(200)
  })
})

function outOf(board: Board): string[] {
  const blank = { min: { x: 0, y: 0, z: 0 }, max: { x: board.length, y: board.width, z: board.thickness } }
  return board.operations.flatMap((row) => {
    if (row.kind !== 'holeRow' || boredBy(row, board).every((box) => isWithin(box, blank))) return []
    return [`${board.role} ${board.number}: ${row.purpose}`]
  })
}
