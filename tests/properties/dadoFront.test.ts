import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Board } from '../../engine/cabinets/board'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import type { Notch, Recess } from '../../engine/cabinets/operation'
import { boredBy, removedBy } from '../../engine/cabinets/removed'
import { boxesOverlap } from '../../engine/geometry/box'
import { type DadoFront, USUAL_DADO_FRONTS } from '../../engine/project/dadoFront'
import { settle } from '../../engine/units/length'
import { ANY_KIND, type Made, SEED } from '../helpers/anyMade'

const RUNS = { numRuns: 150, seed: SEED }

function builtWith({ cabinet, rules }: Made, dadoFront: DadoFront): readonly Board[] {
  return buildCabinet(cabinet, { ...rules, method: { ...rules.method, dadoFront } }).boards
}

/** What is cut off boards before the end of a dado that they go into. */
function cornersOf({ operations }: Board): Notch[] {
  return operations.filter((one): one is Notch => one.kind === 'notch' && (one.for === 'stop' || one.for === 'band'))
}

/** How far behind the front edge what is sunk into the inside of a side ends. */
function behindFront(side: Board): number[] {
  const isHigh = side.placement.width === '+z'
  return side.operations
    .filter((one): one is Recess => one.kind === 'dado' || one.kind === 'rabbet')
    .map(({ y, width }) => settle(isHigh ? side.width - y - width : y))
}

describe.each(ANY_KIND)('of %s, whatever their method,', (_, any) => {
  it('no hole is bored in a corner that is notched for a stopped dado, or has no band', () => {
    let seen = 0
    fc.assert(
      fc.property(any, (made) => {
        for (const dadoFront of [USUAL_DADO_FRONTS.stopped, USUAL_DADO_FRONTS.covered]) {
          for (const board of builtWith(made, dadoFront)) {
            const gone = cornersOf(board).map((corner) => removedBy(corner, board)!)
            seen += gone.length
            const bored = board.operations.flatMap((one) => (one.kind === 'holeRow' ? boredBy(one, board) : []))
            expect(bored.filter((hole) => gone.some((corner) => boxesOverlap(hole, corner, 0.01)))).toEqual([])
          }
        }
      }),
      RUNS,
    )
    expect(seen).toBeGreaterThan(100)
  })

  it('boards are as large and stand where they did, however dados end', () => {
    fc.assert(
      fc.property(any, (made) => {
        const [out, covered, stopped] = Object.values(USUAL_DADO_FRONTS).map((dadoFront) =>
          builtWith(made, dadoFront).map(({ operations: _, ...board }) => board),
        )
        expect(covered).toEqual(out)
        expect(stopped).toEqual(out)
      }),
      RUNS,
    )
  })
})

describe('the sides of straight cabinets without a face frame', () => {
  it('are sunk into no nearer to their front edge than dados are to stop behind it', () => {
    let seen = 0
    fc.assert(
      fc.property(ANY_KIND[0][1], fc.integer({ min: 1, max: 60 }), (made, behind) => {
        if (made.rules.method.faceFrame) return
        const sides = builtWith(made, { kind: 'stopped', behind }).filter(({ role }) => /Side$/.test(role))
        const near = sides
          .filter(({ role }) => role !== 'drawerSide')
          .flatMap((side) => behindFront(side).map((away) => ({ side: side.role, away })))
        seen += near.length
        expect(near.filter(({ away }) => away < behind)).toEqual([])
      }),
      RUNS,
    )
    expect(seen).toBeGreaterThan(100)
  })
})

/** How far behind the slanting edge of a board each corner of what is sunk into it across its ends is, the nearest one. */
function behindSlant(board: Board): number {
  const clip = board.operations.find((one) => one.kind === 'clip')
  if (clip?.kind !== 'clip') return Number.POSITIVE_INFINITY
  const { length, width } = clip
  const sunk = board.operations.filter((one): one is Recess => one.kind === 'dado' || one.kind === 'rabbet')
  const corners = sunk.flatMap((one) =>
    [one.x, one.x + one.length].flatMap((x) => [one.y, one.y + one.width].map((y) => ({ x, y }))),
  )
  return Math.min(
    ...corners.map(({ x, y }) => {
      const along = clip.end === 'start' ? x : board.length - x
      const out = clip.edge === 'low' ? y : board.width - y
      return ((along / length + out / width - 1) * length * width) / Math.hypot(length, width)
    }),
  )
}

describe('the slanting boards of diagonal corners', () => {
  it('are open in their front edge nowhere, nor in its band, where dados are covered or stopped', () => {
    let seen = 0
    const { covered, stopped } = USUAL_DADO_FRONTS
    const [, anyCornerMade] = ANY_KIND.find(([name]) => name.includes('corner'))!
    fc.assert(
      fc.property(anyCornerMade, (made) => {
        const { banding, faceFrame } = made.rules.method
        if (made.cabinet.corner?.kind !== 'diagonal' || faceFrame) return
        // Where no band is in the sizes, there is none to be behind.
        const band = banding.isInFinishedSize ? banding.carcass : 0
        for (const dadoFront of band > 0 ? [covered, stopped] : [stopped]) {
          for (const board of builtWith(made, dadoFront).filter(({ role }) => role === 'bottom' || role === 'top')) {
            const away = behindSlant(board)
            if (away === Number.POSITIVE_INFINITY) continue
            seen++
            expect(away).toBeGreaterThanOrEqual((dadoFront === covered ? band : 0) - 0.001)
          }
        }
      }),
      { ...RUNS, numRuns: 400 },
    )
    expect(seen).toBeGreaterThan(50)
  })
})
