import { describe, expect, it } from 'vitest'
import { PSF } from '../../engine/checks/load'
import { greatestSpan, inertiaOf, pointSagOf, sagOf } from '../../engine/checks/sag'
import { PSI } from '../../engine/units/weight'

const IN = 25.4

/**
 * Longest shelves at L/144. Source: Architectural Woodwork Standards, first edition, 2009, section 10, rules 4.4.14.10
 * to 13, page 279. Modulus in psi, thickness in inches, load in pounds per square foot, length in inches.
 */
const PUBLISHED = [
  { board: 'veneer-core softwood ply', psi: 950_000, thick: 0.75, psf: 40, inches: 40 },
  { board: 'veneer-core softwood ply', psi: 950_000, thick: 0.75, psf: 50, inches: 37 },
  { board: 'veneer-core softwood ply', psi: 950_000, thick: 1, psf: 40, inches: 53 },
  { board: 'veneer-core softwood ply', psi: 950_000, thick: 1, psf: 50, inches: 49 },
  { board: 'veneer core, hardwood faces', psi: 1_800_000, thick: 0.75, psf: 40, inches: 49 },
  { board: 'veneer core, hardwood faces', psi: 1_800_000, thick: 0.75, psf: 50, inches: 46 },
  { board: 'veneer core, hardwood faces', psi: 1_800_000, thick: 1, psf: 40, inches: 66 },
  { board: 'veneer core, hardwood faces', psi: 1_800_000, thick: 1, psf: 50, inches: 61 },
  { board: 'northern red oak', psi: 1_820_000, thick: 0.75, psf: 40, inches: 49 },
  { board: 'northern red oak', psi: 1_820_000, thick: 0.75, psf: 50, inches: 46 },
  { board: 'northern red oak', psi: 1_820_000, thick: 1, psf: 40, inches: 66 },
  { board: 'northern red oak', psi: 1_820_000, thick: 1, psf: 50, inches: 61 },
] as const

const shelf = (depth: number, thickness: number, stiffness: number) =>
  ({ depth, thickness, stiffness, ends: 'resting' }) as const

describe('the published table of longest shelves', () => {
  for (const { board, psi, thick, psf, inches } of PUBLISHED) {
    it(`has ${inches} in for ${thick} in ${board} under ${psf} lb per sq ft`, () => {
      // So shallow that 200 lb are not reached: the depth has no part in it under an even load.
      const span = greatestSpan(shelf(6 * IN, thick * IN, psi * PSI), psf * PSF, (length) => length / 144) / IN
      // The table is in whole inches, rounded down; one of the twelve is rounded up by 0.02 in.
      expect(Math.floor(span + 0.025)).toBe(inches)
    })
  }
})

