import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import { BestStrips } from '../../../engine/sheets/bestStrips'
import { type Board, CROSSCUT, freshBoard, listParts, RIP, tidy } from '../../../engine/sheets/cutTree'
import { HandlingCount } from '../../../engine/sheets/handling'
import type { SheetJob } from '../../../engine/sheets/job'
import { lotsOf } from '../../../engine/sheets/lot'
import { aJob, boards } from './yard'

/** Each is of another mood: where new settings are dear, boards may rather stay in the pool. */
const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8]

/** An empty sheet filled from a pool of all parts of a job: how wide its strips are, in mm with a kerf, and what is left. */
function rippedAnew(job: SheetJob, { seed = 1, avoided = -1 } = {}) {
  const lot = lotsOf(job)[0]!
  const isRip = lot.first !== 'crosscut'
  const board = freshBoard(lot.stocks[0]!, isRip ? RIP : CROSSCUT, lot)
  const pool = lot.kinds.flatMap(({ quantity }, kind) => new Array<number>(quantity).fill(kind))
  const count = new HandlingCount(lot)
  count.of([board])
  new BestStrips(lot, count, randomFrom(seed)).ripAnew([board], avoided, pool)
  tidy(board, lot)
  return { strips: stripsOf(board), pool, placed: placedOn(board) }
}

function stripsOf({ root }: Board): number[] {
  return root.pieces.map(({ length, width }) => (root.way === RIP ? width : length) / 3200)
}

function placedOn({ root }: Board): number[] {
  const kinds: number[] = []
  listParts(root, kinds)
  return kinds.sort((a, b) => a - b)
}

describe('the best strips of a pool', () => {
  it.each([1, 2, 3])('are one strip for four boards that just fill it, whatever the mood (seed %i)', (seed) => {
    const { strips, pool } = rippedAnew(aJob([boards('607 x 300 x 4')]), { seed })
    expect({ strips, pool }).toEqual({ strips: [303], pool: [] })
  })

  it.each(['rip', 'crosscut'] as const)('have no part twice and lose none, where the first cut is a %s', (firstCut) => {
    const job = aJob([boards('720 x 560 x 5'), boards('564 x 100 x 9'), boards('864 x 300 x 4')], { firstCut })
    const each = SEEDS.map((seed) => rippedAnew(job, { seed }))
    for (const { pool, placed } of each) {
      expect([...placed, ...pool].sort((a, b) => a - b)).toEqual([0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2])
    }
    expect(Math.max(...each.map(({ placed }) => placed.length))).toBeGreaterThan(6)
  })

  it('are not as wide as what is avoided: narrow boards lie trimmed in wider strips, or stay in the pool', () => {
    const job = aJob([boards('900 x 200 x 1'), boards('900 x 100 x 3')])
    const narrow = 103 * 3200
    expect(SEEDS.flatMap((seed) => rippedAnew(job, { seed }).strips)).toContain(103)
    expect(SEEDS.flatMap((seed) => rippedAnew(job, { seed, avoided: narrow }).strips)).not.toContain(103)
  })

  it('have no part that asks for another sheet', () => {
    const asking = { ...boards('607 x 300 x 4'), sheet: 2 }
    const { strips, pool } = rippedAnew(aJob([asking]))
    expect({ strips, pool }).toEqual({ strips: [], pool: [0, 0, 0, 0] })
  })

  it('trim nothing in a shop that cuts in two directions', () => {
    const { strips, pool } = rippedAnew(aJob([boards('720 x 560 x 2'), boards('720 x 270 x 1')], { stages: 2 }))
    expect({ strips: strips.sort((a, b) => a - b), pool }).toEqual({ strips: [273, 563], pool: [] })
  })
})
