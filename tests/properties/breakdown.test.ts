import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../engine/basics/random'
import { type BreakdownInput, breakdownOf, worksOf } from '../../engine/breakdown/steps'
import { type Rect, rectsOverlap, rightOf, topOf } from '../../engine/geometry/rect'
import type { CutOrder } from '../../engine/project/document'
import type { Piece } from '../../engine/sheets/layout'
import { packSheets } from '../../engine/sheets/pack'
import { verify } from '../../engine/sheets/verify'
import { settle } from '../../engine/units/length'
import { countsOf, replay, SHOP } from '../engine/breakdown/sawyer'
import { randomTrees } from '../helpers/cut-trees'

const ORDERS: readonly CutOrder[] = ['sheet by sheet', 'setting by setting']

const wishes = fc.record({
  first: fc.constantFrom('rip' as const, 'crosscut' as const, 'either' as const),
  depth: fc.integer({ min: 1, max: 6 }),
  sheets: fc.integer({ min: 1, max: 4 }),
  kerf: fc.constantFrom(0, 1.8, 2.2, 3.175),
  trim: fc.constantFrom(0, 6, 10),
})
const seeds = fc.integer({ min: 0, max: 1e9 })

function input(given: ReturnType<typeof randomTrees>, cutOrder: CutOrder | null = null): BreakdownInput {
  return { ...given, shop: { ...SHOP, cutOrder }, marks: new Map(), materials: {} }
}

function partsIn(piece: Piece): Piece[] {
  if (piece.kind === 'cut') return piece.pieces.flatMap(partsIn)
  return piece.kind === 'part' ? [piece] : []
}

describe('a breakdown of sheets cut in any number of directions, whichever comes first', () => {
  it('replays to the parts of the layout in both orders, and leaves nothing uncut', () => {
    fc.assert(
      fc.property(seeds, wishes, (seed, wish) => {
        const given = randomTrees(randomFrom(seed), wish)
        expect(verify(given.job, given.answer)).toEqual([])
        const drawn = given.answer.sheets.flatMap(({ root, copies }) => Array(copies).fill(partsIn(root)).flat())
        for (const order of ORDERS) {
          const breakdown = breakdownOf(input(given, order))
          expect(breakdown.order).toBe(order)
          const floor = replay(breakdown, given.job, given.answer)
          expect(countsOf(floor.filter(({ kind }) => kind === 'part'))).toEqual(countsOf(drawn))
          expect(floor.filter(({ kind }) => kind === 'strip' || kind === 'piece')).toEqual([])
        }
      }),
      { seed: 31, numRuns: 150 },
    )
  })

  it('never takes more settings setting by setting than sheet by sheet, and proposes the quicker order', () => {
    fc.assert(
      fc.property(seeds, wishes, fc.constantFrom(0, 2, 30), (seed, wish, perSheet) => {
        const given = input(randomTrees(randomFrom(seed), wish))
        const shop = { ...given.shop, minutes: { ...given.shop.minutes, perSheet } }
        const { compared, proposed, order, minutes } = breakdownOf({ ...given, shop })
        const [bySheet, bySetting] = [compared['sheet by sheet'], compared['setting by setting']]
        expect(bySetting.settings).toBeLessThanOrEqual(bySheet.settings)
        expect(bySetting.bladeChanges).toBe(bySheet.bladeChanges)
        expect(order).toBe(proposed)
        expect(minutes).toBe(Math.min(bySheet.minutes, bySetting.minutes))
      }),
      { seed: 32, numRuns: 150 },
    )
  })

  it('knows where on its sheet every piece lies: inside the piece it is cut from, beside the others', () => {
    fc.assert(
      fc.property(seeds, wishes, (seed, wish) => {
        const given = input(randomTrees(randomFrom(seed), wish))
        const lying = new Map<string, Rect[]>()
        for (const work of [...worksOf(given).values()].flat()) {
          const name = `sheet ${work.task.sheet}`
          const sheet = lying.get(name) ?? [{ left: 0, bottom: 0, width: 2440, height: 1220 }]
          const taken = rectOf(work.takes)
          const at = sheet.findIndex((rect) => JSON.stringify(rect) === JSON.stringify(taken))
          expect(at, `${work.takes.name} lies on its sheet`).toBeGreaterThanOrEqual(0)
          const left = work.leaves.map(rectOf)
          const isInside = ({ left: x, bottom: y, ...size }: Rect) =>
            x >= taken.left &&
            y >= taken.bottom &&
            settle(x + size.width) <= rightOf(taken) + 1e-9 &&
            settle(y + size.height) <= topOf(taken) + 1e-9
          expect(left.filter((rect) => !isInside(rect))).toEqual([])
          const rest = sheet.filter((_, place) => place !== at)
          lying.set(name, [...rest, ...left])
        }
        for (const rects of lying.values()) {
          expect(rects.filter((a, at) => rects.slice(at + 1).some((b) => rectsOverlap(shrunk(a), shrunk(b))))).toEqual(
            [],
          )
        }
      }),
      { seed: 33, numRuns: 100 },
    )
  })

  it('sketches pieces and cuts that fill the piece without a gap', () => {
    fc.assert(
      fc.property(seeds, wishes, (seed, wish) => {
        const given = input(randomTrees(randomFrom(seed), wish))
        for (const { id, sketch } of breakdownOf(given).steps) {
          const all = [...sketch.pieces.map(({ rect }) => rect), ...sketch.cuts]
          const area = all.reduce((sum, { width, height }) => sum + width * height, 0)
          expect(area, `step ${id}`).toBeCloseTo(sketch.length * sketch.width, 3)
          expect(all.filter((a, at) => all.slice(at + 1).some((b) => rectsOverlap(shrunk(a), shrunk(b))))).toEqual([])
        }
      }),
      { seed: 34, numRuns: 100 },
    )
  })
})

