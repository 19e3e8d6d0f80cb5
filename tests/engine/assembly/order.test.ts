import { describe, expect, it } from 'vitest'
import { assemblyOrder } from '../../../engine/assembly/order'
import { randomFrom } from '../../../engine/basics/random'
import type { Board, BoardRole } from '../../../engine/cabinets/board'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { boxesOverlap } from '../../../engine/geometry/box'
import { times, unit } from '../../../engine/geometry/vector'
import { USUAL_DADO_FRONTS } from '../../../engine/project/dadoFront'
import { boxesInCabinet, movedBox } from '../../../engine/solids/solid'
import { aCabinet, boardsOf, type MethodChanges, rulesWith } from '../../helpers/cabinets'
import { anyCabinet } from '../../helpers/diced'

const CARCASS: readonly BoardRole[] = [
  ...(['leftSide', 'rightSide', 'bottom', 'top', 'frontStretcher', 'backStretcher', 'back'] as const),
  ...(['topNailer', 'bottomNailer', 'middleNailer', 'fixedShelf', 'partition'] as const),
]

const DADO_FRONTS = Object.values(USUAL_DADO_FRONTS)

function orderOf(changes: MethodChanges, interior = { fixedShelves: 1, adjustableShelves: 0, partition: null }) {
  const boards = boardsOf(aCabinet('upper', { interior }), rulesWith(changes))
  return assemblyOrder(boards).map(({ board }) => board.role)
}

/** Far off, then nearer in steps that are shorter than any tongue. */
const WAY = [
  ...Array.from({ length: 40 }, (_, at) => 2000 - at * 49),
  ...Array.from({ length: 30 }, (_, at) => 40 - at),
  1,
]

function isInTheWay(board: Board, by: number, axis: Parameters<typeof unit>[0], placed: readonly Board[]): boolean {
  const there = boxesInCabinet(board).map((box) => movedBox(box, times(unit(axis), by)))
  return placed.some((other) =>
    boxesInCabinet(other).some((still) => there.some((one) => boxesOverlap(one, still, 0.01))),
  )
}

describe('the order of putting a carcass together', () => {
  it('has a back in a groove all round in before the last board around it', () => {
    const order = orderOf({
      cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: 6 } },
      back: { kind: 'groove', depth: 6, inset: 10, clearance: 1.5 },
    })
    expect(order.at(-1)).toBe('rightSide')
    for (const around of ['top', 'bottom', 'leftSide'] as const) expect(order).toContain(around)
    expect(order.indexOf('back')).toBeLessThan(order.length - 1)
  })

  it.each([
    ['lies on the carcass', { kind: 'applied', margin: 0 }],
    ['lies in a rabbet', { kind: 'rabbet', depth: 9 }],
  ] as const)('has a back that %s on last: it squares the box', (_, back) => {
    expect(orderOf({ back }).at(-1)).toBe('back')
  })

  it('puts nothing in after what would block it, whatever the method and the front', () => {
    let alone = 0
    for (let seed = 0; seed < 150; seed++) {
      const { cabinet, rules } = anyCabinet(randomFrom(seed))
      const dadoFront = DADO_FRONTS[seed % DADO_FRONTS.length]!
      const { boards } = buildCabinet(cabinet, { ...rules, method: { ...rules.method, dadoFront } })
      const placed: Board[] = []
      const carcass = boards.filter(({ role }) => CARCASS.includes(role))
      for (const { board, from } of assemblyOrder(carcass)) {
        if (from !== null) {
          alone++
          const stuck = WAY.filter((by) => isInTheWay(board, by, from, placed))
          expect(stuck, `${board.role} ${board.number} from ${from}, seed ${seed}`).toEqual([])
        }
        placed.push(board)
      }
      expect(placed.length).toBe(carcass.length)
    }
    expect(alone).toBeGreaterThan(600)
  })

  it('puts every board of a plain box in by itself', () => {
    for (const cornerJoint of [{ kind: 'butt' }, { kind: 'dado', depth: { rule: 'depth', depth: 6 } }] as const) {
      const boards = boardsOf(aCabinet('base'), rulesWith({ cornerJoint }))
      expect(assemblyOrder(boards).filter(({ from }) => from === null)).toEqual([])
    }
  })
})
