import { describe, expect, it } from 'vitest'
import type { SheetJob } from '../../../engine/sheets/job'
import type { SheetAnswer } from '../../../engine/sheets/layout'
import { packSheets } from '../../../engine/sheets/pack'
import { verify } from '../../../engine/sheets/verify'
import { kitchenJob } from '../../bench/jobs'

/** Every third row of a kitchen is cut late; the packer is told so or not. */
function packed(seed: number, isTold: boolean) {
  const given = kitchenJob(60, seed)
  const late = new Set(given.parts.filter((_, at) => at % 3 === 0).map(({ id }) => id))
  const parts = given.parts.map((part) => (isTold && late.has(part.id) ? { ...part, late: true } : part))
  const job: SheetJob = { ...given, parts, effort: 'quick' }
  const answer = packSheets(job)
  expect(verify(job, answer)).toEqual([])
  return { sheets: countOf(answer), mixed: countOf(answer, late) }
}

/** Sheets, or those among them on which parts of both times lie. */
function countOf({ sheets }: SheetAnswer, late?: ReadonlySet<string>): number {
  const isMixed = ({ placements }: SheetAnswer['sheets'][number]) =>
    new Set(placements.map(({ part }) => late?.has(part))).size > 1
  return sheets.filter((sheet) => !late || isMixed(sheet)).reduce((sum, { copies }) => sum + copies, 0)
}

describe('late parts among others', () => {
  it('are on fewer sheets when the packer is told of them, and on no more sheets in all', () => {
    const seeds = [1, 2, 3, 4]
    const [plain, told] = [false, true].map((isTold) => seeds.map((seed) => packed(seed, isTold)))
    expect(told!.map(({ sheets }) => sheets)).toEqual(plain!.map(({ sheets }) => sheets))
    const mixed = (all: typeof plain) => all!.reduce((sum, one) => sum + one.mixed, 0)
    expect(mixed(told)).toBeLessThan(mixed(plain))
  })
})
