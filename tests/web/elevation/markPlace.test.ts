import { describe, expect, it } from 'vitest'
import { demonstrationKitchen, derive, type Rect, rectsOverlap } from '../../../engine/index'
import { markPlace } from '../../../web/elevation/markPlace'
import { pullsBefore } from '../../../web/elevation/pullShapes'

const room = { letters: 2, width: 500, height: 868, kick: 100, mmPerPx: 12 }
const usual = { x: 6 * 12, y: 100 + 7 * 12 }

describe('the place of a mark', () => {
  it('is low at the left where nothing is in its way', () => {
    expect(markPlace(room, [])).toEqual(usual)
    expect(markPlace(room, [{ left: 150, bottom: 600, width: 200, height: 11 }])).toEqual(usual)
  })
  it('is lower, right of a pull or over it, whichever is clear first', () => {
    const level = { left: 150, bottom: 280, width: 200, height: 11 }
    expect(markPlace(room, [level])).toEqual({ ...usual, y: 100 + 3 * 12 })
    const upright = { left: 40, bottom: 120, width: 11, height: 300 }
    expect(markPlace(room, [upright]).x).toBeGreaterThan(40 + 11)
    const wide = { left: 20, bottom: 150, width: 460, height: 11 }
    expect(markPlace(room, [wide]).y).toBeGreaterThan(150 + 11)
  })
  it('is the usual one where there is no clear place', () => {
    expect(markPlace({ ...room, height: 300 }, [{ left: 20, bottom: 110, width: 460, height: 180 }])).toEqual(usual)
  })
  it('is clear of the pulls of the demonstration from a whole wall on a phone to a cabinet near by', () => {
    for (const built of derive(demonstrationKitchen()).cabinets) {
      for (const mmPerPx of [4, 8, 12]) {
        const { mark, cabinet } = built
        const { width, height } = cabinet
        const pulls = pullsBefore(built, mmPerPx)
        const { x, y } = markPlace({ letters: mark.length, width, height, kick: 100, mmPerPx }, pulls)
        const letters: Rect = { left: x, bottom: y, width: mark.length * 8 * mmPerPx, height: 9.5 * mmPerPx }
        const hit = pulls.filter((pull) => rectsOverlap(letters, pull))
        expect(hit, `${mark} at ${mmPerPx} mm for a pixel`).toEqual([])
      }
    }
  })
})
