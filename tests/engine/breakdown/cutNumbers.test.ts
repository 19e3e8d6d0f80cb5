import { describe, expect, it } from 'vitest'
import { cutNumbersOf } from '../../../engine/breakdown/cutNumbers'
import type { BreakdownInput } from '../../../engine/breakdown/steps'
import { crosscut, OFFCUT, PLY, part, rip, SHOP, sheets, WASTE } from './sawyer'

describe('the turns of the cuts of a sheet', () => {
  it('are those of the steps: both rips, then every crosscut, the greatest first', () => {
    const given = sheets({ A: [768, 580], B: [1000, 320] }, [
      [1, rip(crosscut(part('A'), part('A'), OFFCUT), crosscut(part('B'), WASTE), OFFCUT)],
    ])
    const materials = { m1: PLY } as unknown as BreakdownInput['materials']
    const shop = { ...SHOP, cutOrder: 'setting by setting' as const }
    const numbers = cutNumbersOf({ ...given, shop, marks: new Map(), materials }).get(1)!
    // Ripped at 580 and 320; then B at 1000, and A twice at 768.
    expect([...numbers.values()]).toEqual([
      [1, 2, null],
      [3, null],
      [4, 5, null],
    ])
  })
})
