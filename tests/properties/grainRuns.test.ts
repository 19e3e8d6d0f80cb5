import { describe, expect, it } from 'vitest'
import type { MaterialId, PartId, RowKey } from '../../engine/basics/id'
import { type Random, randomFrom } from '../../engine/basics/random'
import type { BreakdownInput } from '../../engine/breakdown/steps'
import type { CutRow } from '../../engine/cutlist/row'
import type { CutOrder } from '../../engine/project/document'
import type { SheetJob } from '../../engine/sheets/job'
import { packSheets } from '../../engine/sheets/pack'
import { PLY, SHEET, SHOP } from '../engine/breakdown/sawyer'
import { freed, tornApart } from '../engine/breakdown/torn'
import { pick, whole } from '../helpers/dice'

const LENGTHS = [400, 500, 600]
const WIDTHS = [100, 140, 200, 290]

/** Four runs of two to four boards, of one size or of several along the run, and boards in none; some of each are late. */
function rowsOf(random: Random): CutRow[] {
  const along = pick(['length', 'width'] as const, random)
  const rows: CutRow[] = []
  const add = (length: number, width: number, bank: CutRow['bank'], isLate: boolean, quantity: number) => {
    const key = `r${rows.length}` as RowKey
    const parts = Array.from({ length: quantity }, (_, at) => `${key}-${at}` as PartId)
    rows.push({
      ...{
        key,
        mark: key,
        name: key,
        material: 'm1' as MaterialId,
        length,
        width,
        thickness: 18,
        quantity,
        bank,
        isLate,
      },
      ...{ isGrainBound: true, from: null, bandedEdges: { long: 0, ends: 0, thickness: 0 }, outline: null },
      ...{ insideBand: 0, parts, measured: [], cabinets: [] },
    })
  }
  for (let run = 0; run < 4; run++) {
    const [length, width] = [pick(LENGTHS, random), pick(WIDTHS, random)]
    const isUniform = random() < 0.7
    const isLate = random() < 0.3
    for (let place = 1; place <= whole(2, 4, random); place++) {
      const own = isUniform
        ? {}
        : along === 'length'
          ? { length: pick(LENGTHS, random) }
          : { width: pick(WIDTHS, random) }
      const size = { length, width, ...own }
      add(size.length, size.width, { id: `run ${run}`, along, place }, isLate, 1)
    }
  }
  for (let single = 0; single < 12; single++)
    add(pick(LENGTHS, random), pick(WIDTHS, random), null, random() < 0.3, whole(1, 2, random))
  return rows
}

function jobOf(rows: readonly CutRow[], random: Random): SheetJob {
  return {
    ...{ kerf: 3, stages: pick([3, null], random), firstCut: pick(['rip', 'crosscut', 'any'] as const, random) },
    ...{ stock: [SHEET], effort: 'glance' },
    parts: rows.map(({ key, length, width, quantity, bank, isLate }) => ({
      ...{ id: key, material: 'm1', length, width, quantity },
      ...(bank ? { bank: { id: bank.id, along: bank.along } } : {}),
      ...(isLate ? { late: true } : {}),
    })),
  }
}

describe('boards over which the grain runs on', () => {
  it('come off the saw beside one another whatever lies with them, and every part comes off', () => {
    for (let seed = 1; seed <= 120; seed++) {
      const random = randomFrom(seed)
      const rows = rowsOf(random)
      const job = jobOf(rows, random)
      const answer = packSheets(job)
      expect(answer.unplaced, `seed ${seed}`).toEqual([])
      for (const cutOrder of ['sheet by sheet', 'setting by setting'] satisfies CutOrder[]) {
        const shop = { ...SHOP, firstCut: job.firstCut!, stages: job.stages!, cutOrder }
        const materials = { m1: PLY } as unknown as BreakdownInput['materials']
        const input: BreakdownInput = { job, answer, cutList: { rows }, shop, marks: new Map(), materials }
        expect(tornApart(input), `seed ${seed}, ${cutOrder}`).toEqual([])
        expect(freed(input).size).toBe(rows.reduce((sum, { quantity }) => sum + quantity, 0))
      }
    }
  })
})
