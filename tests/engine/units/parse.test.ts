import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatLength } from '../../../engine/units/format'
import { inch, type LengthDisplay, settle } from '../../../engine/units/length'
import { parseLength } from '../../../engine/units/parse'

const MM: LengthDisplay = { unit: 'mm', step: 0.1 }
const INCHES: LengthDisplay = { unit: 'in', step: 64 }

function read(text: string, display: LengthDisplay = MM, names?: Readonly<Record<string, number>>): number | string {
  const result = parseLength(text, display, names)
  return result.ok ? result.value : result.message
}

describe('a length as it is typed', () => {
  it.each([
    ['768', 768],
    ['76.8cm', 768],
    ['0.768 m', 768],
    ['768 mm', 768],
    ['30 1/4"', 768.35],
    ['30-1/4"', 768.35],
    ['30¼"', 768.35],
    ['30 1/4 in', 768.35],
    [`2' 6 1/4"`, 768.35],
    [`2'-6 1/4"`, 768.35],
    ['2ft 6in', 762],
    [`2'6`, 762],
    [`6' 1/2`, inch(72.5)],
    ['600/2 + 18', 318],
    ['2 * (100 + 18)', 236],
    ['2 × 18', 36],
    ['600 − 1', 599],
    ['1/2"', 12.7],
    ['1/2"-1/4"', 6.35],
    ['-5', -5],
    ['19 + 3/4"', 19 + 19.05],
  ])('reads %s as so many mm', (text, mm) => {
    expect(read(text)).toBe(settle(mm))
  })

  it.each([
    ['30 1/4', 30.25],
    ['30-1/4', 30.25],
    ['30 - 1/4', 29.75],
    ['30 1/4 - 1/8', 30.125],
    ['23¾', 23.75],
    ['12-½', 12.5],
    ['600-300/2', 450],
    ['1/2-1/4', 0.25],
    ['10 mm', 10 / 25.4],
  ])('reads %s as so many inches when inches are shown', (text, inches) => {
    expect(read(text, INCHES)).toBe(inch(inches))
  })

  it('takes names for lengths and may begin with an equals sign', () => {
    expect(read('=W-2*18', MM, { W: 600 })).toBe(600 - 2 * 18)
    expect(read('=W', INCHES, { W: 600 })).toBe(600)
  })

  it.each([
    ['', 'A length is missing.'],
    ['23,5', '"23,5" has a comma; write a point before decimals and nothing between thousands.'],
    ['1 1/0', '"1 1/0" divides by zero.'],
    ['5/0', 'That divides by zero.'],
    ['12 13', '"13" is not understood in "12 13".'],
    ['1 3/2', '"1 3/2" is not a whole number and a fraction.'],
    ['1/2 1/4', '"/ 2 1/4" can be read two ways; write brackets.'],
    [`2' 6/2`, '"6/2" is not understood behind feet; write brackets.'],
    ['2 in * 3 in', 'A length times a length is not a length.'],
    ['(3', 'A bracket is not closed.'],
    ['12 +', 'A number is missing at the end.'],
    ['twelve', '"twelve" is not understood.'],
    ['constructor', '"constructor" is not understood.'],
    ['1e3', '"e3" is not understood.'],
  ])('is refused when it says %j, and says why', (text, message) => {
    expect(read(text)).toBe(message)
  })

  it('is refused or a finite length on the grid, and never a crash, whatever is typed', () => {
    const signs = fc.constantFrom(...`0123456789 .,/*+-()'"½¾″′ftincmW=\u0000é`)
    const texts = fc.oneof(fc.string(), fc.string({ unit: signs, maxLength: 30 }))
    fc.assert(
      fc.property(texts, fc.constantFrom(MM, INCHES), (text, display) => {
        const result = parseLength(text, display, { W: 600 })
        if (result.ok) expect(settle(result.value)).toBe(result.value)
        else expect(result.message).toMatch(/\.$/)
      }),
      { seed: 1, numRuns: 3000 },
    )
  })
})

describe('a length that is shown and typed again', () => {
  it('is the same to the === for every 1/64 in up to 240 in', () => {
    const wrong: string[] = []
    for (let count = 0; count <= 240 * 64; count++) {
      const length = inch(count / 64)
      if (read(formatLength(length, INCHES), INCHES) !== length) wrong.push(`${count}/64`)
    }
    expect(wrong).toEqual([])
  })

  it('is the same to the === for every 0.1 mm up to 6000 mm', () => {
    const wrong: number[] = []
    for (let count = 0; count <= 60_000; count++) {
      const length = settle(count / 10)
      if (read(formatLength(length, MM)) !== length) wrong.push(length)
    }
    expect(wrong).toEqual([])
  })
})
