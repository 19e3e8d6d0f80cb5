import { describe, expect, it } from 'vitest'
import { nameList, numberList, wordsOf } from '../../../engine/breakdown/wording'
import type { Work } from '../../../engine/breakdown/work'

describe('a list of pieces in words', () => {
  it('says three or more sheets in a row as a stretch', () => {
    expect(nameList(['sheet 1', 'sheet 2', 'sheet 3', 'sheet 5'])).toBe('sheets 1 to 3 and 5')
    expect(nameList(['rest of sheet 1', 'rest of sheet 2'])).toBe('rests of sheets 1 and 2')
    expect(numberList([7, 1, 2, 2, 4, 5, 6])).toBe('1, 2 and 4 to 7')
  })

  it('says strips by their names', () => {
    expect(nameList(['3a'])).toBe('3a')
    expect(nameList(['3a', '3b', '4a'])).toBe('3a, 3b and 4a')
    expect(nameList(['rest of 3a', 'rest of 3b'])).toBe('rests of 3a and 3b')
    expect(nameList(['sheet 1', 'rest of sheet 2'])).toBe('sheet 1 and rest of sheet 2')
  })
})

describe('a damage that is cut away', () => {
  const away = (length: number, width: number) => {
    const takes = { name: '14a', x: 0, y: 0, length, width }
    const work = { kind: 'away', task: { direction: 'rip' }, takes, leaves: [{ name: '14b', x: 0, y: 0 }], size: 300 }
    const said = { names: ['14a'], isNewSetting: false, display: { unit: 'mm', step: 0.1 } as const }
    return wordsOf(work as unknown as Work, said)
  }

  it('is measured from a long edge only where that is the longer one', () => {
    expect(away(2440, 600)).toContain('mark 300 mm from its first long edge')
    expect(away(295.6, 742.2)).toContain('mark 300 mm from its first short edge')
  })
})
