import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import { type Board, explodedBy } from '../../../engine/cabinets/board'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { type Box, boxOver } from '../../../engine/geometry/box'
import type { MethodChoices } from '../../../engine/project/method'
import { interferences } from '../../../engine/solids/interference'
import { blankInCabinet, movedBox } from '../../../engine/solids/solid'
import { READY_KINDS } from '../../helpers/anyMade'
import { anyCabinet } from '../../helpers/diced'
import { readyBuild } from '../../helpers/ready'

/** `leftSide 1 in bottom 1: 12 mm3`, with the cabinet it happens in. */
function told(seed: number, found: ReturnType<typeof interferences>): string[] {
  return found.map(({ a, b, volume }) => `${seed}: ${a.role} ${a.number} in ${b.role} ${b.number}: ${volume} mm3`)
}

function built(seed: number, changes: Partial<MethodChoices> = {}) {
  const { cabinet, rules } = anyCabinet(randomFrom(seed))
  return buildCabinet(cabinet, { ...rules, method: { ...rules.method, ...changes } })
}

describe('the boards of a cabinet built by any method', () => {
  it('come apart without passing through one another, at every twentieth of the way', () => {
    const found = Array.from({ length: 200 }, (_, seed) => {
      const { boards } = built(seed)
      return Array.from({ length: 21 }, (_, step) => {
        return told(seed, interferences(boards, step / 20)).map((text) => `${step / 20} apart, ${text}`)
      })
    }).flat(2)
    expect(found).toEqual([])
  })

  it('leave no board of a drawer box where it was on its bottom', () => {
    const boxes = Array.from({ length: 200 }, (_, seed) => built(seed).boards.filter(isOfDrawerBox)).filter(
      (boards) => boards.length > 0,
    )
    expect(boxes.length).toBeGreaterThan(20)
    for (const boards of boxes) {
      const bottom = boards.find(({ role }) => role === 'drawerBottom')!
      for (const board of boards.filter(({ role }) => role !== 'drawerBottom')) {
        expect(explodedBy(board.explode, 1)).not.toEqual(explodedBy(bottom.explode, 1))
      }
    }
  })
})

describe('a kind of cabinet that is taken apart', () => {
  it.each(READY_KINDS)(
    'reaches farther to either side and up than closed, and out of the wall where it has fronts: %s',
    (name) => {
      const { boards, fronts } = readyBuild(name)
      const closed = boundsOf(boards, 0)
      const apart = boundsOf(boards, 1)
      expect(apart.min.x).toBeLessThan(closed.min.x - 50)
      for (const axis of ['x', 'y'] as const) expect(apart.max[axis], axis).toBeGreaterThan(closed.max[axis] + 50)
      if (fronts.length > 0) expect(apart.max.z).toBeGreaterThan(closed.max.z + 50)
    },
  )
})

function boundsOf(boards: readonly Board[], apart: number): Box {
  return boards
    .map((board) => movedBox(blankInCabinet(board), explodedBy(board.explode, apart)))
    .reduce((all, one) => boxOver(all, one))
}

const DRAWER_ROLES: readonly string[] = ['drawerSide', 'drawerBoxFront', 'drawerBoxBack', 'drawerBottom']

function isOfDrawerBox({ role }: { readonly role: string }): boolean {
  return DRAWER_ROLES.includes(role)
}
