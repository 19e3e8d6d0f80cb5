import { describe, expect, it } from 'vitest'
import { passes } from '../../../engine/checks/passing'

describe('a shelf through an opening', () => {
  it('passes level where the opening is wider than it is long', () => {
    expect(passes({ length: 500, thickness: 18 }, { width: 501, height: 19 })).toBe(true)
    expect(passes({ length: 500, thickness: 18 }, { width: 501, height: 17 })).toBe(false)
  })

  it('passes tilted as long as its end fits: one of no thickness as long as the diagonal', () => {
    // 300 and 400 are the sides of a diagonal of 500.
    expect(passes({ length: 499.9, thickness: 0 }, { width: 400, height: 300 })).toBe(true)
    expect(passes({ length: 500.1, thickness: 0 }, { width: 400, height: 300 })).toBe(false)
  })

  it('passes tilted no longer than its thickness lets it', () => {
    // Tilted to 3 : 4 its end of p x q is as wide as 0.8 p + 0.6 q and as high as 0.6 p + 0.8 q.
    const [p, q] = [500, 20]
    const [width, height] = [0.8 * p + 0.6 * q, 0.6 * p + 0.8 * q]
    expect(passes({ length: p, thickness: q }, { width, height: height + 0.01 })).toBe(true)
    expect(passes({ length: p, thickness: q }, { width, height: height - 0.01 })).toBe(false)
  })
})
