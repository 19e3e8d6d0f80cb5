import { expect, it } from 'vitest'
import type { Sketch } from '../../../engine/index'
import { withTakenEdge } from '../../../web/sheets/takenEdge'

/** A sheet of which 10 mm are taken off below, with a kerf of 3. */
const trim: Sketch = {
  ...{ length: 2440, width: 1220, measuredFrom: 'edge', edgeAt: 10 },
  cuts: [{ left: 0, bottom: 7, width: 2440, height: 3 }],
  pieces: [
    { kind: 'piece', name: 'sheet 1', rect: { left: 0, bottom: 10, width: 2440, height: 1210 } },
    { kind: 'waste', name: 'waste of sheet 1', rect: { left: 0, bottom: 0, width: 2440, height: 7 } },
  ],
}

it('is drawn wide enough to be seen, with the cut where it ends and the rest up to the far edge', () => {
  const { edgeAt, cuts, pieces } = withTakenEdge(trim)
  expect(edgeAt).toBeCloseTo(2440 / 20)
  const [piece, waste] = pieces.map(({ rect }) => rect)
  expect(waste!.height).toBeCloseTo(0.7 * edgeAt)
  expect(cuts[0]!.bottom).toBeCloseTo(waste!.height)
  expect(cuts[0]!.bottom + cuts[0]!.height).toBeCloseTo(edgeAt)
  expect([piece!.bottom, piece!.bottom + piece!.height]).toEqual([expect.closeTo(edgeAt), expect.closeTo(1220)])
})

it('leaves most of a narrow piece to what stays', () => {
  const narrow = { ...trim, width: 100, pieces: [] }
  expect(withTakenEdge(narrow).edgeAt).toBeCloseTo(40)
})

it('is drawn as it is where it is wide, and where none is taken off', () => {
  const wide = { ...trim, edgeAt: 200 }
  expect(withTakenEdge(wide)).toBe(wide)
  const none = { ...trim, edgeAt: 0 }
  expect(withTakenEdge(none)).toBe(none)
})
