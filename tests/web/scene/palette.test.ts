import { describe, expect, it } from 'vitest'
import { colourOf } from '../../../web/scene/palette'

describe('a colour of the page', () => {
  it('is taken as it is on screen', () => {
    const { r, g, b } = colourOf('rgb(236, 215, 174)')
    expect([r, g, b]).toEqual([236 / 255, 215 / 255, 174 / 255])
  })

  it('may come in shares, as mixed colours do', () => {
    const { r, g, b } = colourOf('color(srgb 0.5 0.25 1)')
    expect([r, g, b]).toEqual([0.5, 0.25, 1])
  })
})
