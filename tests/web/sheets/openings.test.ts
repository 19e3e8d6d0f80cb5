import { describe, expect, it } from 'vitest'
import type { Front } from '../../../engine/project/document'
import { bankOf } from '../../../engine/project/frontTree'
import { formatLength } from '../../../engine/units/format'
import { differenceWords, openingName } from '../../../web/sheets/OpeningRows'
import { placeName } from '../../../web/stages/fronts'

describe('an opening as built', () => {
  it('is named by its row from the top, as the rows are where they are chosen', () => {
    const bank = bankOf(3)
    const drawer: Front = { kind: 'drawer' }
    expect(openingName(bank, { path: [0], front: drawer })).toBe('row 1, drawer')
    expect(placeName(bank, [0])).toBe('Row 1')
    expect(openingName(drawer, { path: [], front: drawer })).toBe('drawer')
  })

  it('differs from what is drawn by what lies between the figures that are read', () => {
    const inches = { unit: 'in', step: 32 } as const
    // 2 mm alone are nearest to 3/32 in; between what is read there may be 2/32.
    expect([762.8, 764.8].map((one) => formatLength(one, inches))).toEqual(['30 1/32', '30 1/8'])
    expect(differenceWords(764.8, 762.8, inches)).toBe('measured 3/32 in more')
    expect([763.2, 765.2].map((one) => formatLength(one, inches))).toEqual(['30 1/16', '30 1/8'])
    expect(differenceWords(765.2, 763.2, inches)).toBe('measured 1/16 in more')
    expect(differenceWords(763.2, 765.2, inches)).toBe('measured 1/16 in less')
    expect(differenceWords(762.1, 762, inches)).toBe('measured under 1/32 in more')
    expect(differenceWords(762, 762, inches)).toBe('measured as drawn')
    expect(differenceWords(598, 600.4, { unit: 'mm', step: 1 })).toBe('measured 2 mm less')
  })
})
