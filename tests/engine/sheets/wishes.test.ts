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

  it('does not make more sheets of a job look like the fewest', () => {
    // One sheet of 1000 x 500 holds both: 100 + 900 = 1000 long.
    const stock = [aSheet({ length: 1000, width: 500 })]
    const small = { ...aJob([boards('100 x 100 x 1')]), kerf: 0, stock }
    const parts = [boards('100 x 100 x 1'), boards('900 x 500 x 1')]
    const asked: SheetJob = { ...small, parts, locked: packSheets(small).sheets }
    const answer = packSheets(asked)
    expect(sheetCount(answer)).toBe(2)
    expect(answer).toMatchObject({ bounds: { ply: 1 }, proved: false, provedWithLocked: true })
    expect(packSheets({ ...asked, near: answer.sheets })).toMatchObject({ proved: false, provedWithLocked: true })
    expect(sheetCount(packSheets({ ...small, parts, firstCut: 'any' }))).toBe(1)
  })

  it('is as few as can be, but may cost more than it must, where a free offcut would do instead', () => {
    const parts = [boards('300 x 200 x 1')]
    const offcut = aSheet({ id: 'rest', length: 400, width: 300, offcut: true, quantity: 1 })
    const locked = packSheets(aJob(parts)).sheets
    expect(packSheets(aJob(parts, { stock: [aSheet(), offcut], locked }))).toMatchObject({
      proved: true,
      mayCostLess: true,
    })
  })

  it('of an excluded kind counts for a bound that holds all the same', () => {
    const large = aSheet({ id: 'large', length: 3000, width: 1500 })
    const parts = [boards('2900 x 1400 x 1'), boards('700 x 300 x 1')]
    const locked = packSheets(aJob([parts[0]!], { stock: [large] })).sheets
    const asked = aJob(parts, { stock: [aSheet(), { ...large, excluded: true }], locked })
    const answer = packSheets(asked)
    expect(sheetCount(answer)).toBe(2)
    expect(verify(asked, answer)).toEqual([])
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
    [
      { ...withLock, lockedAt: [1, 2] },
      'lockedAt is [1,2]; it must be a list of 1 numbers, one for each sheet of locked',
    ],
    [{ ...withLock, lockedAt: [-1] }, 'lockedAt[0] is -1; it must be a whole number from 0 to'],
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
      [9, 'every sheet of ply is excluded'],
      [4, 'every sheet of ply is excluded'],
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

describe('a bank of fronts', () => {
  const front = (text: string, along: 'length' | 'width' = 'width') => boards(text, { bank: { id: 'B3', along } })
  const bank = aJob([front('596 x 140 x 1'), front('596 x 283 x 2'), boards('700 x 560 x 6')])

  it('lies edge to edge in its order, a kerf between one front and the next', () => {
    const fronts = packSheets(bank).sheets.flatMap(({ placements }) =>
      placements.filter(({ length }) => length === 596),
    )
    const at = fronts[0]!
    expect(fronts.map(({ part, x, y }) => [part, x - at.x, y - at.y])).toEqual([
      ['596 x 140 x 1', 0, 0],
      ['596 x 283 x 2', 0, 140 + 3],
      ['596 x 283 x 2', 0, 140 + 3 + 283 + 3],
    ])
  })

  it('takes a crosscut and then rips in a shop with two stages, and says so where the shop rips first', () => {
    const two = { ...bank, stages: 2, firstCut: 'crosscut' } as const
    expect(packSheets(two).unplaced).toEqual([])
    expect(verify(two, packSheets(two))).toEqual([])
    const ripped = { ...two, firstCut: 'rip' } as const
    const answer = packSheets(ripped)
    expect(verify(ripped, answer)).toEqual([])
    expect(answer.unplaced.map(({ part, quantity, reason }) => [part, quantity, reason])).toEqual([
      ['596 x 140 x 1', 1, 'bank B3: its boards cannot be cut apart as one piece in 2 stages'],
      ['596 x 283 x 2', 2, 'bank B3: its boards cannot be cut apart as one piece in 2 stages'],
    ])
  })

  it('is left out as a whole when no sheet is large enough, with the size that it has', () => {
    const tall = aJob([front('596 x 700 x 2'), boards('700 x 560 x 1')])
    expect(packSheets(tall).unplaced).toMatchObject([{ part: '596 x 700 x 2', quantity: 2 }])
    expect(packSheets(tall).unplaced[0]!.reason).toContain(`bank B3: 596 x ${2 * 700 + 3}`)
  })

  it('is missed by the verifier when its boards lie elsewhere or in another order', () => {
    const loose = { ...bank, parts: bank.parts.map((part) => ({ ...part, bank: undefined })) }
    const scattered = packSheets({ ...loose, parts: [...loose.parts].reverse() })
    const order = packSheets({ ...bank, parts: [bank.parts[1]!, bank.parts[0]!, bank.parts[2]!] })
    expect(verify(loose as SheetJob, scattered)).toEqual([])
    expect(verify(bank, scattered).join()).toMatch(/bank B3|beside/)
    expect(verify(bank, order).join()).toContain('bank B3 is not in its order')
  })

  it.each([
    [{ bank: 'B3' }, 'parts[1].bank is "B3";'],
    [{ bank: { id: 'B3', along: 'height' } }, 'parts[1].bank is {"id":"B3"'],
    [{ length: 600 }, 'parts[1].bank is "B3"; its boards must agree'],
    [{ rotate: true }, 'must agree in along, material, rotate, from, sheet and length'],
  ])('is refused with %j', (more, words) => {
    expect(message({ ...bank, parts: [bank.parts[0]!, { ...bank.parts[1]!, ...more }] })).toContain(words)
  })

  it('is locked whole or not at all', () => {
    const alone = packSheets(aJob([boards('596 x 140 x 1')])).sheets
    expect(message({ ...bank, locked: alone })).toContain('locked has 1 of the 3 boards of bank B3')
  })
})

describe('a board that must come from a sheet that is named', () => {
  const stock = [aSheet(), aSheet({ id: 'figured', length: 1300, width: 700, quantity: 1, offcut: true })]
  const wish = (more: Partial<SheetJob['parts'][0]> = {}) =>
    aJob([boards('700 x 300 x 6'), boards('600 x 400 x 2', { from: 'figured', ...more })], { stock })

  it('lies there, before any other board takes its room', () => {
    const answer = packSheets(wish())
    expect(verify(wish(), answer)).toEqual([])
    expect(answer.unplaced).toEqual([])
    const sheets = answer.sheets.filter(({ placements }) => placements.some(({ part }) => part === '600 x 400 x 2'))
    expect(sheets.map((sheet) => sheet.stock)).toEqual(['figured'])
  })

  it('is left out when that sheet has no room, although others have, and the other boards are laid out', () => {
    const answer = packSheets(wish({ quantity: 5 }))
    expect(verify(wish({ quantity: 5 }), answer)).toEqual([])
    expect(answer.unplaced).toEqual([
      { part: '600 x 400 x 2', quantity: 3, reason: 'sheet figured, which it must come from, has no room for it' },
    ])
  })

  it('is left out with the size that would fit when it is larger than that sheet', () => {
    const reason = packSheets(wish({ length: 1400 })).unplaced[0]!.reason
    expect(reason).toContain('1400 x 400 is larger than 1300 x 700')
    expect(reason).toContain('1300 x 400 would fit')
  })

  it('is missed by the verifier when it comes from another', () => {
    const loose = packSheets({ ...wish({ from: 'sheet' }), goals: [] })
    expect(verify(wish(), loose).join()).toContain('is cut from sheet, not from figured')
  })

  it.each([['dear'], [7]])('is refused when no sheet is called %j', (from) => {
    expect(message(wish({ from: from as string }))).toContain(`parts[1].from is ${JSON.stringify(from)}`)
  })
})
