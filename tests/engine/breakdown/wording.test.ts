import { describe, expect, it } from 'vitest'
import { nameList, numberList } from '../../../engine/breakdown/wording'

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
