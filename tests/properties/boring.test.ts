import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../engine/basics/random'
import { once } from '../../engine/basics/remember'
import type { Board } from '../../engine/cabinets/board'
import { centresOf, type HoleRow, isEdgeSlot, isSlantedCut, radians } from '../../engine/cabinets/operation'
import { boardsOf } from '../helpers/cabinets'
import { anyCabinet, anyCorner } from '../helpers/diced'

const CABINETS = 400

interface Hole {
  readonly row: HoleRow
  readonly x: number
  readonly y: number
}

function holesIn({ operations }: Board): Hole[] {
  return operations.flatMap((row) => (row.kind === 'holeRow' ? centresOf(row).map(({ x, y }) => ({ row, x, y })) : []))
}

const built = (anyOf: typeof anyCabinet) =>
  once(() =>
    Array.from({ length: CABINETS }, (_, seed) => {
      const { cabinet, rules } = anyOf(randomFrom(seed))
      return { rules, boards: boardsOf(cabinet, rules) }
    }),
  )
/** Some hundred cabinets by any build method, which every law looks at. */
const STRAIGHT = built(anyCabinet)
const IN_CORNERS = built(anyCorner)

/** Every board of theirs with its holes. */
function eachBored(look: (board: Board, holes: readonly Hole[], seed: string) => void): number {
  let count = 0
  for (const [of, cabinets] of Object.entries({ straight: STRAIGHT(), corner: IN_CORNERS() })) {
    for (const [seed, { boards }] of cabinets.entries()) {
      for (const board of boards) {
        const holes = holesIn(board)
        count += holes.length
        look(board, holes, `${of}, seed ${seed}, ${board.role} ${board.number}`)
      }
    }
  }
  return count
}

describe('every hole', () => {
  it('is inside its board and ends in it', () => {
    const count = eachBored((board, holes, seed) => {
      const outside = holes.filter(({ row, x, y }) => {
        const edge = row.diameter / 2
        const isIn = x >= edge && y >= edge && x <= board.length - edge && y <= board.width - edge
        // A hole that is bored aslant goes so deep along its axis.
        const deep = row.slant ? row.depth * Math.sin(radians(row.slant.angle)) : row.depth
        return !isIn || deep >= board.thickness || deep <= 0
      })
      expect(outside, seed).toEqual([])
    })
    expect(count).toBeGreaterThan(10_000)
  })

  it('keeps clear of every other on its face', () => {
    eachBored((_, holes, seed) => {
      const touching = holes.flatMap((one, at) =>
        holes.slice(at + 1).filter(({ row, x, y }) => {
          return (
            row.face === one.row.face && Math.hypot(x - one.x, y - one.y) < (row.diameter + one.row.diameter) / 2 - 1e-6
          )
        }),
      )
      expect(touching, seed).toEqual([])
    })
  })

  it('for a plate or a slide breaks into no dado, groove or notch', () => {
    eachBored(({ operations }, holes, seed) => {
      const broken = holes.filter(({ row, x, y }) => {
        if (row.purpose === 'shelfPin') return false
        const edge = row.diameter / 2
        return operations.some((one) => {
          if (one.kind === 'holeRow' || isSlantedCut(one) || isEdgeSlot(one)) return false
          if (one.kind !== 'notch' && one.face !== row.face) return false
          const isBeside = x + edge <= one.x || x - edge >= one.x + one.length
          return !isBeside && y + edge > one.y && y - edge < one.y + one.width
        })
      })
      expect(broken, seed).toEqual([])
    })
  })
})

describe('every cup', () => {
  it('has the two holes of its plate at its height, on the board that its door hangs on', () => {
    for (const [seed, { boards, rules }] of STRAIGHT().entries()) {
      const holes = boards.flatMap(holesIn)
      const count = (purpose: HoleRow['purpose']) => holes.filter(({ row }) => row.purpose === purpose).length
      // On a face frame plates are screwed to the frame, and nothing is bored for them.
      expect(count('hingePlate'), `seed ${seed}`).toBe(rules.method.faceFrame ? 0 : 2 * count('hingeCup'))
      expect(count('hingeScrew'), `seed ${seed}`).toBe(2 * count('hingeCup'))
    }
  })
})
