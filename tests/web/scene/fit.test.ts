import { describe, expect, it } from 'vitest'
import { distanceToFit } from '../../../web/scene/fit'

const FRONT = { x: 0, y: 0, z: 1 }

describe('the distance that shows a whole box', () => {
  it('is that of its height in a wide pane', () => {
    const board = { min: { x: -100, y: -500, z: 0 }, max: { x: 100, y: 500, z: 0 } }
    // At 90 degrees half the picture is as high as the eye is far: 500, and 8 % of margin.
    expect(distanceToFit(board, FRONT, 90, 2)).toBeCloseTo(500 * 1.08, 6)
  })

  it('is that of its width in a narrow pane', () => {
    const board = { min: { x: -400, y: -500, z: 0 }, max: { x: 400, y: 500, z: 0 } }
    expect(distanceToFit(board, FRONT, 90, 0.5)).toBeCloseTo((400 / 0.5) * 1.08, 6)
  })

  it('counts from the nearest corners of a deep box', () => {
    const box = { min: { x: 0, y: -500, z: -300 }, max: { x: 0, y: 500, z: 300 } }
    expect(distanceToFit(box, FRONT, 90, 2)).toBeCloseTo(300 + 500 * 1.08, 6)
  })

  it('sees the depth as width when looking along the wall', () => {
    const box = { min: { x: 0, y: 0, z: -300 }, max: { x: 0, y: 0, z: 300 } }
    expect(distanceToFit(box, { x: 1, y: 0, z: 0 }, 90, 1)).toBeCloseTo(300 * 1.08, 6)
  })

  it('stays finite when looking straight down', () => {
    const box = { min: { x: -200, y: 0, z: -100 }, max: { x: 200, y: 0, z: 100 } }
    expect(distanceToFit(box, { x: 0, y: 1, z: 0 }, 90, 1)).toBeCloseTo(200 * 1.08, 6)
  })
})
