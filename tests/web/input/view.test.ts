import { describe, expect, it } from 'vitest'
import { inSight, type View } from '../../../web/input/view'

const PANE = { width: 500, height: 400 }
const MARGINS = { left: 80, right: 20, top: 30, bottom: 50 }
/** A tenth of a pixel for a millimetre; the floor is 300 under the top of the pane. */
const VIEW: View = { zoom: 0.1, x: 100, y: 300 }

describe('what is brought into sight', () => {
  it('is left where it is when it stands clear of the margins', () => {
    expect(inSight(VIEW, { left: 0, bottom: 0, width: 3800, height: 2000 }, PANE, MARGINS)).toBe(VIEW)
  })

  it('comes in from the right and from below by no more than is needed', () => {
    // From 400 to 520 of 500, where 480 is the last that is clear; from 300 down to 380, where 350 is.
    const what = { left: 3000, bottom: -800, width: 1200, height: 800 }
    expect(inSight(VIEW, what, PANE, MARGINS)).toEqual({ zoom: 0.1, x: 100 - 40, y: 300 - 30 })
  })

  it('comes in from the left and from above', () => {
    // From 60, where 80 is the first that is clear; its top is 10 over the pane, where 30 below it is clear.
    const what = { left: -400, bottom: 2600, width: 600, height: 500 }
    expect(inSight(VIEW, what, PANE, MARGINS)).toEqual({ zoom: 0.1, x: 100 + 20, y: 300 + 40 })
  })

  it('is left alone where it fills the pane, and brought to the middle where it would leave half of it bare', () => {
    const high = { bottom: 500, height: 1000 }
    expect(inSight(VIEW, { left: 0, width: 5000, ...high }, PANE, MARGINS)).toBe(VIEW)
    // From 400 to 900: the middle of 80 and 480 is 280, and its own is 650.
    expect(inSight(VIEW, { left: 3000, width: 5000, ...high }, PANE, MARGINS)).toEqual({ ...VIEW, x: 100 + 280 - 650 })
  })
})
