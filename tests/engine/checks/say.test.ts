import { describe, expect, it } from 'vitest'
import { sayIn } from '../../../engine/checks/say'
import { inch } from '../../../engine/units/length'

describe('a finding in inches', () => {
  const say = sayIn({ unit: 'in', step: 16 })
  it('says lengths to 1/32, small ones to 1/64', () => {
    // 40 mm is 1.5748 in: 50.4 of 32.
    expect(say.length(40)).toBe('1 9/16 in')
    expect(say.length(inch(3 / 64))).toBe('3/64 in')
  })
  it('is finer only where two lengths would look the same', () => {
    expect(say.apart(38.1, 40)).toEqual(['1 1/2 in', '1 9/16 in'])
    expect(say.apart(inch(24 + 1 / 64), inch(24))).toEqual(['24 1/32 in', '24 in'])
    // Of 32 they are 0.625 and 1.375, both nearest to 1; of 64 they are 1.25 and 2.75.
    expect(say.apart(inch(24 + 5 / 256), inch(24 + 11 / 256))).toEqual(['24 1/64 in', '24 3/64 in'])
  })
})
