import { describe, expect, it } from 'vitest'
import { spliced } from '../../../engine/between/splice'

const said = (...args: Parameters<typeof spliced>) => spliced(...args).map(({ from, to }) => `${from}-${to}`)

describe('a run that is longer than its boards', () => {
  it('is one board where it fits', () => {
    expect(said([0, 600, 1200], 1200)).toEqual(['0-1200'])
  })
  it('is spliced at the last edge of a carcass that the board reaches', () => {
    expect(said([0, 600, 1500, 2100, 3100, 3600], 2420)).toEqual(['0-2100', '2100-3600'])
    expect(said([0, 600, 1500, 2100, 3100, 3600], 1500)).toEqual(['0-1500', '1500-2100', '2100-3600'])
  })
  it('is spliced where the board ends when no edge is in reach', () => {
    expect(said([0, 3000, 3600], 2420)).toEqual(['0-2420', '2420-3600'])
  })
  it('is never spliced within what is kept whole', () => {
    const sink = { from: 1900, to: 2300 }
    expect(said([0, 600, 2100, 3600], 2420, [sink])).toEqual(['0-600', '600-3020', '3020-3600'])
    expect(said([0, 3600], 2200, [sink])).toEqual(['0-1900', '1900-3600'])
  })
})
