import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Board, BoardRole } from '../../engine/cabinets/board'
import { boxOf } from '../../engine/cabinets/boardBox'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { carcassOf } from '../../engine/cabinets/carcass'
import { columnRects } from '../../engine/cabinets/openings'
import { SILENT } from '../../engine/cabinets/report'
import type { Box } from '../../engine/geometry/box'
import type { Front } from '../../engine/project/document'
import { hungAs } from '../../engine/project/doors'
import { settle } from '../../engine/units/length'
import { ANY_KIND, anyStraight, type Made, SEED } from '../helpers/anyMade'

/** Shares settle on the grid of 1/3200 mm. */
const TICKS = 0.002

const AT_LEFT: readonly BoardRole[] = ['leftSide', 'leftEnd']
const AT_RIGHT: readonly BoardRole[] = ['rightSide', 'rightEnd']
/** What goes from side to side, and grows by all that the cabinet does. */
const THROUGH: readonly BoardRole[] = [
  ...(['bottom', 'top', 'lid', 'lidStrip', 'frontStretcher', 'backStretcher', 'back'] as const),
  ...([
    'topNailer',
    'bottomNailer',
    'middleNailer',
    'kickBoard',
    'plinthFront',
    'plinthBack',
    'topRail',
    'bottomRail',
  ] as const),
]
/** What is as wide in a wider cabinet, wherever it stands in it. */
const NEVER_WIDER: readonly BoardRole[] = [
  ...(['leftSide', 'rightSide', 'leftEnd', 'rightEnd', 'partition', 'divider', 'plinthEnd', 'filler'] as const),
  ...(['fillerReturn', 'stile', 'mullion', 'doorStile', 'drawerStile', 'drawerSide', 'cornerFiller'] as const),
]

/** Fronts of one board, as wide as their column or half of it. */
const WHOLE_FRONTS: readonly BoardRole[] = ['door', 'flap', 'drawerFront', 'falseFront']

interface Pair {
  readonly name: string
  readonly role: BoardRole
  readonly before: Box
  readonly after: Box
}

const nameOf = ({ role, number }: Board) => `${role} ${number}`

/** A cabinet and the same one wider, board by board; null where a finding of either tells of boards that the other does not have. */
function widened(
  { cabinet, rules }: Made,
  more: number,
): { readonly pairs: Pair[]; readonly boards: [Board, Board][] } | null {
  const [one, other] = [cabinet, { ...cabinet, width: settle(cabinet.width + more) }].map((of) =>
    buildCabinet(of, rules),
  )
  const ofBoards = (build: typeof one) =>
    build!.problems.filter(({ message }) => !/fixing|legs|pull|screw|hole|pin /.test(message)).length
  const names = (build: typeof one) => build!.boards.map(nameOf)
  if (ofBoards(one) + ofBoards(other) > 0 && names(one).join() !== names(other).join()) return null
  // A door that may be a pair is one in the narrower cabinet and two in the wider.
  const doors = (build: typeof one) => build!.fronts.filter(({ kind }) => kind === 'door').length
  if (doors(other) > doors(one)) return null
  expect(names(other)).toEqual(names(one))
  const boards = one!.boards.map((board, at): [Board, Board] => [board, other!.boards[at]!])
  const pairs = boards.map(([a, b]) => ({ name: nameOf(a), role: a.role, before: boxOf(a), after: boxOf(b) }))
  return { pairs, boards }
}

const near = (a: number, b: number) => Math.abs(a - b) < TICKS

/** What of a board does not do in a cabinet that is wider by so much what it should. */
function wrongWith({ name, role, before, after }: Pair, more: number): string[] {
  const [left, right] = [after.min.x - before.min.x, after.max.x - before.max.x]
  const isAs = (axis: 'y' | 'z') => near(after.min[axis], before.min[axis]) && near(after.max[axis], before.max[axis])
  const rules: readonly (readonly [string, boolean])[] = [
    ['keeps its height and where it stands in it', isAs('y')],
    ['keeps its depth and where it stands in it', isAs('z')],
    ['moves no farther than the cabinet grows', left > -TICKS && right < more + TICKS],
    ['gets no narrower', right - left > -TICKS],
    ['stays at the left', !AT_LEFT.includes(role) || (near(left, 0) && near(right, 0))],
    ['goes with the right side', !AT_RIGHT.includes(role) || (near(left, more) && near(right, more))],
    ['grows by all of it from the left', !THROUGH.includes(role) || (near(left, 0) && near(right, more))],
    ['is no wider', !NEVER_WIDER.includes(role) || near(left, right)],
  ]
  return rules.flatMap(([what, isSo]) => (isSo ? [] : [`${name} does not: ${what}`]))
}

