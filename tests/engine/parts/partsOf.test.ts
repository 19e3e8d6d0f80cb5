import { describe, expect, it } from 'vitest'
import type { CabinetId, MaterialId } from '../../../engine/basics/id'
import { randomFrom } from '../../../engine/basics/random'
import { NO_BANDING } from '../../../engine/cabinets/board'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { cutSize } from '../../../engine/parts/cutSize'
import { partsOf } from '../../../engine/parts/partsOf'
import { aCabinet, PLAIN, rulesWith } from '../../helpers/cabinets'
import { anyCabinet } from '../../helpers/diced'

// The finished size less the bands of 1, 2 or 3 mm on the two edges: common practice, no source.
describe('the size to cut', () => {
  const banding = { ...NO_BANDING, low: 1, start: 2, end: 3 }
  it('is smaller by every band where the finished size includes it', () => {
    const rules = { ...PLAIN.banding, isInFinishedSize: true }
    expect(cutSize({ length: 564, width: 580, banding }, rules)).toEqual({
      length: 564 - 2 - 3,
      width: 580 - 1,
      sawnIn: 0,
    })
  })
  it('is the finished size where bands come on top of it', () => {
    const rules = { ...PLAIN.banding, isInFinishedSize: false }
    expect(cutSize({ length: 564, width: 580, banding }, rules)).toEqual({ length: 564, width: 580, sawnIn: 0 })
  })
})

describe('the parts of a cabinet', () => {
  const interior = { fixedShelves: 0, adjustableShelves: 2, partition: null }
  const cabinet = aCabinet('base', { id: 'k3' as CabinetId, number: 3, interior, front: { kind: 'pair' } })
  const rules = rulesWith({
    back: { kind: 'applied', margin: 0 },
    banding: { carcass: 1, fronts: 2, isInFinishedSize: true },
  })
  const parts = partsOf(buildCabinet(cabinet, rules), rules)
  const named = (id: string) => parts.find((part) => part.id === id)!

  it('are named after the cabinet and their place in it', () => {
    expect(parts.map(({ id, mark, name }) => `${id} ${mark} ${name}`)).toEqual([
      'k3/left-side B3-LS left side',
      'k3/right-side B3-RS right side',
      'k3/bottom B3-BT bottom',
      'k3/top B3-TP top',
      'k3/back B3-BK back',
      'k3/adjustable-shelf-1 B3-AS1 adjustable shelf',
      'k3/adjustable-shelf-2 B3-AS2 adjustable shelf',
      'k3/door-1 B3-DR1 door',
      'k3/door-2 B3-DR2 door',
    ])
  })
  it('are cut without the bands of the front edge, or of all four edges of a door', () => {
    expect([named('k3/left-side').cutLength, named('k3/left-side').cutWidth]).toEqual([720, 580 - 6 - 1])
    // Source: Architectural Woodwork Standards (2009), section 10, 4.4.4: of an adjustable shelf only the front edge is banded.
    expect(named('k3/adjustable-shelf-1').banding).toEqual({ ...NO_BANDING, low: 1 })
    const door = named('k3/door-1')
    expect([door.cutLength, door.cutWidth]).toEqual([717 - 2 - 2, (597 - 3) / 2 - 2 - 2])
  })
  it('lie with the grain only where their material has one', () => {
    const plain = { ...rules.materials['back' as MaterialId]!, hasGrain: false }
    const without = { ...rules, materials: { ...rules.materials, ['back' as MaterialId]: plain } }
    const bound = partsOf(buildCabinet(cabinet, without), without).filter(({ isGrainBound }) => !isGrainBound)
    expect(bound.map(({ name }) => name)).toEqual(['back'])
  })
  it('of a drawer box tell its left side from its right one, by ids and marks that count both', () => {
    const chest = aCabinet('base', { id: 'k4' as CabinetId, number: 4, front: { kind: 'drawer' } })
    const sides = partsOf(buildCabinet(chest, rules), rules).filter(({ role }) => role === 'drawerSide')
    expect(sides.map(({ id, mark, name }) => `${id} ${mark} ${name}`)).toEqual([
      'k4/drawer-side-1 B4-DS1 left drawer side',
      'k4/drawer-side-2 B4-DS2 right drawer side',
    ])
  })
  it('of every drawer box have the left side on the left', () => {
    for (let seed = 0; seed < 100; seed++) {
      const any = anyCabinet(randomFrom(seed))
      const all = partsOf(buildCabinet(any.cabinet, any.rules), any.rules)
      for (const bottom of all.filter(({ role }) => role === 'drawerBottom')) {
        const boxSides = all.filter((one) => one.role === 'drawerSide' && Math.ceil(one.number / 2) === bottom.number)
        const fromLeft = boxSides.sort((a, b) => a.placement.origin.x - b.placement.origin.x).map(({ name }) => name)
        expect(fromLeft, `seed ${seed}`).toEqual(['left drawer side', 'right drawer side'])
      }
    }
  })
  it('have ids and marks of their own in every cabinet', () => {
    for (let seed = 0; seed < 300; seed++) {
      const any = anyCabinet(randomFrom(seed))
      const all = partsOf(buildCabinet(any.cabinet, any.rules), any.rules)
      expect(new Set(all.map(({ id }) => id)).size, `seed ${seed}`).toBe(all.length)
      expect(new Set(all.map(({ mark }) => mark)).size, `seed ${seed}`).toBe(all.length)
    }
  })
})
