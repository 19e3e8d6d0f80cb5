import { describe, expect, it } from 'vitest'
import type { SheetJob } from '../../../engine/sheets/job'
import { checkJob, packSheets } from '../../../engine/sheets/pack'
import { sheetCount } from '../../../engine/sheets/tally'
import { verify } from '../../../engine/sheets/verify'
import { aJob, aSheet, boards } from './yard'

const job = aJob([boards('1200 x 600 x 9'), boards('700 x 300 x 4')], { effort: 'glance' })
const before = packSheets(job)
const message = (asked: unknown) => {
  const checked = checkJob(asked)
  return checked.ok ? 'good' : checked.message
}

describe('a locked sheet', () => {
  const locked = before.sheets.slice(-1)
  const withLock: SheetJob = { ...job, locked }

  it('comes first in the answer, just as it was, and its parts are cut once', () => {
    const answer = packSheets(withLock)
    expect(answer.sheets[0]).toEqual(locked[0])
    expect(verify(withLock, answer)).toEqual([])
  })

  it('counts in the bound: the job is proved with it', () => {
    const answer = packSheets({
      ...aJob([boards('2400 x 1200 x 3')]),
      locked: packSheets(aJob([boards('2400 x 1200 x 3')])).sheets.map((sheet) => ({ ...sheet, copies: 1 })),
    })
    expect(answer).toMatchObject({ bounds: { ply: 3 }, proved: true })
    expect(sheetCount(answer)).toBe(3)
  })

  it('is missed by the verifier when an answer changes it', () => {
    expect(verify(withLock, { ...before, sheets: [...before.sheets].reverse().slice(1) }).join()).toContain('locked')
  })

  it.each([
    [
      { ...withLock, parts: [job.parts[0]!, { ...job.parts[1]!, length: 701 }] },
      'locked[0]: 700 x 300 x 4 is not cut to its size',
    ],
    [{ ...withLock, locked: [{ ...locked[0]!, copies: 50 }] }, 'times; the job asks for'],
    [{ ...withLock, locked: [{ ...locked[0]!, copies: 0 }] }, 'locked[0].copies must be 1 or more'],
    [{ ...withLock, locked: 'all' }, 'locked must be a list'],
    [{ ...withLock, locked: [{ ...locked[0]!, root: { kind: 'cut' } }] }, 'locked[0].root must be a piece'],
  ])('is refused when it does not fit the job (%#)', (asked, words) => {
    expect(message(asked)).toContain(words)
  })
})

describe('an excluded sheet', () => {
  const stock = [aSheet({ price: 10 }), aSheet({ id: 'dear', price: 90 })]

  it('is not used, although it is the cheaper one', () => {
    const [cheap, dear] = stock as [SheetJob['stock'][0], SheetJob['stock'][0]]
    const asked = { ...job, stock: [{ ...cheap, excluded: true }, dear] }
    const answer = packSheets(asked)
    expect(new Set(answer.sheets.map((sheet) => sheet.stock))).toEqual(new Set(['dear']))
    expect(verify(asked, packSheets({ ...job, stock })).join()).toContain('was excluded')
  })

  it('leaves the parts without a sheet when it was the only one', () => {
    const answer = packSheets({ ...job, stock: [aSheet({ excluded: true })] })
    expect(answer.unplaced.map(({ quantity, reason }) => [quantity, reason])).toEqual([
      [9, 'there is no sheet of ply'],
      [4, 'there is no sheet of ply'],
    ])
  })

  it('is excluded by true or false', () => {
    expect(message({ ...job, stock: [{ ...aSheet(), excluded: 'yes' }] })).toContain('stock[0].excluded is "yes";')
  })
})

describe('the layout shown before', () => {
  it('stays, sheet for sheet and in its order, when a search comes to nothing better', () => {
    const near = [...before.sheets].reverse()
    expect(packSheets({ ...job, near, seed: 9 }).sheets).toEqual(near)
  })

  it('gives way to fewer sheets', () => {
    const alone = packSheets(aJob([boards('700 x 300 x 1')])).sheets[0]!
    const asked = aJob([boards('700 x 300 x 1'), boards('600 x 200 x 1')])
    const other = packSheets(aJob([boards('600 x 200 x 1')])).sheets[0]!
    expect(verify(asked, { sheets: [alone, other], unplaced: [], bounds: {}, proved: false })).toEqual([])
    expect(sheetCount(packSheets({ ...asked, near: [alone, other] }))).toBe(1)
  })

  it('is not kept for a job that it does not fit any more', () => {
    const more = { ...job, parts: [...job.parts, boards('500 x 500 x 1')], near: before.sheets }
    expect(verify(more, packSheets(more))).toEqual([])
  })
})
