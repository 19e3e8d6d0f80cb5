import { describe, expect, it } from 'vitest'
import { densityUnit, formatWeight, slideClass, stiffnessUnit, weightUnit } from '../../../engine/units/weight'

const MM = { unit: 'mm', step: 0.1 } as const
const INCH = { unit: 'in', step: 32 } as const

// A pound is 0.45359237 kg, a foot 0.3048 m.
describe('a weight', () => {
  it('is in the unit that goes with the lengths of the project', () => {
    expect(formatWeight(28.2, MM)).toBe('28.2 kg')
    expect(formatWeight(28.2, INCH)).toBe(`${Math.round((28.2 / 0.45359237) * 10) / 10} lb`)
  })

  it('is typed in that unit, and so is a density', () => {
    expect([weightUnit(MM), densityUnit(MM)]).toEqual([
      { name: 'kg', kg: 1 },
      { name: 'kg/m³', kg: 1 },
    ])
    expect(weightUnit(INCH)).toEqual({ name: 'lb', kg: 0.45359237 })
    // Birch plywood of 685 kg/m3 weighs 42.8 lb a cubic foot.
    expect(685 / densityUnit(INCH).kg).toBeCloseTo(685 / (0.45359237 / 0.3048 ** 3), 9)
    expect(densityUnit(INCH).name).toBe('lb/ft³')
  })

  // Source: the Architectural Woodwork Standards print softwood ply of 950,000 psi; one N/mm2 is 145.038 psi.
  it('goes with a unit of stiffness, thousands of psi where lengths are in inches', () => {
    expect(stiffnessUnit(MM)).toEqual({ name: 'N/mm²', newtons: 1 })
    expect(stiffnessUnit(INCH).name).toBe('1000 psi')
    expect(1 / stiffnessUnit(INCH).newtons).toBeCloseTo(0.145038, 6)
    expect(6550 / stiffnessUnit(INCH).newtons).toBeCloseTo(950, 0)
  })

  it('of a class of slides is the pounds it is called by', () => {
    expect([slideClass(75, MM), slideClass(75, INCH)]).toEqual(['34 kg (75 lb)', '75 lb'])
  })
})
