import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { LookingBar } from '../../../web/sheets/LookingBar'
import { roundsWords } from '../../../web/sheets/words'

const LAYOUT = {
  job: { kerf: 3, stock: [], parts: [] },
  answer: { sheets: [], unplaced: [], bounds: {}, proved: false },
}

const shown = (isSettled: boolean) => renderToStaticMarkup(<LookingBar layout={{ ...LAYOUT, isSettled }} />)

describe('the search for a better layout', () => {
  it('counts its own rounds, which nobody takes for steps at the saw', () => {
    expect([1, 53].map(roundsWords)).toEqual(['1 round of looking so far', '53 rounds of looking so far'])
  })

  it('says no count before there is one, and nothing once it is over', () => {
    expect(shown(false)).toMatch(/^<span[^>]*><button[^>]*>Stop looking<\/button><\/span>$/)
    expect(shown(true)).toBe('')
  })
})
