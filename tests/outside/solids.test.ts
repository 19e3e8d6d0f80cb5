import fc from 'fast-check'
import type { Manifold } from 'manifold-3d'
import { describe, expect, it } from 'vitest'
import type { Board } from '../../engine/cabinets/board'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { meshOf } from '../../engine/solids/mesh'
import { volumeOf } from '../../engine/solids/volume'
import { ANY_KIND, type Made, SEED } from '../helpers/anyMade'
import { laid, ROUND, roundIn, withCare, worked } from '../helpers/otherSolids'

/** Laying them together is slow there, so that one in so many is laid; our own prisms do it for all of them. */
const LAID = 10
/** Drilling is slow there, so that so few of each are bored. */
const DRILLED = 20

type Bounds = ReturnType<Manifold['boundingBox']>

function boxesTouch(one: Bounds, other: Bounds): boolean {
  return [0, 1, 2].every((axis) => one.min[axis]! < other.max[axis]! && other.min[axis]! < one.max[axis]!)
}

describe('the boards of cabinets of every kind, built by every choice of a method', () => {
  it.each(ANY_KIND)('%s have the volume that its drills leave of them, but for the roundness of holes', (_, any) => {
    let bored = 0
    everyBoard(any, DRILLED, (board) => {
      const round = roundIn(board)
      if (round === 0) return
      bored++
      const theirs = withCare((keep) => worked(board, keep).volume())
      // Their drills are polygons, so that their holes are smaller by a known share.
      const expected = theirs - round * (1 - ROUND)
      expect(Math.abs(volumeOf(board) - expected) / expected, board.role).toBeLessThan(1e-6)
    })
    expect(bored).toBeGreaterThan(DRILLED)
  })

  it.each(ANY_KIND)('%s share no room with one another when they are laid together', (_, any, numRuns) => {
    everyCabinet(any, numRuns / LAID, (boards) => {
      withCare((keep) => {
        const places = boards.map((board) => {
          const solid = laid(board, worked(board, keep, false), keep)
          return { solid, bounds: solid.boundingBox() }
        })
        for (const [at, one] of places.entries()) {
          for (const [other, two] of places.entries()) {
            if (other <= at || !boxesTouch(one.bounds, two.bounds)) continue
            // They reckon in floats of 32 bits: a skin of a few thousandths of a mm over a panel.
            const volume = keep(one.solid.intersect(two.solid)).volume()
            expect(volume, `${boards[at]!.role} in ${boards[other]!.role}`).toBeLessThan(50)
          }
        }
      })
    })
  })

  it.each(ANY_KIND)('%s have a skin that holds just their volume', (_, any) => {
    everyBoard(any, 30, (board) => {
      const theirs = withCare((keep) => worked(board, keep, false).volume())
      const { positions, indices } = meshOf(board)
      const point = (at: number) => positions.slice(3 * indices[at]!, 3 * indices[at]! + 3) as [number, number, number]
      let six = 0
      for (let at = 0; at < indices.length; at += 3) {
        const [a, b, c] = [point(at), point(at + 1), point(at + 2)]
        six +=
          a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0])
      }
      expect(Math.abs(six / 6 - theirs) / theirs, board.role).toBeLessThan(1e-5)
    })
  })
})

function everyCabinet(any: fc.Arbitrary<Made>, numRuns: number, look: (boards: readonly Board[]) => void): void {
  const property = fc.property(any, ({ cabinet, rules }) => look(buildCabinet(cabinet, rules).boards))
  fc.assert(property, { numRuns, seed: SEED })
}

function everyBoard(any: fc.Arbitrary<Made>, numRuns: number, look: (board: Board) => void): void {
  everyCabinet(any, numRuns, (boards) => boards.forEach(look))
}
