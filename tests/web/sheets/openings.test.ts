import { describe, expect, it } from 'vitest'
import type { Front } from '../../../engine/project/document'
import { bankOf } from '../../../engine/project/frontTree'
import { openingName } from '../../../web/sheets/OpeningRows'
import { placeName } from '../../../web/stages/fronts'

describe('an opening as built', () => {
  it('is named by its row from the top, as the rows are where they are chosen', () => {
    const bank = bankOf(3)
    const drawer: Front = { kind: 'drawer' }
    expect(openingName(bank, { path: [0], front: drawer })).toBe('row 1, drawer')
    expect(placeName(bank, [0])).toBe('Row 1')
    expect(openingName(drawer, { path: [], front: drawer })).toBe('drawer')
  })
})
