import { describe, expect, it } from 'vitest'
import type { CabinetId } from '../../../engine/basics/id'
import { randomFrom } from '../../../engine/basics/random'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { cutListOf, letters } from '../../../engine/cutlist/cutListOf'
import { groupsOf } from '../../../engine/cutlist/groups'
import type { CutRow } from '../../../engine/cutlist/row'
import { partsOf } from '../../../engine/parts/partsOf'
import type { Cabinet } from '../../../engine/project/document'
import { type CutLate, NOTHING_LATE } from '../../../engine/project/late'
import { aCabinet, rulesWith } from '../../helpers/cabinets'
import { anyCabinet } from '../../helpers/diced'

const RULES = rulesWith({
  back: { kind: 'applied', margin: 0 },
  banding: { carcass: 1, fronts: 1, isInFinishedSize: true },
})

function withParts(cabinet: Cabinet) {
  const build = buildCabinet(cabinet, RULES)
  return { mark: build.mark, parts: partsOf(build, RULES) }
}

const upper = (number: number, changes: Partial<Cabinet> = {}) => {
  return withParts(aCabinet('upper', { id: `k${number}` as CabinetId, number, width: 600, height: 720, ...changes }))
}

/** `A1 4 side 720 x 323 long 1: U1 U2`. */
function told({ mark, quantity, name, length, width, bandedEdges, cabinets }: CutRow): string {
  return `${mark} ${quantity} ${name} ${length} x ${width} long ${bandedEdges.long}: ${cabinets.join(' ')}`
}

describe('a cut list', () => {
  const list = cutListOf([upper(1), upper(2), upper(3, { width: 500 })], RULES.materials)

  it('has both sides of a drawer box on one row, as those of a carcass', () => {
    const chest = withParts(aCabinet('base', { front: { kind: 'drawer' } }))
    const drawerSides = chest.parts.filter(({ role }) => role === 'drawerSide').map(({ id }) => id)
    const rows = cutListOf([chest], RULES.materials).rows.filter(({ name }) => name.includes('drawer side'))
    expect(rows.map(({ name, parts }) => ({ name, parts }))).toEqual([{ name: 'drawer side', parts: drawerSides }])
  })

  it('puts equal boards of all cabinets on one row, the longest first, material by material', () => {
    // Sides are 330 - 6 deep and lose 1 to their band; bottoms and tops are 36 shorter than the cabinet is wide.
    expect(list.rows.map(told)).toEqual([
      `A1 6 side 720 x ${330 - 6 - 1} long 1: U1 U2 U3`,
      `A2 4 bottom, top ${600 - 36} x 323 long 1: U1 U2`,
      `A3 2 bottom, top ${500 - 36} x 323 long 1: U3`,
      'C1 2 back 720 x 600 long 0: U1 U2',
      'C2 1 back 720 x 500 long 0: U3',
    ])
  })
  it('adds up what every material comes to', () => {
    const area = (6 * 720 * 323 + 4 * 564 * 323 + 2 * 464 * 323) / 1e6
    const banding = (6 * 720 + 4 * 564 + 2 * 464) / 1000
    const [carcass, back] = list.totals
    expect(carcass!.parts).toBe(12)
    expect(carcass!.area).toBeCloseTo(area, 9)
    expect(carcass!.weight).toBeCloseTo(area * 0.018 * 685, 9)
    expect(carcass!.banding).toBeCloseTo(banding, 9)
    expect(back!.area).toBeCloseTo((2 * 720 * 600 + 720 * 500) / 1e6, 9)
    expect(back!.banding).toBe(0)
  })
  it('keeps boards that are cut late on rows of their own, told by their kind', () => {
    const doors = [upper(1, { front: { kind: 'pair' } })]
    const lateIn = (late: CutLate) =>
      cutListOf(doors, RULES.materials, late).rows.map(({ name, isLate }) => `${name} ${isLate ? 'late' : 'first'}`)
    expect(lateIn(NOTHING_LATE)).toEqual(['door first', 'side first', 'bottom, top first', 'back first'])
    expect(lateIn({ ...NOTHING_LATE, fronts: true })).toEqual([
      'door late',
      'side first',
      'bottom, top first',
      'back first',
    ])
  })
  it('lists the parts in the order of the cabinets', () => {
    expect(list.rows[0]!.parts.slice(0, 3)).toEqual(['k1/left-side', 'k1/right-side', 'k2/left-side'])
  })
  it('keeps the key of a row when cabinets come, go or are marked anew', () => {
    const keys = (numbers: readonly number[]) =>
      cutListOf(
        numbers.map((number) => upper(number)),
        RULES.materials,
      ).rows.map(({ key }) => key)
    expect(keys([7, 8])).toEqual(keys([1]))
  })
  it('works out a cabinet once as long as its parts are the same', () => {
    const { parts } = upper(1)
    expect(groupsOf(parts)).toBe(groupsOf(parts))
  })
  it('holds every part exactly once, whatever is built', () => {
    const cabinets = Array.from({ length: 60 }, (_, seed) => {
      const { cabinet, rules } = anyCabinet(randomFrom(seed))
      const build = buildCabinet({ ...cabinet, id: `k${seed}` as CabinetId }, rules)
      return { mark: `${build.mark}/${seed}`, parts: partsOf(build, rules) }
    })
    const { rows, totals } = cutListOf(cabinets, RULES.materials)
    const listed = rows.flatMap((row) => row.parts)
    expect([...listed].sort()).toEqual(cabinets.flatMap(({ parts }) => parts.map(({ id }) => id)).sort())
    expect(rows.every(({ quantity, parts }) => quantity === parts.length)).toBe(true)
    expect(totals.reduce((sum, { parts }) => sum + parts, 0)).toBe(listed.length)
  })
  it('letters more materials than the alphabet has', () => {
    // 21 letters, so 21 x 21 pairs after them.
    expect([0, 20, 21, 22, 42, 461, 462].map(letters)).toEqual(['A', 'Z', 'AA', 'AC', 'CA', 'ZZ', 'AAA'])
  })

  it('letters no row as a cabinet is marked', () => {
    const all = Array.from({ length: 500 }, (_, at) => letters(at)).join('')
    expect(all).not.toMatch(/[BTU]/)
  })
})
