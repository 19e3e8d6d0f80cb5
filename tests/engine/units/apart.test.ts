import { describe, expect, it } from 'vitest'
import { formatApart, formatBetween } from '../../../engine/units/apart'
import { inch } from '../../../engine/units/length'

describe('two lengths told apart', () => {
  it('are shown as the display shows them where that differs', () => {
    expect(formatApart(600, 50, { unit: 'mm', step: 1 })).toEqual(['600 mm', '50 mm'])
    expect(formatApart(inch(24), inch(1.5), { unit: 'in', step: 16 })).toEqual(['24 in', '1 1/2 in'])
  })

  it('are both shown finer where they would look the same, in one unit', () => {
    const whole = { unit: 'mm', step: 1 } as const
    expect(formatApart(50.4, 50, whole)).toEqual(['50.4 mm', '50 mm'])
    expect(formatApart(50.01, 50, whole)).toEqual(['50.01 mm', '50 mm'])
    const sixteenths = { unit: 'in', step: 16 } as const
    // 1/64 in is finer than a sixteenth; 0.0254 mm is a thousandth of an inch.
    expect(formatApart(inch(24 + 1 / 64), inch(24), sixteenths)).toEqual(['24 1/64 in', '24 in'])
    expect(formatApart(inch(24) + 0.0254, inch(24), sixteenths)).toEqual(['24.001 in', '24 in'])
  })

  it('are the same where they are equal', () => {
    expect(formatApart(50, 50, { unit: 'mm', step: 1 })).toEqual(['50 mm', '50 mm'])
  })
})

describe('what lies between two lengths', () => {
  it('is the difference of what is shown of them', () => {
    const thirtySeconds = { unit: 'in', step: 32 } as const
    expect(formatBetween(inch(1) + 0.39, inch(1) - 0.39, thirtySeconds)).toBe('under 1/32 in')
    expect(formatBetween(inch(1) + 0.41, inch(1) - 0.41, thirtySeconds)).toBe('1/16 in')
    expect(formatBetween(100.4, 98.6, { unit: 'mm', step: 1 })).toBe('1 mm')
    expect(formatBetween(50, 50, { unit: 'mm', step: 1 })).toBe('0 mm')
  })
})
