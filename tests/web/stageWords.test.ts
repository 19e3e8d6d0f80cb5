import { describe, expect, it } from 'vitest'
import { stageChoices, stageWords, threeWords } from '../../web/stages/stageWords'

describe('what other cut directions cost', () => {
  it('is told in sheets, time and blade changes against rip, crosscut, re-rip', () => {
    const any = { sheets: 8, minutes: 12 * 60 + 29, bladeChanges: 7 }
    const three = { sheets: 9, minutes: 9 * 60 + 40, bladeChanges: 2 }
    expect(stageWords(any, three)).toBe(
      'These directions: 8 sheets, about 12 h 29 min and 7 blade changes. Rip, crosscut, re-rip: 9 sheets, about 9 h 40 min and 2 blade changes. So this choice takes 1 sheet less, 2 h 49 min more and 5 blade changes more.',
    )
  })

  it('is told to be nothing where it is nothing', () => {
    const same = { sheets: 1, minutes: 50, bladeChanges: 1 }
    expect(stageWords(same, { ...same, minutes: 50.2 })).toBe(
      'These directions: 1 sheet, about 50 min and 1 blade change. Rip, crosscut, re-rip: 1 sheet, about 50 min and 1 blade change. Both take the same.',
    )
  })
})

describe('cut directions', () => {
  it('are called in the order in which they are cut', () => {
    expect(stageChoices('rip').map(([, words]) => words)).toEqual([
      'rip, crosscut',
      'rip, crosscut, re-rip',
      'as many as it takes',
    ])
    expect(stageChoices('crosscut').map(([, words]) => words)).toEqual([
      'crosscut, rip',
      'crosscut, rip, crosscut again',
      'as many as it takes',
    ])
    expect(threeWords('crosscut')).toBe(stageChoices('crosscut')[1]![1])
  })
})
