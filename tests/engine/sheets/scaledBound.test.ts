import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import { boundOf } from '../../../engine/sheets/bound'
import type { JobPart, SheetJob } from '../../../engine/sheets/job'
import { lotsOf } from '../../../engine/sheets/lot'
import { packSheets } from '../../../engine/sheets/pack'
import { Scale } from '../../../engine/sheets/scale'
import { scaledBound } from '../../../engine/sheets/scaledBound'
import { sheetCount } from '../../../engine/sheets/tally'
import { classJob } from '../../bench/jobs'

/** What a generator comes to. */
function ended<T>(steps: Generator<null, T>): T {
  for (;;) {
    const { done, value } = steps.next()
    if (done) return value
  }
}

function bounds(job: SheetJob): { plain: number; scaled: number } {
  const [lot] = lotsOf(job)
  return { plain: boundOf(lot!), scaled: ended(scaledBound(lot!, Infinity, 5_000_000)) }
}

const SIDE = 40

/** Sheets parted by guillotine cuts again and again: their parts need no more sheets than they were cut from. */
function partsOfWholeSheets(sheets: number, seed: number, kerf: number, canTurn: boolean): JobPart[] {
  const random = randomFrom(seed)
  const parted = (length: number, width: number, depth: number): [number, number][] => {
    const isLong = random() < 0.5 ? length > 4 : width <= 4
    const whole = isLong ? length : width
    if (depth === 0 || whole < 4 || random() < 0.15) return [[length, width]]
    const at = 2 + Math.floor(random() * (whole - 3))
    const halves: [number, number][] = isLong
      ? [
          [at, width],
          [length - at - kerf, width],
        ]
      : [
          [length, at],
          [length, width - at - kerf],
        ]
    return halves.flatMap(([one, other]) => parted(one, other, depth - 1))
  }
  return Array.from({ length: sheets }, () => parted(SIDE, SIDE, 4))
    .flat()
    .map(([length, width], at): JobPart => {
      const isTurned = canTurn && random() < 0.5
      const [along, across] = isTurned ? [width, length] : [length, width]
      return { id: `p${at}`, material: 'm', length: along, width: across, quantity: 1, rotate: canTurn }
    })
}

function jobOf(parts: readonly JobPart[], kerf: number): SheetJob {
  return { kerf, stages: null, stock: [{ id: 's', material: 'm', length: SIDE, width: SIDE }], parts }
}

describe('the bound by functions that are the best for each other', () => {
  it('never asks for more sheets than the parts were cut from, and never for fewer than the plain bound', () => {
    for (let seed = 1; seed <= 150; seed++) {
      const sheets = 1 + (seed % 5)
      const kerf = seed % 3 === 0 ? 1 : 0
      const { plain, scaled } = bounds(jobOf(partsOfWholeSheets(sheets, seed, kerf, seed % 2 === 0), kerf))
      expect(scaled, `seed ${seed}`).toBeLessThanOrEqual(sheets)
      expect(scaled, `seed ${seed}`).toBeGreaterThanOrEqual(plain)
    }
  })

  it.each([
    [8, 20, 5, 7],
    [10, 20, 5, 6],
    [5, 40, 1, 10],
  ])('proves layouts that the plain bound leaves open: class %i, %i parts, seed %i', (which, parts, seed, sheets) => {
    const job: SheetJob = { ...classJob(which, parts, seed), stages: null, firstCut: 'any' }
    expect(bounds(job)).toEqual({ plain: sheets - 1, scaled: sheets })
    const answer = packSheets(job)
    expect([sheetCount(answer), answer.proved]).toEqual([sheets, true])
  })
})

describe('the best function of one direction', () => {
  it('gives sizes that fit together no more than the whole, and the weights as much as can be', () => {
    // On 10: 6 alone or with 4 or 3; 4 with 4, 3 with 3 with 3.
    const sizes = [3, 4, 6].map((size) => ({ size, count: 5 }))
    const { value, shares } = ended(new Scale(10, sizes).best(Float64Array.from([0, 2, 3]), 1_000_000))
    // Each 6 may take a 4 along: three wholes hold 3 of 6 and 3 of 4.
    expect(value).toBeCloseTo(3)
    for (const set of [
      [0, 0, 0],
      [0, 0, 1],
      [1, 1],
      [0, 2],
      [1, 2],
    ] as const) {
      expect(set.reduce((sum: number, row) => sum + shares[row]!, 0)).toBeLessThanOrEqual(1 + 1e-9)
    }
  })

  it('counts no more parts of a size than there are', () => {
    // One 3 only: of the three wholes for 6, 6, 6 one is shared by it, and beside it there is room for nothing else.
    const sizes = [
      { size: 3, count: 1 },
      { size: 6, count: 3 },
    ]
    const alone = ended(new Scale(10, sizes).best(Float64Array.from([1, 0]), 1_000_000))
    expect(alone.value).toBeCloseTo(1)
  })
})
