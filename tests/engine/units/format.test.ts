import { describe, expect, it } from 'vitest'
import { formatLength, formatMeasure, formatSold, formatWithUnit, unitName } from '../../../engine/units/format'
import { inch, settle } from '../../../engine/units/length'
import { parseLength } from '../../../engine/units/parse'

describe('a length as it is shown', () => {
  it('has no more decimals than it needs', () => {
    const tenths = { unit: 'mm', step: 0.1 } as const
    expect(formatLength(768, tenths)).toBe('768')
    expect(formatLength(756.6, tenths)).toBe('756.6')
    expect(formatLength(756.64, tenths)).toBe('756.6')
    expect(formatLength(-0.01, tenths)).toBe('0')
  })

  it('rounds to whole or half millimetres when asked', () => {
    expect(formatLength(756.6, { unit: 'mm', step: 1 })).toBe('757')
    expect(formatLength(756.6, { unit: 'mm', step: 0.5 })).toBe('756.5')
  })

  it('has its fraction of an inch reduced', () => {
    const fine = { unit: 'in', step: 64 } as const
    expect(formatLength(768.35, fine)).toBe('30 1/4')
    expect(formatLength(inch(23 / 32), fine)).toBe('23/32')
    expect(formatLength(inch(12), fine)).toBe('12')
    expect(formatLength(inch(-1.5), fine)).toBe('-1 1/2')
    expect(formatLength(0, fine)).toBe('0')
  })

  it('carries over when the fraction rounds up to a whole inch', () => {
    expect(formatLength(inch(11 + 63 / 64), { unit: 'in', step: 16 })).toBe('12')
  })

  it('carries its unit when asked', () => {
    expect(formatWithUnit(768.35, { unit: 'in', step: 16 })).toBe('30 1/4 in')
    expect(formatWithUnit(768.35, { unit: 'mm', step: 1 })).toBe('768 mm')
    expect(unitName({ unit: 'in', step: 16 })).toBe('in')
  })
})

describe('a measure of a bit or of hardware', () => {
  const inches = { unit: 'in', step: 32 } as const

  it.each([
    [32, '32 mm'],
    [5, '5 mm'],
    [35, '35 mm'],
    [9.5, '9.5 mm'],
    [inch(1.25), '1 1/4'],
    [inch(3), '3'],
    [0, '0'],
    [2.37, 'about 3/32'],
  ])('of %f is told in inches as %s: in inches only where it is that', (length, shown) => {
    expect(formatMeasure(length, inches)).toBe(shown)
  })

  it('is shown and typed again without a change', () => {
    for (const length of [32, 5, inch(1.25), 9.5]) {
      expect(parseLength(formatMeasure(length, inches), inches)).toEqual({ ok: true, value: settle(length) })
    }
    expect(parseLength('about 1 3/8', inches)).toEqual({ ok: true, value: inch(1.375) })
  })

  it('is shown in millimetres as every length', () => {
    expect(formatMeasure(inch(1 / 8), { unit: 'mm', step: 0.1 })).toBe('3.2')
  })
})

describe('the size that hardware is asked for by', () => {
  const INCHES = { unit: 'in', step: 16 } as const

  it('is in inches where it is sold so, and else in mm with the inches beside it', () => {
    expect(formatSold(inch(3 / 16), INCHES)).toBe('3/16 in')
    // 4 / 25.4 x 64 is 10.08, 96 / 25.4 x 32 is 120.9.
    expect(formatSold(4, INCHES)).toBe('4 mm (about 5/32 in)')
    expect(formatSold(96, INCHES)).toBe('96 mm (about 3 25/32 in)')
    expect(formatSold(0, INCHES)).toBe('0 in')
  })

  it('is in mm where lengths are', () => {
    expect(formatSold(inch(3 / 16), { unit: 'mm', step: 1 })).toBe('4.8 mm')
  })
})

describe('a settled length', () => {
  it('of 30 1/4 in is 768.35 mm', () => {
    expect(inch(30.25)).toBe(768.35)
  })

  it('is never minus zero', () => {
    expect(Object.is(settle(-0.00001), 0)).toBe(true)
  })

  it('is the same whichever way a sum of eighths is taken', () => {
    expect(settle(inch(0.125) + inch(0.25) + inch(0.375))).toBe(inch(0.75))
  })
})
