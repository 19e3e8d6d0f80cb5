import { describe, expect, it } from 'vitest'
import type { Part, PartId, PlacedPart } from '../../../engine/index'
import { keyWords } from '../../../web/sheets/SheetFigure'

describe('the key under a printed sheet', () => {
  const on = (...parts: readonly string[]) => parts.map((part) => ({ part }) as unknown as PlacedPart)
  const marks = new Map([
    ['k1/left-side' as PartId, { mark: 'B1-LS' } as Part],
    ['k1/right-side' as PartId, { mark: 'B1-RS' } as Part],
    ['k2/top' as PartId, { mark: 'U1-TP' } as Part],
  ])

  it('says of every row which parts lie there, on all sheets that are cut alike, in the order of the rows', () => {
    const fold = {
      marks: ['A10', 'A4', 'A4'],
      parts: [on('k2/top'), on('k1/left-side'), on('k1/right-side', 'k9/door')],
    }
    expect(keyWords(fold, marks)).toBe('A4: B1-LS, B1-RS, k9/door; A10: U1-TP')
  })
})
