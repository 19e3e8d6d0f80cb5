import { describe, expect, it } from 'vitest'
import { linksOf } from '../../../engine/breakdown/links'

function links(...batches: readonly (readonly number[])[]) {
  return linksOf(batches.map((batch) => new Set(batch)))
}

describe('settings that stand from one batch to the next', () => {
  it('are those that both batches need', () => {
    expect(links([580, 320], [320, 200], [400])).toEqual([320, null])
  })

  it('go on through a batch of one setting', () => {
    expect(links([580, 320], [320], [320, 200])).toEqual([320, 320])
  })

  it('cannot both begin and end a batch of several', () => {
    const [first, second] = links([580, 320], [320, 200], [320, 100])
    expect([first, second].filter((link) => link === 320)).toHaveLength(1)
  })

  it('are given up where another saves more later', () => {
    // 320 first would leave the middle batch with nothing to end on; 580 leaves it 320.
    expect(links([580, 320], [320, 580], [320])).toEqual([580, 320])
  })

  it('are none for a single batch', () => {
    expect(links([580, 320])).toEqual([])
  })
})