/** The cuts into a side, but for its holes: how many hinges a door has depends on what it weighs. */
function cutsIn(board: Board): string[] {
  return board.operations.filter(({ kind }) => kind !== 'holeRow').map((one) => JSON.stringify(one))
}

const anyMore = fc.integer({ min: 1, max: 200 })
const [, , READY] = ANY_KIND

describe('a cabinet that is made wider', () => {
  it.each([
    ['straight cabinets', anyStraight, 1000],
    ['ready kinds', READY[1].filter(({ cabinet }) => !cabinet.corner), 500],
  ] as const)(
    'moves its right end and nothing up or out; boards from side to side grow by all of it, uprights by nothing, fronts and shelves by their share: %s',
    (_, any, numRuns) => {
      let compared = 0
      const property = fc.property(any, anyMore, (made, more) => {
        const both = widened(made, more)
        if (!both) return
        compared++
        expect(both.pairs.flatMap((pair) => wrongWith(pair, more))).toEqual([])
        for (const [before, after] of both.boards) {
          if (before.role !== 'leftSide' && before.role !== 'rightSide') continue
          expect(cutsIn(after), nameOf(before)).toEqual(cutsIn(before))
        }
      })
      fc.assert(property, { numRuns, seed: SEED })
      expect(compared).toBeGreaterThan(numRuns * 0.8)
    },
    120_000,
  )

  it('whose columns but the last are fixed has everything up to the last partition where it was, with all that is cut there', () => {
    let [compared, grew] = [0, 0]
    const inColumns = anyStraight.filter(({ cabinet }) => cabinet.front.kind === 'columns')
    const property = fc.property(inColumns, anyMore, (made, more) => {
      const { cabinet } = made
      const interior = { ...cabinet.interior, partition: null }
      const both = widened({ ...made, cabinet: { ...cabinet, interior, front: fixedButLast(made) } }, more)
      if (!both) return
      const posts = both.pairs.filter(({ role }) => role === 'partition').map(({ before }) => before.max.x)
      const end = Math.max(...posts)
      const last = lastOf(made)
      for (const [at, { name, role, before, after }] of both.pairs.entries()) {
        if (before.max.x > end) {
          // The front of the last column has all that is more, or either door of a pair half of it.
          if (!WHOLE_FRONTS.includes(role) || last === 'rows') continue
          const grown = settle(after.max.x - after.min.x - (before.max.x - before.min.x))
          expect(grown, name).toBeCloseTo(last === 'pair' ? more / 2 : more, 2)
          grew++
          continue
        }
        compared++
        expect(after, name).toEqual(before)
        const [own, wider] = both.boards[at]!
        expect([wider.length, wider.width], name).toEqual([own.length, own.width])
      }
    })
    fc.assert(property, { numRuns: 400, seed: SEED })
    expect(compared).toBeGreaterThan(500)
    expect(grew).toBeGreaterThan(100)
  })
})

/** What closes the last column as it hangs there. */
function lastOf({ cabinet, rules }: Made): Front['kind'] {
  const { front } = cabinet
  const carcass = carcassOf(cabinet, rules, SILENT)
  if (front.kind !== 'columns' || !carcass) return 'rows'
  return hungAs(front.columns.at(-1)!.front, columnRects(front.columns, carcass, SILENT).at(-1)!, rules.method).kind
}

/** The same columns, all but the last at the width that they have. */
function fixedButLast({ cabinet, rules }: Made): Front {
  const { front } = cabinet
  const carcass = carcassOf(cabinet, rules, SILENT)
  if (front.kind !== 'columns' || !carcass) return front
  const rects = columnRects(front.columns, carcass, SILENT)
  const last = rects.length - 1
  return {
    kind: 'columns',
    columns: front.columns.map((column, at) => ({
      ...column,
      size: at === last ? { kind: 'share', share: 1 } : { kind: 'fixed', width: rects[at]!.width },
    })),
  }
}
