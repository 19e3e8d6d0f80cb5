import { describe, expect, it } from 'vitest'
import { hatch } from '../../../engine/drawings/drawing'
import { sheetDrawing } from '../../../engine/drawings/sheet'
import type { SheetLayout } from '../../../engine/sheets/layout'

const STOCK = { id: 's1', material: 'm1', length: 1000, width: 500, trim: { length: 10, width: 10 } }

/** 980 x 480 inside the trim: a strip of two parts of 400, and what is left. */
const LAYOUT: SheetLayout = {
  stock: 's1',
  copies: 1,
  placements: [],
  root: {
    ...{ kind: 'cut', direction: 'rip', x: 10, y: 10, length: 980, width: 480 },
    pieces: [
      {
        ...{ kind: 'cut', direction: 'crosscut', x: 10, y: 10, length: 980, width: 200 },
        pieces: [
          { kind: 'part', part: 'A', rotated: false, x: 10, y: 10, length: 400, width: 200 },
          { kind: 'part', part: 'B', rotated: false, x: 414, y: 10, length: 400, width: 200 },
          { kind: 'waste', x: 818, y: 10, length: 172, width: 200 },
        ],
      },
      { kind: 'offcut', x: 10, y: 214, length: 980, width: 276 },
    ],
  },
}

function drawn(hasGrain = true) {
  return sheetDrawing({
    ...{ layout: LAYOUT, stock: STOCK, kerf: 4, hasGrain, display: { unit: 'mm', step: 1 } },
    markOf: (part) => `row ${part}`,
  })
}

describe('the drawing of a sheet', () => {
  it('shows every part where it lies, with its mark and its size', () => {
    const { marks } = drawn()
    expect(marks.flatMap((mark) => (mark.kind === 'rect' && mark.layer === 'part' ? [mark] : []))).toEqual([
      { kind: 'rect', layer: 'part', placement: 0, rect: { left: 10, bottom: 10, width: 400, height: 200 } },
      { kind: 'rect', layer: 'part', placement: 1, rect: { left: 414, bottom: 10, width: 400, height: 200 } },
    ])
    const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
    expect(texts).toEqual(['980 × 276', 'row A', '400 × 200', 'row B', '400 × 200'])
  })

  it('draws a line through the kerf of every cut', () => {
    const lines = drawn().marks.flatMap((mark) => (mark.kind === 'line' && mark.layer === 'cut' ? [mark] : []))
    expect(lines.map(({ from, to }) => [from.x, from.y, to.x, to.y])).toEqual([
      // 10 + 200 + half a kerf
      [10, 212, 990, 212],
      [412, 10, 412, 210],
      // 414 + 400 + half a kerf
      [816, 10, 816, 210],
    ])
  })

  it('shows what a part frees later inside the part, turned as the part is', () => {
    const turned = {
      ...LAYOUT.root,
      pieces: [{ kind: 'part', part: 'C', rotated: true, x: 10, y: 10, length: 200, width: 400 }],
    }
    const freed = [[{ left: 30, bottom: 20, width: 100, height: 50 }]]
    const rects = [LAYOUT, { ...LAYOUT, root: turned as typeof LAYOUT.root }].map((layout) =>
      sheetDrawing({
        ...{ layout, stock: STOCK, kerf: 4, hasGrain: false, display: { unit: 'mm', step: 1 }, freed },
        markOf: (part) => part,
      }).marks.flatMap((mark) => (mark.kind === 'rect' && mark.layer === 'freed' ? [mark.rect] : [])),
    )
    expect(rects).toEqual([
      [{ left: 10 + 30, bottom: 10 + 20, width: 100, height: 50 }],
      [{ left: 10 + 20, bottom: 10 + 30, width: 50, height: 100 }],
    ])
  })

  it('draws two slanted lines over the boards of a run, from the first to the last, and none over one alone', () => {
    const lines = (runOf: (part: string) => string | null) =>
      sheetDrawing({
        ...{ layout: LAYOUT, stock: STOCK, kerf: 4, hasGrain: true, display: { unit: 'mm', step: 1 }, runOf },
        markOf: (part) => part,
      }).marks.flatMap((mark) => (mark.kind === 'line' && mark.layer === 'run' ? [mark] : []))
    expect(lines(() => 'doors').map(({ from, to }) => [from.x, from.y, to.x, to.y])).toEqual([
      // from 10 to 414 + 400; in the middle 110, three and one tenths of 200 aside
      [10, 50, 814, 90],
      [10, 170, 814, 130],
    ])
    expect(lines((part) => (part === 'A' ? 'doors' : null))).toEqual([])
  })

  it('says at the end of a line in which turn it is cut, where there is room', () => {
    const numbers = new Map([
      ['rip 10 10 980 480', [1, null]],
      ['crosscut 10 10 980 200', [2, 3, null]],
    ])
    const { marks } = sheetDrawing({
      ...{ layout: LAYOUT, stock: STOCK, kerf: 4, hasGrain: false, display: { unit: 'mm', step: 1 }, numbers },
      markOf: (part) => part,
    })
    const turns = marks.flatMap((mark) => (mark.kind === 'text' && /^\d$/.test(mark.text) ? [mark] : []))
    // 44 x 0.8 high, so 0.7 of it from the end of the line and 0.6 of it inside
    const size = 44 * 0.8
    expect(turns.map(({ text, at }) => [text, at.x, at.y])).toEqual([
      ['1', 10 + 0.7 * size, 210 - 0.6 * size],
      ['2', 410 - 0.7 * size, 210 - 0.6 * size],
      ['3', 814 - 0.7 * size, 210 - 0.6 * size],
    ])
  })

  it('hatches waste only, and shows the grain only where there is one', () => {
    const { marks } = drawn(false)
    const hatching = marks.flatMap((mark) =>
      mark.kind === 'line' && mark.layer === 'hatch' ? [mark.from.x, mark.to.x] : [],
    )
    expect(hatching.length).toBeGreaterThan(0)
    expect(Math.min(...hatching)).toBeGreaterThanOrEqual(818)
    expect(marks.some(({ layer }) => layer === 'grain')).toBe(false)
    expect(drawn(true).marks.some(({ layer }) => layer === 'grain')).toBe(true)
  })

  it('measures the sheet itself', () => {
    const measured = drawn().marks.flatMap((mark) => (mark.kind === 'dimension' ? [mark.text] : []))
    expect(measured).toEqual(['1000', '500'])
  })
})

describe('hatching', () => {
  it('stays inside its rectangle', () => {
    const lines = hatch({ left: 7, bottom: -3, width: 50, height: 20 }, 10, 'hatch')
    expect(lines.length).toBeGreaterThan(3)
    for (const { from, to } of lines) {
      for (const { x, y } of [from, to]) {
        expect(x).toBeGreaterThanOrEqual(7)
        expect(x).toBeLessThanOrEqual(7 + 50)
        expect(y).toBeGreaterThanOrEqual(-3)
        expect(y).toBeLessThanOrEqual(-3 + 20)
      }
      expect(to.y - from.y).toBeCloseTo(to.x - from.x)
    }
  })
})
