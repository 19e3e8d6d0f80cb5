import { describe, expect, it } from 'vitest'
import { checkLength } from '../../../engine/project/limits'

const MM = { unit: 'mm', step: 0.1 } as const

describe('a length for a field', () => {
  it('is taken when it is within the limits', () => {
    expect(checkLength('width', 600, MM)).toEqual({ ok: true, value: 600 })
    expect(checkLength('width', 50, MM)).toEqual({ ok: true, value: 50 })
    expect(checkLength({ spoken: 'The distance', least: 0, most: 1220 }, 1220, MM)).toEqual({ ok: true, value: 1220 })
    expect(checkLength({ spoken: 'The distance', least: 0, most: 1220 }, 1221, MM)).toEqual({
      ok: false,
      message: 'The distance is 1221 mm; it can be at most 1220 mm.',
    })
    expect(checkLength('left', 0, MM)).toEqual({ ok: true, value: 0 })
  })

  it.each([
    ['width', -20, 'The width is -20 mm; it must be at least 50 mm.'],
    ['width', 6001, 'The width is 6001 mm; it can be at most 6000 mm.'],
    ['thickness', 0, 'The thickness is 0 mm; it must be at least 1 mm.'],
    ['gapRight', -5, 'The gap at the right is -5 mm; it must be at least 0 mm.'],
    ['gapLeft', 99_999, 'The gap at the left is 99999 mm; it can be at most 60000 mm.'],
    ['depth', Number.NaN, 'The depth is not a number.'],
    ['kerf', 25, 'The kerf is 25 mm; it can be at most 20 mm.'],
  ] as const)('is refused as a %s of %d with the value and the limit', (field, value, message) => {
    expect(checkLength(field, value, MM)).toEqual({ ok: false, message })
  })

  it('is not said to be the very limit it breaks', () => {
    expect(checkLength('width', 49.97, MM)).toEqual({
      ok: false,
      message: 'The width is 49.97 mm; it must be at least 50 mm.',
    })
    // 20 mm is 0.787402 in, shown as 51/64 in at the finest; 0.001 mm more is 0.787441 in.
    const inches = { unit: 'in', step: 16 } as const
    expect(checkLength('kerf', 20.001, inches)).toEqual({
      ok: false,
      message: 'The kerf is 0.78744 in; it can be at most 0.7874 in.',
    })
    // 6000 mm is 236 7/32 in; 0.3 mm more is 236 15/64 in.
    expect(checkLength('width', 6000.3, inches)).toEqual({
      ok: false,
      message: 'The width is 236 15/64 in; it can be at most 236 7/32 in.',
    })
  })

  it('is spoken of in the unit that is shown', () => {
    expect(checkLength('width', 25.4, { unit: 'in', step: 16 })).toMatchObject({
      message: 'The width is 1 in; it must be at least 1 15/16 in.',
    })
  })
})
