import { describe, expect, it } from 'vitest'
import { batchOrder } from '../../../engine/breakdown/batchOrder'
import { linksOf } from '../../../engine/breakdown/links'

function sequence(...batches: readonly (readonly number[])[]) {
  return batchOrder(batches.map((batch) => new Set(batch)))
}

describe('the order of batches of settings', () => {
  it('is their own where each goes on from the one before', () => {
    expect(sequence([580, 320], [320, 100], [100])).toEqual([0, 1, 2])
  })

  it('puts between two that share nothing the one that has a setting of both', () => {
    expect(sequence([580], [400], [580, 400])).toEqual([0, 2, 1])
  })

  it('goes first where few others can follow', () => {
    // 580 | 580 400 | 400 320 | 320: begun in the middle, one end would be left over.
    const batches = [[580, 400], [580], [400, 320], [320]].map((batch) => new Set(batch))
    const order = batchOrder(batches)
    expect([...order].sort()).toEqual([0, 1, 2, 3])
    expect(linksOf(order.map((at) => batches[at]!)).every((link) => link !== null)).toBe(true)
  })

  it('keeps batches without a setting, and none is lost', () => {
    expect(sequence([], [580], [], [580]).toSorted()).toEqual([0, 1, 2, 3])
    expect(sequence()).toEqual([])
  })
})