describe('a breakdown of what the packer answers', () => {
  it('replays to its parts for two stages, three and any, rips or crosscuts first', () => {
    const jobs = fc.record({
      stages: fc.constantFrom<(2 | 3 | null)[]>(2, 3, null),
      firstCut: fc.constantFrom<('rip' | 'crosscut' | 'any')[]>('rip', 'crosscut', 'any'),
      sizes: fc.array(
        fc.record({ length: fc.integer({ min: 80, max: 1400 }), width: fc.integer({ min: 60, max: 900 }) }),
        { minLength: 1, maxLength: 10 },
      ),
    })
    fc.assert(
      fc.property(jobs, ({ sizes, ...rest }) => {
        const stock = [{ id: 's1', material: 'm1', length: 2440, width: 1220, trim: { length: 10, width: 10 } }]
        const unique = [...new Map(sizes.map((size) => [`${size.length}x${size.width}`, size]))]
        const parts = unique.map(([id, size]) => ({ id, material: 'm1', ...size, quantity: 2, rotate: true }))
        const job = { ...rest, kerf: 2.2, effort: 'quick' as const, stock, parts }
        let looks = 0
        const answer = packSheets(job, () => ++looks > 2)
        const rows = parts.map(({ id }) => ({ key: id, mark: id, parts: [`${id}-1`, `${id}-2`] }))
        const cutList = { rows, totals: [] } as unknown as BreakdownInput['cutList']
        for (const cutOrder of ORDERS) {
          const shop = { ...SHOP, cutOrder }
          const breakdown = breakdownOf({ job, answer, shop, cutList, marks: new Map(), materials: {} })
          const floor = replay(breakdown, job, answer).filter(({ kind }) => kind === 'part')
          const drawn = answer.sheets.flatMap(({ root, copies }) => Array(copies).fill(partsIn(root)).flat())
          expect(countsOf(floor)).toEqual(countsOf(drawn))
        }
      }),
      { seed: 35, numRuns: 40 },
    )
  })
})

function rectOf({ x, y, length, width }: { x: number; y: number; length: number; width: number }): Rect {
  return { left: x, bottom: y, width: length, height: width }
}

/** A thousandth less all round, so that rectangles that touch do not overlap by a rounding. */
function shrunk({ left, bottom, width, height }: Rect): Rect {
  return { left: left + 0.001, bottom: bottom + 0.001, width: width - 0.002, height: height - 0.002 }
}
