import { describe, expect, it } from 'vitest'
import type { SheetJob } from '../../../engine/index'
import { countWords } from '../../../web/sheets/words'
import { proofOf } from '../../../web/stages/figures'

const STOCK = { id: 's1', material: 'm1', length: 1000, width: 500 }

/** A settled layout of two alike sheets in some directions of cutting. */
function layoutIn(directions: Pick<SheetJob, 'stages' | 'firstCut'>, proved: boolean) {
  const root = { kind: 'waste', x: 0, y: 0, length: 1000, width: 500 } as const
  const sheet = { stock: 's1', copies: 2, placements: [], root }
  const job: SheetJob = { kerf: 4, ...directions, stock: [STOCK], parts: [] }
  return { job, answer: { sheets: [sheet], unplaced: [], bounds: { m1: proved ? 2 : 1 }, proved }, isSettled: true }
}

describe('what is proved of the number of sheets', () => {
  it.each([
    [{}, ', cut in three directions with the rip first'],
    [{ stages: 3, firstCut: 'any' }, ', cut in three directions'],
    [{ stages: 2, firstCut: 'crosscut' }, ', cut in two directions with the crosscut first'],
    [{ stages: null, firstCut: 'rip' }, ''],
  ] as const)('is said of the directions that are cut in, where they are limited: %j', (directions, words) => {
    expect(countWords(layoutIn(directions, true))).toBe(`2 sheets, and no layout of these parts needs fewer${words}.`)
    expect(countWords(layoutIn(directions, false))).toBe(
      `2 sheets; any layout of these parts needs at least 1${words}. None with fewer was found.`,
    )
  })

  it('is said of these directions where there is little room', () => {
    expect(proofOf(layoutIn({ stages: 3 }, true))?.text).toBe('no layout cut this way needs fewer than 2')
    expect(proofOf(layoutIn({ stages: null }, true))?.text).toBe('no layout of these parts needs fewer than 2')
  })
})

describe('what is on no sheet', () => {
  it('is looked for only where a sheet could give it', () => {
    const part = { id: 'r1', material: 'm1', length: 400, width: 200, quantity: 1 }
    const { job, answer } = layoutIn({}, false)
    const looking = { answer: { ...answer, unplaced: [{ part: 'r1', quantity: 1, reason: '' }] }, isSettled: false }
    const layout = { ...looking, job: { ...job, parts: [part] } }
    expect(countWords(layout)).toBe('2 sheets; 1 board is on no sheet. Still looking for room.')
    expect(countWords({ ...layout, isSettled: true })).toBe('2 sheets; 1 board is on no sheet.')
    expect(countWords({ ...looking, job: { ...job, parts: [{ ...part, length: 9000 }] } })).not.toMatch(/looking/)
  })
})