/** Worked out by hand from 5 w L^4 / (384 E I), not printed in a source. */
describe('the sag of a shelf on pins', () => {
  it('is 0.2772 in for softwood ply 40 x 12 x 3/4 in under 40 lb per sq ft', () => {
    const sag = sagOf(40 * IN, shelf(12 * IN, 0.75 * IN, 950_000 * PSI), 40 * PSF) / IN
    expect(sag).toBeCloseTo(0.2772, 4)
    expect(sag).toBeLessThan(40 / 144)
  })

  // Source: a formula sheet of beams, 'Fixed-fixed, uniform load (w) wL^4/384EI': by hand 8.5333 / 153.9 in.
  it('is 0.05545 in for the same shelf where both ends are clamped', () => {
    const clamped = { ...shelf(12 * IN, 0.75 * IN, 950_000 * PSI), ends: 'clamped' } as const
    expect(sagOf(40 * IN, clamped, 40 * PSF) / IN).toBeCloseTo(0.05545, 5)
  })

  // From memory: w L^4 / (185 E I) in each of two equal spans, which is about 0.415 of one that rests.
  it('is 0.1151 in for the same shelf where it goes on over a middle support as far again', () => {
    const over = { ...shelf(12 * IN, 0.75 * IN, 950_000 * PSI), ends: 'overMiddle' } as const
    expect(sagOf(40 * IN, over, 40 * PSF) / IN).toBeCloseTo(0.2772 * 0.415, 3)
    expect(sagOf(40 * IN, over, 40 * PSF) / sagOf(40 * IN, { ...over, ends: 'resting' }, 40 * PSF)).toBeCloseTo(
      0.415,
      3,
    )
  })

  // Source: a formula sheet of beams, 'Simply supported, center load (P) PL^3/48EI': 100 lb at the middle, by hand.
  it('is 0.333 in for the same shelf under 100 lb in the middle', () => {
    const inertia = (12 * 0.75 ** 3) / 12
    const board = { stiffness: 950_000 * PSI, inertia: inertiaOf({ depth: 12 * IN, thickness: 0.75 * IN }) }
    const pounds = 0.45359237 * 9.80665
    expect(pointSagOf(40 * IN, [board], 100 * pounds) / IN).toBeCloseTo((100 * 40 ** 3) / (48 * 950_000 * inertia), 6)
    expect(pointSagOf(40 * IN, [board], 100 * pounds) / IN).toBeCloseTo(0.333, 3)
    // Two of them side by side give half.
    expect(pointSagOf(40 * IN, [board, board], 100 * pounds) / IN).toBeCloseTo(0.333 / 2, 3)
  })

  // Source: the same formula sheet, 'Fixed-fixed, center load (P) PL^3/192EI center': a quarter of 0.333 in.
  it('is 0.0832 in for that shelf under 100 lb in the middle where both ends are clamped', () => {
    const board = { stiffness: 950_000 * PSI, inertia: inertiaOf({ depth: 12 * IN, thickness: 0.75 * IN }) }
    const pounds = 0.45359237 * 9.80665
    const clamped = pointSagOf(40 * IN, [board], 100 * pounds, 'clamped') / IN
    expect(clamped).toBeCloseTo((100 * 40 ** 3) / (192 * 950_000 * ((12 * 0.75 ** 3) / 12)), 6)
    expect(clamped).toBeCloseTo(0.0832, 4)
    // Housed ends are judged half way between the two.
    const [resting, housed] = (['resting', 'housed'] as const).map((ends) =>
      pointSagOf(40 * IN, [board], 100 * pounds, ends),
    )
    expect(housed! / IN).toBeCloseTo((resting! / IN + clamped) / 2, 6)
  })

  // Source: 'MDF shelves and storage units', mdf-info.eu, section 11: 5 W L^3 x 9.81 / (32 E b t^3), in kg, mm and N/mm2.
  const MDF = 2500
  const cases = [
    [600, 18, 1.514],
    [800, 18, 3.588],
    [1000, 18, 7.009],
    [800, 25, 1.339],
    [800, 16, 5.109],
  ] as const
  for (const [span, thickness, mm] of cases) {
    it(`is ${mm} mm for fibreboard ${span} x 300 x ${thickness} under 20 kg`, () => {
      const pressure = (20 * 9.81) / (300 * span)
      expect(sagOf(span, shelf(300, thickness, MDF), pressure)).toBeCloseTo(mm, 3)
    })
  }

  const inches = [
    [15, 0.52e6, 24, 0.025],
    [15, 0.52e6, 30, 0.06],
    [15, 0.52e6, 36, 0.125],
    [15, 1.01e6, 24, 0.013],
    [15, 1.01e6, 30, 0.031],
    [15, 1.01e6, 36, 0.064],
    // 35 lb on every foot of its length, at 12 in deep.
    [35, 0.52e6, 36, 0.291],
    [35, 1.24e6, 36, 0.122],
    [35, 1.78e6, 36, 0.085],
  ] as const
  for (const [psf, psi, span, expected] of inches) {
    it(`is ${expected} in over ${span} in at ${psi / 1e6} million psi under ${psf} lb per sq ft`, () => {
      expect(sagOf(span * IN, shelf(12 * IN, 0.75 * IN, psi * PSI), psf * PSF) / IN).toBeCloseTo(expected, 3)
    })
  }
})
