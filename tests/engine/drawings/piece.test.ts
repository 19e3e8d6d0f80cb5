import { describe, expect, it } from 'vitest'
import { breakdownOf } from '../../../engine/breakdown/steps'
import { dimensionLine } from '../../../engine/drawings/drawing'
import { pieceDrawing } from '../../../engine/drawings/piece'
import { crosscut, OFFCUT, part, rip, SHOP, sheets } from '../breakdown/sawyer'

const GIVEN = sheets({ A: [768, 580] }, [[1, rip(crosscut(part('A'), part('A'), OFFCUT), OFFCUT)]])
const { steps } = breakdownOf({ ...GIVEN, shop: SHOP, marks: new Map(), materials: {} })

function drawn(kind: string) {
  const { sketch, setting } = steps.find((step) => step.kind === kind)!
  return pieceDrawing({ sketch, setting, display: { unit: 'mm', step: 1 } }).marks
}

function rects(kind: string) {
  return drawn(kind).flatMap((mark) => {
    if (mark.kind !== 'rect') return []
    const { left, bottom, width, height } = mark.rect
    return [`${mark.layer} ${width} x ${height} at ${left}, ${bottom}`]
  })
}

function lines(kind: string) {
  return drawn(kind).flatMap((mark) =>
    mark.kind === 'line' && mark.layer === 'cut' ? [[mark.from.x, mark.from.y, mark.to.x, mark.to.y]] : [],
  )
}

describe('the drawing of a piece before it is cut', () => {
  it('shows the factory edge as waste below the line that straightens it', () => {
    expect(rects('trim')).toEqual([
      'sheet 2440 x 1220 at 0, 0',
      'sheet 2440 x 1210 at 0, 10',
      // 10 less the kerf of 3
      'waste 2440 x 7 at 0, 0',
    ])
    expect(lines('trim')).toEqual([[0, 8.5, 2440, 8.5]])
    expect(drawn('trim').filter((mark) => mark.kind === 'line' && mark.layer === 'hatch').length).toBeGreaterThan(0)
  })

  it('shows the strip of a rip at the clean edge and the line a setting from it', () => {
    expect(rects('rip')).toEqual([
      'sheet 2440 x 1210 at 0, 0',
      'part 2440 x 580 at 0, 0',
      // 1210 - 580 - 3
      'offcut 2440 x 627 at 0, 583',
    ])
    expect(lines('rip')).toEqual([[0, 581.5, 2440, 581.5]])
  })

  it('shows a line for each of several crosscuts', () => {
    expect(lines('crosscut')).toEqual([
      [769.5, 0, 769.5, 580],
      // 768 + 3 + 768 + 1.5
      [1540.5, 0, 1540.5, 580],
    ])
  })

  it('measures the setting from the reference edge, outside the piece', () => {
    const setting = drawn('rip')
      .flatMap((mark) => (mark.kind === 'dimension' ? [mark] : []))
      .at(-1)!
    expect(setting.text).toBe('580')
    expect([setting.from.y, setting.to.y].sort()).toEqual([0, 580])
    expect(dimensionLine(setting).from.x).toBeGreaterThan(2440)
    const stop = drawn('crosscut')
      .flatMap((mark) => (mark.kind === 'dimension' ? [mark] : []))
      .at(-1)!
    expect(stop.text).toBe('768')
    expect(dimensionLine(stop).from.y).toBeGreaterThan(580)
  })
})
