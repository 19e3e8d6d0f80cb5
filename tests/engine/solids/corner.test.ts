import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import type { MethodChoices } from '../../../engine/project/method'
import { interferences } from '../../../engine/solids/interference'
import { anyCorner } from '../../helpers/diced'

const CABINETS = 800

function told(seed: number, found: ReturnType<typeof interferences>): string[] {
  return found.map(({ a, b, volume }) => `${seed}: ${a.role} ${a.number} in ${b.role} ${b.number}: ${volume} mm3`)
}

function built(seed: number, changes: Partial<MethodChoices> = {}) {
  const { cabinet, rules } = anyCorner(randomFrom(seed))
  return buildCabinet(cabinet, { ...rules, method: { ...rules.method, ...changes } })
}

describe('the boards of a corner cabinet built by any method', () => {
  it('are there, but for the few corners that have no room', () => {
    const empty = Array.from({ length: CABINETS }, (_, seed) => built(seed)).filter(({ boards }) => boards.length === 0)
    expect(empty.length).toBeLessThan(CABINETS / 20)
  })

  it.each([
    [200, 20],
    [25, 200],
  ])('come apart without passing through one another: %i of them at %i steps of the way', (cabinets, steps) => {
    const found = Array.from({ length: cabinets }, (_, seed) => {
      const { boards } = built(seed)
      return Array.from({ length: steps + 1 }, (_, step) => {
        return told(seed, interferences(boards, step / steps)).map((text) => `${step / steps} apart, ${text}`)
      })
    }).flat(2)
    expect(found).toEqual([])
  })
})
